import { describe, expect, test } from 'vitest';
import { readJob } from '../../../src-core/job';
import { roundedAreaIn2 } from '../../../src-core/outline';
import type { Solid } from '../../../src-core/solid';
import { slabSolid, slabVolumeIn3 } from '../../../src-core/solid';
import { randomJob } from '../../support/random-job';
import { diceOf, seededRandom } from '../../support/seeded-random';
import { exampleJobs, openEdges, wrongNormals } from './closed-shell';
import { anyEdge, corners, pieceWith, SQUARE, shaped, WALL } from './pieces';

const BOX = corners([0, 0], [60, 0], [60, 25], [0, 25]);
const ELL = corners([0, 0], [80, 0], [80, 25], [25, 25, 2], [25, 60], [0, 60, 3]);

function expectVolume(solid: Solid, wantedIn3: number, share = 1e-3): void {
  expect(openEdges(solid)).toEqual([]);
  expect(wrongNormals(solid)).toEqual([]);
  expect(Math.abs(slabVolumeIn3(solid) / wantedIn3 - 1)).toBeLessThan(share);
}

/** Area of the faces that look straight up at the top of a solid, in2. */
function topAreaIn2({ positions, triangles }: Solid, topIn: number): number {
  let sumIn2 = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => 3 * triangles[t + k]!) as [number, number, number];
    if ([a, b, c].some((at) => Math.abs(positions[at + 2]! - topIn) > 1e-6)) continue;
    sumIn2 +=
      ((positions[b]! - positions[a]!) * (positions[c + 1]! - positions[a + 1]!) -
        (positions[c]! - positions[a]!) * (positions[b + 1]! - positions[a + 1]!)) /
      2;
  }
  return sumIn2;
}

