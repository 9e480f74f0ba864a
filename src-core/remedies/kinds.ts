/** Which kinds of change are worth trying for what fails, and how their words stand in a verdict. */
import type { Check, Need } from '../checks';
import { bearingLadder } from './bearing-ladder';
import type { ChangeKind } from './change';
import { corbelLadder } from './corbel-ladder';
import { overhangLadder } from './overhang-ladder';
import { steelLadder } from './steel-ladder';
import type { Ladder, LadderContext } from './step';
import { supportLadder } from './support-ladder';
import { thicknessLadder } from './thickness-ladder';
import { tieLadder } from './tie-ladder';

/** In the order in which they are bundled: what holds the slab first, then its shape, steel last, for it follows the moments. */
export const KINDS: readonly ChangeKind[] = [
  'tie',
  'corbel',
  'extra-support',
  'wider-bearing',
  'shorter-overhang',
  'thickness',
  'steel',
];

const LADDERS: { readonly [K in ChangeKind]: (context: LadderContext) => Ladder } = {
  tie: tieLadder,
  corbel: corbelLadder,
  'extra-support': supportLadder,
  'wider-bearing': bearingLadder,
  'shorter-overhang': overhangLadder,
  thickness: thicknessLadder,
  steel: steelLadder,
};

/** The word of the verdict that names a kind. A shorter overhang or a wider bearing is support brought nearer. */
export const NEED_OF: { readonly [K in ChangeKind]: Need } = {
  tie: 'tie',
  corbel: 'corbel',
  'extra-support': 'support',
  'wider-bearing': 'support',
  'shorter-overhang': 'support',
  thickness: 'thickness',
  steel: 'steel',
};

/** Words of a report: "Ties", "Ties with a thicker slab". */
export const KIND_WORDS: { readonly [K in ChangeKind]: string } = {
  tie: 'Ties',
  corbel: 'Brackets',
  'extra-support': 'Another support',
  'wider-bearing': 'A wider bearing',
  'shorter-overhang': 'A shorter overhang',
  thickness: 'A thicker slab',
  steel: 'Steel',
};

const NEARER: readonly ChangeKind[] = ['extra-support', 'wider-bearing', 'shorter-overhang'];

/** Kinds that may mend a check that names this need. */
const MENDS: { readonly [N in Need]: readonly ChangeKind[] } = {
  tie: ['tie', 'corbel', ...NEARER],
  corbel: ['corbel', ...NEARER],
  support: ['corbel', ...NEARER],
  steel: ['steel', 'thickness'],
  thickness: ['thickness', 'steel'],
};

/** Kinds that may bring a check back from where only an engineer decides, by the check's id; any kind may for the others. */
const BRINGS_BACK: { readonly [checkId: string]: readonly ChangeKind[] | undefined } = {
  overhang: ['corbel', ...NEARER],
  span: ['corbel', 'extra-support', 'wider-bearing'],
  bracket: ['corbel'],
};

/** Kinds that change the slab itself and mend only checks that name them. */
const SLAB_KINDS: readonly ChangeKind[] = ['thickness', 'steel'];

/** Kinds that may mend one failing check. */
export function kindsFor(check: Pick<Check, 'id' | 'needs'>): readonly ChangeKind[] {
  if (check.needs.length === 0) return BRINGS_BACK[check.id] ?? KINDS;
  return KINDS.filter((kind) => check.needs.some((need) => MENDS[need].includes(kind)));
}

/** Kinds worth trying next: those that mend something that fails; alone and last, thickness and steel must mend all of it. */
export function kindsWorthTrying(failing: readonly Pick<Check, 'id' | 'needs'>[]): ChangeKind[] {
  const mends = failing.map(kindsFor);
  return KINDS.filter((kind) =>
    SLAB_KINDS.includes(kind)
      ? mends.every((kinds) => SLAB_KINDS.some((slab) => kinds.includes(slab)))
      : mends.some((kinds) => kinds.includes(kind)),
  );
}

export function ladderOf(kind: ChangeKind, context: LadderContext): Ladder {
  return LADDERS[kind](context);
}
