/** Entry of the command line, and the only file of it that touches the process. */
import { readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { cacheFolder } from '../overhang-cache/cache-folder';
import { browserPrinter } from '../print/print-with-browser';
import type { CliIo, TextOutput } from './io';
import { runCli } from './run-cli';

/** For a fault of Ledgewright's own, apart from the codes that say something about the job. */
const OWN_FAULT = 70;

function outputOf(stream: NodeJS.WriteStream): TextOutput {
  // A reader such as `head` may leave before the end. That is its right and no fault.
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
  return { write: (text) => stream.write(text), isTerminal: stream.isTTY === true };
}

function ownVersion(): string {
  const text = readFileSync(new URL('../../package.json', import.meta.url), 'utf8');
  const { version } = JSON.parse(text) as { version: string };
  return version;
}

/** `npm run cli` changes into the project's folder; paths are meant from where the person stood. */
function currentFolder(): string {
  const { npm_lifecycle_event: script, INIT_CWD: stood } = process.env;
  return script === 'cli' && stood !== undefined ? stood : process.cwd();
}

const out = outputOf(process.stdout);
const io: CliIo = {
  version: ownVersion(),
  currentFolder: currentFolder(),
  out,
  err: outputOf(process.stderr),
  colour: out.isTerminal && (process.env.NO_COLOR ?? '') === '' && process.env.TERM !== 'dumb',
  nowMs: () => performance.now(),
  cacheFolder: cacheFolder(process.env, process.platform, homedir()),
  printer: browserPrinter(),
};

try {
  process.exitCode = await runCli(process.argv.slice(2), io);
} catch (error) {
  io.err.write(`Ledgewright has a fault of its own, which says nothing about the job.\n`);
  io.err.write(`${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`);
  process.exitCode = OWN_FAULT;
}
