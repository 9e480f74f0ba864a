import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { jobPathIn } from '../../../src-main/desktop/job-arguments';

test('of the words of a start the last job file that is there counts, and no program, flag, folder or other file', () => {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-words-'));
  try {
    for (const name of ['a.json', 'B.JSON', '--flag.json', 'notes.txt', 'program.json']) {
      writeFileSync(join(folder, name), '');
    }
    mkdirSync(join(folder, 'folder.json'));
    const pathIn = (...words: string[]) => jobPathIn(['program.json', ...words], folder);
    expect(pathIn()).toBeNull();
    expect(pathIn('a.json', 'B.JSON')).toBe(join(folder, 'B.JSON'));
    expect(pathIn(join(folder, 'a.json'))).toBe(join(folder, 'a.json'));
    for (const word of ['--flag.json', 'notes.txt', 'folder.json', 'none.json']) {
      expect(pathIn('a.json', word), word).toBe(join(folder, 'a.json'));
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
