import { describe, expect, test } from 'vitest';
import type { CutoutShape } from '../../../src-core/job';
import { mirrored, mirroredPoints } from '../../../src-core/openings';
import type { Point } from '../../../src-core/outline';
import { boundingBox, cutoutOutline, differenceAreaIn2, distanceIn } from '../../../src-core/outline';

const SHAPES: readonly CutoutShape[] = [
  { kind: 'circle', centre: { xIn: 4, yIn: 5 }, diameterIn: 3 },
  { kind: 'rectangle', centre: { xIn: 10, yIn: 6 }, widthIn: 8, depthIn: 5, radiusIn: 1, angleDeg: 20 },
  {
    kind: 'polygon',
    corners: [
      { xIn: 0, yIn: 0, radiusIn: 0 },
      { xIn: 9, yIn: 0, radiusIn: 1 },
      { xIn: 7, yIn: 4, radiusIn: 0 },
      { xIn: 0, yIn: 6, radiusIn: 0.5 },
    ],
  },
];

function outlineOf(shape: CutoutShape): readonly Point[] {
  const outline = cutoutOutline(shape, 1 / 64);
  if (!outline.ok) throw new Error('no outline');
  return outline.points;
}

describe('an opening traced from below', () => {
  test.each(SHAPES)('is the drawing left for right: $kind', (shape) => {
    const outline = outlineOf(shape);
    const box = boundingBox(shape.kind === 'polygon' ? shape.corners : outline);
    const flipped = mirroredPoints(outline, (box.minXIn + box.maxXIn) / 2);
    const traced = outlineOf(mirrored(shape));
    expect(differenceAreaIn2({ outer: traced, holes: [] }, { outer: flipped, holes: [] })).toBeLessThan(1e-3);
    expect(differenceAreaIn2({ outer: flipped, holes: [] }, { outer: traced, holes: [] })).toBeLessThan(1e-3);
  });

  test.each(SHAPES)('mirrored twice is the drawing again: $kind', (shape) => {
    const again = outlineOf(mirrored(mirrored(shape)));
    outlineOf(shape).forEach((point, i) => {
      expect(distanceIn(point, again[i]!)).toBeLessThan(1e-9);
    });
  });

  test('keeps its front in front: a 9 in front edge from x 0 stays at y 0', () => {
    const traced = mirrored(SHAPES[2]!);
    if (traced.kind !== 'polygon') throw new Error('no polygon');
    expect(traced.corners.map(({ xIn, yIn }) => [xIn, yIn])).toEqual([
      [9, 0],
      [0, 0],
      [2, 4],
      [9, 6],
    ]);
  });
});
