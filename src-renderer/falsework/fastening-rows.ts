/** Screws of a design, those alike taken together: what they join, how many in which section, and from where they are reached. */
import type { FalseworkDesign, Fastening, ReachedFrom } from '../../src-core/falsework';
import { gathered } from './gathered';
import { sectionLetters } from './section-letters';

export interface FasteningRow {
  readonly key: string;
  /** "joists into ledger" */
  readonly joins: string;
  readonly screw: string;
  readonly total: number;
  /** "9 in A, B; 18 in D" */
  readonly where: string;
  readonly reached: string;
}

export interface FasteningGroup {
  readonly mustComeOut: boolean;
  readonly title: string;
  readonly rows: readonly FasteningRow[];
}

const REACHED: { readonly [R in ReachedFrom]: string } = {
  above: 'above',
  below: 'below',
  front: 'the front',
  side: 'the side',
};

/** Those that must come out before a section can first, then those that stay in it; a group without rows is left out. */
export function fasteningGroups(design: FalseworkDesign): FasteningGroup[] {
  const letters = sectionLetters(design);
  return [
    { mustComeOut: true, title: 'Must come out before the section can' },
    { mustComeOut: false, title: 'Stay in the section' },
  ].flatMap((group) => {
    const own = design.fastenings.filter(({ mustComeOut }) => mustComeOut === group.mustComeOut);
    return own.length === 0 ? [] : [{ ...group, rows: rowsOf(own, letters) }];
  });
}

function rowsOf(fastenings: readonly Fastening[], letters: ReadonlyMap<string, string>): FasteningRow[] {
  const alike = gathered(fastenings, ({ from, into, screw, reachedFrom }) =>
    [from, into, screw, reachedFrom].join('|'),
  );
  return alike.map(({ key, first, all }) => ({
    key,
    joins: `${first.from} into ${first.into}`,
    screw: first.screw,
    total: all.reduce((sum, { count }) => sum + count, 0),
    where: whereWords(all, letters),
    reached: REACHED[first.reachedFrom],
  }));
}

function whereWords(fastenings: readonly Fastening[], letters: ReadonlyMap<string, string>): string {
  return gathered(fastenings, ({ count }) => String(count))
    .map(
      ({ key, all }) =>
        `${key} in ${all.map(({ sectionId }) => letters.get(sectionId) ?? sectionId).join(', ')}`,
    )
    .join('; ');
}
