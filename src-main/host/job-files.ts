/** Opens and saves job files. A save never harms what was there: not when it fails, not when it is killed. */
import { stat } from 'node:fs/promises';
import { basename, extname, isAbsolute, join } from 'node:path';
import type { ReplyOf, RequestOf } from '../../src-core/host-contract';
import { readJobText } from '../../src-core/job';
import { looksLikeJob } from './job-head';
import { keepFile } from './keep-file';
import type { Place } from './place';
import { codeOf, readText } from './text-file';

const ENDING = '.json';
/** Added to a job file's name for the copy that was good before the last save. */
const LAST_GOOD = '.last-good';

type Where = Pick<Place, 'dialogs' | 'jobFolder'>;
type Trouble = { readonly outcome: 'trouble'; readonly sentence: string };

/** The text of the job file at the path, or of the one that the person chooses. */
export async function openJob(where: Where, asked: RequestOf<'openJob'>): Promise<ReplyOf<'openJob'>> {
  if (asked.path === null && where.dialogs === null) return trouble('Say which file to open.');
  const path = asked.path ?? (await where.dialogs?.askOpen(where.jobFolder)) ?? null;
  if (path === null) return { outcome: 'cancelled' };
  if (!isAbsolute(path)) return trouble(`"${path}" is not a whole path: it must start at the root.`);
  const reading = await readText(path);
  if (!reading.ok) return trouble(`${basename(path)}: ${reading.sentence}`);
  return { outcome: 'opened', path, name: basename(path), text: reading.text };
}

/** Saves a job whole or not at all, and keeps the last good copy beside it. Text that is no job never reaches the disk. */
export async function saveJob(where: Where, asked: RequestOf<'saveJob'>): Promise<ReplyOf<'saveJob'>> {
  const reading = readJobText(asked.text);
  if (!reading.ok) {
    const { path: place, sentence } = reading.problems[0]!;
    return trouble(
      `This is not saved, because it is no sound job: ${place === '' ? '' : `${place}: `}${sentence}`,
    );
  }
  const target = await chooseTarget(where, asked);
  if (typeof target !== 'string') return target;
  try {
    await keepLastGood(target, asked.text);
    await keepFile(target, asked.text);
    return { outcome: 'saved', path: target, name: basename(target) };
  } catch (error) {
    return trouble(`${basename(target)}: ${savingTrouble(error)}`);
  }
}

/** Path to save at, or why there is none. */
async function chooseTarget(
  where: Where,
  asked: RequestOf<'saveJob'>,
): Promise<string | Trouble | { readonly outcome: 'cancelled' }> {
  if (asked.path === null && where.dialogs === null) return trouble('Say where to save this job.');
  const suggested = withEnding(join(where.jobFolder, basename(asked.suggestedName)));
  const chosen = asked.path ?? (await where.dialogs?.askSave(suggested)) ?? null;
  if (chosen === null) return { outcome: 'cancelled' };
  if (!isAbsolute(chosen)) return trouble(`"${chosen}" is not a whole path: it must start at the root.`);
  const path = withEnding(chosen);
  const standing = await standingAt(path);
  if (standing === 'none' || (standing === 'job' && path === chosen)) return path;
  const name = basename(path);
  if (standing === 'job')
    return trouble(`${name} is already there. Choose it by its whole name to replace it.`);
  return trouble(`${name} is already there and is no job file, so it was not replaced. Choose another name.`);
}

function withEnding(path: string): string {
  return extname(path).toLowerCase() === ENDING ? path : `${path}${ENDING}`;
}

/** What stands at a path. A file that is no job is another program's, and a slip of the hand must not cost it. */
async function standingAt(path: string): Promise<'none' | 'job' | 'other'> {
  try {
    const found = await stat(path);
    if (!found.isFile()) return 'other';
    return found.size === 0 || (await looksLikeJob(path)) ? 'job' : 'other';
  } catch (error) {
    // What cannot be looked at is left to the save itself, which says why it fails.
    return codeOf(error) === 'ENOENT' ? 'none' : 'job';
  }
}

/** Keeps what is there now if it is a whole job, or one of a newer version, and another than the new one. */
async function keepLastGood(path: string, text: string): Promise<void> {
  const standing = await readText(path);
  if (!standing.ok || standing.text === text || !isWorthKeeping(standing.text)) return;
  await keepFile(`${path}${LAST_GOOD}`, standing.text);
}

/** A job that only a newer version can read is still somebody's job. */
function isWorthKeeping(text: string): boolean {
  const reading = readJobText(text);
  return reading.ok || reading.problems.some(({ code }) => code === 'newer-version');
}

function trouble(sentence: string): Trouble {
  return { outcome: 'trouble', sentence };
}

/** Why a file could not be saved, as a sentence. */
export function savingTrouble(error: unknown): string {
  switch (codeOf(error)) {
    case 'ENOENT':
    case 'ENOTDIR':
      return 'It could not be saved, because its folder is not there.';
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return 'It could not be saved here: permission is denied.';
    case 'ENOSPC':
    case 'EDQUOT':
      return 'It could not be saved, because the disk is full.';
    default:
      return `It could not be saved: ${error instanceof Error ? error.message : String(error)}.`;
  }
}
