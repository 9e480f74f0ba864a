/** Findings about the site as rows, worst first. */
import type { Level } from '../../src-core/checks';
import { rank } from '../../src-core/checks';
import { printQuantity } from '../../src-core/report';
import type { SiteFinding } from '../../src-core/site';
import type { UnitSystem } from '../../src-core/units';

export interface SiteRow {
  readonly id: string;
  readonly title: string;
  readonly level: Level;
  readonly words: string;
  /** "61 psf against 50 psf"; empty where the finding compares nothing. */
  readonly numbers: string;
  readonly source: string;
  readonly cautions: readonly string[];
  /** Page of the manual. */
  readonly manualId: string;
}

/** Rows of the findings, the worst rung first, otherwise in their own order. */
export function siteRows(findings: readonly SiteFinding[], system: UnitSystem): SiteRow[] {
  return [...findings]
    .sort((a, b) => rank(b.level) - rank(a.level))
    .map(({ id, title, level, words, demand, capacity, source, cautions }) => ({
      id,
      title,
      level,
      words,
      numbers:
        demand === null || capacity === null
          ? ''
          : `${printQuantity(demand, system)} against ${printQuantity(capacity, system)}`,
      source,
      cautions,
      manualId: `site-${id}`,
    }));
}
