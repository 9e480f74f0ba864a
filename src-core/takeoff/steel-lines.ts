/** Mesh and bars, as they are cut. */
import type { Job } from '../job';
import { MM_PER_IN, printLength } from '../units';
import { listLine, percentWords, wholeUnits } from './list-line';
import { sumOf } from './sources';
import type { BarCuts, BarPiece, MeshCuts, MeshPiece } from './steel-cuts';
import { stickLines } from './stick-lines';
import { priceOfStock } from './stock-prices';
import type { ListLine, ListSource } from './types';
import { counted, placeWords, sheetWords } from './words';

/** A line for each mesh. Bought are the sheets that the cut list takes, or more where the waste of the job asks for more by area. */
export function meshLines(job: Job, cuts: readonly MeshCuts[]): ListLine[] {
  const { shownIn: system } = job;
  const { wasteRatio } = job.forms;
  return cuts.flatMap(({ id, mesh, stock, pieces, list }) => {
    const tooLarge = new Set(list.tooLarge.map((piece) => piece.id));
    const sources = pieces
      .filter((piece) => !tooLarge.has(piece.id))
      .map((piece): ListSource => ({ ...sourceOfCut(job, piece), amount: piece.lengthIn * piece.widthIn }));
    const byArea = wholeUnits(
      sumOf(sources),
      { ratio: wasteRatio, words: '' },
      stock.lengthIn * stock.widthIn,
    );
    const buy = Math.max(list.sheets.length, byArea);
    const length = (valueIn: number) => printLength(valueIn, { system });
    const wire = system === 'imperial' ? `${mesh.wireIn} in` : `${(mesh.wireIn * MM_PER_IN).toFixed(1)} mm`;
    return listLine(
      {
        id,
        group: 'builders-merchant',
        name: `Mesh ${length(mesh.spacingIn)} x ${length(mesh.crossSpacingIn)}, ${wire} wire`,
        unit: 'in2',
        sources,
        waste: {
          ratio: wasteRatio,
          words: `the cut list takes ${counted(list.sheets.length, 'sheet', 'sheets')}, laps in it; by area and ${percentWords(wasteRatio)} for waste it would be ${byArea}; the greater is bought`,
        },
        buy,
        buyWords: `${counted(buy, 'sheet', 'sheets')} of ${sheetWords(stock.lengthIn, stock.widthIn, system)}`,
        price: priceOfStock(job, stock.stockId),
      },
      system,
    );
  });
}

/** A line for each diameter of bar and length of stock. */
export function barLines(job: Job, cuts: readonly BarCuts[]): ListLine[] {
  const { shownIn: system } = job;
  return cuts.flatMap(({ id, barIn, pieces, list }) => {
    const byId = new Map(pieces.map((piece) => [piece.id, piece]));
    const trimmers = pieces.filter(({ isTrimmer }) => isTrimmer).length;
    const also =
      trimmers === 0
        ? ''
        : `; ${counted(trimmers, 'trimmer', 'trimmers')} across corners among them, recommended`;
    return stickLines(
      {
        id,
        group: 'builders-merchant',
        name: `Bar, ${printLength(barIn, { system })} diameter${also}`,
        one: 'bar',
        priceOf: ({ stockId }) => priceOfStock(job, stockId),
      },
      list.sticks.map(({ stockId, stockLengthIn, cuts: own }) => ({
        stockId,
        stockLengthIn,
        cuts: own.map((cut) => ({ ...sourceOfCut(job, byId.get(cut.id)!), amount: cut.lengthIn })),
      })),
      system,
    );
  });
}

function sourceOfCut(job: Job, { id, trace, label, copy }: MeshPiece | BarPiece): Omit<ListSource, 'amount'> {
  return { id, trace, words: `${placeWords(job, trace)}, ${label}${copy === 1 ? '' : `, copy ${copy}`}` };
}
