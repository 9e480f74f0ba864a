/** Writes what leaves the tool: drawings, lists, models, the book. Where to, the person alone says. */
import { stat } from 'node:fs/promises';
import { basename, extname, isAbsolute, join } from 'node:path';
import type { ReplyOf, RequestOf } from '../../src-core/host-contract';
import { saveJob, savingTrouble } from './job-files';
import { keepFile } from './keep-file';
import type { Dialogs, Place } from './place';
import { codeOf } from './text-file';

type Where = Pick<Place, 'dialogs' | 'jobFolder'>;
type Kept = Extract<ReplyOf<'saveExport'>, { outcome: 'saved' | 'cancelled' | 'trouble' }>;
type Target = { readonly outcome: 'chosen'; readonly path: string } | Exclude<Kept, { outcome: 'saved' }>;

/** Saves a file under a name that the person chooses. A job is saved as jobs are: whole and sound, and over no other file. */
export async function saveExport(
  where: Where,
  asked: RequestOf<'saveExport'>,
): Promise<ReplyOf<'saveExport'>> {
  const { suggestedName, kind, data } = asked;
  if (where.dialogs === null) return { outcome: 'use-browser' };
  if (endingOf(suggestedName) === '.json') {
    if (kind !== 'text') return { outcome: 'trouble', sentence: 'A job is saved as text.' };
    return saveJob(where, { path: null, suggestedName, text: data });
  }
  const target = await askTarget(where.dialogs, where.jobFolder, suggestedName);
  if (target.outcome !== 'chosen') return target;
  return keepAt(target.path, kind === 'text' ? data : Buffer.from(data, 'base64'));
}

/** Asks where a file goes. Its ending stays; no file is replaced by a name that the person did not choose whole. */
export async function askTarget(dialogs: Dialogs, jobFolder: string, suggestedName: string): Promise<Target> {
  const chosen = await dialogs.askSave(join(jobFolder, basename(suggestedName)));
  if (chosen === null) return { outcome: 'cancelled' };
  if (!isAbsolute(chosen)) {
    return { outcome: 'trouble', sentence: `"${chosen}" is not a whole path: it must start at the root.` };
  }
  const ending = endingOf(suggestedName);
  if (endingOf(chosen) === ending) return { outcome: 'chosen', path: chosen };
  const path = `${chosen}${ending}`;
  if (!(await isThere(path))) return { outcome: 'chosen', path };
  const sentence = `${basename(path)} is already there. Choose it by its whole name to replace it.`;
  return { outcome: 'trouble', sentence };
}

/** Writes whole or not at all. */
export async function keepAt(path: string, content: string | Uint8Array): Promise<Kept> {
  const name = basename(path);
  try {
    await keepFile(path, content);
    return { outcome: 'saved', path, name };
  } catch (error) {
    return { outcome: 'trouble', sentence: `${name}: ${savingTrouble(error)}` };
  }
}

function endingOf(path: string): string {
  return extname(path).toLowerCase();
}

/** What cannot be looked at is left to the save itself, which says why it fails. */
async function isThere(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    (error: unknown) => codeOf(error) !== 'ENOENT',
  );
}
