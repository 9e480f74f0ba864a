import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { drafts } from '../../../src-main/host/drafts';
import { ask, exampleText, withHost } from './place-here';

const HEARTH = exampleText('hearth');

interface Recent {
  readonly jobs: readonly { readonly path: string; readonly name: string; readonly openedAt: string }[];
}

describe('recent jobs', () => {
  test('are the last twelve that were opened or saved, newest first, each once', async () => {
    await withHost(async ({ host, place, startAgain }) => {
      const paths = Array.from({ length: 14 }, (_, index) => join(place.jobFolder, `job-${index}.json`));
      for (const path of paths) {
        await ask(host, 'saveJob', { path, suggestedName: 'a.json', text: HEARTH });
      }
      await ask(host, 'openJob', { path: paths[5]! });
      const { jobs } = (await ask(startAgain(), 'recentJobs')) as unknown as Recent;
      const expected = [5, 13, 12, 11, 10, 9, 8, 7, 6, 4, 3, 2].map((index) => paths[index]);
      expect(jobs.map(({ path }) => path)).toEqual(expected);
      expect(jobs[0]).toEqual({ path: paths[5], name: 'job-5.json', openedAt: '2027-04-26T08:15:00.000Z' });
    });
  });

  test('leave out files that are gone, and one that is to be forgotten', async () => {
    await withHost(async ({ host, place }) => {
      const paths = ['a', 'b', 'c'].map((name) => join(place.jobFolder, `${name}.json`));
      for (const path of paths) await ask(host, 'saveJob', { path, suggestedName: 'a.json', text: HEARTH });
      rmSync(paths[1]!);
      await ask(host, 'forgetRecent', { path: paths[2]! });
      const { jobs } = (await ask(host, 'recentJobs')) as unknown as Recent;
      expect(jobs.map(({ path }) => path)).toEqual([paths[0]]);
    });
  });

  test('lose none of twelve that are opened at once', async () => {
    await withHost(async ({ host, place }) => {
      const paths = Array.from({ length: 12 }, (_, index) => join(place.jobFolder, `job-${index}.json`));
      for (const path of paths) writeFileSync(path, HEARTH);
      await Promise.all(paths.map((path) => ask(host, 'openJob', { path })));
      const { jobs } = (await ask(host, 'recentJobs')) as unknown as Recent;
      expect(new Set(jobs.map(({ path }) => path))).toEqual(new Set(paths));
    });
  });

  test('count as none where their file is damaged, and a folder that cannot be written costs no job', async () => {
    await withHost(async ({ host, place }) => {
      mkdirSync(place.userFolder);
      writeFileSync(join(place.userFolder, 'recent-jobs.json'), '{"jobs": [{"path"');
      expect(await ask(host, 'recentJobs')).toEqual({ jobs: [] });
      writeFileSync(join(place.userFolder, 'recent-jobs.json'), '{"jobs": [{"path": 7}]}');
      expect(await ask(host, 'recentJobs')).toEqual({ jobs: [] });
    });
    await withHost(async ({ host, place }) => {
      writeFileSync(place.userFolder, 'a file where the folder belongs');
      const path = join(place.jobFolder, 'a.json');
      writeFileSync(path, HEARTH);
      expect(await ask(host, 'openJob', { path })).toMatchObject({ outcome: 'opened' });
    });
  });
});

/** A process number whose process is over. */
const GONE = spawnSync(process.execPath, ['-e', '']).pid;
const work = (text: string, path: string | null = null) => ({ path, name: 'galley.json', text });
const at = (minute: number) => new Date(Date.UTC(2027, 3, 26, 8, minute));

