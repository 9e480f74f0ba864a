/** The command line without a process: words in, texts and an exit code out. */
import { apply } from './commands/apply';
import { book } from './commands/book';
import { check } from './commands/check';
import { exportFile } from './commands/export';
import { falsework } from './commands/falsework';
import { list } from './commands/list';
import { overhang } from './commands/overhang';
import { pour } from './commands/pour';
import { swap } from './commands/swap';
import type { CliIo, Command } from './io';
import { EXIT, refuse } from './io';

/** Every command, in the order of the help. */
const COMMANDS: readonly Command[] = [check, apply, overhang, falsework, swap, list, pour, exportFile, book];

/** Runs one command and gives its exit code. Throws only for a fault of Ledgewright's own. */
export async function runCli(argv: readonly string[], io: CliIo): Promise<number> {
  const [first, ...rest] = argv;
  if (first === '--version' || first === '-v') {
    io.out.write(`ledgewright ${io.version}\n`);
    return EXIT.allHolds;
  }
  if (first === '--help' || first === '-h' || first === 'help') {
    io.out.write(helpText());
    return EXIT.allHolds;
  }
  const known = COMMANDS.map(({ name }) => name).join(', ');
  if (first === undefined) return refuse(io, [`Say what to do. Commands: ${known}. For help: --help`]);
  const command = COMMANDS.find(({ name }) => name === first);
  if (command === undefined) {
    const what = first.startsWith('-') ? 'option' : 'command';
    return refuse(io, [`There is no ${what} ${first}. Commands: ${known}. For help: --help`]);
  }
  return command.run(rest, io);
}

function helpText(): string {
  const commands = COMMANDS.map(({ name, summary }) => `  ${name.padEnd(10)}${summary}`).join('\n');
  return `Ledgewright: will this cast-in-place concrete worktop stand?

npm run -s cli -- COMMAND ...

Commands
${commands}

Options
  --help      this text; after a command, what that command takes
  --version   the version

Exit codes
  0  everything holds
  1  a piece, a step on the way or a site finding needs attention
  2  the input cannot be used; stderr says why and nothing is written to stdout
`;
}
