/**
 * Unsaved work, kept so that a crash cannot take it. A run has one draft, a file named for its process; a save, a clean end or the
 * person's own wish removes it, so a draft that is still there belongs to a run that did not end well.
 */
import { randomBytes } from 'node:crypto';
import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import type { ReplyOf, RequestOf } from '../../src-core/host-contract';
import { REQUESTS } from '../../src-core/host-contract';
import { keepOwnFile } from './keep-file';
import { readOwnJson } from './own-json';

const FOLDER = 'drafts';
const FILE_NAME = /^(\d+)-[0-9a-f]{16}\.json$/;

const kept = REQUESTS.findDraft.reply.shape.draft.unwrap().extend({ text: z.string() });
type Draft = NonNullable<ReplyOf<'findDraft'>['draft']>;

export interface Drafts {
  /** Keeps unsaved work in place of what this run kept before. A found draft of the same job lives on in it. */
  readonly keep: (work: RequestOf<'keepDraft'>, keptAt: Date) => Promise<void>;
  /** The newest draft of a run that is over, or of this run where its window starts again; null where there is none. */
  readonly find: () => Promise<Draft | null>;
  /** Drops this run's draft, say because it was saved. */
  readonly dropOwn: () => Promise<void>;
  /** Drops this run's draft and the one that was found last. */
  readonly drop: () => Promise<void>;
}

/** The drafts in `userFolder`, seen from the run of this process. */
export function drafts(userFolder: string, pid = process.pid): Drafts {
  const folder = join(userFolder, FOLDER);
  const own = `${pid}-${randomBytes(8).toString('hex')}.json`;
  let found: { readonly name: string; readonly draft: Draft } | null = null;
  let last: Promise<unknown> = Promise.resolve();

  /** In order: a draft that is being written must not outlive the drop that was asked after it. */
  function inTurn<Given>(act: () => Promise<Given>): Promise<Given> {
    const next = last.then(act);
    last = next.catch(() => undefined);
    return next;
  }

  const remove = (name: string) => rm(join(folder, name), { force: true });

  async function dropFound(): Promise<void> {
    if (found !== null) await remove(found.name);
    found = null;
  }

  return {
    keep: (work, keptAt) =>
      inTurn(async () => {
        const draft: Draft = { ...work, keptAt: keptAt.toISOString() };
        await keepOwnFile(join(folder, own), JSON.stringify(draft));
        const isTakenOver = found?.draft.path === work.path && found.draft.name === work.name;
        if (isTakenOver && found?.name !== own) await dropFound();
      }),
    find: () =>
      inTurn(async () => {
        const names = (await namesIn(folder)).filter((name) => name === own || !isRunning(name, pid));
        const read = await Promise.all(
          names.map(async (name) => ({ name, draft: await readOwnJson(join(folder, name), kept) })),
        );
        const whole = read.flatMap(({ name, draft }) => (draft === null ? [] : [{ name, draft }]));
        whole.sort((a, b) => b.draft.keptAt.localeCompare(a.draft.keptAt));
        found = whole[0] ?? null;
        return found?.draft ?? null;
      }),
    dropOwn: () => inTurn(() => remove(own)),
    drop: () =>
      inTurn(async () => {
        await remove(own);
        await dropFound();
      }),
  };
}

async function namesIn(folder: string): Promise<string[]> {
  return (await readdir(folder).catch(() => [])).filter((name) => FILE_NAME.test(name));
}

/**
 * Whether the run that a draft is named for still goes on. A number that was given out again to another program within one
 * session of the machine hides a draft until that program ends; it is never lost.
 */
function isRunning(name: string, ownPid: number): boolean {
  const pid = Number(FILE_NAME.exec(name)?.[1]);
  // The own number on another draft is an older run's.
  if (pid === ownPid) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}
