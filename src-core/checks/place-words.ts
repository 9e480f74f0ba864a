/** Words for a point of the piece and for the way steel runs. */
import { printersOf, printPlace } from '../analysis';
import type { Point } from '../outline';
import type { CheckContext } from './check';

/** "46 in from the left, 4 in from the front", in the job's own units. */
export function placeWords({ job, analysis }: CheckContext, at: Point): string {
  const { outer, holes, axisRad } = analysis.shape;
  return printPlace(at, { outer, holes }, axisRad, printersOf(job));
}

const SAME_WAY_RAD = (5 * Math.PI) / 180;

/** Which way bars run in the piece: "lengthways", "front to back" or "at 45 degrees". */
export function wayWords(barRad: number, axisRad: number): string {
  const turn = turnFromAxisRad(barRad, axisRad);
  if (turn < SAME_WAY_RAD || turn > Math.PI - SAME_WAY_RAD) return 'lengthways';
  if (Math.abs(turn - Math.PI / 2) < SAME_WAY_RAD) return 'front to back';
  return `at ${Math.round((turn * 180) / Math.PI)} degrees to the length`;
}

/** Where the slab stretches: "at the top" or "underneath". */
export function faceWords(face: 'top' | 'bottom'): string {
  return face === 'top' ? 'at the top' : 'underneath';
}

function turnFromAxisRad(barRad: number, axisRad: number): number {
  const turn = (barRad - axisRad) % Math.PI;
  return turn < 0 ? turn + Math.PI : turn;
}
