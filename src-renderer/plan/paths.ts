/** Points as the data of SVG paths. */
import type { Point } from '../../src-core/outline';

/** Closed loops in inches, one path. */
export function loopsPath(loops: readonly (readonly Point[])[]): string {
  return loops.map((loop) => `${linePath(loop)}Z`).join('');
}

/** An open line in inches. */
export function linePath(points: readonly Point[]): string {
  return points.map(({ xIn, yIn }, i) => `${i === 0 ? 'M' : 'L'}${xIn} ${yIn}`).join('');
}

/** A line without length: its round cap is a dot that stays the same size on the screen. */
export function dotPath({ xIn, yIn }: Point): string {
  return `M${xIn} ${yIn}h0`;
}
