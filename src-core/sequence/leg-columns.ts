/** What a swap asks of the timber that holds the slab meanwhile: each leg and prop as a column, at the worst of its moments. */
import { printersOf } from '../analysis';
import { formStack, serviceOf } from '../falsework';
import type { Job, Piece, Support } from '../job';
import { floorAt } from '../levels';
import type { LumberSize } from '../timber';
import { columnCapacity, LUMBER, timberMember } from '../timber';
import type { SwapCheck } from './check-swap';
import type { SwapFinding } from './finding';

type Leg = Extract<Support, { kind: 'leg' }>;

interface LoadedLeg {
  readonly leg: Leg;
  readonly stepId: string | null;
  readonly loadLbf: number;
  readonly size: LumberSize;
  readonly lengthIn: number;
  /** Load over capacity, or slenderness over its limit where that is what fails. */
  readonly ratio: number;
  readonly isTooSlender: boolean;
}

/** A head this near to a size of lumber is of that size, in: a drawing in millimetres rounds. */
const SAME_SIZE_IN = 1 / 16;

/**
 * The most used of the legs and props that do not stay, as a pinned column from the floor to the soffit without braces (NDS 2018
 * 3.7.1); none where no such leg is of lumber or carries anything. Legs of other sections are for their maker's rating.
 */
export function legColumns(job: Job, piece: Piece, { moments }: SwapCheck): SwapFinding[] {
  const loaded = piece.supports.flatMap((support): LoadedLeg[] => {
    const size = support.kind === 'leg' && support.lastDay !== null ? lumberOf(support) : null;
    if (support.kind !== 'leg' || size === null) return [];
    const pushes = moments.flatMap(({ checks, stepId }) =>
      checks
        .filter(
          ({ id, where }) =>
            id === 'support-load' && where.kind === 'support' && where.supportId === support.id,
        )
        .map(({ demand }) => ({ stepId, loadLbf: demand.value })),
    );
    const [first] = pushes;
    if (first === undefined) return [];
    const most = pushes.reduce((a, b) => (b.loadLbf > a.loadLbf ? b : a), first);
    return [asColumn(job, piece, support, size, most)];
  });
  const [first] = loaded;
  if (first === undefined) return [];
  const worst = loaded.reduce((a, b) => (b.ratio > a.ratio ? b : a), first);
  const stands = worst.ratio <= 1;
  return [
    {
      id: 'leg-column',
      pieceId: piece.id,
      stepId: worst.stepId,
      aboutId: worst.leg.id,
      level: stands ? 'holds' : 'change',
      title: 'Legs and props as columns',
      words: wordsOf(job, worst),
      source: 'NDS 2018 3.7.1, both ends pinned, no braces; species and moisture as set for the falsework',
    },
  ];
}

function asColumn(
  job: Job,
  piece: Piece,
  leg: Leg,
  size: LumberSize,
  { stepId, loadLbf }: { readonly stepId: string | null; readonly loadLbf: number },
): LoadedLeg {
  const stack = formStack(job, piece);
  const lengthIn = stack.soffitAt(leg.centre) - floorAt(stack.floor, leg.centre).heightIn;
  const member = timberMember({
    species: job.falsework.species,
    size,
    use: 'edge',
    service: serviceOf(job),
    repetition: null,
  });
  const column = columnCapacity({
    member,
    thinWayIn: lengthIn,
    wideWayIn: lengthIn,
    isDuringConstruction: true,
  });
  const ratio = column.ok ? loadLbf / column.capacityLbf : column.slendernessRatio / column.limitRatio;
  return { leg, stepId, loadLbf, size, lengthIn, ratio, isTooSlender: !column.ok };
}

function lumberOf({ widthIn, depthIn }: Leg): LumberSize | null {
  const [thin, wide] = [Math.min(widthIn, depthIn), Math.max(widthIn, depthIn)];
  const sizes = Object.keys(LUMBER) as LumberSize[];
  const found = sizes.find(
    (size) =>
      Math.abs(LUMBER[size].thicknessIn - thin) < SAME_SIZE_IN &&
      Math.abs(LUMBER[size].widthIn - wide) < SAME_SIZE_IN,
  );
  return found ?? null;
}

function wordsOf(job: Job, { leg, loadLbf, size, lengthIn, ratio, isTooSlender }: LoadedLeg): string {
  const { force, length } = printersOf(job);
  const name = leg.name ?? leg.id;
  const what = `a ${size} ${length(lengthIn)} long`;
  if (isTooSlender) {
    return `${name}, ${what}, is too slender for a column: brace it at half its height both ways, or take a thicker one.`;
  }
  const share = `${name} carries ${force(loadLbf)} at the worst moment, ${ratio.toFixed(2)} of what ${what} may carry as a column.`;
  return ratio <= 1 ? share : `${share} Brace it at half its height both ways, or take a thicker one.`;
}
