import { describe, expect, test } from 'vitest';
import type { JobDraft, Piece } from '../../../src-core/job';
import { pieceRegion, readJob } from '../../../src-core/job';
import type { Region } from '../../../src-core/outline';
import {
  boundingBox,
  distanceIn,
  isPointInPolygon,
  isPointOnSlab,
  polygonPerimeterIn,
  regionAreaIn2,
  whereInPolygon,
} from '../../../src-core/outline';
import { standoffPlaces } from '../../../src-core/solid';
import { randomJob } from '../../support/random-job';
import { seededRandom } from '../../support/seeded-random';
import { corners, pieceWith, SQUARE } from './pieces';

type PieceDraft = JobDraft['pieces'][number];

const sinkIn = (xIn: number, widthIn: number, depthIn: number): PieceDraft['cutouts'] => [
  {
    id: 'sink',
    purpose: 'sink',
    shape: { kind: 'rectangle', centre: { xIn, yIn: 12.5 }, widthIn, depthIn, radiusIn: 1 },
  },
];

const SHAPES: Readonly<Record<string, Piece>> = {
  'a counter': pieceWith(corners([0, 0], [96, 0], [96, 25.5], [0, 25.5]), 1.5),
  'an L': pieceWith(corners([0, -60], [25.5, -60], [25.5, 0, 1.5], [121.5, 0], [121.5, 25.5], [0, 25.5]), 2),
  'a counter round a sink': pieceWith(corners([0, 0], [72, 0], [72, 25], [0, 25]), 1.5, SQUARE, {
    cutouts: sinkIn(36, 33, 21),
  }),
  'a disc': pieceWith(corners([0, 0, 18], [36, 0, 18], [36, 36, 18], [0, 36, 18]), 1.5),
  'a narrow ledge': pieceWith(corners([0, 0], [120, 0], [120, 5], [0, 5]), 1.5),
  'a triangle': pieceWith(corners([0, 0], [70, 0], [10, 40]), 1.5),
};

function regionOf(piece: Piece): Region {
  const region = pieceRegion(piece);
  if (!region.ok) throw new Error('no region');
  return region;
}

/** Farthest of many random points of the slab from the nearest place, in. */
function farthestIn(region: Region, places: readonly { xIn: number; yIn: number }[], tries: number): number {
  const random = seededRandom(5);
  const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(region.outer);
  const inside = Array.from({ length: tries }, () => ({
    xIn: minXIn + random() * (maxXIn - minXIn),
    yIn: minYIn + random() * (maxYIn - minYIn),
  })).filter((point) => isPointOnSlab(point, region));
  const points = [...inside, ...region.outer, ...region.holes.flat()];
  return Math.max(...points.map((point) => Math.min(...places.map((place) => distanceIn(point, place)))));
}

function expectThreeFacts(region: Region, spacingIn: number, tries: number): void {
  const places = standoffPlaces(region, spacingIn);
  expect(farthestIn(region, places, tries)).toBeLessThanOrEqual(spacingIn);
  for (const place of places) {
    expect(isPointInPolygon(place, region.outer)).toBe(true);
    for (const hole of region.holes) expect(whereInPolygon(place, hole)).toBe('outside');
  }
  const perimeterIn = polygonPerimeterIn(region.outer);
  const most = (1.1 * regionAreaIn2(region)) / (0.866 * spacingIn ** 2) + perimeterIn / spacingIn;
  expect(places.length).toBeLessThanOrEqual(most);
}

describe('standoffs', () => {
  const cases = Object.keys(SHAPES).flatMap((shape) =>
    [8, 12, 20].map((spacingIn) => ({ shape, spacingIn })),
  );

  test.each(cases)(
    'under $shape at $spacingIn in leave no point farther than that, stand in no opening and are not too many',
    ({ shape, spacingIn }) => expectThreeFacts(regionOf(SHAPES[shape]!), spacingIn, 1500),
  );

  test('the same holds for 20 random pieces at 10 in', () => {
    let seen = 0;
    for (let seed = 1; seed <= 20; seed++) {
      const reading = readJob(randomJob(seededRandom(seed)));
      if (!reading.ok) continue;
      expectThreeFacts(regionOf(reading.job.pieces[0]!), 10, 200);
      seen++;
    }
    expect(seen).toBeGreaterThan(15);
  });

  test('rows of a wide slab lie 0.866 of the spacing apart, every second one shifted by half', () => {
    const places = standoffPlaces(
      regionOf(pieceWith(corners([0, 0], [120, 0], [120, 60], [0, 60]), 1.5)),
      12,
    );
    const heights = [...new Set(places.map(({ yIn }) => Math.round(yIn * 1000) / 1000))].sort(
      (p, q) => p - q,
    );
    const middle = heights.filter((yIn) => yIn > 10 && yIn < 50);
    expect(middle[1]! - middle[0]!).toBeCloseTo(12 * 0.866, 1);
    const firstOf = (yIn: number) =>
      Math.min(...places.filter((p) => Math.abs(p.yIn - yIn) < 0.01).map(({ xIn }) => xIn));
    expect(Math.abs(firstOf(middle[1]!) - firstOf(middle[0]!))).toBeCloseTo(6, 6);
  });

  test('a spacing of nothing is refused', () => {
    expect(() => standoffPlaces(regionOf(SHAPES['a counter']!), 0)).toThrow('not positive');
  });
});
