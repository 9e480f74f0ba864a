/** Ties: a loose slab held down at its supports, or ties set closer and rated for what they must take. */
import { stands } from '../analysis';
import type { Support } from '../job';
import type { Point } from '../outline';
import { directionBetween, distanceIn, leftOf } from '../outline';
import type { Finished, Ladder, LadderContext, Step, StepWords } from './step';
import { counted, ladder } from './step';

/** Widest first. Common practice, no source: along a plate on a stud wall any of them finds wood. */
const SPACINGS_IN = [48, 32, 24, 16, 12];
/** Spacing written for a tie that stands alone, where it means nothing. */
const ALONE_SPACING_IN = 16;
/** Ties keep this far from both ends of their line, as the engine sets them. */
const END_IN = 3;
/** Default bounds of a tie's stiffness, lbf/in; derived, no source. */
const TIE_STIFFNESS = { low: 2_000, high: 20_000 };

/** Ties at the support that holds best, then at all; spacing 48 to 12 in. The rating follows from the trial. */
export function tieLadder(context: LadderContext): Ladder {
  const tieable = context.piece.supports.filter(
    (support) => stands(support, null) && support.kind !== 'full-bed' && support.kind !== 'bracket',
  );
  const loose = tieable
    .filter(({ hold }) => hold.kind === 'resting')
    .sort((a, b) => leverIn(context, b) - leverIn(context, a));
  const tied = tieable.filter(({ hold }) => hold.kind === 'tied');
  const subsets = [tied, loose.slice(0, 1), ...(loose.length > 1 ? [loose] : [])];
  const groups = subsets.filter((subset) => subset.length > 0).map((subset) => [runFor(context, subset)]);
  const least = tied.length > 0 ? 0 : Math.min(2, ...loose.map((s) => (lineLengthIn(s) === 0 ? 1 : 2)));
  return ladder('tie', groups, least, 'Nothing under it can take a tie.');
}

/** One step a count of ties: of the spacings that set as many, the one nearest to how far apart they come to stand. */
function runFor(context: LadderContext, supports: readonly Support[]): Step[] {
  const lengthIn = Math.max(...supports.map(lineLengthIn));
  const nearest = new Map<number, number>();
  for (const spacingIn of spacingsFor(supports)) {
    const count = tieCount(lengthIn, spacingIn);
    const apartIn = (lengthIn - 2 * END_IN) / Math.max(1, count - 1);
    const known = nearest.get(count);
    if (known === undefined || Math.abs(spacingIn - apartIn) < Math.abs(known - apartIn)) {
      nearest.set(count, spacingIn);
    }
  }
  return [...nearest.values()].map((spacingIn) => tieStep(context, supports, spacingIn));
}

/** Ties that are there already are first only rated, then set closer. */
function spacingsFor(supports: readonly Support[]): number[] {
  const present = Math.min(...supports.map(({ hold }) => (hold.kind === 'tied' ? hold.spacingIn : 1e9)));
  if (present === 1e9) return supports.every((s) => lineLengthIn(s) === 0) ? [ALONE_SPACING_IN] : SPACINGS_IN;
  return [present, ...SPACINGS_IN.filter((spacingIn) => spacingIn < present)];
}

function tieStep(context: LadderContext, supports: readonly Support[], spacingIn: number): Step {
  const { piece, print } = context;
  const ids = supports.map(({ id }) => id);
  const hold = { kind: 'tied' as const, spacingIn, ratingLbf: null, stiffness: TIE_STIFFNESS };
  const isOneOfMany = supports.length < piece.supports.length;
  const where = isOneOfMany ? ` at ${supports.map((s) => s.name ?? s.id).join(', ')}` : '';
  const isLine = supports.some((support) => lineLengthIn(support) > 0);
  const apart = isLine ? ` at ${print.length(spacingIn)}` : '';
  const wasTied = supports.some((support) => support.hold.kind === 'tied');
  return {
    kind: 'tie',
    piece: {
      ...piece,
      supports: piece.supports.map((support) =>
        !ids.includes(support.id)
          ? support
          : support.hold.kind === 'tied'
            ? { ...support, hold: { ...support.hold, spacingIn } }
            : { ...support, hold },
      ),
    },
    ratedSupportIds: ids,
    words: (finished) => wordsOf(finished, ids, `${apart}${where}`, wasTied, print.force),
    givesLess: false,
    shortTitle: `Ties${apart}${where}`,
  };
}

function wordsOf(
  { piece, analysis }: Finished,
  ids: readonly string[],
  place: string,
  wasTied: boolean,
  force: (valueLbf: number) => string,
): StepWords {
  const count = analysis.bearings
    .filter(({ support }) => ids.includes(support.id))
    .flatMap(({ contacts }) => contacts)
    .filter((i) => analysis.contacts[i]!.acts === 'pull').length;
  const rating = piece.supports.reduce(
    (most, { id, hold }) =>
      ids.includes(id) && hold.kind === 'tied' ? Math.max(most, hold.ratingLbf ?? 0) : most,
    0,
  );
  const rated = rating > 0 ? `, ${count === 1 ? 'rated' : 'each rated'} ${force(rating)}` : '';
  const title = `${wasTied ? 'Better ties' : 'Tie it'}: ${counted(count, 'tie')}${place}${rated}`;
  return { title, parts: count, partsWords: [`${counted(count, 'tie')}${rated}`] };
}

function tieCount(lengthIn: number, spacingIn: number): number {
  if (lengthIn === 0) return 1;
  return Math.max(2, Math.floor(Math.max(0, lengthIn - 2 * END_IN) / spacingIn + 1e-9) + 1);
}

/** Length along which ties may be spread; 0 where there is only one point. */
function lineLengthIn(support: Support): number {
  switch (support.kind) {
    case 'wall':
    case 'ledger':
      return distanceIn(support.from, support.to);
    case 'cabinet':
      return Math.max(support.widthIn, support.depthIn);
    default:
      return 0;
  }
}

/** How far a support lies behind the line about which the slab would turn; more is better. */
function leverIn({ analysis }: LadderContext, support: Support): number {
  const pivot = analysis?.stability.pivot;
  if (analysis === null || pivot === null || pivot === undefined) return 0;
  const inward = leftOf(directionBetween(pivot.from, pivot.to));
  const behindIn = (p: Point) => (p.xIn - pivot.from.xIn) * inward.x + (p.yIn - pivot.from.yIn) * inward.y;
  const own = analysis.bearings.filter((bearing) => bearing.support.id === support.id);
  return own.reduce((most, { centre }) => Math.max(most, behindIn(centre)), Number.NEGATIVE_INFINITY);
}
