/**
 * `npm start`: from a fresh clone to the window. The desktop window where its runtime can be had, else the same window in a browser.
 *
 *   npm start -- --browser      the window in a browser, whatever is installed
 *   npm start -- --no-browser   only print the address for a browser
 *
 * What else is given after these goes to the loopback host.
 */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { buildWhereNeeded } from './build.mjs';
import { displayTrouble, findRuntime } from './electron-runtime.mjs';
import { prepare, ROOT } from './project.mjs';

const wishes = process.argv.slice(2);
const wantsBrowser = wishes.includes('--browser') || wishes.includes('--no-browser');
const rest = wishes.filter((wish) => wish !== '--browser');
let isStopped = false;

prepare();
if (buildWhereNeeded()) {
  process.exitCode = await open();
} else {
  console.error('The window could not be built.');
  process.exitCode = 1;
}

async function open() {
  if (wantsBrowser) return openInBrowser();
  const why = await openDesktopWindow();
  if (why === null) return 0;
  console.log(`No desktop window here: ${why}. The same window opens in a browser.`);
  return openInBrowser();
}

/** Null where the window was shown and closed again, else why there was none. */
async function openDesktopWindow() {
  const trouble = displayTrouble(process.env, process.platform);
  if (trouble !== null) return trouble;
  const folder = join(ROOT, 'node_modules', 'electron');
  const runtime = await findRuntime(folder, process.env, (line) => console.log(line));
  if (!runtime.ok) return runtime.why;
  const code = await runUntilEnd(runtime.program, ['dist/main/main.js']);
  return code === 0 || isStopped ? null : `its runtime ended with code ${code}`;
}

function openInBrowser() {
  return runUntilEnd(process.execPath, ['--import', 'tsx', 'src-main/browser-host/main.ts', ...rest]);
}

/** Runs a program on this terminal; a stop of this process is passed on, and its end is the program's. */
function runUntilEnd(program, args) {
  return new Promise((resolve) => {
    const child = spawn(program, args, { cwd: ROOT, stdio: 'inherit' });
    for (const signal of ['SIGINT', 'SIGTERM']) {
      process.on(signal, () => {
        isStopped = true;
        child.kill(signal);
      });
    }
    child.on('error', (error) => {
      console.error(`${program} could not be started: ${error.message}`);
      resolve(1);
    });
    child.on('exit', (code) => resolve(code ?? 1));
  });
}
