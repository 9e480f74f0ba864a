import { describe, expect, test } from 'vitest';
import { bearingPatches, pieceRegion, readJob } from '../../../src-core/job';
import { polygonAreaIn2, signedAreaIn2 } from '../../../src-core/outline';
import { smallJob, withValue } from '../../support/small-job';

function pieceOf(value: unknown, index: number) {
  const reading = readJob(value);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.job.pieces[index]!;
}

/** Straight middle of each segment and the edge that it is said to lie on. */
function edgesAtMiddles(corners: { xIn: number; yIn: number; radiusIn?: number }[]) {
  const region = pieceRegion({
    ...pieceOf(smallJob(), 1),
    corners: corners.map((c) => ({ radiusIn: 0, ...c })),
  });
  if (!region.ok) throw new Error(JSON.stringify(region.problems));
  return region.outer.map(({ xIn, yIn }, k) => {
    const next = region.outer[(k + 1) % region.outer.length]!;
    return { xIn: (xIn + next.xIn) / 2, yIn: (yIn + next.yIn) / 2, edge: region.edgeOfPoint[k] };
  });
}

describe('a piece in plan', () => {
  const ccw = [
    { xIn: 0, yIn: 0 },
    { xIn: 60, yIn: 0 },
    { xIn: 60, yIn: 16 },
    { xIn: 0, yIn: 16 },
  ];

  test('a 60 x 16 in outline keeps its edges, whichever way round it is written', () => {
    expect(edgesAtMiddles(ccw)).toEqual([
      { xIn: 30, yIn: 0, edge: 0 },
      { xIn: 60, yIn: 8, edge: 1 },
      { xIn: 30, yIn: 16, edge: 2 },
      { xIn: 0, yIn: 8, edge: 3 },
    ]);
    const clockwise = [...ccw].reverse();
    // Written as back left, back right, front right, front left: edge 0 is the back, 1 the right end.
    const found = new Map(edgesAtMiddles(clockwise).map(({ xIn, yIn, edge }) => [`${xIn},${yIn}`, edge]));
    expect(found).toEqual(
      new Map([
        ['0,8', 3],
        ['30,0', 2],
        ['60,8', 1],
        ['30,16', 0],
      ]),
    );
  });

  test('a rounded corner shares its arc between its two edges, either way round', () => {
    const rounded = ccw.map((corner, i) => (i === 1 ? { ...corner, radiusIn: 4 } : corner));
    for (const corners of [rounded, [...rounded].reverse()]) {
      const clockwise = corners[0] !== rounded[0];
      const [front, right] = clockwise ? [2, 1] : [0, 1];
      for (const { xIn, yIn, edge } of edgesAtMiddles(corners)) {
        if (xIn <= 56 || yIn >= 4) continue;
        expect(edge).toBe(60 - xIn > yIn ? front : right);
      }
    }
  });

  test('openings come in the order of the file, counter-clockwise', () => {
    const region = pieceRegion(pieceOf(smallJob(), 0));
    if (!region.ok) throw new Error('sound');
    expect(region.holes).toHaveLength(2);
    // 20 x 14 in with 2 in radii: 280 - (4 - pi) 2^2 = 276.57 in2; a 1-1/2 in circle: 1.767 in2.
    expect(polygonAreaIn2(region.holes[0]!)).toBeCloseTo(276.57, 0);
    expect(Math.abs(polygonAreaIn2(region.holes[1]!) - 1.767)).toBeLessThan(0.06);
    expect(region.holes.every((hole) => signedAreaIn2(hole) > 0)).toBe(true);
  });

  test('a radius that does not fit comes back as a problem with a path below the piece', () => {
    const piece = pieceOf(smallJob(), 0);
    const corners = piece.corners.map((corner, i) => (i === 2 ? { ...corner, radiusIn: 30 } : corner));
    const region = pieceRegion({ ...piece, corners });
    expect(region).toMatchObject({
      ok: false,
      problems: [{ code: 'radius-too-large', path: 'corners[2].radiusIn', pieceId: 'counter' }],
    });
  });
});

describe('supports in plan', () => {
  const outline = [
    { xIn: 0, yIn: 0 },
    { xIn: 96, yIn: 0 },
    { xIn: 96, yIn: 24 },
    { xIn: 0, yIn: 24 },
  ];

  test('a 30 x 24 in cabinet that faces left bears on two sides and two rails, 3/4 in thick', () => {
    const draft = {
      kind: 'cabinet',
      id: 'leg',
      corner: { xIn: 30, yIn: 0 },
      angleDeg: 90,
      widthIn: 24,
      depthIn: 30,
      subTop: true,
    };
    const cabinet = pieceOf(withValue(smallJob(), 'pieces[0].supports[2]', draft), 0).supports[2]!;
    const patches = bearingPatches(cabinet, outline);
    expect(patches.map(({ part }) => part)).toEqual([
      'left-side',
      'right-side',
      'front-rail',
      'back-rail',
      'sub-top',
    ]);
    expect(patches.map(({ corners }) => polygonAreaIn2(corners))).toEqual([
      expect.closeTo(22.5, 6),
      expect.closeTo(22.5, 6),
      expect.closeTo(16.875, 6),
      expect.closeTo(16.875, 6),
      expect.closeTo(720, 6),
    ]);
    // Its front runs up along x = 30 and its depth reaches to x = 0.
    const corners = patches[4]!.corners;
    expect(Math.min(...corners.map(({ xIn }) => xIn))).toBeCloseTo(0, 9);
    expect(Math.max(...corners.map(({ yIn }) => yIn))).toBeCloseTo(24, 9);
  });

  test('a bracket row gives one patch an arm, as long as its reach and as wide as its seat', () => {
    const arms = bearingPatches(pieceOf(smallJob(), 1).supports[1]!, outline);
    expect(arms.map(({ part, index }) => [part, index])).toEqual([
      ['arm', 0],
      ['arm', 1],
    ]);
    expect(polygonAreaIn2(arms[0]!.corners)).toBeCloseTo(16, 9);
    expect(Math.max(...arms[0]!.corners.map(({ yIn }) => yIn))).toBeCloseTo(54.75, 9);
  });

  test('a full bed without corners fills the outline', () => {
    const bedded = withValue(smallJob(), 'pieces[0].supports[2]', { kind: 'full-bed', id: 'leg' });
    const [bed] = bearingPatches(pieceOf(bedded, 0).supports[2]!, outline);
    expect(bed!.corners).toEqual(outline);
  });
});
