/** Builds the window where its build is missing or older than the sources. No dependencies of its own. */
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT, runScript } from './project.mjs';

/** What the build reads. */
const SOURCES = [
  'src-core',
  'src-renderer',
  'src-main/desktop',
  'src-main/host',
  'electron.vite.config.ts',
  'package-lock.json',
];

/** What it writes, one file a part. */
const BUILT = ['dist/main/main.js', 'dist/preload/preload.cjs', 'dist/renderer/index.html'];

/** Whether a part of the build is missing, or any source was changed after the oldest part was built. */
export function needsBuild(root) {
  const built = BUILT.map((file) => join(root, file));
  if (!built.every((file) => existsSync(file))) return true;
  const oldestMs = Math.min(...built.map((file) => statSync(file).mtimeMs));
  return newestMs(SOURCES.map((source) => join(root, source))) > oldestMs;
}

/** Builds the three parts; whether it went well. */
export function build() {
  return runScript('node_modules/electron-vite/bin/electron-vite.js', ['build', '--logLevel', 'warn']) === 0;
}

/** Builds where that is needed, with a word on why it takes a while; whether there is a build afterwards. */
export function buildWhereNeeded() {
  if (!needsBuild(ROOT)) return true;
  console.log('Building the window');
  return build();
}

function newestMs(paths) {
  return paths.reduce((newest, path) => {
    const found = statSync(path, { throwIfNoEntry: false });
    if (found === undefined) return newest;
    if (!found.isDirectory()) return Math.max(newest, found.mtimeMs);
    const inside = readdirSync(path, { withFileTypes: true, recursive: true })
      .filter((entry) => entry.isFile())
      .map((entry) => statSync(join(entry.parentPath, entry.name)).mtimeMs);
    return Math.max(newest, ...inside);
  }, 0);
}
