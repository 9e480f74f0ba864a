/** Rows of the overhang chart kept in a file: the same question to the same engine has the same answer. */
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import type { ChartBasis, ChartRow, ChartRowRequest } from '../../src-core/overhang-chart';
import { chartRowSchema } from '../../src-core/overhang-chart';

export interface RowCache {
  /** The row as it was kept; null where it was not. */
  readonly find: (basis: ChartBasis, request: ChartRowRequest) => ChartRow | null;
  /** Keeps a row. Returns why it could not, in words, or null. */
  readonly keep: (basis: ChartBasis, request: ChartRowRequest, row: ChartRow) => string | null;
}

const FILE_NAME = 'overhang-chart.json';
/** The rows kept first go first. */
const MOST_ROWS = 400;

const cacheFile = z.object({
  engine: z.string(),
  rows: z.array(z.object({ key: z.string(), row: chartRowSchema })),
});

type Kept = z.infer<typeof cacheFile>['rows'];

/** The rows in `folder` that this engine found. A file that is missing, damaged or another engine's counts as empty. */
export function openRowCache(folder: string, engine: string): RowCache {
  const path = join(folder, FILE_NAME);
  let kept = readRows(path, engine);
  return {
    find: (basis, request) => {
      const key = keyOf(basis, request);
      return kept.find((one) => one.key === key)?.row ?? null;
    },
    keep: (basis, request, row) => {
      const key = keyOf(basis, request);
      // read again: another run may have kept rows since
      const others = readRows(path, engine).filter((one) => one.key !== key);
      kept = [...others, { key, row }].slice(-MOST_ROWS);
      return writeRows(folder, path, { engine, rows: kept });
    },
  };
}

function keyOf(basis: ChartBasis, { over, thicknessIn, spacingIn }: ChartRowRequest): string {
  const inputs = JSON.stringify(sorted({ basis, over, thicknessIn, spacingIn }));
  return createHash('sha256').update(inputs).digest('hex');
}

/** The same inputs written in another order are the same. */
function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (value === null || typeof value !== 'object') return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([name, inner]) => [name, sorted(inner)]));
}

function readRows(path: string, engine: string): Kept {
  const text = textOf(path);
  if (text === null) return [];
  const read = cacheFile.safeParse(jsonOf(text));
  return read.success && read.data.engine === engine ? read.data.rows : [];
}

/** null where the file cannot be read: what is kept can be computed again. */
function textOf(path: string): string | null {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return null;
  }
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

/** Writes beside the file and renames, so that a run which is killed leaves the old file whole. */
function writeRows(folder: string, path: string, file: z.infer<typeof cacheFile>): string | null {
  const fresh = `${path}.${process.pid}.new`;
  try {
    mkdirSync(folder, { recursive: true });
    writeFileSync(fresh, JSON.stringify(file));
    renameSync(fresh, path);
    return null;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}
