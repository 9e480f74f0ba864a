import { execFileSync } from 'node:child_process';
import { mkdirSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join, parse } from 'node:path';
import { expect, test } from 'vitest';
import { documentFolder, userFolder } from '../../../src-main/host/user-folder';
import { onPosix } from '../../support/on-posix';
import { ask, exampleText, withHost } from './place-here';

test('a folder shows its folders first and then its jobs, by name, and nothing else', async () => {
  await withHost(async ({ host, place }) => {
    const here = (name: string) => join(place.jobFolder, name);
    for (const name of ['ledge 10', 'Ledge 2', '.hidden', 'node.json']) mkdirSync(here(name));
    writeFileSync(here('b.json'), exampleText('hearth'));
    writeFileSync(here('A.JSON'), exampleText('bar-ledge'));
    writeFileSync(here('.c.json'), exampleText('hearth'));
    writeFileSync(here('settings.json'), '{"format": "another"}');
    writeFileSync(here('notes.txt'), exampleText('hearth'));
    writeFileSync(here('a.json.last-good'), exampleText('hearth'));
    symlinkSync(here('nowhere'), here('broken link'));
    symlinkSync(here('Ledge 2'), here('link to a folder'));
    expect(await ask(host, 'listFolder', { path: null })).toEqual({
      outcome: 'listed',
      path: place.jobFolder,
      parent: dirname(place.jobFolder),
      entries: [
        ['Ledge 2', 'folder'],
        ['ledge 10', 'folder'],
        ['link to a folder', 'folder'],
        ['node.json', 'folder'],
        ['A.JSON', 'job'],
        ['b.json', 'job'],
      ].map(([name, kind]) => ({ name, path: here(name!), kind })),
    });
  });
});

test('a folder of more than 2000 things shows 2000 of them', async () => {
  await withHost(async ({ host, place }) => {
    for (let k = 0; k < 2001; k++) mkdirSync(join(place.jobFolder, `folder ${k}`));
    const { entries } = (await ask(host, 'listFolder', { path: null })) as { entries: readonly object[] };
    expect(entries).toHaveLength(2000);
  });
});

onPosix('a pipe that is called like a job is left out, and nobody waits for somebody to write', async () => {
  await withHost(async ({ host, place }) => {
    execFileSync('mkfifo', [join(place.jobFolder, 'pipe.json')]);
    expect(await ask(host, 'listFolder', { path: null })).toMatchObject({ entries: [] });
  });
});

onPosix('what is kept for a person nobody else may look into', async () => {
  await withHost(async ({ host, place }) => {
    await ask(host, 'keepDraft', { path: null, name: 'galley.json', text: 'half done' });
    for (const folder of [place.userFolder, join(place.userFolder, 'drafts')]) {
      expect(statSync(folder).mode & 0o077, folder).toBe(0);
    }
  });
});

test('the root has no parent; a folder that is missing, a file and half a path are trouble', async () => {
  await withHost(async ({ host, place }) => {
    const root = parse(place.jobFolder).root;
    expect(await ask(host, 'listFolder', { path: root })).toMatchObject({ outcome: 'listed', parent: null });
    writeFileSync(join(place.jobFolder, 'a.json'), '');
    for (const path of [join(place.jobFolder, 'none'), join(place.jobFolder, 'a.json'), '.', 'jobs']) {
      expect(await ask(host, 'listFolder', { path })).toMatchObject({ outcome: 'trouble' });
    }
  });
});

test('the user folder is the one that is named, else where the system keeps such things', () => {
  const home = join('/', 'people', 'me');
  const linux = join(home, '.local', 'state', 'ledgewright');
  expect(userFolder({ LEDGEWRIGHT_USER_FOLDER: '/own' }, 'linux', home)).toBe('/own');
  expect(userFolder({ LEDGEWRIGHT_USER_FOLDER: '' }, 'linux', home)).toBe(linux);
  expect(userFolder({ XDG_STATE_HOME: '/state' }, 'linux', home)).toBe(join('/state', 'ledgewright'));
  expect(userFolder({}, 'darwin', home)).toBe(join(home, 'Library', 'Application Support', 'Ledgewright'));
  expect(userFolder({ APPDATA: '/roaming' }, 'win32', home)).toBe(join('/roaming', 'Ledgewright'));
  expect(documentFolder(join('/', 'no-such-home'))).toBe(join('/', 'no-such-home'));
});
