/** Lumber, panels and screws of the falsework, what is used again left out. */
import type { BillLine, BillPanel, CutList, JobFalsework } from '../falsework';
import { boardFeet, cutList, pricesOf } from '../falsework';
import type { Job, StockItem } from '../job';
import type { LumberSize } from '../timber';
import { LUMBER, PANELS } from '../timber';
import type { Trace } from '../trace';
import { IN2_PER_FT2 } from '../units';
import type { UnitPrice } from './list-line';
import { AS_COUNTED, CUT_BY_LIST, listLine, wholeUnits } from './list-line';
import { SAME_SIZE_IN, SCREW_BOX } from './practice';
import { sourceOf, sumOf } from './sources';
import { stickLines } from './stick-lines';
import { priceOfItem, priceOfKind } from './stock-prices';
import type { ListLine, ListSource } from './types';
import { counted, sheetWords } from './words';

/** Parts that are bought for a piece's falsework, every copy of it counted. */
interface Bought {
  readonly pieceId: string;
  readonly sticks: readonly BillLine[];
  readonly panels: readonly BillPanel[];
}

function boughtOf({ reuse }: JobFalsework, pieceIds: readonly string[]): Bought[] {
  return reuse.byPiece
    .filter(({ pieceId }) => pieceIds.includes(pieceId))
    .map(({ pieceId, bought }) => ({ pieceId, ...bought }));
}

/** What is bought for the falsework of these pieces, cut from stock together. */
export function falseworkCuts(job: Job, falsework: JobFalsework, pieceIds: readonly string[]): CutList {
  const bought = boughtOf(falsework, pieceIds);
  return cutList(
    job,
    bought.flatMap(({ sticks }) => sticks),
    bought.flatMap(({ panels }) => panels),
  );
}

/** Lines for lumber by size and length, deck panels, and screws by kind. */
export function falseworkLines(
  job: Job,
  falsework: JobFalsework,
  cuts: CutList,
  pieceIds: readonly string[],
): ListLine[] {
  const bought = boughtOf(falsework, pieceIds);
  return [
    ...cuts.bySize.flatMap(({ size, sticks }) => {
      const take = takerOf(bought, size);
      return stickLines(
        {
          id: `lumber/${size}`,
          group: 'timber-yard',
          name: `Lumber ${size}, for the falsework`,
          one: 'stick',
          priceOf: ({ stockLengthIn }) => lumberPrice(job, size, stockLengthIn),
        },
        sticks.map(({ stockLengthIn, cuts: own }) => ({
          stockId: null,
          stockLengthIn,
          cuts: own.map(({ what, lengthIn }) => take(job, what, lengthIn)),
        })),
        job.shownIn,
      );
    }),
    ...panelLine(job, bought, cuts),
    ...screwLines(job, falsework, pieceIds),
  ];
}

/** Gives each cut of a size the piece that it is bought for: pieces in the job's order, each as often as it buys the part. */
function takerOf(bought: readonly Bought[], size: LumberSize) {
  const waiting = new Map<string, string[]>();
  const keyOf = (what: string, lengthIn: number) => `${what} ${lengthIn}`;
  for (const { pieceId, sticks } of bought) {
    for (const { what, lengthIn, count } of sticks.filter((line) => line.size === size)) {
      const key = keyOf(what, lengthIn);
      waiting.set(key, [...(waiting.get(key) ?? []), ...Array.from({ length: count }, () => pieceId)]);
    }
  }
  const taken = new Map<string, number>();
  return (job: Job, what: string, lengthIn: number): ListSource => {
    const pieceId = waiting.get(keyOf(what, lengthIn))?.shift();
    if (pieceId === undefined) throw new Error(`no piece buys a ${what} of ${size}, ${lengthIn} in`);
    const number = (taken.get(`${pieceId} ${what}`) ?? 0) + 1;
    taken.set(`${pieceId} ${what}`, number);
    const id = `${pieceId}/falsework/${what}/${size}/${number}`;
    return { id, trace: wholePiece(pieceId), amount: lengthIn, words: `${nameOf(job, pieceId)}, ${what}` };
  };
}

