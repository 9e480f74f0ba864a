import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Piece } from '../../../src-core/job';
import { pieceRegion } from '../../../src-core/job';
import { distanceIn, isPointInPolygon } from '../../../src-core/outline';
import { fillPath, fillPlace, pieceScreed } from '../../../src-core/pour';
import { exampleJobs } from '../solid/closed-shell';
import { corners, pieceWith, SQUARE, WALL } from '../solid/pieces';

const COUNTER = corners([0, 0], [96, 0], [96, 25.5], [0, 25.5]);
/** 96 in along the back, and a return of 60 in toward the front at its left. */
const ELL = corners([0, -60], [25.5, -60], [25.5, 0], [121.5, 0], [121.5, 25.5], [0, 25.5]);
const SINK = {
  id: 'sink',
  name: 'Sink',
  purpose: 'sink' as const,
  shape: { kind: 'rectangle' as const, centre: { xIn: 48, yIn: 12 }, widthIn: 26, depthIn: 14 },
  sink: { mounting: 'under-rim' as const },
};
const TAP = {
  id: 'tap',
  purpose: 'tap' as const,
  shape: { kind: 'circle' as const, centre: { xIn: 48, yIn: 22.5 }, diameterIn: 1.375 },
};

const screedOf = (piece: Piece) => pieceScreed(piece, 'imperial');

describe('what the straightedge rides on', () => {
  test('a 25-1/2 in deep counter takes 37-1/2 in from form to form, across the narrow way', () => {
    const { runs, rails, plugs } = screedOf(pieceWith(COUNTER, 2));
    expect(runs).toMatchObject([{ rides: ['form', 'form'], spanIn: 25.5, straightedgeIn: 37.5 }]);
    expect(runs[0]!.words).toBe(
      'A straightedge of 37-1/2 in rides on the rim of the edge form on both sides, 25-1/2 in apart.',
    );
    expect([rails, plugs]).toEqual([[], []]);
  });

  test('a wall at the back stops it: 31-1/2 in, notched over a batten', () => {
    const { runs } = screedOf(pieceWith(COUNTER, 2, [SQUARE, SQUARE, WALL, SQUARE]));
    expect(runs).toMatchObject([{ rides: ['form', 'wall'], straightedgeIn: 31.5 }]);
    expect(runs[0]!.words).toMatch(/Notch the end at the wall over its batten/);
  });

  test('before a 14 in deep sink it rides from the front form to the rim, 5 in apart, and behind it over 6-1/2', () => {
    const { runs } = screedOf(pieceWith(COUNTER, 2, SQUARE, { cutouts: [SINK] }));
    expect(runs.slice(1)).toMatchObject([
      { rides: ['form', 'rim'], spanIn: 5, straightedgeIn: 17, trace: { part: { kind: 'cutout' } } },
      { rides: ['form', 'rim'], spanIn: 6.5, straightedgeIn: 18.5 },
    ]);
  });

  test('a tap plug of 1-3/8 in is no rim: it is set flush or struck off up to', () => {
    const { runs, plugs } = screedOf(pieceWith(COUNTER, 2, SQUARE, { cutouts: [TAP] }));
    expect(runs).toHaveLength(1);
    expect(plugs).toMatchObject([{ id: 'piece/plug/tap', trace: { part: { kind: 'cutout', id: 'tap' } } }]);
    expect(plugs[0]!.words).toMatch(/^The plug of the tap stops the straightedge if it stands proud/);
  });

  test('an L has one rail across from its inside corner, and two legs of 25-1/2 in', () => {
    const { runs, rails } = screedOf(pieceWith(ELL, 2));
    expect(rails).toHaveLength(1);
    const { a, b } = rails[0]!.line;
    expect(a).toEqual({ xIn: 25.5, yIn: 0 });
    expect(distanceIn(a, b)).toBeCloseTo(25.5, 9);
    expect(runs.map(({ spanIn }) => spanIn)).toEqual([25.5, 25.5]);
  });

  test('a slab 100 in wide has a rail along its middle, and rides of 50 in', () => {
    const { runs, rails } = screedOf(pieceWith(corners([0, 0], [140, 0], [140, 100], [0, 100]), 3));
    expect(runs.map(({ rides, spanIn }) => [...rides, spanIn])).toEqual([
      ['form', 'rail', 50],
      ['rail', 'form', 50],
    ]);
    expect(rails[0]!.line).toEqual({ a: { xIn: 0, yIn: 50 }, b: { xIn: 140, yIn: 50 } });
  });

  test('84 in is struck off in one, with a straightedge of 96', () => {
    const wide = screedOf(pieceWith(corners([0, 0], [120, 0], [120, 84], [0, 84]), 3));
    expect(wide.runs).toMatchObject([{ straightedgeIn: 96 }]);
    const wider = screedOf(pieceWith(corners([0, 0], [120, 0], [120, 84.5], [0, 84.5]), 3));
    expect(wider.rails).toHaveLength(1);
  });

  test('rims stand at the top of the slab, and with a fall all in one falling plane', () => {
    const level = screedOf(pieceWith(COUNTER, 2, SQUARE, { topElevationIn: 35.5 }));
    expect([level.datumIn, level.datumWords]).toEqual([
      35.5,
      'All rims, rails and battens to one level datum.',
    ]);
    const fall = screedOf(pieceWith(COUNTER, 2, SQUARE, { fall: { inPerFt: 0.25, towardDeg: 270 } }));
    expect(fall.datumWords).toContain('one plane that falls 1/4 in in 12 in');
  });
});

