import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { REQUESTS } from '../../../src-core/host-contract';
import type { Job } from '../../../src-core/job';
import { readJobText } from '../../../src-core/job';
import { starterJob } from '../../../src-core/starters';
import {
  drawingChoices,
  jobChoice,
  templateChoices,
  templatePages,
} from '../../../src-renderer/book/export-choices';
import { leavingName } from '../../../src-renderer/book/file-names';

function example(id: string): Job {
  const path = new URL(`../../../assets/jobs/${id}.json`, import.meta.url);
  const reading = readJobText(readFileSync(path, 'utf8'));
  if (!reading.ok) throw new Error(`${id} is no job`);
  return reading.job;
}

const galley = example('boathouse-galley');
const acceptsName = (suggestedName: string) =>
  REQUESTS.saveExport.request.safeParse({ kind: 'text', suggestedName, data: '' }).success;

describe('what can leave', () => {
  test('has names that every host takes, whatever the job is called', async () => {
    for (const name of [galley.name, '../../etc', 'Ünïcödé', '...', 'CON', 'a'.repeat(150)]) {
      const job = { ...galley, name };
      for (const { file } of [...drawingChoices(job), jobChoice(job)]) {
        const { name: offered } = await file();
        expect(acceptsName(offered), offered).toBe(true);
      }
    }
    expect(leavingName(galley, 'plan', 'dxf')).toMatch(/^[a-z0-9-]+-plan\.dxf$/);
  });

  test('is written in the format that its ending says', async () => {
    const heads: Record<string, RegExp> = {
      'plan-dxf': /^ {0,2}0\r?\nSECTION/,
      'plan-svg': /^<\?xml/,
      'model-glb': /^glTF/,
      'slabs-stl': /^Ledgewright slabs/,
    };
    for (const { id, file } of drawingChoices(starterJob('bar-ledge'))) {
      const { content } = await file();
      const head = typeof content === 'string' ? content : Buffer.from(content).toString('latin1');
      expect(head.slice(0, 40), id).toMatch(heads[id]!);
    }
  });

  test('of the job is a copy that reads back the same', async () => {
    const { content } = await jobChoice(galley).file();
    const reading = readJobText(String(content));
    expect(reading.ok && reading.job).toEqual(galley);
  });

  test('has a template for every opening, by its own name and its piece', () => {
    const choices = templateChoices(galley);
    expect(choices).toHaveLength(galley.pieces.reduce((sum, { cutouts }) => sum + cutouts.length, 0));
    expect(choices.length).toBeGreaterThan(2);
    expect(new Set(choices.map(({ pieceId, cutoutId }) => `${pieceId} ${cutoutId}`)).size).toBe(
      choices.length,
    );
    expect(templateChoices(starterJob('bar-ledge'))).toEqual([]);
  });

  test('a template is a document with a sheet a page, mirrored where it is seen from below', async () => {
    const [choice] = templateChoices(galley);
    const wish = { paper: 'letter', seenFrom: 'below' } as const;
    const made = await templatePages(galley, choice!, wish);
    if (!made.ok) throw new Error(made.sentence);
    expect(acceptsName(made.name)).toBe(true);
    const html = made.html('/* fonts */');
    expect(html).toContain('/* fonts */');
    expect(html).toContain('size: 8.5in 11in');
    expect(html).toContain('Mirrored: this face down');
    expect(html.match(/<section class="sheet">/g)!.length).toBe(html.match(/<svg /g)!.length);
  });

  test('an opening too large for paper says so', async () => {
    const piece = galley.pieces.find(({ cutouts }) => cutouts.length > 0)!;
    const cutout = {
      ...piece.cutouts[0]!,
      shape: { kind: 'circle' as const, centre: { xIn: 500, yIn: 500 }, diameterIn: 900 },
    };
    const job: Job = {
      ...galley,
      pieces: [{ ...piece, cutouts: [cutout as (typeof piece.cutouts)[number]] }],
    };
    const made = await templatePages(job, templateChoices(job)[0]!, { paper: 'a4', seenFrom: 'above' });
    expect(made).toMatchObject({ ok: false, sentence: expect.stringMatching(/\.$/) });
  });
});
