/** What both start and test do first: find the project, look at Node, install what is missing. No dependencies. */
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

const OLDEST_NODE = [20, 19];

/** Null where this Node will do, else a sentence. `version` is such as "20.19.0". */
export function nodeTrouble(version) {
  const [major, minor] = version.split('.').map(Number);
  const isNewEnough = major > OLDEST_NODE[0] || (major === OLDEST_NODE[0] && minor >= OLDEST_NODE[1]);
  if (isNewEnough) return null;
  return `Ledgewright needs Node ${OLDEST_NODE.join('.')} or newer; this is ${version}. See https://nodejs.org`;
}

/** Whether packages are missing, or the lock file was changed after they were installed. */
export function needsInstall(root) {
  const installed = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(installed)) return true;
  return statSync(installed).mtimeMs < statSync(join(root, 'package-lock.json')).mtimeMs;
}

/** How to call npm without a shell where that can be had: the npm that runs this script is itself a Node script. */
export function npmCommand(args, env = process.env, platform = process.platform) {
  const own = env.npm_execpath;
  if (own !== undefined && /npm-cli\.[cm]?js$/.test(own)) {
    return { file: process.execPath, args: [own, ...args], shell: false };
  }
  return { file: 'npm', args, shell: platform === 'win32' };
}

/** Runs a program in the project with its output on this terminal; gives its exit code. */
export function run({ file, args, shell = false }, env = {}) {
  const { status, error } = spawnSync(file, args, {
    cwd: ROOT,
    stdio: 'inherit',
    shell,
    env: { ...process.env, ...env },
  });
  if (error !== undefined) console.error(`${file} could not be started: ${error.message}`);
  return status ?? 1;
}

/** Runs a Node script of an installed package. Its path, not its name, so that no shell is needed on any system. */
export function runScript(path, args, env = {}) {
  return run({ file: process.execPath, args: [join(ROOT, path), ...args] }, env);
}

/** Leaves with a sentence where Node is too old or the packages cannot be had. */
export function prepare() {
  const trouble = nodeTrouble(process.versions.node);
  if (trouble !== null) leave(trouble);
  if (!needsInstall(ROOT)) return;
  console.log('Installing packages (npm ci)');
  if (run(npmCommand(['ci', '--include=dev'])) !== 0) leave('The packages could not be installed.');
}

function leave(sentence) {
  console.error(sentence);
  process.exit(1);
}