describe('volume of a slab', () => {
  test('a plain 60 x 25 x 1-1/2 in slab holds 2250 in3, with 24 sharp vertices and 12 ink lines', () => {
    const solid = slabSolid(pieceWith(BOX, 1.5));
    expectVolume(solid, 2250, 1e-6);
    expect(solid.positions.length / 3).toBe(24);
    expect(solid.inkLines.length / 6).toBe(12);
  });

  test('the top of a disc of 8 in is shaded flat up to its 1/2 in round-over', () => {
    const disc = corners([0, 0, 4], [8, 0, 4], [8, 8, 4], [0, 8, 4]);
    const { positions, normals, triangles } = slabSolid(pieceWith(disc, 1.5, shaped('round-over', 0.5)));
    const ofTop: number[] = [];
    for (let t = 0; t < triangles.length; t += 3) {
      const vertices = [...triangles.slice(t, t + 3)];
      if (vertices.some((v) => positions[3 * v + 2] !== 36)) continue;
      ofTop.push(...vertices.map((v) => normals[3 * v + 2]!));
    }
    expect(ofTop.length).toBeGreaterThan(100);
    expect(Math.min(...ofTop)).toBeGreaterThan(1 - 2e-6);
  });

  test('it stands with its top at its elevation', () => {
    const { positions } = slabSolid(pieceWith(BOX, 1.5, SQUARE, { topElevationIn: 36 }));
    const heights = new Set(positions.filter((_, i) => i % 3 === 2));
    expect([...heights].sort()).toEqual([34.5, 36]);
  });

  test('an outline written clockwise gives the same slab', () => {
    const edges = [shaped('chamfer', 0.5), SQUARE, shaped('bullnose'), WALL];
    const there = slabSolid(pieceWith(BOX, 1.5, edges));
    // Corners turned round: edge k of the list now runs from corner k to corner k + 1 of the other way.
    const turned = [...BOX].reverse();
    const back = slabSolid(pieceWith(turned, 1.5, [edges[2]!, edges[1]!, edges[0]!, edges[3]!]));
    expectVolume(back, slabVolumeIn3(there), 1e-5);
  });

  test('an L with corner radii holds its rounded area times 2 in', () => {
    expectVolume(slabSolid(pieceWith(ELL, 2)), 2 * roundedAreaIn2(ELL));
  });

  test('a round opening of 14 in takes its cylinder away', () => {
    const piece = pieceWith(BOX, 1.5, SQUARE, {
      cutouts: [
        {
          id: 'hole',
          purpose: 'other',
          shape: { kind: 'circle', centre: { xIn: 30, yIn: 12 }, diameterIn: 14 },
        },
      ],
    });
    expectVolume(slabSolid(piece), 1.5 * (60 * 25 - Math.PI * 49));
  });

  test('a 1/2 in chamfer on four sides leaves a core, four wedges and four corner pyramids above the square part', () => {
    const [a, b, t, c] = [60, 25, 1.5, 0.5];
    const core = (a - 2 * c) * (b - 2 * c) * c;
    const wedges = 2 * (c ** 2 / 2) * (a - 2 * c) + 2 * (c ** 2 / 2) * (b - 2 * c);
    const pyramids = 4 * (c ** 3 / 3);
    const solid = slabSolid(pieceWith(BOX, t, shaped('chamfer', c)));
    expectVolume(solid, a * b * (t - c) + core + wedges + pyramids, 1e-6);
  });

  test('a chamfer round an L loses its triangle along every side, less at outside mitres and more at inside ones', () => {
    const sharp = ELL.map((corner) => ({ ...corner, radiusIn: 0 }));
    const c = 0.5;
    const areaIn2 = 80 * 25 + 25 * 35;
    const lostIn3 = (c ** 2 / 2) * (2 * 80 + 2 * 60) - 5 * (c ** 3 / 3) + c ** 3 / 3;
    expectVolume(slabSolid(pieceWith(sharp, 2, shaped('chamfer', c))), 2 * areaIn2 - lostIn3, 1e-6);
  });

  test('a 1/2 in round-over on a disc of 20 in loses what Pappus gives', () => {
    // Second theorem of Pappus and Guldin: area times the way of its centroid. Centroid of the spandrel between a
    // square corner and its quarter circle: r (10 - 3 pi) / (12 - 3 pi) from either side. Any handbook of mathematics.
    const [R, t, r] = [10, 1.5, 0.5];
    const lostIn2 = (1 - Math.PI / 4) * r ** 2;
    const centroidIn = (r * (10 - 3 * Math.PI)) / (12 - 3 * Math.PI);
    const wantedIn3 = Math.PI * R ** 2 * t - lostIn2 * 2 * Math.PI * (R - centroidIn);
    const disc = corners([0, 0, R], [2 * R, 0, R], [2 * R, 2 * R, R], [0, 2 * R, R]);
    const round = slabSolid(pieceWith(disc, t, shaped('round-over', r)));
    expectVolume(round, wantedIn3);
    // What is lost is small beside the slab, so it is measured by itself as well.
    const lostIn3 = slabVolumeIn3(slabSolid(pieceWith(disc, t))) - slabVolumeIn3(round);
    expect(Math.abs(lostIn3 / (lostIn2 * 2 * Math.PI * (R - centroidIn)) - 1)).toBeLessThan(0.04);
  });

  test('a chamfer that begins half way along the front ends in a plain return', () => {
    const split = corners([0, 0], [30, 0], [60, 0], [60, 25], [0, 25]);
    const solid = slabSolid(pieceWith(split, 1.5, [SQUARE, shaped('chamfer', 0.5), SQUARE, SQUARE, SQUARE]));
    expectVolume(solid, 2250 - (0.5 ** 2 / 2) * 30, 1e-5);
  });

  test('a chamfer beside a wall edge runs out to the wall', () => {
    const solid = slabSolid(pieceWith(BOX, 1.5, [shaped('chamfer', 0.5), WALL, WALL, WALL]));
    expectVolume(solid, 2250 - (0.5 ** 2 / 2) * 60, 1e-6);
  });

  test('a corner radius of 1/4 in runs out under a chamfer of 1/2 in and leaves the top square', () => {
    const round = BOX.map((corner) => ({ ...corner, radiusIn: 0.25 }));
    const solid = slabSolid(pieceWith(round, 1.5, shaped('chamfer', 0.5)));
    expect(openEdges(solid)).toEqual([]);
    expect(topAreaIn2(solid, 36)).toBeCloseTo(59 * 24, 3);
  });

  test('a profile of 3 in on a strip of 4 in is drawn smaller, not through itself', () => {
    const strip = corners([0, 0], [40, 0], [40, 4], [0, 4]);
    const solid = slabSolid(pieceWith(strip, 4, shaped('chamfer', 3)));
    expect(openEdges(solid)).toEqual([]);
    expect(topAreaIn2(solid, 36)).toBeGreaterThan(0);
    expect(slabVolumeIn3(solid)).toBeLessThan(640);
  });
});

