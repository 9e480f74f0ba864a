/** Rows of one printed table: the leading whole numbers and the reals behind them. */
export type PrintedTable = { readonly title: string; readonly rows: number[][] };

/** The tables of a `.dat` file in printed order. */
export function readTables(dat: string): PrintedTable[] {
  const tables: PrintedTable[] = [];
  for (const line of dat.split('\n')) {
    if (line.trim() === '') continue;
    if (/[a-z]/.test(line)) {
      tables.push({ title: line.trim(), rows: [] });
      continue;
    }
    tables.at(-1)?.rows.push(line.trim().split(/\s+/).map(fortranNumber));
  }
  return tables;
}

/** The one table whose title begins so and is printed for this set. */
export function tableFor(tables: readonly PrintedTable[], title: string, set: string): number[][] {
  const found = tables.filter(
    (table) => table.title.startsWith(title) && table.title.includes(` set ${set} `),
  );
  if (found.length !== 1) throw new Error(`${found.length} tables "${title}" for set ${set}`);
  return found[0]!.rows;
}

/** Iterations that the convergence table lists; 0 for a linear run. */
export function iterationCount(convergence: string): number {
  return convergence.split('\n').filter((line) => /^\s+\d+\s+\d+\s+\d+\s+\d+/.test(line)).length;
}

/** Reads a printed real. With three exponent digits the E is left out (0.1234567-101). */
function fortranNumber(text: string): number {
  const value = Number(text.replace(/(\d)([+-]\d{3})$/, '$1E$2'));
  if (Number.isNaN(value)) throw new Error(`not a number in the printed results: ${text}`);
  return value;
}
