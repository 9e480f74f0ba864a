import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Command, Edited } from '../../../src-core/edit';
import {
  addCutout,
  addStarter,
  addSupport,
  beginHistory,
  duplicatePart,
  duplicatePiece,
  moveCorner,
  moveCutout,
  moveEdge,
  moveLoad,
  movePiece,
  moveSupport,
  moveSupportEnd,
  recordStep,
  redoStep,
  removeCorner,
  removePart,
  removePiece,
  resizeCutout,
  resizeSupport,
  setCornerRadius,
  setEdge,
  setEdgeLength,
  setField,
  setUnits,
  splitEdge,
  turnPiece,
  undoStep,
} from '../../../src-core/edit';
import type { Job } from '../../../src-core/job';
import { STARTERS } from '../../../src-core/starters';
import { done, exampleJob, sampleJob } from './editing';

/** Chance, as numbers from 0 to 1 that a step draws what it needs from. */
type Chance = readonly [number, number, number, number];
type Step = (job: Job, chance: Chance) => Edited;

function pick<Thing>(list: readonly Thing[], share: number): Thing | undefined {
  return list[Math.min(list.length - 1, Math.floor(share * list.length))];
}

function pieceIn(job: Job, share: number): Job['pieces'][number] {
  return pick(job.pieces, share)!;
}

/** A point on or near a piece, on the quarter inch. */
function near(job: Job, [share, x, y]: Chance): { xIn: number; yIn: number } {
  const corner = pick(pieceIn(job, share).corners, x)!;
  return { xIn: corner.xIn + Math.round(80 * y - 40) / 4, yIn: corner.yIn + Math.round(80 * x - 40) / 4 };
}

/** From -6 to 6 in on the eighth. */
function inches(share: number): number {
  return Math.round(share * 96 - 48) / 8;
}

function onEdge<More>(
  command: Command<{ pieceId: string; index: number } & More>,
  more: (job: Job, c: Chance) => More,
): Step {
  return (job, c) => {
    const { id, corners } = pieceIn(job, c[0]);
    return command.perform(job, { pieceId: id, index: Math.floor(c[3] * corners.length), ...more(job, c) });
  };
}

function onPart<More>(
  list: 'cutouts' | 'supports',
  command: Command<{ pieceId: string; id: string } & More>,
  more: (job: Job, c: Chance) => More,
): Step {
  return (job, c) => {
    const piece = pieceIn(job, c[0]);
    return command.perform(job, {
      pieceId: piece.id,
      id: pick<{ readonly id: string }>(piece[list], c[3])?.id ?? 'none',
      ...more(job, c),
    });
  };
}

const size = (_: Job, [, a, b]: Chance) => ({ widthIn: 40 * a, depthIn: 40 * b });
const by = (_: Job, [, a, b]: Chance) => ({ dxIn: inches(a), dyIn: inches(b) });
const to = (job: Job, c: Chance) => ({ to: near(job, c) });

function anyPart(job: Job, [share, a, b]: Chance) {
  const piece = pieceIn(job, share);
  const parts = [
    ...piece.cutouts.map(({ id }) => ({ kind: 'cutout' as const, id })),
    ...piece.supports.map(({ id }) => ({ kind: 'support' as const, id })),
    ...piece.loads.fixed.map(({ id }) => ({ kind: 'load' as const, id })),
    ...piece.reinforcement.map(({ id }) => ({ kind: 'steel' as const, id })),
    ...piece.joints.map(({ id }) => ({ kind: 'joint' as const, id })),
  ];
  return { pieceId: piece.id, part: pick(parts, (a + b) / 2) ?? { kind: 'joint' as const, id: 'none' } };
}

