/** Tables: columns of whole percents, rows as tall as their tallest cell, a head that comes again on every page. */
import type { TableBlock, TableColumn, TableRow } from './block';
import type { PlacedColumn } from './laid-out';
import type { Measured } from './measured';
import { HAIR_RECKONED_PT, measured } from './measured';
import { CELL_PT, GAPS_PT, STYLES } from './practice';
import type { SetText, Setting } from './set-text';
import { setText } from './set-text';
import type { Run, Words } from './words';
import { runsOf } from './words';

const CONTINUED = ' (continued)';
/** Left and right rules of a cell for the pen. */
const SIDE_RULES = 2;

export function measureTable(block: TableBlock, setting: Setting): Measured {
  const { id, caption, rows, isForPen = false } = block;
  const columns = columnsInPercent(block.columns);
  const widthsPt = columns.map(
    ({ widthPercent }) =>
      (setting.widthPt * widthPercent) / 100 -
      2 * CELL_PT.side -
      (isForPen ? SIDE_RULES * HAIR_RECKONED_PT : 0),
  );
  const heads = columns.map(({ head }, k) => setText(head, STYLES.cellStrong, widthsPt[k]!, setting));
  const captions = [false, true].map((continues) => {
    const words = captionWords(caption, continues);
    return setText(words, STYLES.cellStrong, setting.widthPt, setting);
  });
  const cells = rows.map((row) => {
    if (row.cells.length !== columns.length) {
      throw new Error(`Table ${id} has ${columns.length} columns and a row of ${row.cells.length} cells`);
    }
    return row.cells.map((words, k) => setText(words, cellStyle(row, columns[k]!), widthsPt[k]!, setting));
  });
  const [headPt, againPt] = captions.map(
    (set) => set.heightPt + CELL_PT.captionBelow + HAIR_RECKONED_PT + rowPt(heads, 0),
  );
  const rowsPt = cells.map((row) => rowPt(row, isForPen ? CELL_PT.penRow : 0));
  return measured({
    kind: 'table',
    id,
    gapPt: GAPS_PT.table,
    unitsPt:
      rowsPt.length === 0 ? [headPt!] : rowsPt.map((height, index) => height + (index === 0 ? headPt! : 0)),
    againPt: againPt!,
    problems: [...captions.slice(0, 1), ...heads, ...cells.flat()].flatMap(({ problems }) => problems),
    place: (pageOf, from, to) => ({
      kind: 'table',
      id,
      caption: captions[from > 0 ? 1 : 0]!.text(pageOf),
      columns,
      heads: heads.map(({ text }) => text(pageOf)),
      rows: cells.slice(from, to).map((row, k) => ({
        cells: row.map(({ text }) => text(pageOf)),
        isTotal: rows[from + k]!.isTotal ?? false,
      })),
      isForPen,
      continues: from > 0,
    }),
  });
}

function captionWords(caption: Words, continues: boolean): readonly Run[] {
  return continues ? [...runsOf(caption), CONTINUED] : runsOf(caption);
}

function cellStyle({ isTotal = false }: TableRow, { namesRow = false }: TableColumn) {
  return isTotal || namesRow ? STYLES.cellStrong : STYLES.cell;
}

/** Rules above and below are counted for every row, also where two rows share one. */
function rowPt(cells: readonly SetText[], leastPt: number): number {
  const textPt = Math.max(STYLES.cell.linePt, ...cells.map(({ heightPt }) => heightPt));
  return Math.max(leastPt, textPt + CELL_PT.above + CELL_PT.below) + 2 * HAIR_RECKONED_PT;
}

const WHOLE_PERCENT = 100;

/** Shares as whole percents that add up to 100: rounded down, then the largest remainders up. */
export function columnsInPercent(columns: readonly TableColumn[]): PlacedColumn[] {
  const sum = columns.reduce((total, { share }) => total + share, 0);
  if (columns.some(({ share }) => !(share > 0))) throw new Error('A column of a table has a share above 0');
  const exact = columns.map(({ share }) => (share / sum) * WHOLE_PERCENT);
  const percents = exact.map((percent) => Math.floor(percent));
  const missing = WHOLE_PERCENT - percents.reduce((total, percent) => total + percent, 0);
  const byRemainder = exact
    .map((percent, index) => ({ index, remainder: percent - Math.floor(percent) }))
    .sort((a, b) => b.remainder - a.remainder || a.index - b.index);
  for (const { index } of byRemainder.slice(0, missing)) percents[index] = percents[index]! + 1;
  return columns.map((column, index) => ({ ...column, widthPercent: percents[index]! }));
}
