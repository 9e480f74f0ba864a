/** What the open and save sheets work out about folders and names; the host alone touches a disk. */
import type { ReplyOf } from '../../src-core/host-contract';

export type Listing = Extract<ReplyOf<'listFolder'>, { outcome: 'listed' }>;
export type FolderEntry = Listing['entries'][number];
export type Platform = ReplyOf<'about'>['platform'];

const JOB_ENDING = '.json';
const LONGEST_NAME = 200;
/** Characters that one of the platforms keeps out of file names. */
const NOT_IN_NAMES = '/\\:*?"<>|';

export type NameReading =
  | { readonly ok: true; readonly name: string }
  | { readonly ok: false; readonly sentence: string };

/** Folders first, then jobs, each by name as a person sorts them: piece 2 before piece 10. */
export function sortEntries(entries: readonly FolderEntry[]): FolderEntry[] {
  const byName = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });
  return [...entries].sort((a, b) =>
    a.kind === b.kind ? byName.compare(a.name, b.name) : a.kind === 'folder' ? -1 : 1,
  );
}

/** Whether a path that was typed names a job file rather than a folder. */
export function namesJobFile(path: string): boolean {
  return path.trim().toLowerCase().endsWith(JOB_ENDING);
}

/** A file name as typed, with its ending; refused where no platform would keep it. */
export function readFileName(typed: string): NameReading {
  const bare = typed.trim();
  if (bare === '') return { ok: false, sentence: 'Give the job file a name.' };
  const bad = [...bare].find((letter) => NOT_IN_NAMES.includes(letter) || letter < ' ');
  if (bad !== undefined) {
    const shown = bad < ' ' ? 'a control character' : `"${bad}"`;
    return { ok: false, sentence: `A file name cannot hold ${shown}.` };
  }
  const name = namesJobFile(bare) ? bare : `${bare}${JOB_ENDING}`;
  if (name.startsWith('.')) return { ok: false, sentence: 'A file name cannot begin with a dot.' };
  if (name.length > LONGEST_NAME) {
    return {
      ok: false,
      sentence: `A file name has at most ${LONGEST_NAME} characters; this has ${name.length}.`,
    };
  }
  return { ok: true, name };
}

/** A folder and a name as one path, with the separator that the folder uses. */
export function joinPath(folder: string, name: string): string {
  const separator = folder.includes('\\') && !folder.includes('/') ? '\\' : '/';
  return folder.endsWith(separator) ? `${folder}${name}` : `${folder}${separator}${name}`;
}

/** The folder that a path stands in; null for a path with none before it. */
export function folderOf(path: string): string | null {
  const cut = Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\'));
  if (cut < 0) return null;
  const folder = path.slice(0, cut);
  // The root keeps its separator: "/" and "C:\".
  return folder === '' || folder.endsWith(':') ? path.slice(0, cut + 1) : folder;
}

/** What already stands under a name in a folder. Only Linux tells capitals apart. */
export function entryNamed(
  entries: readonly FolderEntry[],
  name: string,
  platform: Platform,
): FolderEntry | null {
  const plain = (text: string) => (platform === 'linux' ? text : text.toLowerCase());
  return entries.find((entry) => plain(entry.name) === plain(name)) ?? null;
}
