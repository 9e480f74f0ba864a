/** The order of mitred pieces on one stick, and which are turned end for end, so that they take the least of it. */
import { jointIn, type Leans, type Lie, laid } from './mitre';
import { ORDER_STATES } from './practice';

/** Pieces of one length and leans. */
export interface MitreKind {
  readonly longIn: number;
  readonly leans: Leans;
}

/** The next piece on the stick. */
export interface MitreStep extends Lie {
  readonly kind: number;
}

export interface MitreOrderer {
  /** Length of stick that so many of each kind take in their best order, in. */
  readonly runIn: (counts: readonly number[]) => number;
  readonly order: (counts: readonly number[]) => MitreStep[];
}

interface Joined {
  readonly jointsIn: number;
  /** The shape that comes next, as it lies; null behind the last. */
  readonly step: { readonly shape: number; readonly leans: Leans } | null;
}

const LIES: readonly Lie[] = [false, true].flatMap((isRolled) =>
  [false, true].map((isTurned) => ({ isTurned, isRolled })),
);

/**
 * Orders pieces of a few kinds on sticks of one face. Exact: the joints that follow depend only on how many of which leans are left
 * and on the last end, so each such state is worked once. Where a stick has too many of them, the piece that joins best comes next.
 */
export function mitreOrderer(
  kinds: readonly MitreKind[],
  faceIn: number,
  kerfIn: number,
  mayRoll: boolean,
): MitreOrderer {
  const lies = LIES.filter(({ isRolled }) => mayRoll || !isRolled);
  /** Pieces that can lie with the same leans join alike: their shape is the least of those by its words. */
  const shapeOf = ({ leans }: MitreKind) => lies.map((lie) => wordOf(laid(leans, lie))).sort()[0]!;
  const shapes = [...new Set(kinds.map(shapeOf))];
  const shapeOfKind = kinds.map((kind) => shapes.indexOf(shapeOf(kind)));
  const leansOfShape = shapes.map((_, shape) => {
    const { leans } = kinds[shapeOfKind.indexOf(shape)]!;
    return lies.map((lie) => laid(leans, lie));
  });
  const known = new Map<string, Joined>();

  /** Best joints behind an end, or, where there is no piece yet, of the whole stick. */
  const join = (left: number[], end: number | null): Joined => {
    const key = `${end} ${left.join()}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const isWide = left.reduce((product, count) => product * (count + 1), 1) > ORDER_STATES;
    let best: Joined = { jointsIn: Number.POSITIVE_INFINITY, step: null };
    for (const { step, jointHereIn } of nextSteps(left, end, isWide)) {
      left[step.shape]!--;
      const jointsIn = jointHereIn + join(left, step.leans.end).jointsIn;
      left[step.shape]!++;
      if (jointsIn < best.jointsIn) best = { jointsIn, step };
    }
    if (best.step === null) best = { jointsIn: 0, step: null };
    known.set(key, best);
    return best;
  };

  const nextSteps = (left: readonly number[], end: number | null, isOnlyBest: boolean) => {
    const steps = left.flatMap((count, shape) =>
      count === 0
        ? []
        : leansOfShape[shape]!.map((leans) => ({
            step: { shape, leans },
            jointHereIn: end === null ? 0 : jointIn(end, leans.start, faceIn, kerfIn),
          })),
    );
    if (!isOnlyBest || steps.length === 0) return steps;
    return [steps.reduce((best, each) => (each.jointHereIn < best.jointHereIn ? each : best))];
  };

  const ofShapes = (counts: readonly number[]): number[] =>
    shapes.map((_, shape) =>
      counts.reduce((sum, count, kind) => sum + (shapeOfKind[kind] === shape ? count : 0), 0),
    );

  return {
    runIn: (counts) =>
      counts.reduce((sum, count, kind) => sum + count * kinds[kind]!.longIn, 0) +
      join(ofShapes(counts), null).jointsIn,
    order: (counts) => {
      const left = ofShapes(counts);
      const own = [...counts];
      const steps: MitreStep[] = [];
      let { step } = join(left, null);
      while (step !== null) {
        const { shape, leans } = step;
        const kind = own.findIndex((count, i) => count > 0 && shapeOfKind[i] === shape);
        const lie = lies.find((each) => wordOf(laid(kinds[kind]!.leans, each)) === wordOf(leans))!;
        steps.push({ kind, ...lie });
        own[kind]!--;
        left[shape]!--;
        step = join(left, leans.end).step;
      }
      return steps;
    },
  };
}

function wordOf({ start, end }: Leans): string {
  return `${start},${end}`;
}
