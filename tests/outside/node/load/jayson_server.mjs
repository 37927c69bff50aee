// The package jayson as a server of one method, over HTTP and WebSocket, for tests/bench/jayson.cpp: prints both ports, ends with
// its input.
import jayson from 'jayson';

const server = new jayson.Server({ sum: (numbers, done) => done(null, numbers.reduce((total, one) => total + one, 0)) });
const http = server.http();
http.listen(0, '127.0.0.1', () => {
  const websocket = server.websocket({ host: '127.0.0.1', port: 0 });
  websocket.on('listening', () => console.log(http.address().port, websocket.address().port));
});
process.stdin.on('end', () => process.exit(0)).resume();
