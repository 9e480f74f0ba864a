/** Whether any section bears on another: each must stand, and come out, by itself. */
import { intersectionAreaIn2, isPointInPolygon } from '../outline';
import type { FormLeg } from './cut-legs';
import { sectionCorners } from './frame';
import type { Section } from './section';

/** Sections may touch along their line, in2. */
const TOUCH_IN2 = 0.01;

/** Sentences for sections that overlap in plan, or whose legs stand under another. Empty where none bears on another. */
export function bearingOnEachOther(
  sections: readonly { readonly section: Section; readonly legs: readonly FormLeg[] }[],
): string[] {
  return sections.flatMap(({ section, legs }, i) => {
    const own = sectionCorners(section.frame);
    return sections.flatMap((other, k) => {
      if (k === i) return [];
      const plan = sectionCorners(other.section.frame);
      const found: string[] = [];
      const shared = intersectionAreaIn2({ outer: own, holes: [] }, { outer: plan, holes: [] });
      if (k > i && shared > TOUCH_IN2) {
        found.push(`"${section.name}" and "${other.section.name}" lie over the same floor.`);
      }
      const astray = legs.find(({ at }) => isPointInPolygon(at, plan) && !isPointInPolygon(at, own));
      if (astray !== undefined) {
        found.push(`A leg of "${section.name}" stands under "${other.section.name}".`);
      }
      return found;
    });
  });
}
