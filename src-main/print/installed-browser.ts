/** Finds a browser on this machine that can print a page to a PDF: Chromium, or another of its engine. */
import { access, constants } from 'node:fs/promises';
import { homedir } from 'node:os';
import { join, posix, win32 } from 'node:path';

/** Names the program to print with, before any that is found. */
export const BROWSER_VARIABLE = 'LEDGEWRIGHT_BROWSER';

export type FoundBrowser =
  | { readonly ok: true; readonly program: string }
  | { readonly ok: false; readonly sentence: string };

/** What the search depends on and a test may set. */
export interface Machine {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly platform: string;
  readonly home: string;
  /** Whether a program lies there. */
  readonly isProgram: (path: string) => Promise<boolean>;
}

const NAMES = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
];
const MAC_APPS = ['Chromium', 'Google Chrome', 'Microsoft Edge'];
const WINDOWS_FOLDERS = ['ProgramFiles', 'ProgramFiles(x86)', 'LOCALAPPDATA'];
const WINDOWS_PROGRAMS = [
  ['Chromium', 'Application', 'chrome.exe'],
  ['Google', 'Chrome', 'Application', 'chrome.exe'],
  ['Microsoft', 'Edge', 'Application', 'msedge.exe'],
];

/** The machine that this runs on. */
export function thisMachine(): Machine {
  return { env: process.env, platform: process.platform, home: homedir(), isProgram };
}

/** The program that the variable names, else the first that is found. One that is named and not there is not passed over. */
export async function findBrowser(machine: Machine): Promise<FoundBrowser> {
  const named = machine.env[BROWSER_VARIABLE] ?? '';
  if (named !== '') {
    const program = await firstOf(asPaths(named, machine), machine);
    if (program !== null) return { ok: true, program };
    return { ok: false, sentence: `${BROWSER_VARIABLE} names ${named}, and no program is found there.` };
  }
  const program = await firstOf(usualPlaces(machine), machine);
  if (program !== null) return { ok: true, program };
  return {
    ok: false,
    sentence: `No Chromium, nor another browser of its engine, is found on this machine. Install one, or name its program in ${BROWSER_VARIABLE}.`,
  };
}

async function firstOf(paths: readonly string[], { isProgram: isThere }: Machine): Promise<string | null> {
  for (const path of paths) if (await isThere(path)) return path;
  return null;
}

/** A path is meant as it stands, a bare name is looked for on the PATH. */
function asPaths(named: string, machine: Machine): string[] {
  return /[\\/]/.test(named) ? [named] : onPath([named], machine);
}

function usualPlaces(machine: Machine): string[] {
  const { env, platform, home } = machine;
  if (platform === 'darwin') {
    const apps = MAC_APPS.flatMap((app) =>
      ['/', home].map((root) => posix.join(root, 'Applications', `${app}.app`, 'Contents', 'MacOS', app)),
    );
    return [...apps, ...onPath(NAMES, machine)];
  }
  if (platform === 'win32') {
    const folders = WINDOWS_FOLDERS.flatMap((name) => env[name] ?? []);
    return folders.flatMap((folder) => WINDOWS_PROGRAMS.map((parts) => win32.join(folder, ...parts)));
  }
  return onPath(NAMES, machine);
}

/** Every place on the PATH that a program of these names could lie at, by name first. */
function onPath(names: readonly string[], { env, platform }: Machine): string[] {
  const folders = (env.PATH ?? env.Path ?? '')
    .split(platform === 'win32' ? ';' : ':')
    .filter((one) => one !== '');
  return names.flatMap((name) => folders.map((folder) => join(folder, name)));
}

async function isProgram(path: string): Promise<boolean> {
  return access(path, constants.X_OK).then(
    () => true,
    () => false,
  );
}
