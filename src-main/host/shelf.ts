/** What comes with Ledgewright: example jobs and the pages of the manual. */
import { readdir } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { z } from 'zod';
import type { ReplyOf } from '../../src-core/host-contract';
import { readOwnJson } from './own-json';
import { readText } from './text-file';

const ID = /^[a-z0-9-]{1,60}$/;
const named = z.looseObject({ name: z.string() });

/** Every example with the name that its job has, by name. */
export async function listExamples(folder: string): Promise<ReplyOf<'listExamples'>> {
  const ids = (await readdir(folder))
    .filter((name) => name.endsWith('.json'))
    .map((name) => basename(name, '.json'))
    .filter((id) => ID.test(id));
  const examples = await Promise.all(
    ids.map(async (id) => ({ id, name: (await readOwnJson(join(folder, `${id}.json`), named))?.name ?? id })),
  );
  return { examples: examples.sort((a, b) => a.name.localeCompare(b.name, 'en')) };
}

/** The text of an example. The contract lets no id through that could lead out of the folder. */
export function readExample(folder: string, id: string): Promise<ReplyOf<'readExample'>> {
  return readFrom(join(folder, `${id}.json`), `There is no example "${id}".`);
}

/** The manual's page for a check or a finding. */
export function readManual(folder: string, id: string): Promise<ReplyOf<'readManual'>> {
  return readFrom(join(folder, `${id}.md`), `The manual has no page "${id}".`);
}

async function readFrom(path: string, missing: string): Promise<ReplyOf<'readManual'>> {
  const reading = await readText(path);
  return reading.ok ? { outcome: 'read', text: reading.text } : { outcome: 'trouble', sentence: missing };
}