function panelLine(job: Job, bought: readonly Bought[], { sheets }: CutList): ListLine[] {
  const [sheet] = sheets;
  if (sheet === undefined) return [];
  const sources = bought.flatMap(({ pieceId, panels }) =>
    panels.map(({ what, lengthIn, widthIn }, i) => ({
      id: `${pieceId}/falsework/${what}/${i + 1}`,
      trace: wholePiece(pieceId),
      amount: lengthIn * widthIn,
      words: `${nameOf(job, pieceId)}, ${what} ${i + 1}`,
    })),
  );
  return listLine(
    {
      id: `panel/${sheet.lengthIn}x${sheet.widthIn}`,
      group: 'timber-yard',
      name: 'Deck panel, for the falsework',
      unit: 'in2',
      sources,
      waste: CUT_BY_LIST,
      buy: sheets.length,
      buyWords: `${counted(sheets.length, 'sheet', 'sheets')} of ${sheetWords(sheet.lengthIn, sheet.widthIn, job.shownIn)}`,
      price: panelPrice(job, sheet),
    },
    job.shownIn,
  );
}

/** Screws are bought anew for every section that is built, also where its lumber is used again. */
function screwLines(job: Job, { designs }: JobFalsework, pieceIds: readonly string[]): ListLine[] {
  const fastenings = designs
    .filter(({ pieceId }) => pieceIds.includes(pieceId))
    .flatMap(({ pieceId, fastenings: own }) => {
      const copies = job.pieces.find(({ id }) => id === pieceId)!.copies;
      return own.map((fastening) => ({
        // What follows the comma says how it is driven.
        screw: fastening.screw.split(',')[0]!,
        source: sourceOf(
          job,
          { pieceId, copies },
          { id: fastening.id, trace: sectionTrace(job, pieceId, fastening.sectionId) },
          fastening.count,
          `${fastening.from} into ${fastening.into}`,
        ),
      }));
    });
  return [...new Set(fastenings.map(({ screw }) => screw))].flatMap((screw) => {
    const sources = fastenings.filter((one) => one.screw === screw).flatMap(({ source }) => source);
    const isLag = screw.includes('lag');
    const count = sumOf(sources);
    const boxes = wholeUnits(count, AS_COUNTED, SCREW_BOX);
    return listLine(
      {
        id: `screws/falsework/${screw}`,
        group: 'hardware',
        name: `${screw[0]!.toUpperCase()}${screw.slice(1)}, for the falsework`,
        unit: 'each',
        sources,
        waste: AS_COUNTED,
        buy: isLag ? count : boxes,
        buyWords: isLag
          ? counted(count, 'lag screw', 'lag screws')
          : `${counted(boxes, 'box', 'boxes')} of ${SCREW_BOX}`,
        price: isLag ? null : priceOfKind(job, 'screws'),
      },
      job.shownIn,
    );
  });
}

/** The section where it is drawn in the job, else the piece that it stands under. */
function sectionTrace({ falsework }: Job, pieceId: string, sectionId: string): Trace {
  return falsework.sections.some(({ id }) => id === sectionId)
    ? { pieceId, part: { kind: 'section', id: sectionId } }
    : wholePiece(pieceId);
}

function wholePiece(pieceId: string): Trace {
  return { pieceId, part: { kind: 'piece' } };
}

function nameOf({ pieces }: Job, pieceId: string): string {
  return pieces.find(({ id }) => id === pieceId)?.name ?? pieceId;
}

/** The stick's own price in the job's stock, else its board feet at the price by which falsework is compared. */
function lumberPrice(job: Job, size: LumberSize, lengthIn: number): UnitPrice {
  const { thicknessIn, widthIn } = LUMBER[size];
  const own = priceOfItem(
    job.stock.find(
      (item) =>
        item.kind === 'lumber' && item.price !== null && isSize(item, { lengthIn, widthIn, thicknessIn }),
    ),
  );
  const foot = pricesOf(job).boardFoot[size];
  return own ?? { each: toCents(foot.price * boardFeet(size, lengthIn)), from: foot.from };
}

function panelPrice(job: Job, sheet: { readonly lengthIn: number; readonly widthIn: number }): UnitPrice {
  const { thicknessIn } = PANELS[job.falsework.panel];
  const own = priceOfItem(
    job.stock.find(
      (item) => item.kind === 'sheet' && item.price !== null && isSize(item, { ...sheet, thicknessIn }),
    ),
  );
  const foot = pricesOf(job).panelFt2;
  return (
    own ?? { each: toCents((foot.price * sheet.lengthIn * sheet.widthIn) / IN2_PER_FT2), from: foot.from }
  );
}

/** Prices are told to two decimals, so that a cost is what its own line multiplies to. */
function toCents(price: number): number {
  return Math.round(price * 100) / 100;
}

function isSize(
  item: StockItem,
  wanted: { readonly lengthIn: number; readonly widthIn: number; readonly thicknessIn: number },
): boolean {
  return (['lengthIn', 'widthIn', 'thicknessIn'] as const).every((side) => {
    const ownIn = item[side];
    return ownIn !== null && Math.abs(ownIn - wanted[side]) < SAME_SIZE_IN;
  });
}
