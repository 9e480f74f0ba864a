/** A prop that a proposed order of the swap needs: where it stands, from when to when, and why. */
import { printersOf, printPlace } from '../analysis';
import type { Support } from '../job';
import type { Direction } from '../outline';
import { pieceDirection } from '../outline';
import type { Trace } from '../trace';
import type { SwapCheck } from './check-swap';
import type { Propped } from './find-props';

export interface ProposedProp {
  readonly id: string;
  /** The same as a support of the job: a leg with its first and last day. */
  readonly support: Support;
  /** "23 in from the left, 3/4 in from the front". */
  readonly where: string;
  /** What it is, when it goes in and out, and what it does for the slab. */
  readonly words: string;
  readonly trace: Trace;
}

/** Worst cracking ratio of the mildest order without the props, and with them. */
interface Ratios {
  readonly without: number;
  readonly with: number;
}

/** Ratios beyond this are told as a slab that falls or breaks. */
const MOST_TOLD_RATIO = 99;

/** Props with the days on which the steps of `check` set them and take them out. */
export function proposedProps(
  { sets, props }: Propped,
  ratios: Ratios,
  { steps }: SwapCheck,
): ProposedProp[] {
  const { job, piece, region } = sets.meshed;
  const axisRad = frontAxisRad(pieceDirection(region.outer));
  return props.flatMap((support): ProposedProp[] => {
    if (support.kind !== 'leg') return [];
    const comes = steps.find(({ supportsIn }) => supportsIn.includes(support.id))!;
    const goes = steps.findLast(({ supportsOut }) => supportsOut.includes(support.id))!;
    const where = printPlace(support.centre, region, axisRad, printersOf(job));
    return [
      {
        id: support.id,
        support: { ...support, firstDay: comes.day, lastDay: goes.day },
        where,
        words: `Set a 2x4 prop (${support.name ?? support.id}) under the slab ${where}, clear of every cabinet and its way in. It goes in on day ${comes.day}, before anything is taken out, and comes out last, on day ${goes.day}. ${whyWords(ratios)} Where a section lies over its place, notch the deck so that the section drops past it; brace it like any leg.`,
        trace: { pieceId: piece.id, part: { kind: 'support', id: support.id } },
      },
    ];
  });
}

/** Along the piece from the left to the right of the drawing, so that the front is its low side. */
function frontAxisRad({ x, y }: Direction): number {
  const isBackward = x < 0 || (x === 0 && y < 0);
  return isBackward ? Math.atan2(-y, -x) : Math.atan2(y, x);
}

function whyWords({ without, with: ratio }: Ratios): string {
  const before =
    without > MOST_TOLD_RATIO
      ? 'an open bay falls or breaks in every order'
      : `the mildest order comes to ${without.toFixed(2)} of what cracks the slab`;
  return `Without it ${before}; with it to ${ratio.toFixed(2)}.`;
}
