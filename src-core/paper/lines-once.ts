/** Sides of neighbouring loops, each stretch drawn once: broken lines over each other would close each other's gaps. */
import type { PaperPoint } from '../figure';
import { apartIn, movedOn } from './plan-view';
import type { PaperLine } from './words-box';

/** Lines nearer than this are one, and shorter stretches are left out, on paper, in. */
const SAME_IN = 0.004;

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The sides of closed loops without what an earlier side in the same line has drawn. */
export function linesOnce(loops: readonly (readonly PaperPoint[])[]): PaperLine[] {
  const drawn: PaperLine[] = [];
  for (const loop of loops) {
    loop.forEach((from, i) => {
      const to = loop[(i + 1) % loop.length]!;
      drawn.push(...without({ from, to }, drawn));
    });
  }
  return drawn;
}

function without(line: PaperLine, drawn: readonly PaperLine[]): PaperLine[] {
  const lengthIn = apartIn(line.from, line.to);
  if (lengthIn < SAME_IN) return [];
  const way = { x: (line.to.x - line.from.x) / lengthIn, y: (line.to.y - line.from.y) / lengthIn };
  let left: Stretch[] = [{ from: 0, to: lengthIn }];
  for (const other of drawn) {
    const ends = [other.from, other.to].map((p) => {
      const d = { x: p.x - line.from.x, y: p.y - line.from.y };
      return { along: d.x * way.x + d.y * way.y, off: Math.abs(d.x * way.y - d.y * way.x) };
    });
    if (ends.some(({ off }) => off > SAME_IN)) continue;
    const [low, high] = [
      Math.min(...ends.map(({ along }) => along)),
      Math.max(...ends.map(({ along }) => along)),
    ];
    left = left
      .flatMap(({ from, to }) => [
        { from, to: Math.min(to, low) },
        { from: Math.max(from, high), to },
      ])
      .filter(({ from, to }) => to - from >= SAME_IN);
  }
  return left.map(({ from, to }) => ({
    from: movedOn(line.from, way, from),
    to: movedOn(line.from, way, to),
  }));
}
