import { describe, expect, test } from 'vitest';
import type { JobDraft } from '../../../src-core/job';
import { readJob } from '../../../src-core/job';
import type { Solid, SupportSolid } from '../../../src-core/solid';
import { slabVolumeIn3, supportSolids } from '../../../src-core/solid';
import { rectangle } from '../../support/pieces';
import { randomJob } from '../../support/random-job';
import { seededRandom } from '../../support/seeded-random';
import { exampleJobs, openEdges, unbalancedEdges, wrongNormals } from './closed-shell';
import { corners, pieceWith, SQUARE } from './pieces';

type PieceDraft = JobDraft['pieces'][number];
type SupportDraft = NonNullable<PieceDraft['supports']>[number];

const SHAPE = corners([0, 0], [96, 0], [96, 25.5], [0, 25.5]);
/** Slab of 1-1/2 in with its top at 36 in: the soffit is at 34-1/2 in. */
const SOFFIT_IN = 34.5;

function partsUnder(support: Record<string, unknown>): readonly SupportSolid[] {
  const supports = [{ id: 'it', ...support } as SupportDraft];
  return supportSolids(pieceWith(SHAPE, 1.5, SQUARE, { supports, topElevationIn: 36 }));
}

function only(parts: readonly SupportSolid[]): SupportSolid {
  expect(parts).toHaveLength(1);
  return parts[0]!;
}

function rangeOf({ positions }: Solid, axis: 0 | 1 | 2): [number, number] {
  const along = positions.filter((_, i) => i % 3 === axis);
  return [Math.min(...along), Math.max(...along)];
}

