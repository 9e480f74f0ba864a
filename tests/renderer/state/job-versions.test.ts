import { describe, expect, test } from 'vitest';
import type { HostApi, ReplyOf } from '../../../src-core/host-contract';
import { JOB_VERSION } from '../../../src-core/job';
import { starterJob } from '../../../src-core/starters';
import { fileActions, fileNameFor, textOfJob } from '../../../src-renderer/state/file-actions';
import { createWindowStore } from '../../../src-renderer/state/window-store';

/** A window with a bar ledge open, over a host that gives this text for every file. */
function windowOver(text: string) {
  const job = starterJob('bar-ledge');
  const store = createWindowStore(job, 'light');
  const asked: string[] = [];
  const host: HostApi = {
    ask: async (name) => {
      asked.push(name);
      const opened: ReplyOf<'openJob'> = {
        outcome: 'opened',
        path: '/jobs/other.json',
        name: 'other.json',
        text,
      };
      return opened as never;
    },
    listen: () => () => undefined,
  };
  return { job, store, asked, files: fileActions(store, host, true) };
}

const counter = starterJob('straight-counter');

describe('a job of another version', () => {
  test('that is newer is not opened: said as such, and neither it nor the open job is touched', async () => {
    const newer = { ...counter, version: JOB_VERSION + 1, mortarBed: { thicknessIn: 0.5 } };
    const { job, store, asked, files } = windowOver(JSON.stringify(newer));
    await files.openPath('/jobs/other.json');
    const { history, notice } = store.getState();
    expect(history.job).toBe(job);
    expect(notice).toMatchObject({
      tone: 'trouble',
      sentence: expect.stringMatching(/^other\.json was written by a newer Ledgewright.*Nothing was changed/),
    });
    expect(notice?.details).toEqual([
      expect.stringContaining(`version ${JOB_VERSION + 1}; this one reads up to ${JOB_VERSION}`),
    ]);
    expect(asked).toEqual(['openJob']);
  });

  test('that is older is brought up to date and said to be, and counts as it stands in its file', async () => {
    const pieces = counter.pieces.map(({ thicknessIn, ...rest }) => ({ ...rest, thickness: thicknessIn }));
    const { store, files } = windowOver(JSON.stringify({ ...counter, version: 0, pieces }));
    await files.openPath('/jobs/other.json');
    const { history, notice, file } = store.getState();
    expect(history.job).toMatchObject({ version: JOB_VERSION, id: counter.id });
    expect(history.job.pieces[0]?.thicknessIn).toBe(counter.pieces[0]?.thicknessIn);
    expect(notice).toMatchObject({ tone: 'plain', sentence: expect.stringContaining('older version') });
    expect(file.path).toBe('/jobs/other.json');
  });

  test('that is broken besides is still told apart from one that is newer', async () => {
    const { store, files } = windowOver(textOfJob(counter).slice(0, 200));
    await files.openPath('/jobs/other.json');
    expect(store.getState().notice?.sentence).toBe(
      'other.json was not opened; the job before you is as it was.',
    );
    expect(fileNameFor(counter)).toMatch(/^[a-z-]+\.json$/);
  });
});
