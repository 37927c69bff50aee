// stage: outside
// The protocol over standard input and output, spoken by clients that know nothing of this project: vscode-jsonrpc
// (Content-Length framing) and json-rpc-2.0 (one text a line) against the program, and the specification's own
// examples, framing cases and parser cases against a program that serves the specification's test methods.
//   node stdio_clients.mjs [--table COMMAND] [--program COMMAND]
// COMMAND is split at blanks; without it, protocol_table and limbledger of $LIMBLEDGER_BUILD are taken. `--table none`
// or `--program none` leaves that half out. What was said with the program is kept in $LIMBLEDGER_BUILD/talks.

import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Count } from './lib/count.mjs';
import { protocol } from './lib/protocol_cases.mjs';
import { program } from './lib/program_talk.mjs';

const build = process.env.LIMBLEDGER_BUILD ?? fileURLToPath(new URL('../../../build', import.meta.url));

const command_of = (option, file) => {
  const at = process.argv.indexOf(option);
  if (at >= 0) return process.argv[at + 1] === 'none' ? undefined : process.argv[at + 1].split(' ');
  return [`${build}/${file}`];
};

const count = new Count();
for (const [option, file, run] of [['--table', 'protocol_table', protocol], ['--program', 'limbledger', program]]) {
  const command = command_of(option, file);
  if (command === undefined) continue;
  if (!count.note(`${file} is built`, existsSync(command[0]) || !command[0].includes('/'), command[0])) continue;
  try {
    await run(count, command, build);
  } catch (error) {
    count.note(`${file}: the talk came to its end`, false, error.stack);
  }
}
count.close();
