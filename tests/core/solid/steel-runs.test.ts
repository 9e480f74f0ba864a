import { describe, expect, test } from 'vitest';
import type { JobDraft } from '../../../src-core/job';
import { pieceRegion } from '../../../src-core/job';
import { between, slabDistanceIn } from '../../../src-core/outline';
import type { SteelRun } from '../../../src-core/solid';
import { MOST_RUNS_ONE_WAY, steelRuns } from '../../../src-core/solid';
import { corners, pieceWith, SQUARE } from './pieces';

type PieceDraft = JobDraft['pieces'][number];
type Steel = NonNullable<PieceDraft['reinforcement']>[number];

const SHAPE = corners([0, 0], [96, 0], [96, 25], [0, 25]);
const MESH: Steel = {
  kind: 'mesh',
  id: 'mesh',
  wireIn: 0.08,
  spacingIn: 2,
  crossWireIn: 0.1,
  crossSpacingIn: 4,
  depthIn: 0.75,
};

function runsIn(steel: Steel, more: Partial<PieceDraft> = {}): readonly SteelRun[] {
  return steelRuns(pieceWith(SHAPE, 1.5, SQUARE, { reinforcement: [steel], topElevationIn: 36, ...more }));
}

const isAlongX = ({ from, to }: SteelRun) => from[1] === to[1];

describe('wires and bars', () => {
  test('a 2 x 4 in mesh with 1 in cover has 12 wires of 94 in and 24 cross wires of 23 in', () => {
    const runs = runsIn(MESH);
    const long = runs.filter(isAlongX);
    const cross = runs.filter((run) => !isAlongX(run));
    // cover leaves 23 in and 94 in: 11 spaces of 2 in with 1 in over, 23 of 4 in with 2 in over
    expect([long.length, cross.length]).toEqual([12, 24]);
    for (const { from, to } of long) expect(to[0] - from[0]).toBeCloseTo(94, 9);
    for (const { from, to } of cross) expect(Math.abs(to[1] - from[1])).toBeCloseTo(23, 9);
  });

  test('wires lie on the cross wires and touch them at 3/4 in below the top', () => {
    const runs = runsIn(MESH);
    const [long, cross] = [runs.find(isAlongX)!, runs.find((run) => !isAlongX(run))!];
    expect(long.from[2] - 0.04).toBeCloseTo(35.25, 12);
    expect(cross.from[2] + 0.05).toBeCloseTo(35.25, 12);
    expect([long.diameterIn, cross.diameterIn]).toEqual([0.08, 0.1]);
  });

  test('every run keeps its cover from edges and openings, whatever its direction', () => {
    const cutouts: PieceDraft['cutouts'] = [
      {
        id: 'hole',
        purpose: 'other',
        shape: { kind: 'circle', centre: { xIn: 40, yIn: 12 }, diameterIn: 12 },
      },
    ];
    for (const angleDeg of [0, 30, 90]) {
      const piece = pieceWith(SHAPE, 1.5, SQUARE, { reinforcement: [{ ...MESH, angleDeg }], cutouts });
      const region = pieceRegion(piece);
      if (!region.ok) throw new Error('no region');
      const runs = steelRuns(piece);
      expect(runs.length).toBeGreaterThan(30);
      for (const { from, to } of runs) {
        for (const share of [0, 0.25, 0.5, 0.75, 1]) {
          const at = between({ xIn: from[0], yIn: from[1] }, { xIn: to[0], yIn: to[1] }, share);
          expect(slabDistanceIn(at, region)).toBeGreaterThan(1 - 0.01);
        }
      }
    }
  });

  test('bars in a field of their own stay in it, at their depth', () => {
    const field = [
      { xIn: 10, yIn: 0 },
      { xIn: 40, yIn: 0 },
      { xIn: 40, yIn: 25 },
      { xIn: 10, yIn: 25 },
    ];
    const runs = runsIn({
      kind: 'bars',
      id: 'bars',
      barIn: 0.375,
      areaIn2: 0.11,
      spacingIn: 6,
      angleDeg: 90,
      depthIn: 0.5,
      corners: field,
    });
    expect(runs.map(({ from }) => Math.round(from[0] * 1e6) / 1e6).sort((p, q) => p - q)).toEqual([
      10, 16, 22, 28, 34, 40,
    ]);
    for (const { from, to } of runs) {
      expect(from[2]).toBe(35.5);
      expect(Math.abs(to[1] - from[1])).toBeCloseTo(23, 9);
    }
  });

  test('a mesh of 1/4 in on a long piece is thinned out to the most that are drawn', () => {
    const long = corners([0, 0], [400, 0], [400, 25], [0, 25]);
    const fine = { ...MESH, spacingIn: 0.25, crossSpacingIn: 0.25 };
    const runs = steelRuns(pieceWith(long, 1.5, SQUARE, { reinforcement: [fine] }));
    expect(runs.filter((run) => !isAlongX(run)).length).toBeLessThanOrEqual(MOST_RUNS_ONE_WAY);
    expect(runs.filter((run) => !isAlongX(run)).length).toBeGreaterThan(MOST_RUNS_ONE_WAY / 2);
  });

  test('fibre has no runs', () => {
    expect(runsIn({ kind: 'fibre', id: 'fibre', material: 'glass' })).toEqual([]);
  });
});
