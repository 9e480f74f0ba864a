import { describe, expect, test } from 'vitest';
import { readJob } from '../../../src-core/job';
import { idMaker, STARTERS, starterJob, starterPiece } from '../../../src-core/starters';
import { checkJob } from '../../../src-core/verdict';

const COARSE = { meshSizeIn: 3, changes: 'none', looksOnTheWay: false } as const;

describe('starters', () => {
  test('are seven, each under its own name', () => {
    expect(STARTERS.map(({ id }) => id)).toEqual([
      'bar-ledge',
      'straight-counter',
      'corner-counter',
      'hearth',
      'bench',
      'pier-cap',
      'foot-ledge',
    ]);
    expect(new Set(STARTERS.map(({ name }) => name)).size).toBe(7);
  });

  test('are told in words without a size, which would be wrong in other units', () => {
    for (const { name, words } of STARTERS) expect(`${name} ${words}`).not.toMatch(/\d/);
  });

  test.each(STARTERS.map(({ id }) => id))('%s is a job that reads as a file does', (id) => {
    const job = starterJob(id);
    expect(readJob(JSON.parse(JSON.stringify(job)))).toEqual({ ok: true, job, migratedFrom: null });
    expect(job.pieces.length).toBe(1);
  });

  // Ratios of bending without steel, engine at a coarse mesh; a hold with much in hand, or near its limit, would show here.
  test.each([
    ['bar-ledge', 0.48],
    ['straight-counter', 0.8],
    ['corner-counter', 0.91],
    ['hearth', 0.59],
    ['bench', 0.4],
    ['pier-cap', 0.2],
    ['foot-ledge', 0.51],
  ] as const)(
    '%s holds on plain concrete and uses %d of it',
    (id, expected) => {
      const result = checkJob(starterJob(id), COARSE);
      const piece = result.pieces[0]!;
      expect([piece.verdict.words, result.verdict.words]).toEqual(['Holds', 'Every piece holds.']);
      const bending = piece.checks.find((check) => check.id === 'bending-plain')!;
      expect(Math.abs(bending.ratio - expected)).toBeLessThan(0.03);
    },
    60_000,
  );

  test.each(STARTERS.map(({ id }) => id))(
    '%s holds on the mesh of the verdict too, and at every moment on the way',
    (id) => {
      expect(checkJob(starterJob(id), { changes: 'none' }).verdict.words).toBe('Every piece holds.');
    },
    60_000,
  );

  test('a starter lies with its front left corner where it is put and takes the job’s mix and ids that are free', () => {
    const job = starterJob('hearth');
    const draft = starterPiece('hearth', { at: { xIn: 100, yIn: -20 }, job });
    expect(draft.corners[0]).toEqual({ xIn: 100, yIn: -20 });
    expect([draft.id, draft.mixId]).toEqual(['hearth-2', 'worktop-mix']);
    expect(draft.supports!.map(({ id }) => id)).toEqual(['pier-3', 'pier-4']);
  });

  test.each(STARTERS.map(({ id }) => id))('two of %s fit into one job beside each other', (id) => {
    const job = starterJob(id);
    const second = starterPiece(id, { at: { xIn: 37.5, yIn: 200 }, job });
    expect(readJob({ ...job, pieces: [...job.pieces, second] })).toMatchObject({ ok: true });
  });
});

test('a maker of ids never gives one twice, and cuts a long stem to leave room for a number', () => {
  const make = idMaker(starterJob('hearth'));
  expect(['leg', 'leg', 'leg-2', 'pier-1'].map(make)).toEqual(['leg', 'leg-2', 'leg-3', 'pier-3']);
  const long = 'x'.repeat(80);
  expect([make(long).length, make(long).length]).toEqual([52, 54]);
});
