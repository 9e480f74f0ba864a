import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { EXPORT_ENDINGS } from '../../../src-core/host-contract';
import { askTarget } from '../../../src-main/host/export-files';
import type { Place } from '../../../src-main/host/place';
import type { Printed } from '../../../src-main/print/printed';
import { ask, exampleText, withHost } from './place-here';

const HEARTH = exampleText('hearth');
const text = (suggestedName: string, data: string) => ({ kind: 'text', suggestedName, data });
const base64 = (suggestedName: string, data: string) => ({ kind: 'base64', suggestedName, data });

/** Dialogs that answer these paths in turn, and what they were asked with. */
function answering(...answers: (string | null)[]) {
  const asked: string[] = [];
  const dialogs: Place['dialogs'] = {
    askOpen: async () => null,
    askSave: async (suggestedPath) => {
      asked.push(suggestedPath);
      return answers.shift() ?? null;
    },
  };
  return { asked, dialogs, answers };
}

describe('a file that leaves', () => {
  test('is written as text or as bytes where the dialog says, and nothing else with it', async () => {
    const { asked, dialogs, answers } = answering();
    await withHost(
      async ({ host, place }) => {
        const [plan, model] = ['plan.dxf', 'model.glb'].map((name) => join(place.jobFolder, name));
        answers.push(plan!, model!);
        expect(await ask(host, 'saveExport', text('galley.dxf', '0\nEOF\n'))).toEqual({
          outcome: 'saved',
          path: plan,
          name: 'plan.dxf',
        });
        // Bytes that are no UTF-8 come back as they went.
        const bytes = Uint8Array.from({ length: 256 }, (_, value) => value);
        const data = Buffer.from(bytes).toString('base64');
        expect(await ask(host, 'saveExport', base64('galley.glb', data))).toMatchObject({ outcome: 'saved' });
        expect(readFileSync(plan!, 'utf8')).toBe('0\nEOF\n');
        expect(Uint8Array.from(readFileSync(model!))).toEqual(bytes);
        expect(asked).toEqual([join(place.jobFolder, 'galley.dxf'), join(place.jobFolder, 'galley.glb')]);
        expect(readdirSync(place.jobFolder).sort()).toEqual(['model.glb', 'plan.dxf']);
      },
      { dialogs },
    );
  });

  test('may be cancelled, and is left to the browser where the host has no dialogs', async () => {
    await withHost(
      async ({ host }) => {
        expect(await ask(host, 'saveExport', text('a.csv', ''))).toEqual({ outcome: 'cancelled' });
      },
      { dialogs: answering(null).dialogs },
    );
    await withHost(async ({ host, place }) => {
      expect(await ask(host, 'saveExport', text('a.csv', ''))).toEqual({ outcome: 'use-browser' });
      expect(readdirSync(place.jobFolder)).toEqual([]);
    });
  });

  test('keeps its ending, and replaces no file by a name that nobody chose', async () => {
    const { dialogs, answers } = answering();
    await withHost(
      async ({ host, place }) => {
        const bare = join(place.jobFolder, 'list');
        answers.push(bare, bare, `${bare}.txt`);
        expect(await ask(host, 'saveExport', text('a.csv', 'one'))).toMatchObject({ path: `${bare}.csv` });
        const again = await ask(host, 'saveExport', text('a.csv', 'two'));
        expect(again).toMatchObject({
          outcome: 'trouble',
          sentence: expect.stringContaining('already there'),
        });
        expect(readFileSync(`${bare}.csv`, 'utf8')).toBe('one');
        expect(await ask(host, 'saveExport', text('a.csv', 'two'))).toMatchObject({ name: 'list.txt.csv' });
      },
      { dialogs },
    );
  });

  test('is offered in the job folder, even by a caller that checks no name', async () => {
    const { asked, dialogs } = answering(null);
    await askTarget(dialogs!, join('/', 'jobs'), '../../elsewhere/a.csv');
    expect(asked).toEqual([join('/', 'jobs', 'a.csv')]);
  });

  test('says so where the folder is missing, the path is a folder, or it is half a path', async () => {
    const { dialogs, answers } = answering();
    await withHost(
      async ({ host, place }) => {
        mkdirSync(join(place.jobFolder, 'folder.svg'));
        answers.push(join(place.jobFolder, 'none', 'a.svg'), join(place.jobFolder, 'folder.svg'), 'a.svg');
        const replies = [];
        for (let k = 0; k < 3; k++) replies.push(await ask(host, 'saveExport', text('a.svg', '<svg/>')));
        expect(replies.map(({ outcome }) => outcome)).toEqual(['trouble', 'trouble', 'trouble']);
        expect(replies[0]!.sentence).toMatch(/^a\.svg: .*its folder is not there/);
        expect(replies[2]!.sentence).toMatch(/not a whole path/);
        expect(readdirSync(place.jobFolder)).toEqual(['folder.svg']);
      },
      { dialogs },
    );
  });

  test('that is a job is saved as jobs are: only where it is sound, and over no file that is none', async () => {
    const { dialogs, answers } = answering();
    await withHost(
      async ({ host, place }) => {
        const [copy, other] = ['copy.json', 'package.json'].map((name) => join(place.jobFolder, name));
        writeFileSync(other!, '{"name": "something else"}');
        answers.push(copy!, other!);
        expect(await ask(host, 'saveExport', text('a.json', '{}'))).toMatchObject({ outcome: 'trouble' });
        expect(await ask(host, 'saveExport', base64('a.json', ''))).toEqual({
          outcome: 'trouble',
          sentence: 'A job is saved as text.',
        });
        expect(await ask(host, 'saveExport', text('a.json', HEARTH))).toMatchObject({ outcome: 'saved' });
        expect(await ask(host, 'saveExport', text('a.json', HEARTH))).toMatchObject({ outcome: 'trouble' });
        expect(readFileSync(copy!, 'utf8')).toBe(HEARTH);
        expect(readFileSync(other!, 'utf8')).toBe('{"name": "something else"}');
        expect(await ask(host, 'recentJobs')).toEqual({ jobs: [] });
      },
      { dialogs },
    );
  });

  test('has a plain name with one of the endings; every other name is refused', async () => {
    await withHost(async ({ host }) => {
      for (const ending of EXPORT_ENDINGS) {
        expect(await host.answer('saveExport', text(`Büfett, 2.${ending}`, ''))).toMatchObject({ ok: true });
      }
      const names = [
        ...[
          '../a.csv',
          'a/b.csv',
          'a\\b.csv',
          '/a.csv',
          'C:a.csv',
          'a\0.csv',
          'a\n.csv',
          'a?.csv',
          '.csv',
          '.a.csv',
        ],
        ...['a', 'a.', 'a.exe', 'a.csv.sh', 'a.csv ', 'a.CSV.lnk', 'a.desktop', `${'a'.repeat(200)}.csv`],
      ];
      for (const name of names) {
        const answer = await host.answer('saveExport', text(name, ''));
        expect(answer, name).toMatchObject({ ok: false, fault: 'bad-request' });
      }
      expect(await host.answer('printBook', { suggestedName: 'a.html', html: '' })).toMatchObject({
        ok: false,
      });
    });
  });

  test('is 8,000,000 letters of text or 30,000,000 bytes at the most, and its base64 is base64', async () => {
    await withHost(async ({ host }) => {
      const take = async (request: object) => (await host.answer('saveExport', request)).ok;
      expect(await take(text('a.svg', 'a'.repeat(8_000_000)))).toBe(true);
      expect(await take(text('a.svg', 'a'.repeat(8_000_001)))).toBe(false);
      expect(await take(base64('a.stl', 'AAAA'.repeat(10_000_000)))).toBe(true);
      expect(await take(base64('a.stl', 'AAAA'.repeat(10_000_001)))).toBe(false);
      for (const data of ['A', 'AAA', 'AA=A', '====', 'AA A', 'AA-_', 'AAA\n']) {
        expect(await take(base64('a.stl', data)), data).toBe(false);
      }
      const html = 'a'.repeat(8_000_001);
      expect((await host.answer('printBook', { suggestedName: 'a.pdf', html })).ok).toBe(false);
    });
  });
});