const STEPS: readonly Step[] = [
  onEdge(moveCorner, to),
  onEdge(moveEdge, (_, [, a]) => ({ toIn: inches(a) })),
  onEdge(setEdgeLength, (_, [, a]) => ({ lengthIn: 120 * a })),
  onEdge(splitEdge, (job, c) => ({ at: near(job, c) })),
  onEdge(removeCorner, () => ({})),
  onEdge(setCornerRadius, (_, [, a]) => ({ radiusIn: 4 * a })),
  onEdge(setEdge, (_, [, a]) => ({ edge: a < 0.5 ? { kind: 'wall' } : { kind: 'free' } })),
  onPart('cutouts', moveCutout, to),
  onPart('cutouts', resizeCutout, size),
  onPart('supports', moveSupport, by),
  onPart('supports', resizeSupport, size),
  onPart('supports', moveSupportEnd, (job, c) => ({
    end: c[1] < 0.5 ? ('from' as const) : ('to' as const),
    ...to(job, c),
  })),
  (job, c) => removePart.perform(job, anyPart(job, c)),
  (job, c) => duplicatePart.perform(job, anyPart(job, c)),
  (job, c) => movePiece.perform(job, { pieceId: pieceIn(job, c[0]).id, ...by(job, c) }),
  (job, c) => turnPiece.perform(job, { pieceId: pieceIn(job, c[0]).id }),
  (job, c) => duplicatePiece.perform(job, { pieceId: pieceIn(job, c[0]).id }),
  (job, c) => removePiece.perform(job, { pieceId: pieceIn(job, c[0]).id }),
  (job, c) => addStarter.perform(job, { starterId: pick(STARTERS, c[0])!.id, at: near(job, c) }),
  (job, c) =>
    addSupport.perform(job, {
      pieceId: pieceIn(job, c[0]).id,
      support: { kind: 'leg', centre: near(job, c) },
    }),
  (job, c) =>
    addCutout.perform(job, {
      pieceId: pieceIn(job, c[0]).id,
      cutout: { purpose: 'tap', shape: { kind: 'circle', centre: near(job, c), diameterIn: 3 * c[3] } },
    }),
  (job, c) => {
    const { id, loads } = pieceIn(job, c[0]);
    return moveLoad.perform(job, { pieceId: id, id: loads.fixed[0]?.id ?? 'none', to: near(job, c) });
  },
  (job, c) => setUnits.perform(job, { system: c[0] < 0.5 ? 'metric' : 'imperial' }),
  (job, c) => {
    const path = ['pieces', Math.floor(c[0] * job.pieces.length), 'thicknessIn'];
    return setField.perform(job, { path, value: 4 * c[1], title: 'Change thickness' });
  },
];

/** Spread evenly, where floating numbers would crowd about nothing. */
const share = fc.integer({ min: 0, max: 999 }).map((count) => count / 1000);
const commands = fc.array(fc.tuple(fc.nat(STEPS.length - 1), fc.tuple(share, share, share, share)), {
  minLength: 20,
  maxLength: 40,
});

describe.each([
  ['a small job', sampleJob(), 12],
  ['the Boathouse galley', exampleJob('boathouse-galley'), 3],
] as const)('any row of commands on %s', (_, first, numRuns) => {
  test('gives jobs that read as files do, and all undone it is the very first job object, all redone the last', () => {
    const carriedOut = new Set<number>();
    fc.assert(
      fc.property(commands, (row) => {
        const untouched = JSON.stringify(first);
        let history = beginHistory(first);
        for (const [which, chance] of row) {
          const edited = STEPS[which]!(history.job, chance);
          if (!edited.ok) {
            expect(edited.problems.length).toBeGreaterThan(0);
            continue;
          }
          carriedOut.add(which);
          history = recordStep(history, done(edited));
        }
        const last = history.job;
        const steps = history.past.length;
        for (let i = 0; i < steps; i++) history = undoStep(history);
        expect(history.job).toBe(first);
        expect(JSON.stringify(first)).toBe(untouched);
        for (let i = 0; i < steps; i++) history = redoStep(history);
        expect(history.job).toBe(last);
      }),
      { seed: 20270426, numRuns, endOnFailure: true },
    );
    // A row in which everything is refused would prove nothing.
    expect(carriedOut.size).toBeGreaterThan(STEPS.length / 2);
  }, 240_000);
});
