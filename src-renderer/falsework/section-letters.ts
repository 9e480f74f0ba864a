/** Letters of the sections of a design by their ids, for drawing, tables and lists. */
import type { FalseworkDesign } from '../../src-core/falsework';
import { sectionLetter } from '../../src-core/falsework';

/** The letter of each section of a design by its id. */
export function sectionLetters({ sections }: FalseworkDesign): ReadonlyMap<string, string> {
  return new Map(sections.map(({ section }, index) => [section.id, sectionLetter(index)]));
}
