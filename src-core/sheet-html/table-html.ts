/** Tables with caption, head and rows that are named by their cells. */
import type { PlacedColumn, PlacedContent, Text } from '../sheet';
import { htmlText, textHtml } from './html-text';

type PlacedTable = Extract<PlacedContent, { kind: 'table' }>;

/** The part of a table on one page; its id stands at its beginning alone. */
export function tableHtml(table: PlacedTable): string {
  const { id, caption, columns, heads, rows, isForPen, continues } = table;
  const anchor = continues ? '' : ` id="${htmlText(id)}"`;
  return [
    `<table class="block table${isForPen ? ' for-pen' : ''}"${anchor}>`,
    `<caption>${textHtml(caption)}</caption>`,
    `<colgroup>${columns.map(({ widthPercent }) => `<col class="w${widthPercent}">`).join('')}</colgroup>`,
    `<thead><tr>${heads.map((head, k) => cellHtml(head, columns[k]!, 'col')).join('')}</tr></thead>`,
    `<tbody>${rows.map(({ cells, isTotal }) => rowHtml(cells, columns, isTotal)).join('')}</tbody>`,
    '</table>',
  ].join('');
}

function rowHtml(cells: readonly Text[], columns: readonly PlacedColumn[], isTotal: boolean): string {
  const row = cells.map((cell, k) => cellHtml(cell, columns[k]!, columns[k]!.namesRow ? 'row' : null));
  return `<tr${isTotal ? ' class="total"' : ''}>${row.join('')}</tr>`;
}

/** A cell that names a row or a column is a head of it, unless it is empty and names nothing. */
function cellHtml(cell: Text, column: PlacedColumn, names: 'row' | 'col' | null): string {
  const words = textHtml(cell);
  if (names === null || words === '') return `<td${alignment(column)}>${words}</td>`;
  return `<th scope="${names}"${alignment(column)}>${words}</th>`;
}

function alignment({ align }: PlacedColumn): string {
  return align === 'start' ? '' : ` class="${align}"`;
}
