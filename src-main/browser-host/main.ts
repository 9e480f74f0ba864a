/** Entry of the loopback host: serves the window to a browser on this machine until it is stopped. */
import { homedir } from 'node:os';
import { fileURLToPath } from 'node:url';
import { createHost } from '../host/host';
import { ownFiles } from '../host/own-files';
import { platformOf } from '../host/place';
import { documentFolder, userFolder } from '../host/user-folder';
import { browserPrinter } from '../print/print-with-browser';
import { startLoopbackHost } from './loopback-host';
import { openBrowser } from './open-browser';
import type { HostOptions } from './options';
import { HELP, readHostOptions } from './options';

const UNUSABLE_OPTIONS = 2;
const CANNOT_LISTEN = 1;

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

function complain(line: string): void {
  process.stderr.write(`${line}\n`);
}

async function serve(options: HostOptions): Promise<number> {
  const { version, pageFolder, exampleFolder, manualFolder } = ownFiles(ROOT);
  const host = createHost({
    host: 'browser',
    version,
    platform: platformOf(process.platform),
    userFolder: options.userFolder ?? userFolder(process.env, process.platform, homedir()),
    jobFolder: options.jobFolder ?? documentFolder(homedir()),
    exampleFolder,
    manualFolder,
    dialogs: null,
    printPdf: browserPrinter().print,
    clock: () => new Date(),
  });
  const onFault = (error: unknown) => complain(error instanceof Error ? `${error.stack}` : String(error));
  let loopback: Awaited<ReturnType<typeof startLoopbackHost>>;
  try {
    loopback = await startLoopbackHost({ host, pageFolder, port: options.port, onFault });
  } catch (error) {
    complain(
      `Port ${options.port} cannot be used: ${error instanceof Error ? error.message : String(error)}`,
    );
    return CANNOT_LISTEN;
  }
  const stopped = stopSignal();
  say(`Ledgewright is at ${loopback.address}`);
  say('It answers this machine only. Stop it with Ctrl+C.');
  if (options.opensBrowser && !(await openBrowser(loopback.address))) {
    say('No browser could be opened from here: open that address yourself.');
  }
  await stopped;
  await loopback.stop();
  return 0;
}

function stopSignal(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });
}

const argv = process.argv.slice(2);
if (argv.includes('--help') || argv.includes('-h')) {
  say(HELP);
} else {
  const reading = readHostOptions(argv, process.env.INIT_CWD ?? process.cwd());
  if (reading.ok) {
    process.exitCode = await serve(reading.options);
  } else {
    complain(reading.sentence);
    process.exitCode = UNUSABLE_OPTIONS;
  }
}
