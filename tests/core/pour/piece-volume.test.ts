import { describe, expect, test } from 'vitest';
import type { Piece } from '../../../src-core/job';
import { pieceVolume } from '../../../src-core/pour';
import { slabSolid, slabVolumeIn3 } from '../../../src-core/solid';
import { exampleJobs } from '../solid/closed-shell';
import { corners, pieceWith, SQUARE, shaped, WALL } from '../solid/pieces';

const BOX = corners([0, 0], [60, 0], [60, 25], [0, 25]);
const disc = (radiusIn: number) =>
  corners(
    [0, 0, radiusIn],
    [2 * radiusIn, 0, radiusIn],
    [2 * radiusIn, 2 * radiusIn, radiusIn],
    [0, 2 * radiusIn, radiusIn],
  );
/** Area of the spandrel between a square corner and its quarter circle, over r^2, and how far its centroid lies from either side, over r. */
const SPANDREL_AREA = 1 - Math.PI / 4;
const SPANDREL_CENTROID = (10 - 3 * Math.PI) / (12 - 3 * Math.PI);

/** Within a fiftieth of the tenth of a percent that is asked for, and its parts add up to the last bit. */
function expectVolume(piece: Piece, wantedIn3: number, share = 2e-5): void {
  const { oneIn3, parts } = pieceVolume(piece);
  expect(Math.abs(oneIn3 / wantedIn3 - 1)).toBeLessThan(share);
  expect(parts.reduce((sum, { volumeIn3 }) => sum + volumeIn3, 0)).toBe(oneIn3);
  expect(parts.some(({ id }) => id.endsWith('/fitted'))).toBe(false);
}