describe('solids of supports', () => {
  test('every part of every example job is closed, with its normals outward', () => {
    const parts = exampleJobs().flatMap(({ job }) => job.pieces.flatMap((piece) => supportSolids(piece)));
    expect(parts.length).toBeGreaterThan(30);
    for (const { supportId, material, solid } of parts) {
      expect({ supportId, material, open: unbalancedEdges(solid), wrong: wrongNormals(solid) }).toEqual({
        supportId,
        material,
        open: [],
        wrong: [],
      });
      expect(slabVolumeIn3(solid)).toBeGreaterThan(0);
    }
  });

  test('supports of random jobs are closed and reach no higher than the soffit less their gap', () => {
    let seen = 0;
    for (let seed = 1; seed <= 40; seed++) {
      const reading = readJob(randomJob(seededRandom(seed)));
      if (!reading.ok) continue;
      for (const piece of reading.job.pieces) {
        for (const { supportId, solid } of supportSolids(piece)) {
          expect(unbalancedEdges(solid)).toEqual([]);
          if (supportId === null) continue;
          const { gapIn } = piece.supports.find(({ id }) => id === supportId)!;
          const topIn = piece.topElevationIn - piece.thicknessIn - gapIn;
          expect(rangeOf(solid, 2)[1]).toBeLessThanOrEqual(topIn + 1e-4);
          seen++;
        }
      }
    }
    expect(seen).toBeGreaterThan(50);
  });

  test('a leg of 3-1/2 x 1-1/2 in stands from the floor to a gap of 1/4 in under the soffit', () => {
    const { material, solid, pieceId, supportId } = only(
      partsUnder({ kind: 'leg', centre: { xIn: 40, yIn: 10 }, gapIn: 0.25 }),
    );
    expect({ material, pieceId, supportId }).toEqual({
      material: 'timber',
      pieceId: 'piece',
      supportId: 'it',
    });
    expect(rangeOf(solid, 2)).toEqual([0, SOFFIT_IN - 0.25]);
    expect(slabVolumeIn3(solid)).toBeCloseTo(3.5 * 1.5 * 34.25, 3);
    expect(openEdges(solid)).toEqual([]);
  });

  test('a stud wall of 96 in has two plates and seven studs', () => {
    const wall = {
      kind: 'wall',
      build: 'stud',
      from: { xIn: 0, yIn: 20 },
      to: { xIn: 96, yIn: 20 },
      widthIn: 3.5,
    };
    const { solid } = only(partsUnder(wall));
    // Studs at both ends and centred on 16, 32, 48, 64 and 80 in.
    const studsIn3 = 7 * 1.5 * 3.5 * (SOFFIT_IN - 3);
    expect(slabVolumeIn3(solid)).toBeCloseTo(2 * 96 * 1.5 * 3.5 + studsIn3, 1);
    expect(rangeOf(solid, 2)).toEqual([0, SOFFIT_IN]);
  });

  test('a block wall 24 in high starts 24 in below the soffit and shows its courses', () => {
    const wall = {
      kind: 'wall',
      build: 'block',
      from: { xIn: 0, yIn: 20 },
      to: { xIn: 96, yIn: 20 },
      widthIn: 8,
    };
    const { solid, material } = only(partsUnder({ ...wall, heightIn: 24 }));
    expect(material).toBe('block');
    expect(rangeOf(solid, 2)).toEqual([10.5, SOFFIT_IN]);
    const levelLines = new Set<number>();
    for (let i = 0; i < solid.inkLines.length; i += 6) {
      if (solid.inkLines[i + 2] === solid.inkLines[i + 5]) levelLines.add(solid.inkLines[i + 2]!);
    }
    expect([...levelLines].sort((p, q) => p - q)).toEqual([10.5, 18.5, 26.5, 34.5]);
  });

  test('a round pier is bedded in 3/8 in of mortar', () => {
    const pier = {
      kind: 'pier',
      build: 'concrete',
      footprint: { kind: 'circle', centre: { xIn: 40, yIn: 12 }, diameterIn: 8 },
    };
    const parts = partsUnder(pier);
    expect(parts.map(({ material }) => material)).toEqual(['concrete', 'mortar']);
    expect(rangeOf(parts[0]!.solid, 2)).toEqual([0, SOFFIT_IN - 0.375]);
    expect(rangeOf(parts[1]!.solid, 2)).toEqual([SOFFIT_IN - 0.375, SOFFIT_IN]);
    expect(slabVolumeIn3(parts[1]!.solid) / (Math.PI * 16 * 0.375)).toBeGreaterThan(0.99);
  });

  test('a cabinet of 36 in fills its plan, with doors 3/4 in proud, feet and a backing board', () => {
    const parts = partsUnder({
      kind: 'cabinet',
      corner: { xIn: 10, yIn: 1.5 },
      widthIn: 36,
      depthIn: 23.25,
      feet: { count: 4, shortestIn: 3.5, longestIn: 6, ratingLb: 300 },
      backingBoardIn: 0.5,
    });
    expect(parts.map(({ material }) => material)).toEqual(['painted-panel', 'steel', 'timber']);
    expect(rangeOf(parts[0]!.solid, 0)).toEqual([10, 46]);
    expect(rangeOf(parts[0]!.solid, 1)).toEqual([0.75, 24.75]);
    expect(rangeOf(parts[0]!.solid, 2)).toEqual([0, SOFFIT_IN - 0.5]);
    expect(slabVolumeIn3(parts[1]!.solid)).toBeCloseTo(4 * 1.5 ** 2 * 4, 3);
    expect(rangeOf(parts[2]!.solid, 2)).toEqual([SOFFIT_IN - 0.5, SOFFIT_IN]);
  });

  test('a ledger is a strip 5-1/2 in high', () => {
    const { solid } = only(
      partsUnder({ kind: 'ledger', from: { xIn: 0, yIn: 24.75 }, to: { xIn: 96, yIn: 24.75 }, widthIn: 1.5 }),
    );
    expect(slabVolumeIn3(solid)).toBeCloseTo(96 * 1.5 * 5.5, 2);
    expect(rangeOf(solid, 2)).toEqual([SOFFIT_IN - 5.5, SOFFIT_IN]);
  });

  test('a full bed is half an inch of mortar under the whole piece', () => {
    const { solid, material } = only(partsUnder({ kind: 'full-bed' }));
    expect(material).toBe('mortar');
    expect(slabVolumeIn3(solid)).toBeCloseTo(96 * 25.5 * 0.5, 2);
  });
});

