/** The first day on which each piece of work may be done to a slab, and whether the job's own plan is sooner. */
import type { Job, Piece } from '../job';
import { printStress } from '../units';
import { EARLIEST_STRIP_DAYS } from '../verdict';
import { overhangSupports } from './overhang-supports';
import type { StrengthAt, StrengthDay } from './strength-by-day';
import { strengthLookup } from './strength-by-day';
import type { PieceStep } from './swap-steps';
import { isTemporary, swapSteps } from './swap-steps';

export type SlabWork =
  | 'edge-forms-off'
  | 'light-load'
  | 'soffit-supports-out'
  | 'overhang-supports-out'
  | 'swap'
  | 'full-strength'
  | 'seal';

export interface EarliestDay {
  readonly id: SlabWork;
  readonly title: string;
  /** First day of the job; null where it is not reached within a year at these temperatures. */
  readonly day: number | null;
  readonly ageDays: number | null;
  /** What held it back longest: its age, or the strength that cold and tests leave it. */
  readonly governedBy: 'age' | 'strength' | null;
  readonly words: string;
  readonly source: string;
  /** Day of the job on which it is planned, where the job tells. */
  readonly plannedDay: number | null;
  /** Where the plan is sooner than this day. */
  readonly caution: string | null;
}

interface Rule {
  readonly id: SlabWork;
  readonly title: string;
  readonly leastAgeDays: number;
  /** Least share of the 28-day strength, or of days at 20 deg C. */
  readonly needs: { readonly kind: 'strength' | 'equivalent-age'; readonly least: number };
  readonly asks: string;
  readonly source: string;
}

/** Ages and shares are common practice beside ACI 347R-14 (recommended times for sides and soffits) unless a source says more. */
const RULES: readonly Rule[] = [
  {
    id: 'edge-forms-off',
    title: 'Edge forms off',
    leastAgeDays: 1,
    needs: { kind: 'equivalent-age', least: 1 },
    asks: '24 hours at 68 F (20 C), or as long as the cold makes of it; 48 hours leave crisper edges',
    source: 'common practice beside ACI 347R-14, which lets sides go after 12 to 24 h above 50 F (10 C)',
  },
  {
    id: 'light-load',
    title: 'Load it lightly, still on its supports',
    leastAgeDays: EARLIEST_STRIP_DAYS,
    needs: { kind: 'strength', least: 0.7 },
    asks: '7 days and 70 % of its 28-day strength, for tools and the working load of the swap',
    source: 'common practice, no source',
  },
  {
    id: 'soffit-supports-out',
    title: 'First soffit supports out',
    leastAgeDays: EARLIEST_STRIP_DAYS,
    needs: { kind: 'strength', least: 0.75 },
    asks: '7 days and 75 % of its 28-day strength',
    source: 'common practice on top of ACI 347R-14',
  },
  {
    id: 'swap',
    title: 'Start the swap',
    leastAgeDays: EARLIEST_STRIP_DAYS,
    needs: { kind: 'strength', least: 0.75 },
    asks: '7 days and 75 % of its 28-day strength, as for any soffit support',
    source: 'common practice on top of ACI 347R-14; each step is checked at the strength of its day',
  },
  {
    id: 'overhang-supports-out',
    title: 'Supports of an overhang out, last of all',
    leastAgeDays: 14,
    needs: { kind: 'strength', least: 0.75 },
    asks: '14 days and 75 % of its 28-day strength, after every other support',
    source: 'common practice on top of ACI 347R-14',
  },
  {
    id: 'full-strength',
    title: 'Full strength, to load it as it is meant to be used',
    leastAgeDays: 28,
    needs: { kind: 'strength', least: 1 },
    asks: '28 days and all of its 28-day strength',
    source: 'ACI 318-19 26.4.2.1: strength is specified at 28 days',
  },
  {
    id: 'seal',
    title: 'Seal',
    leastAgeDays: 28,
    needs: { kind: 'equivalent-age', least: 28 },
    asks: "28 days at 68 F (20 C), unless the sealer's label allows less",
    source: "common practice; the sealer's label rules",
  },
];

const LAST_AGE_DAYS = 365;
/** Strength grows to its 28-day figure in the limit only where the air is cool; this near counts as there. */
const THERE_RATIO = 1e-6;

