/**
 * `npm start`: from a fresh clone to the window. The desktop window where its runtime can be had, else the same window in a browser.
 *
 *   npm start -- --browser      the window in a browser, whatever is installed
 *   npm start -- --no-browser   only print the address for a browser
 *   npm start -- FILE.json      open this job in the desktop window
 */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { buildWhereNeeded } from './build.mjs';
import { displayTrouble, findRuntime } from './electron-runtime.mjs';
import { prepare, ROOT } from './project.mjs';

const wishes = process.argv.slice(2);
const staysSilent = wishes.includes('--no-browser');
const wantsBrowser = staysSilent || wishes.includes('--browser');
const rest = wishes.filter((wish) => wish !== '--browser');

prepare();
if (buildWhereNeeded()) {
  process.exitCode = await open();
} else {
  console.error('The window could not be built.');
  process.exitCode = 1;
}

async function open() {
  if (wantsBrowser) return openInBrowser(rest);
  const trouble = displayTrouble(process.env, process.platform);
  const runtime =
    trouble === null
      ? await findRuntime(join(ROOT, 'node_modules', 'electron'), process.env, (line) => console.log(line))
      : { ok: false, why: trouble };
  if (runtime.ok) return runUntilEnd(runtime.program, ['dist/main/main.js', ...rest]);
  console.log(`No desktop window here: ${runtime.why}. The same window opens in a browser.`);
  return openInBrowser(rest.filter((wish) => wish.startsWith('--')));
}

function openInBrowser(options) {
  return runUntilEnd(process.execPath, ['--import', 'tsx', 'src-main/browser-host/main.ts', ...options]);
}

/** Runs a program on this terminal; a stop of this process is passed on, and its end is the program's. */
function runUntilEnd(program, args) {
  return new Promise((resolve) => {
    const child = spawn(program, args, { cwd: ROOT, stdio: 'inherit' });
    for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => child.kill(signal));
    child.on('error', (error) => {
      console.error(`${program} could not be started: ${error.message}`);
      resolve(1);
    });
    child.on('exit', (code) => resolve(code ?? 1));
  });
}
