/** The shopping list as it is read: what to buy by where one buys it, what it takes, and from where in the drawing. */
import type { Job } from '../../src-core/job';
import { tickIdOf } from '../../src-core/pour';
import type { JobTakeoff, ListGroup, ListLine, ListSource, ShoppingList } from '../../src-core/takeoff';
import { amountWords, linesOf } from '../../src-core/takeoff';
import type { Trace } from '../../src-core/trace';
import { traceWord } from '../../src-core/trace';
import type { UnitSystem } from '../../src-core/units';

export interface SourceRow {
  readonly key: string;
  /** "Serving counter, edge 3". */
  readonly words: string;
  /** "25-1/2 in", "12 of them, 40' 3"". */
  readonly amount: string;
  readonly trace: Trace;
}

export interface BuyRow {
  readonly id: string;
  /** Under which the job keeps that it is bought. */
  readonly tickId: string;
  readonly isTicked: boolean;
  readonly name: string;
  /** "3 sticks of 8 ft". */
  readonly buy: string;
  /** "takes 16' 9-1/4"": the exact need. */
  readonly need: string;
  readonly waste: string;
  /** "43.50"; empty where no price is known. */
  readonly cost: string;
  /** "14.50 each, an invented price". */
  readonly price: string;
  /** As it was before the drawing changed: the falsework is not designed yet. */
  readonly isEarlier: boolean;
  readonly sources: readonly SourceRow[];
}

export interface BuyGroup {
  readonly id: ListGroup['id'];
  readonly title: string;
  readonly rows: readonly BuyRow[];
}

/** Lines of the falsework, which the quick take-off leaves out. */
const OF_FALSEWORK = ['lumber/', 'panel/', 'screws/falsework/'] as const;

/** Whether a line is of the falsework. */
export function isOfFalsework({ id }: Pick<ListLine, 'id'>): boolean {
  return OF_FALSEWORK.some((beginning) => id.startsWith(beginning));
}

/**
 * The list by where one buys. While the falsework is not in it, its lines stand as they were in the last list that had them, so that
 * the list does not jump at every move of the hand.
 */
export function buyGroups(
  takeoff: JobTakeoff,
  wholeList: ShoppingList | null,
  job: Pick<Job, 'ticks' | 'shownIn'>,
): BuyGroup[] {
  const { list, falseworkCuts } = takeoff;
  const earlier =
    falseworkCuts === null && wholeList !== null ? linesOf(wholeList).filter(isOfFalsework) : [];
  const ticks = new Set(job.ticks.flatMap(({ id, done }) => (done ? [id] : [])));
  const groups = [...list.groups, ...(wholeList?.groups ?? [])];
  const ids = [...new Set(groups.map(({ id }) => id))];
  return ids
    .map((id): BuyGroup => {
      const { title } = groups.find((group) => group.id === id)!;
      const own = list.groups.find((group) => group.id === id)?.lines ?? [];
      const kept = earlier.filter((line) => line.group === id);
      return {
        id,
        title,
        rows: [
          ...own.map((line) => buyRow(line, ticks, false, job.shownIn)),
          ...kept.map((line) => buyRow(line, ticks, true, job.shownIn)),
        ],
      };
    })
    .filter(({ rows }) => rows.length > 0);
}

function buyRow(line: ListLine, ticks: ReadonlySet<string>, isEarlier: boolean, system: UnitSystem): BuyRow {
  const { id, name, buyWords, neededWords, wasteWords, cost, priceEach, priceFrom, sources, unit } = line;
  const tickId = tickIdOf(line);
  return {
    id,
    tickId,
    isTicked: ticks.has(tickId),
    name,
    buy: buyWords,
    need: `takes ${neededWords}`,
    waste: wasteWords,
    cost: cost === null ? '' : cost.toFixed(2),
    price:
      priceEach === null
        ? 'no price known'
        : `${priceEach.toFixed(2)} each${priceFrom === 'invented' ? ', an invented price' : ''}`,
    isEarlier,
    sources: sourceRows(sources, unit, system),
  };
}

/** Sources of one place that read alike stand together. */
function sourceRows(sources: readonly ListSource[], unit: ListLine['unit'], system: UnitSystem): SourceRow[] {
  const groups = new Map<string, ListSource[]>();
  for (const source of sources) {
    const key = `${traceWord(source.trace)} ${source.words}`;
    groups.set(key, [...(groups.get(key) ?? []), source]);
  }
  return [...groups].map(([key, alike]) => {
    const amount = amountWords(
      alike.reduce((sum, source) => sum + source.amount, 0),
      unit,
      system,
    );
    return {
      key,
      words: alike[0]!.words,
      amount: alike.length === 1 || unit === 'each' ? amount : `${alike.length} of them, ${amount}`,
      trace: alike[0]!.trace,
    };
  });
}

/** "47 things to buy, 3 of them ticked". */
export function countWords(groups: readonly BuyGroup[]): string {
  const rows = groups.flatMap(({ rows: own }) => own);
  const ticked = rows.filter(({ isTicked }) => isTicked).length;
  const count = rows.length === 1 ? '1 thing to buy' : `${rows.length} things to buy`;
  return ticked === 0 ? count : `${count}, ${ticked} ticked`;
}
