import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, test, vi } from 'vitest';
import type { Machine } from '../../../src-main/print/installed-browser';
import { thisMachine } from '../../../src-main/print/installed-browser';
import { browserPrinter } from '../../../src-main/print/print-with-browser';
import type { Printed } from '../../../src-main/print/printed';
import type { ReadPdf } from '../../support/read-pdf';
import { readPdf } from '../../support/read-pdf';
import { withWitness } from '../../support/witness';

async function printed(html: string): Promise<ReadPdf> {
  const outcome = await browserPrinter().print(html);
  if (!outcome.ok) throw new Error(outcome.sentence);
  return readPdf(outcome.pdf);
}

/** Runs with a folder for temporary files of its own, and gives what is left there. */
async function leftBehind(run: () => Promise<unknown>): Promise<readonly string[]> {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-temporary-'));
  for (const name of ['TMPDIR', 'TEMP', 'TMP']) vi.stubEnv(name, folder);
  try {
    await run();
    return readdirSync(folder);
  } finally {
    vi.unstubAllEnvs();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A program of our own in place of the browser: a shell script with this body. */
async function printingWith(body: string): Promise<Printed> {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-program-'));
  try {
    const program = join(folder, 'browser');
    writeFileSync(program, `#!/bin/sh\n${body}\n`);
    chmodSync(program, 0o755);
    const machine: Machine = { ...thisMachine(), env: { LEDGEWRIGHT_BROWSER: program } };
    return await browserPrinter(machine).print('<!doctype html><p>Book');
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

describe('printing with the browser of this machine', () => {
  const sheet = (size: string) =>
    `<!doctype html><html lang="en"><head><title>Book</title><style>@page { size: ${size}; margin: 0; } section { break-after: page; }</style></head><body><section><h1>Legs</h1></section><section><h1>Swap</h1>Nineteen legs</section></body></html>`;

  test('gives a PDF on the sheet that the style names, letter 612 by 792 pt and A4 595.3 by 841.9 pt', async () => {
    const letter = await printed(sheet('8.5in 11in'));
    expect(letter.sizesPt[0]).toEqual([612, 792]);
    expect(letter.text).toContain('Nineteen legs');
    const [width, height] = (await printed(sheet('210mm 297mm'))).sizesPt[0]!;
    expect(Math.abs(width! - 595.28)).toBeLessThan(0.75);
    expect(Math.abs(height! - 841.89)).toBeLessThan(0.75);
  });

  test('adds no date, title or address of its own, and makes the headings an outline', async () => {
    const { text, outline } = await printed(sheet('8.5in 11in'));
    expect(text.replace(/\s+/g, ' ').trim()).toBe('Legs Swap Nineteen legs');
    expect(outline).toEqual(['Legs', 'Swap']);
  });

  test('leaves neither its profile nor its PDF behind', async () => {
    const whole = { isPrinted: false };
    const left = await leftBehind(async () => {
      whole.isPrinted = (await browserPrinter().print(sheet('8.5in 11in'))).ok;
    });
    expect(whole.isPrinted).toBe(true);
    // What the browser itself leaves beside, such as its socket for a second start, is not the profile.
    expect(left.filter((name) => name.startsWith('ledgewright-'))).toEqual([]);
  });

  test('runs no script of the document and fetches nothing for it, from this machine or elsewhere', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'ledgewright-secret-'));
    const secret = join(folder, 'secret.html');
    writeFileSync(secret, 'SECRET');
    try {
      await withWitness(async (address, asked) => {
        const { text } = await printed(
          `<!doctype html><html><head><style>@import '${address}/import'; body { background: url(${address}/back) }</style>
          <link rel="stylesheet" href="${address}/sheet"></head><body>Words
          <script>document.body.append('SCRIPTED')</script><img src="${address}/img" onerror="document.body.append('SCRIPTED')">
          <iframe src="${address}/frame"></iframe><iframe src="${pathToFileURL(secret).href}"></iframe>
          <iframe srcdoc="<script>document.write('SCRIPTED')</script><img src='${address}/framed'>"></iframe><object data="${address}/object"></object></body></html>`,
        );
        expect(text).toContain('Words');
        expect(text).not.toMatch(/SCRIPTED|SECRET|WITNESS/);
        expect(asked).toEqual([]);
      });
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  test('does not follow a document that leads elsewhere by itself', async () => {
    await withWitness(async (address, asked) => {
      const { text } = await printed(
        `<!doctype html><html><head><meta http-equiv="refresh" content="0;url=${address}/refreshed"></head><body>Words</body></html>`,
      );
      expect(text.trim()).toBe('Words');
      expect(asked).toEqual([]);
    });
  });
});

describe('the address that a document is printed from', () => {
  /** Asks at it in ways that nobody but the browser should be answered, and notes the codes. */
  const PROBE = `
    import { networkInterfaces } from 'node:os';
    import { writeFileSync } from 'node:fs';
    const [note, address] = [process.argv[2], process.argv.at(-1)];
    const at = (change) => { const url = new URL(address); change(url); return url; };
    const code = (url, method = 'GET') => fetch(url, { method }).then(({ status }) => status, () => 'nobody');
    const outside = Object.values(networkInterfaces()).flat().find((one) => !one.internal && one.family === 'IPv4');
    writeFileSync(note, JSON.stringify({
      address,
      profile: process.argv.find((word) => word.startsWith('--user-data-dir=')),
      asItIs: await code(address),
      root: await code(at((url) => { url.pathname = '/'; })),
      longer: await code(at((url) => { url.pathname += 'a'; })),
      posted: await code(address, 'POST'),
      otherAddress: await code(at((url) => { url.hostname = '127.0.0.2'; })),
      fromOutside: outside === undefined ? 'nobody' : await code(at((url) => { url.hostname = outside.address; })),
    }));
  `;

  async function probed(): Promise<Record<string, unknown>> {
    const folder = mkdtempSync(join(tmpdir(), 'ledgewright-probe-'));
    try {
      const [probe, note] = [join(folder, 'probe.mjs'), join(folder, 'note.json')];
      writeFileSync(probe, PROBE);
      await printingWith(`exec "${process.execPath}" "${probe}" "${note}" "$@"`);
      return JSON.parse(readFileSync(note, 'utf8'));
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  }

  test('is on this machine alone, cannot be guessed, and answers a GET of that very address', async () => {
    const { address, profile: _, ...codes } = await probed();
    // 32 random bytes: 256 bits.
    expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/[\w-]{43}$/);
    expect(codes).toEqual({
      asItIs: 200,
      root: 404,
      longer: 404,
      posted: 404,
      otherAddress: 'nobody',
      fromOutside: 'nobody',
    });
    expect(new URL(String((await probed()).address)).pathname).not.toBe(new URL(String(address)).pathname);
  });

  test('is asked from a profile of its own at every print, never the person’s', async () => {
    const profiles = [(await probed()).profile, (await probed()).profile];
    for (const profile of profiles) expect(profile).toMatch(/ledgewright-print-\w+[\\/]profile$/);
    expect(profiles[0]).not.toBe(profiles[1]);
  });

  test('is gone after the print', async () => {
    const { address } = await probed();
    await expect(fetch(String(address))).rejects.toThrow();
  });
});

describe('a browser that does not print', () => {
  test('is told as its code and its last words', async () => {
    expect(await printingWith('echo "no   display" >&2; exit 3')).toMatchObject({
      ok: false,
      why: 'failed',
      sentence: expect.stringMatching(/could not print this: it ended with code 3, saying: no display\.$/),
    });
  });

  test('although it ends well, or writes something else, is no print', async () => {
    const file =
      'for flag in "$@"; do case "$flag" in --print-to-pdf=*) file=$(echo "$flag" | cut -d= -f2-);; esac; done';
    expect(await printingWith('exit 0')).toMatchObject({ ok: false, why: 'failed' });
    expect(await printingWith(`${file}; echo hello > "$file"`)).toMatchObject({
      ok: false,
      sentence: expect.stringContaining('no PDF'),
    });
    expect(await printingWith(`${file}; printf '%%PDF-1.7' > "$file"`)).toMatchObject({ ok: true });
    expect(await leftBehind(() => printingWith('exit 3'))).toEqual([]);
  });

  test('is missing without a trace: no profile is made', async () => {
    const machine: Machine = {
      env: { PATH: '' },
      platform: 'linux',
      home: '/',
      isProgram: async () => false,
    };
    const left = await leftBehind(async () => {
      expect(await browserPrinter(machine).print('<p>')).toMatchObject({ ok: false, why: 'no-printer' });
      expect(await browserPrinter(machine).trouble()).toMatch(/^No Chromium/);
    });
    expect(left).toEqual([]);
  });
});
