/** What a swap is made of: the cabinets that come, what holds the slab until then, and what stands in whose way. */
import type { CabinetSupport, FalseworkSection, Job, Piece, Support } from '../job';
import { cabinetPath, cabinetPlan, liesOver, shareFloor, standsIn } from './bays';
import type { PieceStep } from './swap-steps';
import { isTemporary, swapSteps } from './swap-steps';

/** One cabinet to come. Lists hold ids. */
export interface Bay {
  readonly cabinet: CabinetSupport;
  /** Temporary supports that stand where it goes. */
  readonly inPlace: readonly string[];
  /** Temporary supports in front of its place: out for the move, then back. */
  readonly inWay: readonly string[];
  /** Falsework sections over its place or the way to it. */
  readonly sections: readonly string[];
  /** Other cabinets to come that would block its way once they are in. */
  readonly blockedBy: readonly string[];
  /** What stays for good and stands in its way. */
  readonly shutIn: readonly string[];
}

export interface SwapPlan {
  readonly piece: Piece;
  readonly bays: readonly Bay[];
  /** Temporary supports, in the piece's order. */
  readonly temporary: readonly string[];
  /** What stands all along. */
  readonly lasting: readonly string[];
  readonly sections: readonly string[];
  /** Days on which the job's own steps bring cabinets in, sorted; empty where it has none. */
  readonly days: readonly number[];
}

/** The plan of a piece's swap as its supports are drawn. */
export function swapPlan(job: Job, piece: Piece): SwapPlan {
  const steps = swapSteps(job, piece);
  const comes = new Set(steps.flatMap(({ supportsIn }) => supportsIn));
  const cabinets = piece.supports.filter(
    (support): support is CabinetSupport =>
      support.kind === 'cabinet' && comes.has(support.id) && !isTemporary(support, steps),
  );
  const coming = new Set(cabinets.map(({ id }) => id));
  const temporary = piece.supports.filter(
    (support) => !coming.has(support.id) && isTemporary(support, steps),
  );
  const lasting = piece.supports.filter((support) => !coming.has(support.id) && !isTemporary(support, steps));
  const sections = job.falsework.sections.filter(({ pieceId }) => pieceId === piece.id);
  return {
    piece,
    bays: cabinets.map((cabinet) => bayOf(cabinet, piece, { cabinets, temporary, lasting, sections })),
    temporary: temporary.map(({ id }) => id),
    lasting: lasting.map(({ id }) => id),
    sections: sections.map(({ id }) => id),
    days: cabinetDays(steps, coming),
  };
}

function bayOf(
  cabinet: CabinetSupport,
  piece: Piece,
  all: {
    readonly cabinets: readonly CabinetSupport[];
    readonly temporary: readonly Support[];
    readonly lasting: readonly Support[];
    readonly sections: readonly FalseworkSection[];
  },
): Bay {
  const place = cabinetPlan(cabinet);
  const way = cabinetPath(cabinet);
  const props = all.temporary.filter((support) => isProp(support, piece, all.cabinets));
  const inPlace = props.filter((support) => standsIn(support, piece, place));
  return {
    cabinet,
    inPlace: idsOf(inPlace),
    inWay: idsOf(props.filter((support) => !inPlace.includes(support) && standsIn(support, piece, way))),
    sections: idsOf(all.sections.filter((section) => liesOver(section, place) || liesOver(section, way))),
    blockedBy: idsOf(
      all.cabinets.filter((other) => other !== cabinet && shareFloor(cabinetPlan(other), way)),
    ),
    shutIn: idsOf(all.lasting.filter((support) => reachesFloor(support) && standsIn(support, piece, way))),
  };
}

/**
 * Whether a temporary support goes with the cabinets rather than last of all. A ledger or wall under several of them stays to the
 * end, and so does what stands under none, such as a prop before an overhang.
 */
function isProp(support: Support, piece: Piece, cabinets: readonly CabinetSupport[]): boolean {
  const under = cabinets.filter((cabinet) => standsIn(support, piece, cabinetPlan(cabinet))).length;
  return support.kind === 'ledger' || support.kind === 'wall' ? under === 1 : under > 0;
}

/** Ledgers and arms hang on a wall and leave the floor clear. */
function reachesFloor({ kind }: Support): boolean {
  return kind !== 'ledger' && kind !== 'bracket' && kind !== 'full-bed';
}

function cabinetDays(steps: readonly PieceStep[], coming: ReadonlySet<string>): number[] {
  return steps.flatMap(({ day, supportsIn }) => supportsIn.filter((id) => coming.has(id)).map(() => day));
}

function idsOf(things: readonly { readonly id: string }[]): string[] {
  return things.map(({ id }) => id);
}

/** What stands once the cabinets of `done` are in, and while the bay of `open` (or none) is empty with its way clear. */
export function standingWith(plan: SwapPlan, done: number, open: number | null): string[] {
  const all = 2 ** plan.bays.length - 1;
  const isIn = plan.bays.map((_, i) => (done & (1 << i)) !== 0);
  const gone = new Set(plan.bays.flatMap(({ inPlace }, i) => (isIn[i] || i === open ? inPlace : [])));
  if (open !== null) for (const id of plan.bays[open]!.inWay) gone.add(id);
  return [
    ...plan.lasting,
    ...plan.bays.flatMap(({ cabinet }, i) => (isIn[i] ? [cabinet.id] : [])),
    ...(done === all ? [] : plan.temporary.filter((id) => !gone.has(id))),
  ];
}

/** Whether a cabinet can slip in from its front with those of `done` in place. */
export function hasWay({ bays }: SwapPlan, done: number, item: number): boolean {
  const { blockedBy, shutIn } = bays[item]!;
  return (
    shutIn.length === 0 &&
    bays.every(({ cabinet }, i) => (done & (1 << i)) === 0 || !blockedBy.includes(cabinet.id))
  );
}

/** The steps of an order: a bay a step, and a last one for what stays to the end. */
export function stepsOf(
  plan: SwapPlan,
  order: readonly number[],
  dayOf: (step: number) => number,
): PieceStep[] {
  const props = new Set(plan.temporary);
  const sections = new Set(plan.sections);
  const stepId = (step: number) => `${plan.piece.id.slice(0, 48)}-swap-${step + 1}`;
  const take = (from: Set<string>, ids: readonly string[]) => ids.filter((id) => from.delete(id));
  const steps = order.map((item, step): PieceStep => {
    const { cabinet, inPlace, inWay, sections: over } = plan.bays[item]!;
    const passing = inWay.filter((id) => props.has(id));
    return {
      id: stepId(step),
      isDrawn: false,
      day: dayOf(step),
      sectionsOut: take(sections, over),
      supportsOut: [...take(props, inPlace), ...passing],
      supportsIn: [cabinet.id, ...passing],
      note: passing.length === 0 ? '' : `Out for the move and straight back: ${passing.join(', ')}.`,
    };
  });
  if (props.size + sections.size === 0) return steps;
  const last: PieceStep = {
    id: stepId(order.length),
    isDrawn: false,
    day: dayOf(order.length),
    sectionsOut: [...sections],
    supportsOut: [...props],
    supportsIn: [],
    note: 'Last of all, with every cabinet touching.',
  };
  return [...steps, last];
}