/** Every row for one piece, in the order in which they are met. `strengthAt` is the piece's own; left out it is looked up here. */
export function earliestDays(
  job: Job,
  piece: Piece,
  strengthAt: StrengthAt = strengthLookup(job, piece),
): EarliestDay[] {
  const steps = swapSteps(job, piece);
  const overhanging = new Set(overhangSupports(piece, steps));
  const rows = RULES.filter(({ id }) => id !== 'overhang-supports-out' || overhanging.size > 0);
  return rows.map((rule) =>
    rowOf(job, rule, firstDay(strengthAt, rule), plannedDay(job, piece, steps, overhanging, rule.id)),
  );
}

/** First day of the job on which the swap may start; null where it is not reached within a year. */
export function earliestSwapDay(job: Job, piece: Piece): number | null {
  return firstDay(strengthLookup(job, piece), ruleOf('swap'))?.found.day ?? null;
}

/** First day of the job on which edge forms may come off; null where it is not reached within a year. */
export function earliestStripDay(
  job: Job,
  piece: Piece,
  strengthAt: StrengthAt = strengthLookup(job, piece),
): number | null {
  return firstDay(strengthAt, ruleOf('edge-forms-off'))?.found.day ?? null;
}

function ruleOf(id: SlabWork): Rule {
  return RULES.find((rule) => rule.id === id)!;
}

function rowOf(job: Job, rule: Rule, first: First | null, planned: number | null): EarliestDay {
  const { id, title, asks, source } = rule;
  return {
    id,
    title,
    day: first?.found.day ?? null,
    ageDays: first?.found.ageDays ?? null,
    governedBy: first?.governedBy ?? null,
    words: wordsOf(job, rule, first),
    source,
    plannedDay: planned,
    caution:
      planned === null || (first !== null && planned >= first.found.day)
        ? null
        : `Planned on day ${planned}, ${first === null ? 'but it is not that far within a year' : `before day ${first.found.day}`}: it asks for ${asks}. Your own decision; go by a cylinder test, and leave the props in if in doubt.`,
  };
}

interface First {
  readonly found: StrengthDay;
  readonly governedBy: 'age' | 'strength';
}

function firstDay(strengthAt: StrengthAt, { leastAgeDays, needs }: Rule): First | null {
  for (let ageDays = leastAgeDays; ageDays <= LAST_AGE_DAYS; ageDays++) {
    const found = strengthAt(ageDays);
    const has = needs.kind === 'strength' ? found.strengthRatio : found.equivalentAgeDays;
    if (has >= needs.least - THERE_RATIO)
      return { found, governedBy: ageDays === leastAgeDays ? 'age' : 'strength' };
  }
  return null;
}

function wordsOf(job: Job, { asks, leastAgeDays }: Rule, first: First | null): string {
  if (first === null) return `Not within a year at these temperatures: it asks for ${asks}.`;
  const { day, ageDays, strengthPsi, strengthRatio, isTested } = first.found;
  const strength = printStress(Math.round(strengthPsi), { system: job.shownIn });
  const late = ageDays - leastAgeDays;
  const held =
    first.governedBy === 'strength'
      ? ` Its strength holds it back ${late} ${late === 1 ? 'day' : 'days'} beyond that age.`
      : '';
  const from = isTested ? 'by your cylinder tests' : 'by the strength curve and the temperatures';
  return `Day ${day}, ${ageDays} ${ageDays === 1 ? 'day' : 'days'} old, with ${strength}, ${Math.round(100 * strengthRatio)} % of its 28-day strength ${from}. It asks for ${asks}.${held}`;
}

function plannedDay(
  job: Job,
  piece: Piece,
  steps: readonly PieceStep[],
  overhanging: ReadonlySet<string>,
  id: SlabWork,
): number | null {
  const gone = (isAsked: (supportId: string) => boolean) =>
    least(
      steps.flatMap(({ day, supportsOut }) =>
        day > piece.pourDay && supportsOut.some(isAsked) ? [day] : [],
      ),
    );
  switch (id) {
    case 'soffit-supports-out':
      return gone((supportId) =>
        piece.supports.some((one) => one.id === supportId && isTemporary(one, steps)),
      );
    case 'overhang-supports-out':
      return gone((supportId) => overhanging.has(supportId));
    case 'swap':
      return least(
        steps.flatMap(({ day, supportsIn }) => (day > piece.pourDay && supportsIn.length > 0 ? [day] : [])),
      );
    case 'full-strength':
    case 'seal':
      return job.site.calendar.handOverDay;
    case 'edge-forms-off':
    case 'light-load':
      return null;
  }
}

function least(days: readonly number[]): number | null {
  return days.length === 0 ? null : Math.min(...days);
}
