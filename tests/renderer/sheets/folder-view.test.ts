import { describe, expect, it } from 'vitest';
import type { FolderEntry } from '../../../src-renderer/sheets/folder-view';
import {
  entryNamed,
  folderOf,
  joinPath,
  namesJobFile,
  readFileName,
  sortEntries,
} from '../../../src-renderer/sheets/folder-view';

const job = (name: string): FolderEntry => ({ name, path: `/jobs/${name}`, kind: 'job' });
const folder = (name: string): FolderEntry => ({ name, path: `/jobs/${name}`, kind: 'folder' });

describe('sortEntries', () => {
  it('puts folders first and piece 2 before piece 10', () => {
    const sorted = sortEntries([job('piece 10.json'), job('Piece 2.json'), folder('water side')]);
    expect(sorted.map(({ name }) => name)).toEqual(['water side', 'Piece 2.json', 'piece 10.json']);
  });

  it('leaves the list that it was given as it was', () => {
    const given = [job('b.json'), job('a.json')];
    sortEntries(given);
    expect(given.map(({ name }) => name)).toEqual(['b.json', 'a.json']);
  });
});

describe('readFileName', () => {
  it('adds .json where it is missing and keeps it where it is there', () => {
    expect(readFileName(' bar ledge ')).toEqual({ ok: true, name: 'bar ledge.json' });
    expect(readFileName('bar ledge.JSON')).toEqual({ ok: true, name: 'bar ledge.JSON' });
  });

  it('refuses no name, a dot in front, a slash, and 201 characters', () => {
    for (const typed of ['', '  ', '.hidden', '.json', 'water/side', 'side\\b', 'a\tb', 'a'.repeat(196)]) {
      expect(readFileName(typed).ok, JSON.stringify(typed)).toBe(false);
    }
    expect(readFileName('a'.repeat(195)).ok).toBe(true);
  });
});

describe('paths', () => {
  it('joins with the separator that the folder uses', () => {
    expect(joinPath('/srv/b/jobs', 'a.json')).toBe('/srv/b/jobs/a.json');
    expect(joinPath('/', 'a.json')).toBe('/a.json');
    expect(joinPath('C:\\jobs', 'a.json')).toBe('C:\\jobs\\a.json');
    expect(joinPath('C:\\', 'a.json')).toBe('C:\\a.json');
  });

  it('names the folder of a path, roots with their separator', () => {
    expect(folderOf('/srv/b/a.json')).toBe('/srv/b');
    expect(folderOf('/a.json')).toBe('/');
    expect(folderOf('C:\\a.json')).toBe('C:\\');
    expect(folderOf('C:\\jobs\\a.json')).toBe('C:\\jobs');
    expect(folderOf('a.json')).toBeNull();
  });

  it('undoes a join', () => {
    for (const place of ['/', '/srv/b', 'C:\\', 'C:\\jobs']) {
      expect(folderOf(joinPath(place, 'a.json'))).toBe(place);
    }
  });

  it('takes a path for a job file by its ending', () => {
    expect(namesJobFile(' /jobs/Ledge.JSON ')).toBe(true);
    expect(namesJobFile('/jobs/ledge')).toBe(false);
  });
});

describe('entryNamed', () => {
  const entries = [job('Ledge.json'), folder('old.json')];

  it('tells capitals apart on Linux alone', () => {
    expect(entryNamed(entries, 'ledge.json', 'linux')).toBeNull();
    expect(entryNamed(entries, 'ledge.json', 'mac')?.name).toBe('Ledge.json');
    expect(entryNamed(entries, 'ledge.json', 'windows')?.name).toBe('Ledge.json');
    expect(entryNamed(entries, 'Ledge.json', 'linux')?.name).toBe('Ledge.json');
  });

  it('finds a folder of that name too, and nothing under a name that is free', () => {
    expect(entryNamed(entries, 'old.json', 'linux')?.kind).toBe('folder');
    expect(entryNamed(entries, 'new.json', 'linux')).toBeNull();
  });
});
