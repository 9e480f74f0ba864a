/** What a window without the system's dialogs shows of a folder: its folders and its job files. */
import type { Dirent } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import { dirname, extname, isAbsolute, join, resolve } from 'node:path';
import type { ReplyOf, RequestOf } from '../../src-core/host-contract';
import { looksLikeJob } from './job-head';
import { codeOf } from './text-file';

type Listing = ReplyOf<'listFolder'>;
type Entry = Extract<Listing, { outcome: 'listed' }>['entries'][number];

/** Beyond this a list helps nobody, and looking into every file would take too long. */
const MOST_ENTRIES = 2000;

const byName = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** Folders first, then jobs, each by name. Hidden ones are left out. */
export async function listFolder(jobFolder: string, asked: RequestOf<'listFolder'>): Promise<Listing> {
  const path = asked.path ?? jobFolder;
  if (!isAbsolute(path)) return { outcome: 'trouble', sentence: `"${path}" is not a whole path.` };
  try {
    const folder = resolve(path);
    const found = await readdir(folder, { withFileTypes: true });
    const visible = found.filter(({ name }) => !name.startsWith('.')).slice(0, MOST_ENTRIES);
    const entries: Entry[] = [];
    for (const entry of visible) {
      const kind = await kindOf(folder, entry);
      if (kind !== null) entries.push({ name: entry.name, path: join(folder, entry.name), kind });
    }
    entries.sort((a, b) =>
      a.kind === b.kind ? byName.compare(a.name, b.name) : a.kind === 'folder' ? -1 : 1,
    );
    const parent = dirname(folder);
    return { outcome: 'listed', path: folder, parent: parent === folder ? null : parent, entries };
  } catch (error) {
    return { outcome: 'trouble', sentence: listingTrouble(path, error) };
  }
}

async function kindOf(folder: string, entry: Dirent): Promise<Entry['kind'] | null> {
  const path = join(folder, entry.name);
  if (entry.isDirectory() || (entry.isSymbolicLink() && (await isFolder(path)))) return 'folder';
  if (extname(entry.name).toLowerCase() !== '.json') return null;
  return (await looksLikeJob(path)) ? 'job' : null;
}

/** Whether a link leads to a folder; a link that leads nowhere does not. */
async function isFolder(path: string): Promise<boolean> {
  return stat(path).then(
    (found) => found.isDirectory(),
    () => false,
  );
}

function listingTrouble(path: string, error: unknown): string {
  switch (codeOf(error)) {
    case 'ENOENT':
      return `There is no folder ${path}.`;
    case 'ENOTDIR':
      return `${path} is not a folder.`;
    case 'EACCES':
    case 'EPERM':
      return `The folder ${path} may not be read: permission is denied.`;
    default:
      return `The folder ${path} cannot be read: ${error instanceof Error ? error.message : String(error)}.`;
  }
}
