/** Cuts a flat face with openings into triangles that use every point of its boundary. */
import earcut, { refine } from 'earcut';
import type { Point } from '../outline';

/**
 * The library drops points that lie in line with their neighbours, and a dropped point would leave a crack against the
 * next face. So it is shown points nudged by this much; the numbers that come back are used with the true ones.
 */
const NUDGE_IN = 1e-7;
const NUDGES = 4;

/**
 * Triangles of a face, as numbers of the points of all loops one after another: the outer loop counter-clockwise, then
 * its openings either way round. They run counter-clockwise. The loops must not cross or touch.
 */
export function triangulateFace(loops: readonly (readonly Point[])[]): readonly number[] {
  const points = loops.flat();
  const openingStarts: number[] = [];
  let start = 0;
  for (const loop of loops.slice(0, -1)) {
    start += loop.length;
    openingStarts.push(start);
  }
  const wanted = 3 * (points.length + 2 * openingStarts.length - 2);
  for (let nudge = 1; nudge <= NUDGES; nudge++) {
    const shown = nudged(points, nudge);
    const triangles = earcut(shown, openingStarts);
    if (triangles.length !== wanted) continue;
    refine(triangles, shown);
    return isCounterClockwise(shown, triangles) ? triangles : triangles.reverse();
  }
  throw new Error(`A face of ${points.length} points and ${openingStarts.length} openings has no triangles`);
}

/** Each point moved a little, differently for each and the same every time. */
function nudged(points: readonly Point[], nudge: number): Float64Array {
  const shown = new Float64Array(2 * points.length);
  points.forEach(({ xIn, yIn }, i) => {
    shown[2 * i] = xIn + NUDGE_IN * Math.sin(nudge * 12.9898 * (i + 1));
    shown[2 * i + 1] = yIn + NUDGE_IN * Math.sin(nudge * 78.233 * (i + 1) + 1);
  });
  return shown;
}

function isCounterClockwise(shown: Float64Array, triangles: readonly number[]): boolean {
  let twiceIn2 = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [2 * triangles[t]!, 2 * triangles[t + 1]!, 2 * triangles[t + 2]!];
    twiceIn2 +=
      (shown[b]! - shown[a]!) * (shown[c + 1]! - shown[a + 1]!) -
      (shown[c]! - shown[a]!) * (shown[b + 1]! - shown[a + 1]!);
  }
  return twiceIn2 > 0;
}
