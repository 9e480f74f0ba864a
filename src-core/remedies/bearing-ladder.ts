/** A wider bearing: the strip of a wall or ledger, or a pier, carried further out under the overhang. */
import type { PierSupport, Support } from '../job';
import { directionAt, leftOf, moved } from '../outline';
import type { Reach, Root } from './reach';
import { reachesOf, rootOf } from './reach';
import type { Ladder, LadderContext, Step } from './step';
import { ladder } from './step';

/** Wider by a board on edge, two, and the width of a stud. Common practice, no source. */
const WIDER_IN = [1.5, 3, 5.5];
/** Widest bearing strip that is still one, in. */
const WIDEST_WALL_IN = 24;
const WIDEST_LEDGER_IN = 12;

/** Under the longest overhang; never past its free edge. */
export function bearingLadder(context: LadderContext): Ladder {
  const reach = context.analysis === null ? undefined : reachesOf(context.piece, context.analysis)[0];
  const excuse = 'No wall, ledger or pier stands under the overhang to be made wider.';
  if (reach === undefined) return ladder('wider-bearing', [], 1, excuse);
  const root = rootOf(context.piece, reach);
  const run = WIDER_IN.filter((byIn) => byIn < reach.overhangIn - 0.5).flatMap((byIn) => {
    const wider = root === null ? widerPier(context, reach, byIn) : widerStrip(root, byIn);
    return wider === null ? [] : [bearingStep(context, wider, byIn)];
  });
  return ladder('wider-bearing', [[run]], 1, excuse);
}

function bearingStep({ piece, print }: LadderContext, wider: Support, byIn: number): Step {
  const name = wider.name ?? wider.id;
  const title = `A bearing ${print.length(byIn)} wider at ${name}, towards the overhang`;
  return {
    kind: 'wider-bearing',
    piece: { ...piece, supports: piece.supports.map((one) => (one.id === wider.id ? wider : one)) },
    ratedSupportIds: [],
    words: () => ({
      title,
      parts: 1,
      partsWords: [`1 plate or block ${print.length(byIn)} wide along ${name}`],
    }),
    givesLess: false,
    shortTitle: title,
  };
}

function widerStrip({ support, outward }: Root, byIn: number): Support | null {
  const widthIn = support.widthIn + byIn;
  if (widthIn > (support.kind === 'wall' ? WIDEST_WALL_IN : WIDEST_LEDGER_IN)) return null;
  return {
    ...support,
    from: moved(support.from, outward, byIn / 2),
    to: moved(support.to, outward, byIn / 2),
    widthIn,
  };
}

/** The pier nearest to the overhang, grown towards it. */
function widerPier({ piece }: LadderContext, reach: Reach, byIn: number): Support | null {
  const piers = piece.supports.filter((one): one is PierSupport => one.kind === 'pier');
  const behindIn = ({ footprint: { centre } }: PierSupport) =>
    reach.inward.x * (centre.xIn - reach.at.xIn) + reach.inward.y * (centre.yIn - reach.at.yIn);
  const pier = piers.reduce<PierSupport | null>(
    (nearest, one) => (nearest === null || behindIn(one) < behindIn(nearest) ? one : nearest),
    null,
  );
  return pier === null ? null : { ...pier, footprint: grown(pier.footprint, reach, byIn) };
}

function grown(footprint: PierSupport['footprint'], reach: Reach, byIn: number): PierSupport['footprint'] {
  if (footprint.kind === 'circle') return { ...footprint, diameterIn: footprint.diameterIn + 2 * byIn };
  const along = directionAt((footprint.angleDeg * Math.PI) / 180);
  const across = leftOf(along);
  const outward = { x: -reach.inward.x, y: -reach.inward.y };
  const shares = {
    along: along.x * outward.x + along.y * outward.y,
    across: across.x * outward.x + across.y * outward.y,
  };
  const isAlong = Math.abs(shares.along) >= Math.abs(shares.across);
  const sign = Math.sign(isAlong ? shares.along : shares.across);
  return {
    ...footprint,
    centre: moved(footprint.centre, isAlong ? along : across, (sign * byIn) / 2),
    widthIn: footprint.widthIn + (isAlong ? byIn : 0),
    depthIn: footprint.depthIn + (isAlong ? 0 : byIn),
  };
}