describe('the way concrete goes in', () => {
  test('fills a counter from the left, in strips of its whole depth', () => {
    const path = fillPath(pieceWith(COUNTER, 2))!;
    expect(fillPlace(path, 0, 0.25).xIn).toBeCloseTo(12, 6);
    expect(fillPlace(path, 0.75, 1).xIn).toBeCloseTo(84, 6);
  });

  test('goes round the inside corner of an L: from the far end of one leg to that of the other', () => {
    const path = fillPath(pieceWith(ELL, 2))!;
    const [first, last] = [fillPlace(path, 0, 0.02), fillPlace(path, 0.98, 1)];
    const ends = [first, last].sort((p, q) => p.xIn - q.xIn);
    expect(ends[0]!.yIn).toBeLessThan(-55);
    expect(ends[1]!.xIn).toBeGreaterThan(115);
    const places = Array.from({ length: 40 }, (_, k) => fillPlace(path, k / 40, (k + 1) / 40));
    for (let k = 1; k < 40; k++) {
      // Strips of a fortieth of 3978 in2 are 3.9 in long; at the corner the way turns across one leg.
      expect(distanceIn(places[k - 1]!, places[k]!)).toBeLessThan(25.5);
    }
  });

  test('goes beside a sink, on the wider side of it', () => {
    const path = fillPath(pieceWith(COUNTER, 2, SQUARE, { cutouts: [SINK] }))!;
    // Half of the slab lies left of x = 48, and there the strip behind the sink, 19 to 25-1/2, is the wider.
    const place = fillPlace(path, 0.499, 0.501);
    expect(place.xIn).toBeCloseTo(48, 6);
    expect(place.yIn).toBeCloseTo(22.25, 6);
  });

  test.each(
    exampleJobs().flatMap(({ file, job }) => job.pieces.map((piece) => ({ file, name: piece.name, piece }))),
  )('tips every bucket onto $name of $file, never into an opening', ({ piece }) => {
    const region = pieceRegion(piece);
    if (!region.ok) throw new Error('not drawn');
    const path = fillPath(piece)!;
    expect(path.areaIn2).toBeGreaterThan(0);
    for (let k = 0; k < 60; k++) {
      const at = fillPlace(path, k / 60, (k + 1) / 60);
      expect(isPointInPolygon(at, region.outer)).toBe(true);
      for (const hole of region.holes) expect(isPointInPolygon(at, hole)).toBe(false);
    }
  });

  test('covers any L, T or U whole: its legs have the area of the slab', () => {
    const size = fc.double({ min: 12, max: 60, noNaN: true });
    fc.assert(
      fc.property(size, size, size, size, size, fc.boolean(), (a, b, c, d, depth, isU) => {
        const shape = isU
          ? corners(
              [0, 0],
              [a, 0],
              [a, c],
              [a + b, c],
              [a + b, 0],
              [a + b + d, 0],
              [a + b + d, c + depth],
              [0, c + depth],
            )
          : corners(
              [0, 0],
              [a + b + d, 0],
              [a + b + d, depth],
              [a + b, depth],
              [a + b, depth + c],
              [a, depth + c],
              [a, depth],
              [0, depth],
            );
        const wantedIn2 = isU ? (a + d) * c + (a + b + d) * depth : (a + b + d) * depth + b * c;
        const piece = pieceWith(shape, 2);
        expect(Math.abs(fillPath(piece)!.areaIn2 / wantedIn2 - 1)).toBeLessThan(1e-6);
        // The stem of a T may be cut off across its foot, from one inside corner to the other.
        const rails = screedOf(piece).rails.filter(({ id }) => id.includes('corner')).length;
        expect(isU ? [2] : [1, 2]).toContain(rails);
      }),
    );
  });
});
