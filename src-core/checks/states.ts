/** The states in which the engine looked at a piece, and what each support carries in them. */
import type { BoundState, PieceAnalysis } from '../analysis';
import type { Support } from '../job';
import type { Point } from '../outline';

export interface NamedState {
  readonly state: BoundState;
  /** "supports at their low stiffness", with "after cracking" where so. */
  readonly words: string;
  readonly isCracked: boolean;
}

/** Both stiffness bounds uncracked, and both cracked where the slab cracks. */
export function statesOf({ elastic, cracked }: PieceAnalysis): readonly NamedState[] {
  const named = (state: BoundState, isCracked: boolean): NamedState => ({
    state,
    words: `supports at their ${state.bound} stiffness${isCracked ? ', after cracking' : ''}`,
    isCracked,
  });
  return [
    named(elastic.low, false),
    named(elastic.high, false),
    ...(cracked === null ? [] : [named(cracked.low, true), named(cracked.high, true)]),
  ];
}

/** One support of the job with its parts under this piece. */
export interface SupportParts {
  readonly support: Support;
  /** "stud wall bar-wall", "cabinet B2", the row of brackets "arms". */
  readonly words: string;
  readonly at: Point;
  /** Indices into the analysis's bearings. */
  readonly parts: readonly number[];
}

/** The supports that the piece lies over, in the job's order. */
export function supportParts({ bearings }: PieceAnalysis): SupportParts[] {
  const groups = new Map<string, { support: Support; words: string; at: Point; parts: number[] }>();
  bearings.forEach(({ support, words, centre }, index) => {
    const group = groups.get(support.id);
    if (group !== undefined) group.parts.push(index);
    else groups.set(support.id, { support, words: wordsOf(support, words), at: centre, parts: [index] });
  });
  return [...groups.values()];
}

function wordsOf(support: Support, bearingWords: string): string {
  const name = support.name ?? support.id;
  if (support.kind === 'cabinet') return name.includes('cabinet') ? name : `cabinet ${name}`;
  if (support.kind === 'bracket') return `the row of brackets "${name}"`;
  return bearingWords;
}
