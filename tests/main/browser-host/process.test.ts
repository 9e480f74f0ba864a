import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openBrowser, openerFor } from '../../../src-main/browser-host/open-browser';
import { readHostOptions } from '../../../src-main/browser-host/options';
import { exampleText, PROJECT } from '../host/place-here';

interface Running {
  readonly firstLine: string;
  readonly stop: (signal: NodeJS.Signals) => Promise<number | null>;
}

/** Starts the loopback host as a person does and waits for its first line. */
function startProcess(args: readonly string[], env: NodeJS.ProcessEnv = {}): Promise<Running> {
  const child = spawn(process.execPath, ['--import', 'tsx', 'src-main/browser-host/main.ts', ...args], {
    cwd: PROJECT,
    env: { ...process.env, ...env },
  });
  const ended = new Promise<number | null>((resolve) => {
    child.once('exit', (code) => resolve(code));
  });
  return new Promise((resolve, reject) => {
    let said = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      said += text;
      if (!said.includes('\n')) return;
      const stop = (signal: NodeJS.Signals) => {
        child.kill(signal);
        return ended;
      };
      resolve({ firstLine: said.split('\n')[0]!, stop });
    });
    let complaint = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      complaint += text;
    });
    child.once('close', (code) => reject(new Error(`ended with ${code}: ${complaint}`)));
  });
}

const ADDRESS = /^Ledgewright is at http:\/\/127\.0\.0\.1:(\d+)\/#token=([\w-]{43})$/;

/** Asks as the page would. */
async function askAt(firstLine: string, name: string, request: object): Promise<unknown> {
  const [, port, token] = ADDRESS.exec(firstLine)!;
  const own = `http://127.0.0.1:${port}`;
  const answer = await fetch(`${own}/host/${name}`, {
    method: 'POST',
    headers: { origin: own, 'content-type': 'application/json', 'x-ledgewright-token': token! },
    body: JSON.stringify(request),
  });
  return answer.json();
}

test('the loopback host prints its address, answers, and ends with code 0 when it is stopped', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-process-'));
  try {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) {
      const { firstLine, stop } = await startProcess(['--no-browser', '--job-folder', folder], {
        LEDGEWRIGHT_USER_FOLDER: join(folder, 'user'),
      });
      expect(firstLine).toMatch(ADDRESS);
      expect(await askAt(firstLine, 'about', {})).toMatchObject({ host: 'browser', jobFolder: folder });
      const path = join(folder, `${signal}.json`);
      await askAt(firstLine, 'saveJob', { path, suggestedName: 'a.json', text: exampleText('hearth') });
      expect(await stop(signal)).toBe(0);
      expect(readFileSync(join(folder, 'user', 'recent-jobs.json'), 'utf8')).toContain(`${signal}.json`);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('a host that is killed leaves its draft to the next one', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-process-'));
  const args = ['--no-browser', '--user-folder', folder];
  try {
    const first = await startProcess(args);
    await askAt(first.firstLine, 'keepDraft', { path: null, name: 'galley.json', text: 'half done' });
    await first.stop('SIGKILL');
    const second = await startProcess(args);
    expect(await askAt(second.firstLine, 'findDraft', {})).toMatchObject({ draft: { text: 'half done' } });
    await second.stop('SIGTERM');
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('a port that is taken ends it with a sentence', async () => {
  const { firstLine, stop } = await startProcess(['--no-browser']);
  const port = ADDRESS.exec(firstLine)![1]!;
  await expect(startProcess(['--no-browser', '--port', port])).rejects.toThrow(`Port ${port} cannot be used`);
  await stop('SIGTERM');
});

test('options are read with their folders made whole, and a wrong one is a sentence', () => {
  expect(readHostOptions(['--port', '8080', '--no-browser', '--user-folder', 'here'], '/base')).toEqual({
    ok: true,
    options: { port: 8080, opensBrowser: false, userFolder: join('/base', 'here'), jobFolder: null },
  });
  expect(readHostOptions([], '/base')).toMatchObject({ ok: true, options: { port: 0, opensBrowser: true } });
  for (const port of ['65536', '-1', 'http', '1e3', '']) {
    expect(readHostOptions([`--port=${port}`], '/base')).toMatchObject({ ok: false });
  }
  expect(readHostOptions(['--colour'], '/base')).toMatchObject({ ok: false });
});

test('the address is an argument of the system’s own opener, and an opener that is missing is no failure', async () => {
  const address = 'http://127.0.0.1:1/#token=a&b';
  for (const platform of ['darwin', 'win32', 'linux']) {
    expect(openerFor(platform, address).args.at(-1)).toBe(address);
  }
  const { PATH: path } = process.env;
  process.env.PATH = '';
  try {
    expect(await openBrowser(address, 'linux')).toBe(false);
  } finally {
    process.env.PATH = path;
  }
});
