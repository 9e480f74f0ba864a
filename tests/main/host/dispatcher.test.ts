import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { REQUESTS } from '../../../src-core/host-contract';
import { ask, withHost } from './place-here';

describe('the dispatcher', () => {
  test('refuses every name that is not in the table, whatever kind of thing it is', async () => {
    await withHost(async ({ host }) => {
      for (const name of ['eraseDisk', '', 'constructor', '__proto__', 'toString', 7, null, ['about'], {}]) {
        expect(await host.answer(name, {})).toEqual({
          ok: false,
          fault: 'unknown-name',
          sentence: 'The host knows no such request.',
        });
      }
    });
  });

  test('refuses a request of the wrong shape for every name, with a sentence that begins with the name', async () => {
    await withHost(async ({ host }) => {
      for (const name of Object.keys(REQUESTS)) {
        for (const request of [undefined, null, 'about', 4, [], { surplus: 1 }]) {
          const answer = await host.answer(name, request);
          expect(answer).toMatchObject({ ok: false, fault: 'bad-request' });
          expect(answer.ok ? '' : answer.sentence).toMatch(new RegExp(`^${name}: .+\\.$`));
        }
      }
    });
  });

  test('refuses an id that could lead out of a folder', async () => {
    await withHost(async ({ host }) => {
      for (const id of ['../../package', 'a/b', 'A', '', 'a'.repeat(61), 'a.b']) {
        expect(await host.answer('readExample', { id })).toMatchObject({ ok: false, fault: 'bad-request' });
        expect(await host.answer('readManual', { id })).toMatchObject({ ok: false, fault: 'bad-request' });
      }
    });
  });

  test('refuses a text of more than 8,000,000 letters, a path above 4096 and a name above 200', async () => {
    await withHost(async ({ host }) => {
      const save = { path: '/none/a.json', suggestedName: 'a.json', text: '' };
      const work = { path: null, name: '', text: '' };
      const cases: readonly (readonly [string, object, string, number])[] = [
        ['saveJob', save, 'text', 8_000_000],
        ['saveJob', save, 'path', 4096],
        ['saveJob', save, 'suggestedName', 200],
        ['keepDraft', work, 'text', 8_000_000],
        ['keepDraft', work, 'name', 200],
        ['setUnsaved', { isUnsaved: false, name: '' }, 'name', 200],
        ['openJob', {}, 'path', 4096],
        ['forgetRecent', {}, 'path', 4096],
      ];
      for (const [name, request, field, most] of cases) {
        const answer = (length: number) => host.answer(name, { ...request, [field]: 'a'.repeat(length) });
        expect(await answer(most), `${name} ${field}`).toMatchObject({ ok: true });
        expect(await answer(most + 1), `${name} ${field}`).toMatchObject({ ok: false, fault: 'bad-request' });
      }
    });
  });

  test('rejects as its own fault a reply that breaks the contract', async () => {
    await withHost(
      async ({ host }) => {
        await expect(host.answer('about', {})).rejects.toThrow('reply to about breaks the contract');
      },
      { version: 7 as unknown as string },
    );
  });

  test('says who serves the window and what it can do', async () => {
    await withHost(async ({ host, place }) => {
      expect(await ask(host, 'about')).toEqual({
        host: 'browser',
        version: '1.2.3',
        platform: 'linux',
        hasDialogs: false,
        jobFolder: place.jobFolder,
      });
    });
  });

  test('remembers what the window says of its unsaved changes', async () => {
    await withHost(async ({ host }) => {
      expect(host.unsaved()).toEqual({ isUnsaved: false, name: '' });
      await ask(host, 'setUnsaved', { isUnsaved: true, name: 'galley.json' });
      expect(host.unsaved()).toEqual({ isUnsaved: true, name: 'galley.json' });
    });
  });
});

describe('examples and the manual', () => {
  test('all five examples are listed by the name of their job, and each reads as it lies on disk', async () => {
    await withHost(async ({ host }) => {
      const { examples } = (await ask(host, 'listExamples')) as { examples: { id: string; name: string }[] };
      expect(examples).toHaveLength(5);
      expect(examples.find(({ id }) => id === 'hearth')?.name).toBe('Hearth on two piers');
      for (const { id } of examples) {
        const reply = await ask(host, 'readExample', { id });
        expect(reply.outcome).toBe('read');
        expect(JSON.parse(String(reply.text))).toMatchObject({ format: 'ledgewright-job' });
      }
    });
  });

  test('only what can be asked for by its id is listed', async () => {
    const exampleFolder = mkdtempSync(join(tmpdir(), 'ledgewright-shelf-'));
    for (const name of ['ledge-2.json', 'Ledge 3.json', 'ledge.txt']) {
      writeFileSync(join(exampleFolder, name), '{"name": "A ledge"}');
    }
    try {
      await withHost(
        async ({ host }) => {
          expect(await ask(host, 'listExamples')).toEqual({ examples: [{ id: 'ledge-2', name: 'A ledge' }] });
        },
        { exampleFolder },
      );
    } finally {
      rmSync(exampleFolder, { recursive: true, force: true });
    }
  });

  test('the page of a check is read as Markdown; a page that is missing is said so', async () => {
    await withHost(async ({ host }) => {
      expect((await ask(host, 'readManual', { id: 'overhang' })).text).toMatch(/^# \S/);
      expect(await ask(host, 'readManual', { id: 'nothing-such' })).toEqual({
        outcome: 'trouble',
        sentence: 'The manual has no page "nothing-such".',
      });
      expect(await ask(host, 'readExample', { id: 'nothing-such' })).toMatchObject({ outcome: 'trouble' });
    });
  });
});
