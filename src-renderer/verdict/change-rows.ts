/** Changes that were tried and pass, as rows: what each is and what it costs. */
import type { Level } from '../../src-core/checks';
import type { Change } from '../../src-core/remedies';
import { printRatio } from '../../src-core/report';
import type { UnitSystem } from '../../src-core/units';
import { printMass } from '../../src-core/units';
import type { PieceResult } from '../../src-core/verdict';

/** A change of weight smaller than this is none, lb. */
const NO_WEIGHT_LB = 0.5;
const WEIGHT_DIGITS = 3;

export interface ChangeRow {
  readonly change: Change;
  readonly title: string;
  readonly level: Level;
  /** "worst then 0.74 of its limit". */
  readonly worst: string;
  /** "6 lb heavier". */
  readonly weight: string;
  /** Parts to buy or make, each in words. */
  readonly parts: readonly string[];
}

/** Rows in the order in which the changes were ranked. */
export function changeRows(changes: readonly Change[], system: UnitSystem): ChangeRow[] {
  return changes.map((change) => ({
    change,
    title: change.title,
    level: change.level,
    worst: `worst then ${printRatio(change.worstRatio)} of its limit`,
    weight: weightChange(change.cost.weightLb, system),
    parts: change.cost.partsWords.length > 0 ? change.cost.partsWords : countOf(change.cost.parts),
  }));
}

/** A difference in weight as a builder says it: "6 lb heavier", "no heavier". */
export function weightChange(addedLb: number, system: UnitSystem): string {
  if (Math.abs(addedLb) < NO_WEIGHT_LB) return 'no heavier';
  const weight = printMass(Math.abs(addedLb), { system, digits: WEIGHT_DIGITS });
  return `${weight} ${addedLb < 0 ? 'lighter' : 'heavier'}`;
}

function countOf(parts: number): string[] {
  return parts === 0 ? [] : [`${parts} ${parts === 1 ? 'part' : 'parts'}`];
}

/** Said above an empty list once the search is over: nothing passes. null while there is a change, or one may yet be found. */
export function vainWords(
  { changes, triedInVain }: Pick<PieceResult, 'changes' | 'triedInVain'>,
  isSearching: boolean,
): string | null {
  if (isSearching || changes.length > 0 || triedInVain.length === 0) return null;
  return 'Nothing that was tried makes the whole piece pass.';
}
