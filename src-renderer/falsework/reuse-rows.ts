/** What is used again, as it is read: section by section, with the day on which it comes out of one and goes into the other. */
import type { FalseworkDesign } from '../../src-core/falsework';
import type { Job } from '../../src-core/job';
import { dayName } from '../days/day-words';
import { sectionLetters } from './section-letters';

export interface ReuseRow {
  readonly id: string;
  /** "Section B, built on day 13:" or "For Bench, built on day 13:". */
  readonly where: string;
  readonly words: string;
}

/** What comes from earlier pours first, then what goes on to later ones. */
export function reuseRows({ site }: Job, design: FalseworkDesign): ReuseRow[] {
  const letters = sectionLetters(design);
  const built = (day: number) => `built on ${dayName(site.calendar, day)}`;
  return [
    ...design.reuse.from.map(({ id, to, words }) => ({
      id,
      where: `Section ${letters.get(to.sectionId) ?? to.name}, ${built(to.day)}:`,
      words,
    })),
    ...design.reuse.to.map(({ id, to, words }) => ({
      id: `${id} onward`,
      where: `For "${to.name}", ${built(to.day)}:`,
      words,
    })),
  ];
}

/** "Lumber and panel bought for this piece: 21.40, of 88.36 that it is built of." */
export function boughtWords({ reuse: { stock } }: FalseworkDesign): string {
  return `Lumber and panel bought for this piece: ${stock.boughtPrice.toFixed(2)}, of ${stock.askedPrice.toFixed(2)} that it is built of.`;
}
