/** Cautions of all falsework: those of every design, those that several share, and those of one alone. */
import type { FalseworkDesign } from '../falsework';
import { FALSEWORK_CAUTIONS } from '../falsework';
import type { HoldGroup } from './hold-groups';

/** Cautions of one design beyond those said with every design; what its table of legs says already is left out. */
export function ownCautions({ cautions, sections }: FalseworkDesign): string[] {
  const ofLegs = new Set(
    sections.flatMap(({ section, legs }) =>
      legs.flatMap(({ leg }) => leg.warnings.map(({ sentence }) => `Legs of "${section.name}": ${sentence}`)),
    ),
  );
  return cautions.filter((words) => !FALSEWORK_CAUTIONS.includes(words) && !ofLegs.has(words));
}

/** Cautions that more than one group has: told once, before them all. */
export function sharedCautions(groups: readonly HoldGroup[]): string[] {
  const counts = new Map<string, number>();
  for (const { held } of groups) {
    for (const words of new Set(ownCautions(held[0].design))) counts.set(words, (counts.get(words) ?? 0) + 1);
  }
  return [...counts].flatMap(([words, count]) => (count > 1 ? [words] : []));
}
