/** A solid plug that keeps a small opening free and is knocked out downward. */
import type { Point } from '../outline';
import { polygonAreaIn2 } from '../outline';
import type { Line } from '../workings';
import { formula } from '../workings';
import type { OpeningPractice } from './practice';
import { TIMBER_PCF } from './practice';
import { largestOffset } from './sink-fit';

/** Weight of what fills a volume, lb. V: in3; g: lb/ft3. Arithmetic. */
export const fillWeight = formula<Readonly<Record<'V' | 'g', number>>>({
  symbol: 'W',
  label: 'weight of what fills the volume',
  formula: 'V * g / 1728',
  units: { V: 'in3', g: 'lb/ft3' },
  unit: 'lb',
  source: 'arithmetic; the weight for its volume is common practice, no source',
  compute: ({ V, g }) => (V * g) / 1728,
});

/** What a plug widens on each side down to its foot, in. H: height of the plug, in; k: taper, a ratio. Arithmetic. */
export const plugTaper = formula<Readonly<Record<'H' | 'k', number>>>({
  symbol: 't',
  label: 'how much the plug is wider on each side at its foot',
  formula: 'H * k',
  units: { H: 'in', k: '' },
  unit: 'in',
  source: 'arithmetic; the taper is common practice, no source',
  compute: ({ H, k }) => H * k,
});

export interface PlugForm {
  readonly kind: 'plug';
  /** As the opening drawn, at the top of the slab. */
  readonly top: readonly Point[];
  /** At the deck: wider, so that the plug is driven down and the arris at the top stays whole. Open the board to it. */
  readonly foot: readonly Point[];
  /** What it is wider on each side at its foot, in. */
  readonly taperIn: number;
  readonly volumeIn3: number;
  readonly weightLb: number;
  readonly lines: readonly Line[];
}

/** A plug of timber, `heightIn` from the deck to its top. */
export function plugForm(opening: readonly Point[], heightIn: number, practice: OpeningPractice): PlugForm {
  const taper = plugTaper({ H: heightIn, k: practice.taperRatio });
  const at = (outIn: number) => largestOffset(opening, outIn) ?? opening;
  const foot = at(taper.value);
  // Moved outward, a polygon's area grows by a linear and a square term, so that Simpson's rule is exact.
  const volumeIn3 =
    (heightIn / 6) *
    (polygonAreaIn2(opening) + 4 * polygonAreaIn2(at(taper.value / 2)) + polygonAreaIn2(foot));
  const weight = fillWeight({ V: volumeIn3, g: TIMBER_PCF });
  return {
    kind: 'plug',
    top: opening,
    foot,
    taperIn: taper.value,
    volumeIn3,
    weightLb: weight.value,
    lines: [taper.line, weight.line],
  };
}
