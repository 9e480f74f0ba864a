import { describe, expect, it } from 'vitest';
import type { SupportKind } from '../../../src-core/job';
import type { AddGroup } from '../../../src-renderer/forms/add-choices';
import { addGroups, addPart } from '../../../src-renderer/forms/add-choices';
import { SUPPORT_WORDS } from '../../../src-renderer/forms/specs/support-fields';
import { bench } from './bench';
import { EXAMPLE_PIECES, examplePiece } from './example-jobs';

const PARTS = ['corner', 'cutout', 'support', 'steel', 'load', 'joint'] as const;
const idsOf = (groups: readonly AddGroup[]) => groups.flatMap(({ choices }) => choices.map(({ id }) => id));
/** One mesh and one bar stand for the rest of their tables, which differ in figures alone. */
const ONE_OF_A_TABLE = new Set(['mesh 6x6-W1.4', 'bars #3']);
const isTried = (choice: string) => !/^(mesh|bars) /.test(choice) || ONE_OF_A_TABLE.has(choice);
const TRIES = PARTS.flatMap((part) =>
  idsOf(addGroups(part))
    .filter(isTried)
    .flatMap((choice) => EXAMPLE_PIECES.map((example) => ({ part, choice, ...example }))),
);

describe('what can be added to a piece', () => {
  it('offers 7 openings, 7 supports and 22 kinds of steel', () => {
    expect(PARTS.map((part) => idsOf(addGroups(part)).length)).toEqual([1, 7, 7, 22, 1, 1]);
  });

  it('has room on every piece of every example', () => {
    const refused = TRIES.flatMap(({ part, choice, job, piece, called }) => {
      const { held, run } = bench(job);
      const added = addPart(run, job, piece, part, choice);
      if (added.ok) return held.job === job ? [`${choice} to ${called}: nothing was added`] : [];
      return [`${choice} to ${called}: ${added.problems[0]?.sentence}`];
    });
    expect(refused).toEqual([]);
  });

  it('is refused in a sentence where a 2 in wide strip has no room for an opening', () => {
    const { job, piece } = examplePiece('bar-ledge', 'bar-ledge');
    const strip = {
      ...piece,
      corners: piece.corners.map((corner) => ({ ...corner, yIn: Math.min(corner.yIn, 2) })),
      supports: [],
    };
    const thin = { ...job, pieces: [strip] };
    const { held, run } = bench(thin);
    const added = addPart(run, thin, strip, 'cutout', 'under-rim');
    expect(added.ok ? '' : added.problems[0]?.sentence).toMatch(/^Cutout .+ leave at least 1 in\.$/);
    expect(held.job).toBe(thin);
  });

  it.each(idsOf(addGroups('steel')))('finds room for %s in a 1-1/2 in bar ledge', (choice) => {
    const { job, piece } = examplePiece('bar-ledge', 'bar-ledge');
    const { held, run } = bench(job);
    expect(addPart(run, job, piece, 'steel', choice)).toMatchObject({ ok: true });
    expect(held.job.pieces[0]!.reinforcement).toHaveLength(2);
  });

  it('names what it made, so that its form opens', () => {
    const { job, piece } = examplePiece('bar-ledge', 'bar-ledge');
    const { held, run } = bench(job);
    expect(addPart(run, job, piece, 'support', 'leg')).toEqual({
      ok: true,
      part: { kind: 'support', id: 'leg' },
    });
    expect(held.job.pieces[0]!.supports.map(({ id }) => id)).toEqual(['bar-wall', 'leg']);
  });
});

describe('a new support', () => {
  it.each(Object.keys(SUPPORT_WORDS) as SupportKind[])('of kind %s keeps its kind in the job', (kind) => {
    const { job, piece } = examplePiece('straight-counter', 'counter');
    const { held, run } = bench(job);
    expect(addPart(run, job, piece, 'support', kind).ok).toBe(true);
    expect(held.job.pieces[0]!.supports.at(-1)!.kind).toBe(kind);
  });

  it('puts the ledger of a 17-1/2 in deep bar ledge flush with its back', () => {
    const { job, piece } = examplePiece('bar-ledge', 'bar-ledge');
    const { held, run } = bench(job);
    addPart(run, job, piece, 'support', 'ledger');
    expect(held.job.pieces[0]!.supports.at(-1)).toMatchObject({
      kind: 'ledger',
      from: { yIn: 16.75 },
      to: { yIn: 16.75 },
      widthIn: 1.5,
    });
  });

  it('puts six brackets on studs at 16 in behind a 96 in ledge, reaching forward', () => {
    const { job, piece } = examplePiece('bar-ledge', 'bar-ledge');
    const { held, run } = bench(job);
    addPart(run, job, piece, 'support', 'bracket');
    const row = held.job.pieces[0]!.supports.at(-1)!;
    if (row.kind !== 'bracket') throw new Error('no brackets');
    expect(row.directionDeg).toBe(270);
    expect(row.roots.map(({ xIn }) => xIn)).toEqual([8, 24, 40, 56, 72, 88]);
  });

  it('keeps a second leg away from the first', () => {
    const { job, piece } = examplePiece('bar-ledge', 'bar-ledge');
    const { held, run } = bench(job);
    addPart(run, job, piece, 'support', 'leg');
    addPart(run, held.job, held.job.pieces[0]!, 'support', 'leg');
    const legs = held.job.pieces[0]!.supports.flatMap((one) => (one.kind === 'leg' ? [one.centre] : []));
    expect(Math.hypot(legs[0]!.xIn - legs[1]!.xIn, legs[0]!.yIn - legs[1]!.yIn)).toBeGreaterThan(4);
  });
});
