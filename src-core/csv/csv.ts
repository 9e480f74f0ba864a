/** Tables as comma-separated text. */

/** A number is written with a point and without grouping; null leaves the cell empty. */
export type CsvCell = string | number | null;

export interface CsvTable {
  readonly columns: readonly string[];
  /** As many cells each as there are columns. */
  readonly rows: readonly (readonly CsvCell[])[];
}

/** Text that a spreadsheet would take for a formula: its first letter, after blanks, also in its full-width form. */
const FORMULA_LIKE = /^\s*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]/;
const PLAIN_NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

/**
 * The table as RFC 4180 text: a header line, every line ended by CR LF, cells quoted where they hold a comma, a quote or a
 * line break. Text that begins with = + - or @ and is no number gets a leading apostrophe, so that no cell is ever run as a
 * formula. Source: RFC 4180, section 2; the apostrophe: OWASP, CSV injection, from memory.
 */
export function csvOf({ columns, rows }: CsvTable): string {
  return [columns, ...rows].map((cells) => lineOf(cells, columns.length)).join('');
}

function lineOf(cells: readonly CsvCell[], wanted: number): string {
  if (cells.length !== wanted) throw new Error(`A line of ${cells.length} cells in a table of ${wanted}`);
  return `${cells.map((cell) => quoted(written(cell))).join(',')}\r\n`;
}

function written(cell: CsvCell): string {
  if (cell === null) return '';
  if (typeof cell === 'string')
    return FORMULA_LIKE.test(cell) && !PLAIN_NUMBER.test(cell) ? `'${cell}` : cell;
  if (!Number.isFinite(cell)) throw new Error(`A cell must be finite to be written: ${cell}`);
  return String(cell);
}

function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
