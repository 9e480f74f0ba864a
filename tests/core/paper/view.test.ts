import { describe, expect, test } from 'vitest';
import type { Figure } from '../../../src-core/figure';
import { jobView } from '../../../src-core/paper';
// the order of painting is the one part of the room that is looked at from inside
import { farthestFirst } from '../../../src-core/paper/depth-order';
import { dot, drawnOutFaces, type Face, type Place3 } from '../../../src-core/paper/view-faces';
import { wholeAgain } from '../../../src-core/paper/whole-again';
import { seededRandom } from '../../support/seeded-random';
import { exampleJob, ROOM, wordsOf } from './jobs';

const EYE = { x: -0.5, y: -Math.SQRT1_2, z: 0.5 };
/** Right and up of the picture, square to the eye and to each other. */
const RIGHT = { x: Math.SQRT2 / Math.sqrt(3), y: -1 / Math.sqrt(3), z: 0 };
const UP = {
  x: EYE.y * RIGHT.z - EYE.z * RIGHT.y,
  y: EYE.z * RIGHT.x - EYE.x * RIGHT.z,
  z: EYE.x * RIGHT.y - EYE.y * RIGHT.x,
};
const onPlane = (place: Place3) => ({ x: dot(place, RIGHT), y: -dot(place, UP) });

function isInside(
  at: { x: number; y: number },
  loops: readonly (readonly { x: number; y: number }[])[],
): boolean {
  let isIn = false;
  for (const loop of loops) {
    loop.forEach((a, i) => {
      const b = loop[(i + 1) % loop.length]!;
      if (a.y > at.y === b.y > at.y) return;
      if (at.x < a.x + ((b.x - a.x) * (at.y - a.y)) / (b.y - a.y)) isIn = !isIn;
    });
  }
  return isIn;
}

/** The place of a face that stands behind a place of the picture, by its nearness to the eye. */
function nearness({ normal, offIn }: Face, at: { x: number; y: number }): number {
  const on = (axis: 'x' | 'y' | 'z') => RIGHT[axis] * at.x - UP[axis] * at.y;
  const foot = { x: on('x'), y: on('y'), z: on('z') };
  return (offIn - dot(normal, foot)) / dot(normal, EYE);
}

const look = { pen: 'thin' as const, fillOf: () => 'paper' as const };

function box(x: number, y: number, z: number, [w, d, h]: readonly [number, number, number]): Face[] {
  const loop = [
    { x, y, z },
    { x: x + w, y, z },
    { x: x + w, y: y + d, z },
    { x, y: y + d, z },
  ];
  return drawnOutFaces([loop], { x: 0, y: 0, z: h }, look);
}

/** Whole faces of which a picture shows another than the nearest, at places spread over it. */
function wronglyShown(whole: readonly Face[], painted: readonly Face[], random: () => number): string[] {
  const flat = (face: Face) => face.loops.map((loop) => loop.map(onPlane));
  const wholes = whole.map((face) => ({ face, loops: flat(face) }));
  const layers = painted.map((face) => ({ face: face.partOf ?? face, loops: flat(face) }));
  const wrong: string[] = [];
  for (let k = 0; k < 1500; k++) {
    const at = { x: -30 + 90 * random(), y: -60 + 90 * random() };
    const hit = wholes
      .filter(({ loops }) => isInside(at, loops))
      .map(({ face }) => ({ face, near: nearness(face, at) }))
      .sort((a, b) => b.near - a.near);
    // two faces as near as each other may come either way
    if (hit.length > 1 && hit[0]!.near - hit[1]!.near < 1e-3) continue;
    const shown = layers.findLast(({ loops }) => isInside(at, loops))?.face;
    if (shown !== hit[0]?.face) wrong.push(`${at.x.toFixed(3)} ${at.y.toFixed(3)}`);
  }
  return wrong;
}

