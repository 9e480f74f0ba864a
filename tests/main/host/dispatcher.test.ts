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