describe('drafts', () => {
  test('of a run that did not end well are found by the next, the newest first, until they are dropped', async () => {
    await withHost(async ({ host, place }) => {
      await drafts(place.userFolder, GONE).keep(work('older'), at(1));
      await drafts(place.userFolder, GONE).keep(work('newer'), at(2));
      expect(await ask(host, 'findDraft')).toEqual({
        draft: { path: null, name: 'galley.json', keptAt: '2027-04-26T08:02:00.000Z', text: 'newer' },
      });
      await ask(host, 'dropDraft');
      expect((await ask(host, 'findDraft')).draft).toMatchObject({ text: 'older' });
      await ask(host, 'dropDraft');
      expect(await ask(host, 'findDraft')).toEqual({ draft: null });
    });
  });

  test('of a run that still goes on are left to it', async () => {
    await withHost(async ({ host, place }) => {
      await drafts(place.userFolder, process.ppid).keep(work('in another window'), at(1));
      expect(await ask(host, 'findDraft')).toEqual({ draft: null });
    });
  });

  test('are one a run: the later takes the place of the earlier', async () => {
    await withHost(async ({ host, place }) => {
      for (const text of ['one', 'two', 'three']) await ask(host, 'keepDraft', work(text));
      const [name, ...more] = readdirSync(join(place.userFolder, 'drafts'));
      expect(more).toEqual([]);
      expect(JSON.parse(readFileSync(join(place.userFolder, 'drafts', name!), 'utf8'))).toMatchObject({
        text: 'three',
      });
    });
  });

  test('are offered again where the window of the same run starts anew', async () => {
    await withHost(async ({ host }) => {
      await ask(host, 'keepDraft', work('before the page was loaded again'));
      expect((await ask(host, 'findDraft')).draft).toMatchObject({
        text: 'before the page was loaded again',
      });
    });
  });

  test('that were found live on in the own draft of the same job, and only of that', async () => {
    await withHost(async ({ host, place }) => {
      const folder = join(place.userFolder, 'drafts');
      await drafts(place.userFolder, GONE).keep(work('lost', '/jobs/galley.json'), at(1));
      await ask(host, 'findDraft');
      await ask(host, 'keepDraft', work('another job', '/jobs/other.json'));
      expect(readdirSync(folder)).toHaveLength(2);
      await ask(host, 'keepDraft', work('carried on', '/jobs/galley.json'));
      expect(readdirSync(folder)).toHaveLength(1);
    });
    // Two jobs that were never saved have no path to be told apart by.
    await withHost(async ({ host, place }) => {
      await drafts(place.userFolder, GONE).keep(work('lost'), at(1));
      await ask(host, 'findDraft');
      await ask(host, 'keepDraft', { ...work('another job'), name: 'bench.json' });
      expect(readdirSync(join(place.userFolder, 'drafts'))).toHaveLength(2);
    });
  });

  test('go with a save, with a clean end and with the wish to discard, but not with an end over unsaved work', async () => {
    await withHost(async ({ host, place, startAgain }) => {
      const left = () => readdirSync(join(place.userFolder, 'drafts')).length;
      await ask(host, 'keepDraft', work('a'));
      await ask(host, 'saveJob', {
        path: join(place.jobFolder, 'a.json'),
        suggestedName: 'a.json',
        text: HEARTH,
      });
      expect(left()).toBe(0);

      await ask(host, 'keepDraft', work('b'));
      await host.endRun();
      expect(left()).toBe(0);

      await ask(host, 'keepDraft', work('c'));
      await host.discard();
      expect(left()).toBe(0);

      await ask(host, 'keepDraft', work('d'));
      await ask(host, 'setUnsaved', { isUnsaved: true, name: 'd.json' });
      await host.endRun();
      expect((await ask(startAgain(), 'findDraft')).draft).toMatchObject({ text: 'd' });
    });
  });

  test('that are still being written do not outlive the drop that was asked after them', async () => {
    await withHost(async ({ host, place }) => {
      const keeping = ask(host, 'keepDraft', work('a'.repeat(4_000_000)));
      const dropping = ask(host, 'dropDraft');
      await Promise.all([keeping, dropping]);
      expect(readdirSync(join(place.userFolder, 'drafts'))).toEqual([]);
    });
  });

  test('have names of their own: another file beside them is none, whatever it holds', async () => {
    await withHost(async ({ host, place }) => {
      const draft = { path: null, name: 'a.json', keptAt: '2030-01-01T00:00:00.000Z', text: 'a copy' };
      await drafts(place.userFolder, GONE).keep(work('sound'), at(1));
      writeFileSync(join(place.userFolder, 'drafts', 'copy.json'), JSON.stringify(draft));
      expect((await ask(host, 'findDraft')).draft).toMatchObject({ text: 'sound' });
    });
  });

  test('that are damaged are passed over', async () => {
    await withHost(async ({ host, place }) => {
      const folder = join(place.userFolder, 'drafts');
      await drafts(place.userFolder, GONE).keep(work('sound'), at(1));
      writeFileSync(join(folder, `${GONE}-0123456789abcdef.json`), '{"path": null, "na');
      writeFileSync(join(folder, `${GONE}-0123456789abcdee.json`), '{"path": 7, "keptAt": "2030"}');
      writeFileSync(join(folder, 'notes.txt'), 'not ours');
      expect((await ask(host, 'findDraft')).draft).toMatchObject({ text: 'sound' });
    });
  });
});