describe('painting from the farthest to the nearest', () => {
  test.each([1, 2, 3, 4, 5, 6])(
    'shows the nearest of twenty boxes that stand in each other (seed %i)',
    (seed) => {
      const random = seededRandom(seed);
      const faces = Array.from({ length: 20 }, () =>
        box(30 * random(), 30 * random(), 20 * random(), [
          2 + 12 * random(),
          2 + 12 * random(),
          2 + 12 * random(),
        ]),
      ).flat();
      const seen = faces.filter(({ normal }) => dot(normal, EYE) > 0);
      const painted = farthestFirst(seen, EYE);
      expect(wronglyShown(seen, painted, random)).toEqual([]);
      const joined = wholeAgain(painted, onPlane);
      expect(joined.length).toBeLessThanOrEqual(painted.length);
      expect(wronglyShown(seen, joined, random)).toEqual([]);
    },
  );

  test('shows a slab with an opening over boxes that touch its soffit', () => {
    const square = (low: number, high: number, z: number) => [
      { x: low, y: low, z },
      { x: high, y: low, z },
      { x: high, y: high, z },
      { x: low, y: high, z },
    ];
    const slab = drawnOutFaces([square(0, 30, 20), square(8, 20, 20).reverse()], { x: 0, y: 0, z: 2 }, look);
    const faces = [...slab, ...box(0, 0, 0, [15, 30, 20]), ...box(15, 0, 0, [15, 30, 20])];
    const seen = faces.filter(({ normal }) => dot(normal, EYE) > 0);
    const random = seededRandom(7);
    expect(wronglyShown(seen, wholeAgain(farthestFirst(seen, EYE), onPlane), random)).toEqual([]);
  });

  test('a wrong order would be seen', () => {
    const faces = [...box(0, 0, 0, [10, 10, 10]), ...box(2, -8, 0, [10, 6, 14])];
    const seen = faces.filter(({ normal }) => dot(normal, EYE) > 0);
    const painted = [...farthestFirst(seen, EYE)].reverse();
    expect(wronglyShown(seen, painted, seededRandom(1)).length).toBeGreaterThan(0);
  });
});

describe('the view of a job', () => {
  const linesOf = ({ marks }: Figure, pen: string) =>
    marks.flatMap((mark) => (mark.kind === 'line' && mark.pen === pen ? [mark] : []));
  const slopeOf = ({ from, to }: { from: { x: number; y: number }; to: { x: number; y: number } }) => ({
    lengthIn: Math.hypot(to.x - from.x, to.y - from.y),
    isUpright: Math.abs(to.x - from.x) < 1e-9,
    rises: (to.y - from.y) * (to.x - from.x) < 0,
  });

  // The gate-pier cap is 20 x 20 x 1-1/2 in. At an elevation of 30 degrees and sin2(turn) = tan2(30): fx = fz = cos 30 =
  // 0.8660, fy = sqrt(1 - cos2(30) x 2/3) = 0.7071; fy / fx = 0.8165. Plane geometry.
  test('draws lengths to the right and upright to one scale, depths to 0.8165 of it', () => {
    const figure = jobView(exampleJob('gate-pier-cap', 'imperial'), ROOM)!;
    const lines = linesOf(figure, 'visible').map(slopeOf);
    const front = Math.max(
      ...lines.filter(({ isUpright, rises }) => !isUpright && rises).map(({ lengthIn }) => lengthIn),
    );
    const side = Math.max(
      ...lines.filter(({ isUpright, rises }) => !isUpright && !rises).map(({ lengthIn }) => lengthIn),
    );
    const upright = Math.max(...lines.filter(({ isUpright }) => isUpright).map(({ lengthIn }) => lengthIn));
    expect(side / front).toBeCloseTo(Math.sqrt(2 / 3), 6);
    expect(upright / 1.5).toBeCloseTo(front / 20, 6);
  });

  test('names every slab of the galley that is seen', () => {
    const words = wordsOf(jobView(exampleJob('boathouse-galley', 'imperial'), ROOM)!);
    expect(words).toEqual(
      expect.arrayContaining(['Serving counter', 'Bar ledge', 'Stove hearth', 'Gate-pier cap, 3 of them']),
    );
  });

  test('leaves out temporary supports: the galley looks the same without its legs and ledgers to come out', () => {
    const job = exampleJob('boathouse-galley', 'imperial');
    const bare = {
      ...job,
      pieces: job.pieces.map((piece) => ({
        ...piece,
        supports: piece.supports.filter(({ lastDay }) => lastDay === null),
      })),
    };
    expect(jobView(bare, ROOM)).toEqual(jobView(job, ROOM));
  });
});
