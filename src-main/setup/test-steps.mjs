/** The steps of `npm test`, fastest first, and the block at its end. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ROOT, runScript } from './project.mjs';

/** Where playwright.config.ts lets its results be written. */
const WINDOW_REPORT = join(ROOT, 'dist', 'window-tests.json');
/** Random jobs of each kind in a test run; `npm run fuzz` tries ten thousand. */
const FUZZ_COUNT = '150';

/** Each step gives what it found: whether it is well, and how many tests passed and failed. */
export const STEPS = [
  { name: 'lint', run: () => plain('node_modules/@biomejs/biome/bin/biome', ['check', '.']) },
  { name: 'types', run: checkTypes },
  { name: 'unit', run: () => vitest('unit*') },
  { name: 'reference', run: () => vitest('reference') },
  { name: 'fuzz', run: () => vitest('fuzz', { FUZZ_COUNT }) },
  { name: 'window', run: windowTests },
];

/** Lines for the end of a run and its exit code. A step that failed without a failed test counts as one. */
export function summarise(results) {
  const lines = results.map(({ name, isOk, passed, failed, seconds }) => {
    const tests = passed + failed > 0 ? `${passed} passed, ` : '';
    return `${name} ${isOk ? 'ok' : 'FAILED'} (${tests}${seconds.toFixed(0)} s)`;
  });
  const passed = results.reduce((sum, result) => sum + result.passed, 0);
  const failed = results.reduce((sum, { isOk, failed: tests }) => sum + (isOk ? 0 : Math.max(1, tests)), 0);
  return { lines: [...lines, `${passed} passed, ${failed} failed`], code: failed === 0 ? 0 : 1 };
}

/** Runs the steps, all of them even where one fails, and gives the results. */
export function runSteps(steps) {
  return steps.map(({ name, run }) => {
    console.log(`\n${name}`);
    const startedMs = performance.now();
    const found = run();
    return { name, ...found, seconds: (performance.now() - startedMs) / 1000 };
  });
}

/** What a report of vitest says; `code` is how it ended. Skipped tests are not allowed, so one makes a run fail. */
export function readVitestReport(report, code) {
  const { numPassedTests: passed, numFailedTests, numPendingTests, numTodoTests } = report;
  const skipped = numPendingTests + numTodoTests;
  const failed = numFailedTests + skipped;
  return { isOk: code === 0 && failed === 0 && passed > 0, passed, failed };
}

/** What a report of playwright says. A test that was skipped, or passed only at a second try, makes a run fail. */
export function readWindowReport({ stats }, code) {
  const failed = stats.unexpected + stats.skipped + stats.flaky;
  return { isOk: code === 0 && failed === 0 && stats.expected > 0, passed: stats.expected, failed };
}

/** The built window in Chromium, through the real loopback host. */
function windowTests() {
  rmSync(WINDOW_REPORT, { force: true });
  const code = runScript('node_modules/@playwright/test/cli.js', ['test']);
  try {
    return readWindowReport(JSON.parse(readFileSync(WINDOW_REPORT, 'utf8')), code);
  } catch (error) {
    console.error(`window: no report was written: ${error.message}`);
    return { isOk: false, passed: 0, failed: 0 };
  }
}

function plain(script, args) {
  return { isOk: runScript(script, args) === 0, passed: 0, failed: 0 };
}

function checkTypes() {
  const tsc = 'node_modules/typescript/bin/tsc';
  const core = plain(tsc, ['--noEmit', '-p', 'src-core']);
  const all = plain(tsc, ['--noEmit']);
  return { isOk: core.isOk && all.isOk, passed: 0, failed: 0 };
}

function vitest(project, env = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-test-'));
  const file = join(folder, 'report.json');
  try {
    const code = runScript(
      'node_modules/vitest/vitest.mjs',
      ['run', '--project', project, '--reporter=default', '--reporter=json', `--outputFile.json=${file}`],
      env,
    );
    return readVitestReport(JSON.parse(readFileSync(file, 'utf8')), code);
  } catch (error) {
    console.error(`${project}: no report was written: ${error.message}`);
    return { isOk: false, passed: 0, failed: 0 };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
