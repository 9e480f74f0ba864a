import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Host } from '../../../src-main/host/host';
import { createHost } from '../../../src-main/host/host';
import type { Place } from '../../../src-main/host/place';

export const PROJECT = fileURLToPath(new URL('../../..', import.meta.url));
const EXAMPLES = join(PROJECT, 'assets', 'jobs');

/** The text of an example job, under another name if one is given. */
export function exampleText(id: string, name?: string): string {
  const text = readFileSync(join(EXAMPLES, `${id}.json`), 'utf8');
  if (name === undefined) return text;
  return JSON.stringify({ ...(JSON.parse(text) as object), name }, null, 2);
}

export interface Here {
  readonly place: Place;
  readonly host: Host;
  /** Another run at the same place. */
  readonly startAgain: () => Host;
}

/** Calls `use` with a host in folders of its own, which are gone afterwards. The clock goes a minute a reading. */
export async function withHost(use: (here: Here) => Promise<void>, own: Partial<Place> = {}): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-host-'));
  const jobFolder = join(folder, 'jobs');
  mkdirSync(jobFolder);
  let minute = 0;
  const place: Place = {
    host: 'browser',
    version: '1.2.3',
    platform: 'linux',
    userFolder: join(folder, 'user'),
    jobFolder,
    exampleFolder: EXAMPLES,
    manualFolder: join(PROJECT, 'assets', 'manual'),
    dialogs: null,
    printPdf: async () => ({
      ok: false,
      why: 'no-printer',
      sentence: 'There is nothing to print with here.',
    }),
    clock: () => {
      minute += 1;
      return new Date(Date.UTC(2027, 3, 26, 8, minute));
    },
    ...own,
  };
  try {
    await use({ place, host: createHost(place), startAgain: () => createHost(place) });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The host's reply, where it answered. */
export async function ask(host: Host, name: string, request: object = {}): Promise<Record<string, unknown>> {
  const answer = await host.answer(name, request);
  if (!answer.ok) throw new Error(`${name} was refused: ${answer.sentence}`);
  return answer.reply as Record<string, unknown>;
}
