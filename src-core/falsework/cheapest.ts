/** The cheapest arrangement of a section that passes every check. */
import type { Arrangement, ArrangementChoices } from './arrangement';
import { arrangementsOf } from './arrangement';
import { billOf, billPrice, legCount } from './bill';
import type { FormCheck } from './form-check';
import { passes } from './form-check';
import type { Prices } from './prices';
import type { Section } from './section';
import type { FittedSection, WorkContext, WorkedSection } from './work-section';
import { checksOf, fitSection, holdSection, loadSection } from './work-section';

export type CheapestSection =
  | {
      readonly ok: true;
      readonly worked: WorkedSection;
      readonly checks: readonly FormCheck[];
      readonly price: number;
      /** Arrangements that fit the section, and those that were worked before this one passed. */
      readonly fitting: number;
      readonly tried: number;
    }
  | {
      readonly ok: false;
      readonly fitting: number;
      /** The check on which most failed, null where none fitted. */
      readonly stops: FormCheck | null;
    };

/** Price of one arrangement of a section, with every leg as long as the longest; null where it does not fit. */
export function priceArrangement(
  context: WorkContext,
  section: Section,
  arrangement: Arrangement,
  prices: Prices,
): { readonly fitted: FittedSection; readonly price: number } | null {
  const fitted = fitSection(context, section, arrangement);
  if (fitted === null) return null;
  const legsIn = Array.from({ length: legCount(fitted.framing) }, () => fitted.legIn);
  return { fitted, price: billPrice(billOf(fitted.framing, legsIn, context.practice), prices) };
}

/** Prices every arrangement, then works them from the cheapest up until one passes. Of equal prices the first in order. */
export function cheapestSection(
  context: WorkContext,
  section: Section,
  choices: ArrangementChoices,
  prices: Prices,
): CheapestSection {
  const offers = arrangementsOf(section, choices, context.practice)
    .flatMap((arrangement, order) => {
      const offer = priceArrangement(context, section, arrangement, prices);
      return offer === null ? [] : [{ ...offer, order }];
    })
    .sort((a, b) => a.price - b.price || a.order - b.order);
  const stops = new Map<string, { check: FormCheck; count: number }>();
  for (const [tried, { fitted, price }] of offers.entries()) {
    const loaded = loadSection(context, fitted);
    if (loaded === null) continue;
    const checks: FormCheck[] = [];
    let failed: FormCheck | null = null;
    for (const check of checksOf(context, loaded)) {
      checks.push(check);
      if (passes(check)) continue;
      failed = check;
      break;
    }
    if (failed === null) {
      const worked = holdSection(context, loaded);
      return { ok: true, worked, checks, price, fitting: offers.length, tried: tried + 1 };
    }
    stops.set(failed.id, { check: failed, count: (stops.get(failed.id)?.count ?? 0) + 1 });
  }
  const most = [...stops.values()].sort((a, b) => b.count - a.count)[0] ?? null;
  return { ok: false, fitting: offers.length, stops: most?.check ?? null };
}