describe('drip grooves', () => {
  const dripGroove = { widthIn: 0.25, depthIn: 0.375, setbackIn: 0.75 };
  const grooved = { kind: 'free', profile: { kind: 'square' }, dripGroove } as const;

  test('a 1/4 x 3/8 in groove under all four edges takes a ring away', () => {
    const ringIn2 = (60 - 1.5) * (25 - 1.5) - (60 - 2) * (25 - 2);
    expectVolume(slabSolid(pieceWith(BOX, 1.5, grooved)), 2250 - 0.375 * ringIn2, 1e-5);
  });

  test('a groove under the front alone stops 1 in short of both ends', () => {
    const solid = slabSolid(pieceWith(BOX, 1.5, [grooved, SQUARE, WALL, SQUARE]));
    expectVolume(solid, 2250 - 0.375 * 0.25 * (60 - 2), 1e-5);
    expect(2250 - slabVolumeIn3(solid)).toBeCloseTo(5.4375, 2);
  });

  test('a groove keeps clear of an opening in its way', () => {
    const cutouts = [
      {
        id: 'hole',
        purpose: 'other' as const,
        shape: { kind: 'rectangle' as const, centre: { xIn: 30, yIn: 3 }, widthIn: 10, depthIn: 4.5 },
      },
    ];
    const solid = slabSolid(pieceWith(BOX, 1.5, [grooved, SQUARE, WALL, SQUARE], { cutouts }));
    const runIn = 60 - 2 - (10 + 2 / 16);
    expectVolume(solid, 2250 - 1.5 * 45 - 0.375 * 0.25 * runIn, 2e-5);
  });
});

describe('closed shells', () => {
  test.each(
    exampleJobs().flatMap(({ file, job }) => job.pieces.map((piece) => ({ file, name: piece.name, piece }))),
  )('$name of $file is closed, with all normals outward', ({ piece }) => {
    const solid = slabSolid(piece);
    expect(openEdges(solid)).toEqual([]);
    expect(wrongNormals(solid)).toEqual([]);
    expect(slabVolumeIn3(solid)).toBeGreaterThan(0);
  });

  test('50 random pieces with a different edge each are closed', () => {
    let drawn = 0;
    for (let seed = 1; seed <= 50; seed++) {
      const reading = readJob(randomJob(seededRandom(seed)));
      if (!reading.ok) continue;
      const dice = diceOf(seededRandom(seed + 7));
      for (const piece of reading.job.pieces) {
        const solid = slabSolid({ ...piece, edges: piece.corners.map(() => anyEdge(dice)) });
        expect({ seed, open: openEdges(solid), wrong: wrongNormals(solid) }).toEqual({
          seed,
          open: [],
          wrong: [],
        });
        drawn++;
      }
    }
    expect(drawn).toBeGreaterThan(40);
  });

  test('a shell with a triangle missing is seen', () => {
    const solid = slabSolid(pieceWith(BOX, 1.5));
    expect(openEdges({ ...solid, triangles: solid.triangles.slice(3) })).toHaveLength(3);
    expect(wrongNormals({ ...solid, triangles: solid.triangles.slice().reverse() }).length).toBeGreaterThan(
      0,
    );
  });

  test('a piece whose outline crosses itself has no solid', () => {
    const solid = slabSolid(pieceWith(corners([0, 0], [10, 10], [10, 0], [0, 10]), 1.5));
    expect(solid.triangles).toHaveLength(0);
    expect(slabVolumeIn3(solid)).toBe(0);
  });
});