describe('the printed book', () => {
  const book = { suggestedName: 'galley.pdf', html: '<!doctype html><p>Build book' };
  const pdf = Uint8Array.of(0x25, 0x50, 0x44, 0x46, 0x2d, 0xff);
  const printing = (printed: Printed) => {
    const given: string[] = [];
    return {
      given,
      printPdf: async (html: string) => {
        given.push(html);
        return printed;
      },
    };
  };

  test('is saved where the dialog says; cancelled, nothing is printed at all', async () => {
    const { given, printPdf } = printing({ ok: true, pdf });
    const { dialogs, answers } = answering();
    await withHost(
      async ({ host, place }) => {
        const path = join(place.jobFolder, 'book.pdf');
        answers.push(null, path);
        expect(await ask(host, 'printBook', book)).toEqual({ outcome: 'cancelled' });
        expect(given).toEqual([]);
        expect(await ask(host, 'printBook', book)).toEqual({ outcome: 'saved', path, name: 'book.pdf' });
        expect(given).toEqual([book.html]);
        expect(Uint8Array.from(readFileSync(path))).toEqual(pdf);
      },
      { dialogs, printPdf },
    );
  });

  test('is given back where there are no dialogs, and left to the browser where nothing can print it', async () => {
    await withHost(
      async ({ host }) => {
        const reply = await ask(host, 'printBook', book);
        expect(reply.outcome).toBe('printed');
        expect(Uint8Array.from(Buffer.from(String(reply.pdf), 'base64'))).toEqual(pdf);
      },
      { printPdf: printing({ ok: true, pdf }).printPdf },
    );
    await withHost(async ({ host }) => {
      expect(await ask(host, 'printBook', book)).toEqual({ outcome: 'use-browser-print' });
    });
  });

  test('that fails is trouble with the reason, and leaves no file', async () => {
    const { printPdf } = printing({ ok: false, why: 'failed', sentence: 'It ended with code 3.' });
    const trouble = { outcome: 'trouble', sentence: 'It ended with code 3.' };
    await withHost(
      async ({ host }) => {
        expect(await ask(host, 'printBook', book)).toEqual(trouble);
      },
      { printPdf },
    );
    const { dialogs, answers } = answering();
    await withHost(
      async ({ host, place }) => {
        const path = join(place.jobFolder, 'book.pdf');
        answers.push(path);
        expect(await ask(host, 'printBook', book)).toEqual(trouble);
        expect(existsSync(path)).toBe(false);
      },
      { printPdf, dialogs },
    );
  });

  test('goes one after another: a second print while the first goes on is refused, and one after it is not', async () => {
    let finish: (printed: Printed) => void = () => undefined;
    let count = 0;
    const printPdf = () => {
      count++;
      return new Promise<Printed>((resolve) => {
        finish = resolve;
      });
    };
    await withHost(
      async ({ host }) => {
        const first = ask(host, 'printBook', book);
        expect(await ask(host, 'printBook', book)).toEqual({
          outcome: 'trouble',
          sentence: 'The last print is not done yet.',
        });
        finish({ ok: true, pdf });
        expect(await first).toMatchObject({ outcome: 'printed' });
        const next = ask(host, 'printBook', book);
        finish({ ok: true, pdf });
        expect(await next).toMatchObject({ outcome: 'printed' });
        expect(count).toBe(2);
      },
      { printPdf },
    );
  });
});
