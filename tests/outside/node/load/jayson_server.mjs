// The package jayson as a server over HTTP and WebSocket, for tests/bench/jayson.cpp: adds numbers, and answers a document with what the
// first line of its input says. Prints both ports, ends with its input.
import { createInterface } from 'node:readline';
import jayson from 'jayson';

let answer = null;
const server = new jayson.Server({
  sum: (numbers, done) => done(null, numbers.reduce((total, one) => total + one, 0)),
  look: (document, done) => done(null, answer),
});
const http = server.http();
http.listen(0, '127.0.0.1', () => {
  const websocket = server.websocket({ host: '127.0.0.1', port: 0 });
  websocket.on('listening', () => console.log(http.address().port, websocket.address().port));
});
createInterface({ input: process.stdin })
  .on('line', (line) => {
    answer = JSON.parse(line);
  })
  .on('close', () => process.exit(0));
