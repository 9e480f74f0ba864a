import { execFileSync } from 'node:child_process';
import {
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { onPosix } from '../../support/on-posix';
import { ask, exampleText, withHost } from './place-here';

const HEARTH = exampleText('hearth');

describe('opening a job file', () => {
  test('gives the whole text, its path and its name, even of a job that is broken', async () => {
    await withHost(async ({ host, place }) => {
      const path = join(place.jobFolder, 'galley.json');
      for (const text of [HEARTH, '{"half": ']) {
        writeFileSync(path, text);
        expect(await ask(host, 'openJob', { path })).toEqual({
          outcome: 'opened',
          path,
          name: 'galley.json',
          text,
        });
      }
    });
  });

  onPosix('refuses a pipe at once and does not wait for somebody to write', async () => {
    await withHost(async ({ host, place }) => {
      const path = join(place.jobFolder, 'pipe.json');
      execFileSync('mkfifo', [path]);
      expect(await ask(host, 'openJob', { path })).toEqual({
        outcome: 'trouble',
        sentence: 'pipe.json: This is not a file that can be read.',
      });
    });
  });

  test('refuses a folder, a missing file, 8 MB and a byte, other text than UTF-8, and half a path', async () => {
    await withHost(async ({ host, place }) => {
      const at = (name: string) => join(place.jobFolder, name);
      mkdirSync(at('folder.json'));
      writeFileSync(at('big.json'), '');
      truncateSync(at('big.json'), 8_000_001);
      writeFileSync(at('latin.json'), Uint8Array.of(0x7b, 0xe9, 0x7d));
      const sentences: Record<string, RegExp> = {
        [at('folder.json')]: /is a folder/,
        [at('none.json')]: /no such file/,
        [at('big.json')]: /far too large/,
        [at('latin.json')]: /not UTF-8/,
        'galley.json': /not a whole path/,
      };
      for (const [path, sentence] of Object.entries(sentences)) {
        const reply = await ask(host, 'openJob', { path });
        expect(reply.outcome).toBe('trouble');
        expect(reply.sentence).toMatch(sentence);
      }
    });
  });

  test('without a path asks by the dialog, which may be cancelled; without a dialog that is trouble', async () => {
    await withHost(async ({ host }) => {
      expect(await ask(host, 'openJob', { path: null })).toMatchObject({ outcome: 'trouble' });
    });
    const answers: (string | null)[] = [null];
    const dialogs = { askOpen: async () => answers.shift() ?? null, askSave: async () => null };
    await withHost(
      async ({ host, place }) => {
        expect(await ask(host, 'openJob', { path: null })).toEqual({ outcome: 'cancelled' });
        const path = join(place.jobFolder, 'chosen.json');
        writeFileSync(path, HEARTH);
        answers.push(path);
        expect(await ask(host, 'openJob', { path: null })).toMatchObject({ outcome: 'opened', path });
        expect(await ask(host, 'saveJob', { path: null, suggestedName: 'a.json', text: HEARTH })).toEqual({
          outcome: 'cancelled',
        });
      },
      { dialogs },
    );
  });
});

describe('saving a job file', () => {
  const save = (path: string | null, text: string) => ({ path, suggestedName: 'job.json', text });

  test('writes the text as it is and leaves nothing else in the folder', async () => {
    await withHost(async ({ host, place }) => {
      const path = join(place.jobFolder, 'galley.json');
      expect(await ask(host, 'saveJob', save(path, HEARTH))).toEqual({
        outcome: 'saved',
        path,
        name: 'galley.json',
      });
      expect(readFileSync(path, 'utf8')).toBe(HEARTH);
      expect(readdirSync(place.jobFolder)).toEqual(['galley.json']);
    });
  });

  test('keeps the last good copy beside it, and never keeps a broken one as good', async () => {
    await withHost(async ({ host, place }) => {
      const path = join(place.jobFolder, 'galley.json');
      const [first, second, third] = ['one', 'two', 'three'].map((name) => exampleText('hearth', name));
      await ask(host, 'saveJob', save(path, first!));
      await ask(host, 'saveJob', save(path, second!));
      expect(readFileSync(`${path}.last-good`, 'utf8')).toBe(first);
      // Saved again without a change: what was good before the change is still at hand.
      await ask(host, 'saveJob', save(path, second!));
      expect(readFileSync(`${path}.last-good`, 'utf8')).toBe(first);
      // Damaged from outside, yet still a job by its head.
      writeFileSync(path, second!.slice(0, 300));
      expect(await ask(host, 'saveJob', save(path, third!))).toMatchObject({ outcome: 'saved' });
      expect(readFileSync(`${path}.last-good`, 'utf8')).toBe(first);
      expect(readFileSync(path, 'utf8')).toBe(third);
    });
  });

  test('keeps a job of a newer version beside it, which this version cannot read', async () => {
    await withHost(async ({ host, place }) => {
      const path = join(place.jobFolder, 'galley.json');
      const newer = JSON.stringify({
        ...(JSON.parse(HEARTH) as object),
        version: 2,
        mortarBed: 'unheard of',
      });
      writeFileSync(path, newer);
      expect(await ask(host, 'saveJob', save(path, HEARTH))).toMatchObject({ outcome: 'saved' });
      expect(readFileSync(`${path}.last-good`, 'utf8')).toBe(newer);
    });
  });

  test('refuses text that is no job, with the place and the reason, and leaves the file alone', async () => {
    await withHost(async ({ host, place }) => {
      const path = join(place.jobFolder, 'galley.json');
      writeFileSync(path, HEARTH);
      const thin = JSON.parse(HEARTH) as { pieces: { thicknessIn: number }[] };
      thin.pieces[0]!.thicknessIn = -2;
      const replies = await Promise.all(
        ['', 'hello', '{}', JSON.stringify(thin)].map((text) => ask(host, 'saveJob', save(path, text))),
      );
      expect(replies.map(({ outcome }) => outcome)).toEqual(['trouble', 'trouble', 'trouble', 'trouble']);
      expect(replies[3]!.sentence).toContain('no sound job: pieces[0].thicknessIn:');
      expect(readFileSync(path, 'utf8')).toBe(HEARTH);
    });
  });

  test('never replaces a file that is no job', async () => {
    await withHost(async ({ host, place }) => {
      const path = join(place.jobFolder, 'package.json');
      writeFileSync(path, '{"name": "something else"}');
      const reply = await ask(host, 'saveJob', save(path, HEARTH));
      expect(reply.sentence).toContain('is no job file, so it was not replaced');
      expect(readFileSync(path, 'utf8')).toBe('{"name": "something else"}');
    });
  });

  test('fills an empty file, which holds nobody’s work', async () => {
    await withHost(async ({ host, place }) => {
      const path = join(place.jobFolder, 'new.json');
      writeFileSync(path, '');
      expect(await ask(host, 'saveJob', save(path, HEARTH))).toMatchObject({ outcome: 'saved' });
      expect(readFileSync(path, 'utf8')).toBe(HEARTH);
    });
  });

  onPosix('never replaces a pipe, although a pipe has no size', async () => {
    await withHost(async ({ host, place }) => {
      const path = join(place.jobFolder, 'pipe.json');
      execFileSync('mkfifo', [path]);
      const reply = await ask(host, 'saveJob', save(path, HEARTH));
      expect(reply.sentence).toContain('is no job file, so it was not replaced');
      expect(statSync(path).isFIFO()).toBe(true);
    });
  });

  test('offers a name in the job folder, whatever folder the suggested name leads to', async () => {
    const asked: string[] = [];
    const askSave = async (suggestedPath: string) => {
      asked.push(suggestedPath);
      return null;
    };
    await withHost(
      async ({ host, place }) => {
        await ask(host, 'saveJob', { path: null, suggestedName: '../../elsewhere/ledge', text: HEARTH });
        expect(asked).toEqual([join(place.jobFolder, 'ledge.json')]);
      },
      { dialogs: { askOpen: async () => null, askSave } },
    );
  });

  test('adds .json to a name without it, but replaces no file by a name that nobody chose', async () => {
    await withHost(async ({ host, place }) => {
      const bare = join(place.jobFolder, 'ledge');
      expect(await ask(host, 'saveJob', save(bare, HEARTH))).toMatchObject({
        outcome: 'saved',
        path: `${bare}.json`,
      });
      const again = await ask(host, 'saveJob', save(bare, exampleText('bar-ledge')));
      expect(again.sentence).toContain('ledge.json is already there');
      expect(readFileSync(`${bare}.json`, 'utf8')).toBe(HEARTH);
    });
  });

  test('says so where the folder is missing or the path is a folder or half a path', async () => {
    await withHost(async ({ host, place }) => {
      mkdirSync(join(place.jobFolder, 'folder.json'));
      const sentences: Record<string, RegExp> = {
        [join(place.jobFolder, 'none', 'a.json')]: /its folder is not there/,
        [join(place.jobFolder, 'folder.json')]: /not replaced/,
        'a.json': /not a whole path/,
      };
      for (const [path, sentence] of Object.entries(sentences)) {
        const reply = await ask(host, 'saveJob', save(path, HEARTH));
        expect(reply.outcome).toBe('trouble');
        expect(reply.sentence).toMatch(sentence);
      }
    });
  });

  onPosix('saves through a link to the file that it leads to', async () => {
    await withHost(async ({ host, place }) => {
      const real = join(place.jobFolder, 'real.json');
      const link = join(place.jobFolder, 'link.json');
      writeFileSync(real, HEARTH);
      symlinkSync(real, link);
      const text = exampleText('hearth', 'through a link');
      await ask(host, 'saveJob', save(link, text));
      expect(readFileSync(real, 'utf8')).toBe(text);
    });
  });

  test('twenty saves at once end with one whole job', async () => {
    await withHost(async ({ host, place }) => {
      const path = join(place.jobFolder, 'galley.json');
      const texts = Array.from({ length: 20 }, (_, index) => exampleText('hearth', `version ${index}`));
      await Promise.all(texts.map((text) => ask(host, 'saveJob', save(path, text))));
      expect(texts).toContain(readFileSync(path, 'utf8'));
    });
  });
});
