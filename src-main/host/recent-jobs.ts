/** The jobs that were opened or saved last, kept in the user's folder. */
import { stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { ReplyOf } from '../../src-core/host-contract';
import { REQUESTS } from '../../src-core/host-contract';
import { keepOwnFile } from './keep-file';
import { readOwnJson } from './own-json';

type Recent = ReplyOf<'recentJobs'>;

const FILE_NAME = 'recent-jobs.json';
const MOST_RECENT = 12;

export interface RecentJobs {
  /** Newest first; files that are gone are left out and forgotten. */
  readonly list: () => Promise<Recent>;
  readonly add: (path: string, openedAt: Date) => Promise<void>;
  readonly forget: (path: string) => Promise<void>;
}

/** The list in `userFolder`. A list that is missing or damaged counts as empty: it is a comfort, never the work itself. */
export function recentJobs(userFolder: string): RecentJobs {
  const file = join(userFolder, FILE_NAME);
  let last: Promise<unknown> = Promise.resolve();

  /** One change after another, so that two at a time lose neither. */
  function change(
    alter: (jobs: Recent['jobs']) => Recent['jobs'] | Promise<Recent['jobs']>,
  ): Promise<Recent> {
    const next = last.then(async () => {
      const before = await readList(file);
      const jobs = await alter(before);
      if (JSON.stringify(jobs) !== JSON.stringify(before)) await keepOwnFile(file, JSON.stringify({ jobs }));
      return { jobs };
    });
    last = next.catch(() => undefined);
    return next;
  }

  return {
    list: () => change(onlyThere),
    add: async (path, openedAt) => {
      const fresh = { path, name: basename(path), openedAt: openedAt.toISOString() };
      await change((jobs) => [fresh, ...jobs.filter((one) => one.path !== path)].slice(0, MOST_RECENT));
    },
    forget: async (path) => {
      await change((jobs) => jobs.filter((one) => one.path !== path));
    },
  };
}

async function readList(file: string): Promise<Recent['jobs']> {
  return (await readOwnJson(file, REQUESTS.recentJobs.reply))?.jobs ?? [];
}

async function onlyThere(jobs: Recent['jobs']): Promise<Recent['jobs']> {
  const isThere = await Promise.all(
    jobs.map(({ path }) =>
      stat(path).then(
        (found) => found.isFile(),
        () => false,
      ),
    ),
  );
  return jobs.filter((_, index) => isThere[index]);
}