describe('brackets', () => {
  const fixing = { kind: 'rated', ratedLoadLbf: 300, ratedAtIn: 10, ratedBy: 'maker' };
  const row = {
    kind: 'bracket',
    roots: [{ xIn: 20, yIn: 25.5 }],
    directionDeg: 270,
    reachIn: 16,
    seatWidthIn: 2,
    heelIn: 10,
    backing: 'timber-stud',
    fixing,
  };
  const yieldPsi = 36_000;

  test.each([
    ['flat-bar', { widthIn: 2, depthIn: 0.5 }, 2 * 0.5, 2, 0.5],
    ['angle', { legWidthIn: 2, legDepthIn: 3, wallIn: 0.25 }, 0.25 * (2 + 3 - 0.25), 2, 3],
    ['tee', { flangeWidthIn: 2, depthIn: 3, wallIn: 0.25 }, 0.25 * (2 + 3 - 0.25), 2, 3],
    ['tube', { widthIn: 2, depthIn: 2, wallIn: 0.125 }, 4 - 1.75 ** 2, 2, 2],
  ] as const)(
    'an arm of %s reaches 16 in from the wall, its heel 10 in down',
    (kind, size, areaIn2, widthIn, depthIn) => {
      const { solid, material } = only(partsUnder({ ...row, arm: { kind, ...size, yieldPsi } }));
      expect(material).toBe('steel');
      const heelThickIn = kind === 'flat-bar' ? 0.5 : 0.25;
      expect(slabVolumeIn3(solid)).toBeCloseTo(areaIn2 * 16 + widthIn * heelThickIn * (10 - depthIn), 3);
      expect(rangeOf(solid, 1)).toEqual([9.5, 25.5]);
      expect(rangeOf(solid, 2)).toEqual([SOFFIT_IN - 10, SOFFIT_IN]);
      expect(wrongNormals(solid)).toEqual([]);
    },
  );

  test('a knee brace has a strut from 12 in down the wall to the tip of its arm', () => {
    const arm = { kind: 'knee-brace', species: 'spf', widthIn: 1.5, depthIn: 3.5, dropIn: 12 };
    const { solid, material } = only(partsUnder({ ...row, make: 'timber', arm }));
    expect(material).toBe('timber');
    // Arm, post against the wall, and the strut: a parallelogram 3-1/2 in deep across a slope of 20 in.
    const plumbIn = (3.5 * 20) / 16;
    const levelIn = (plumbIn * 16) / 12;
    const strutIn2 = (16 * 12 - (16 - levelIn) * (12 - plumbIn)) / 2;
    expect(slabVolumeIn3(solid)).toBeCloseTo(1.5 * (16 * 3.5 + 1.5 * (10 - 3.5) + strutIn2), 2);
    expect(rangeOf(solid, 2)[0]).toBeCloseTo(SOFFIT_IN - 3.5 - 12, 4);
  });
});

describe('what the piece itself carries', () => {
  function carried(mounting: 'dropped-in' | 'under-rim' | 'cast-over'): SupportSolid {
    const cutouts: PieceDraft['cutouts'] = [
      {
        id: 'sink',
        purpose: 'sink',
        shape: { kind: 'rectangle', centre: { xIn: 48, yIn: 12 }, widthIn: 26, depthIn: 14 },
        sink: { mounting, bowlDepthIn: 8, rimIn: 0.75 },
      },
    ];
    return only(supportSolids(pieceWith(SHAPE, 1.5, SQUARE, { cutouts, topElevationIn: 36 })));
  }

  test.each([
    ['dropped-in', 36 - 8 - 0.125, 36.125],
    ['under-rim', SOFFIT_IN - 0.125 - 8 - 0.125, SOFFIT_IN],
    ['cast-over', SOFFIT_IN - 0.125 - 8 - 0.125, SOFFIT_IN],
  ] as const)('a sink %s hangs its 8 in bowl from its rim', (mounting, lowIn, highIn) => {
    const { solid, material, supportId } = carried(mounting);
    expect({ material, supportId }).toEqual({ material: 'sink', supportId: null });
    expect(rangeOf(solid, 2)).toEqual([lowIn, highIn]);
    expect(unbalancedEdges(solid)).toEqual([]);
  });

  test('a fixed load stands on the top', () => {
    const fixed = [
      { id: 'urn', name: 'Urn', centre: { xIn: 20, yIn: 12 }, widthIn: 12, depthIn: 10, weightLb: 60 },
    ];
    const { solid, material } = only(
      supportSolids(
        pieceWith(
          rectangle(96, 25.5).map((p) => ({ ...p, radiusIn: 0 })),
          1.5,
          SQUARE,
          { loads: { fixed } },
        ),
      ),
    );
    expect(material).toBe('equipment');
    expect(rangeOf(solid, 0)).toEqual([14, 26]);
    expect(rangeOf(solid, 2)[0]).toBe(36);
  });
});
