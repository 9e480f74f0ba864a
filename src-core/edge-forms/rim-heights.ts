/** A fall is made by tilting the form: the heights of its rim round the slab. */
import type { Job, Piece } from '../job';
import { fallWords } from '../levels';
import type { Point } from '../outline';
import { directionAt } from '../outline';
import { IN_PER_FT, printLength } from '../units';
import { formula } from '../workings';
import type { Label } from './context';
import type { RimHeight, RimHeights } from './types';
import type { Walk } from './walk';
import { arcOf } from './walk';

/** Drop of the rim, in. i: fall, in/ft; s: distance from the highest mark, measured in the direction of the fall, in. Plane geometry. */
export const rimDrop = formula<{ i: number; s: number }>({
  symbol: 'dz',
  label: 'rim below its highest mark',
  formula: 'i * s / 12',
  units: { i: 'in/ft', s: 'in' },
  unit: 'in',
  source: 'plane geometry: a plane of even slope',
  compute: ({ i, s }) => (i * s) / IN_PER_FT,
});

interface Mark extends Label {
  readonly at: Point;
}

/**
 * Heights of the rim below its highest mark: at every corner, and where a corner's radius begins and ends. Lengths of the
 * forms are taken in plan: at the steepest fall that a job may ask, 2 in a foot, the strip itself is 1.4 % longer.
 */
export function rimHeights(job: Job, piece: Piece, walk: Walk, label: (corner: number) => Label): RimHeights {
  const marks = walk.corners.flatMap((corner): Mark[] => {
    const { id, trace } = label(corner.index);
    if (corner.tangentIn === 0) return [{ id: `${id}/rim`, trace, at: corner.at }];
    const { from, to } = arcOf(corner);
    return [
      { id: `${id}/rim/arc-start`, trace, at: from },
      { id: `${id}/rim/arc-end`, trace, at: to },
    ];
  });
  const { fall } = piece;
  if (fall === null || fall.inPerFt === 0) {
    const level = marks.map((mark): RimHeight => ({ ...mark, belowHighestIn: 0 }));
    return { marks: level, words: 'The form stands level.', fallIn: 0, lines: [] };
  }
  const way = directionAt((fall.towardDeg * Math.PI) / 180);
  const along = marks.map(({ at }) => at.xIn * way.x + at.yIn * way.y);
  const highest = Math.min(...along);
  const greatest = rimDrop({ i: fall.inPerFt, s: Math.max(...along) - highest });
  const ratio = fall.inPerFt / IN_PER_FT;
  const tilt = fallWords({ x: -way.x * ratio, y: -way.y * ratio }, job.shownIn);
  const allIn = printLength(greatest.value, { system: job.shownIn, roundToIn: 1 / 32 });
  return {
    marks: marks.map((mark, k) => ({
      ...mark,
      belowHighestIn: rimDrop.compute({ i: fall.inPerFt, s: along[k]! - highest }),
    })),
    words: `Tilt the form, not the mix: its rim ${tilt}, ${allIn} in all.`,
    fallIn: greatest.value,
    lines: [greatest.line],
  };
}