describe('volume of a piece, against closed forms of plane and solid geometry', () => {
  test('an L of 2 in with a 2 in inside radius and a 3 in outside radius', () => {
    const ell = corners([0, 0], [80, 0], [80, 25], [25, 25, 2], [25, 60], [0, 60, 3]);
    const areaIn2 = 80 * 25 + 25 * 35 + SPANDREL_AREA * 2 ** 2 - SPANDREL_AREA * 3 ** 2;
    expectVolume(pieceWith(ell, 2), 2 * areaIn2, 1e-12);
  });

  test('a 14 in round opening and an 18 x 12 in one with 2 in corners', () => {
    const piece = pieceWith(BOX, 1.5, SQUARE, {
      cutouts: [
        {
          id: 'round',
          purpose: 'other',
          shape: { kind: 'circle', centre: { xIn: 15, yIn: 12 }, diameterIn: 14 },
        },
        {
          id: 'sink',
          purpose: 'other',
          shape: {
            kind: 'rectangle',
            centre: { xIn: 42, yIn: 12 },
            widthIn: 18,
            depthIn: 12,
            radiusIn: 2,
          },
        },
      ],
    });
    const openIn2 = Math.PI * 49 + 18 * 12 - 4 * SPANDREL_AREA * 2 ** 2;
    expectVolume(piece, 1.5 * (60 * 25 - openIn2), 1e-12);
    expect(pieceVolume(piece).parts.map(({ id, trace }) => [id, trace.part.kind])).toEqual([
      ['piece/outline', 'piece'],
      ['piece/cutout/round', 'cutout'],
      ['piece/cutout/sink', 'cutout'],
    ]);
  });

  test('a bullnose of 1 in radius round a disc of 20 in, by Pappus', () => {
    // Two spandrels, at soffit and top, each carried round its centroid's circle.
    const lostIn3 = 2 * SPANDREL_AREA * 2 * Math.PI * (10 - SPANDREL_CENTROID);
    expectVolume(pieceWith(disc(10), 2, shaped('bullnose')), Math.PI * 100 * 2 - lostIn3);
  });

  test('a bullnose of 1 in radius round a 60 x 25 in slab with 4 in corners, by Pappus', () => {
    const round = corners([0, 0, 4], [60, 0, 4], [60, 25, 4], [0, 25, 4]);
    const straightIn3 = SPANDREL_AREA * (2 * 52 + 2 * 17);
    const cornersIn3 = SPANDREL_AREA * 2 * Math.PI * (4 - SPANDREL_CENTROID);
    const areaIn2 = 60 * 25 - 4 * SPANDREL_AREA * 4 ** 2;
    expectVolume(pieceWith(round, 2, shaped('bullnose')), 2 * areaIn2 - 2 * (straightIn3 + cornersIn3));
  });

  test('a 1/2 in round-over on an inside arc of 2 in, by Pappus outward of the arc', () => {
    const ell = corners([0, 0], [60, 0], [60, 20], [20, 20, 2], [20, 50], [0, 50]);
    const edges = [SQUARE, SQUARE, shaped('round-over', 0.5), shaped('round-over', 0.5), SQUARE, SQUARE];
    const areaIn2 = 60 * 20 + 20 * 30 + SPANDREL_AREA * 2 ** 2;
    const sectionIn2 = SPANDREL_AREA * 0.25;
    const straightIn3 = sectionIn2 * (38 + 28);
    const arcIn3 = sectionIn2 * (Math.PI / 2) * (2 + 0.5 * SPANDREL_CENTROID);
    expectVolume(pieceWith(ell, 1.5, edges), 1.5 * areaIn2 - straightIn3 - arcIn3);
  });

  test('a mitred 1/2 in chamfer: core, four wedges, four corner pyramids', () => {
    const [a, b, t, c] = [60, 25, 1.5, 0.5];
    const core = (a - 2 * c) * (b - 2 * c) * c;
    const wedges = c ** 2 * (a - 2 * c) + c ** 2 * (b - 2 * c);
    const wantedIn3 = a * b * (t - c) + core + wedges + 4 * (c ** 3 / 3);
    expectVolume(pieceWith(BOX, t, shaped('chamfer', c)), wantedIn3, 1e-12);
  });

  test('a 1 in chamfer that meets a 1/2 in one at a 60 degree corner, by slices', () => {
    // Equilateral triangle of side 40; two edges lose 1 - z below the top over 1 in, the third half of that over 1/2 in.
    const h = 20 * Math.sqrt(3);
    const triangle = corners([0, 0], [40, 0], [20, h]);
    const edges = [shaped('chamfer', 1), shaped('chamfer', 1), shaped('chamfer', 0.5)];
    // The lines of an equilateral triangle moved in by d1, d2, d3 leave one of height h - d1 - d2 - d3.
    const areaAt = (upIn: number) => {
      const [big, small] = [Math.max(0, upIn - 1), Math.max(0, upIn - 1.5)];
      return (h - 2 * big - small) ** 2 / Math.sqrt(3);
    };
    const slices = 20_000;
    let wantedIn3 = 0;
    for (let k = 0; k < slices; k++) wantedIn3 += (areaAt(((k + 0.5) / slices) * 2) * 2) / slices;
    expectVolume(pieceWith(triangle, 2, edges), wantedIn3, 1e-8);
  });

  test('a chamfer that meets a wall edge loses its triangle over the whole front, and the front alone is charged', () => {
    const piece = pieceWith(BOX, 1.5, [shaped('chamfer', 0.5), WALL, WALL, WALL]);
    expectVolume(piece, 2250 - 0.125 * 60, 1e-12);
    expect(pieceVolume(piece).parts.at(-1)).toMatchObject({ id: 'piece/edge/1', volumeIn3: -7.5 });
  });

  test('a drip groove 1/4 x 3/8 in under the front that stops 1 in short of both ends', () => {
    const dripGroove = { widthIn: 0.25, depthIn: 0.375, setbackIn: 0.75 };
    const front = { kind: 'free', profile: { kind: 'square' }, dripGroove } as const;
    expectVolume(pieceWith(BOX, 1.5, [front, SQUARE, WALL, SQUARE]), 2250 - 0.375 * 0.25 * 58, 1e-6);
  });

  test('an outline written clockwise holds the same', () => {
    const turned = [...BOX].reverse();
    const [there, back] = [BOX, turned].map(
      (shape) => pieceVolume(pieceWith(shape, 1.5, shaped('ogee'))).oneIn3,
    );
    expect(Math.abs(there! / back! - 1)).toBeLessThan(1e-12);
  });

  test('three copies hold three times as much', () => {
    const { oneIn3, volumeIn3 } = pieceVolume(pieceWith(BOX, 1.5, SQUARE, { copies: 3 }));
    expect([oneIn3, volumeIn3]).toEqual([2250, 6750]);
  });
});

describe('where sums by edge do not hold', () => {
  test('a profile of 3 in on a strip of 4 in takes what the drawn slab loses, and says so', () => {
    const strip = corners([0, 0], [40, 0], [40, 4], [0, 4]);
    const piece = pieceWith(strip, 4, shaped('chamfer', 3));
    const { oneIn3, parts } = pieceVolume(piece);
    expect(parts.at(-1)?.id).toBe('piece/fitted');
    expect(Math.abs(oneIn3 / slabVolumeIn3(slabSolid(piece)) - 1)).toBeLessThan(1e-9);
  });

  test('an outline that crosses itself has no volume', () => {
    const piece = pieceWith(corners([0, 0], [10, 10], [10, 0], [0, 10]), 1.5);
    expect(pieceVolume(piece)).toMatchObject({ isDrawn: false, volumeIn3: 0, parts: [] });
  });
});

test.each(
  exampleJobs().flatMap(({ file, job }) => job.pieces.map((piece) => ({ file, name: piece.name, piece }))),
)('$name of $file agrees within a thousandth with the solid that is drawn', ({ piece }) => {
  expect(Math.abs(pieceVolume(piece).oneIn3 / slabVolumeIn3(slabSolid(piece)) - 1)).toBeLessThan(1e-3);
});
