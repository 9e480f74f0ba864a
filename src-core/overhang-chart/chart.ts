/** The overhang chart, a row at a time: over thickness, and over bracket spacing. */
import type { ChartBasis } from './basis';
import { CHART_SPACING_ROWS_IN, CHART_SPACINGS_IN, CHART_THICKNESSES_IN } from './basis';
import { chartEntry } from './entry';
import type { ChartCase, ChartEntry, ChartRow, ChartRowRequest } from './row';

export interface ChartProgress {
  /** Entries that are done, and all of this call. */
  readonly done: number;
  readonly total: number;
  /** The entry under way, and the overhang that is tried for it. */
  readonly asked: ChartCase;
  readonly overhangIn: number;
}

export interface ChartHooks {
  readonly onProgress?: (progress: ChartProgress) => void;
  readonly isCancelled?: () => boolean;
}

/**
 * Rows of both charts. Over thickness: the longest overhang alone, with its steel, and with brackets at four spacings. Over
 * spacing, at one thickness: with brackets, alone and with its steel.
 */
export function thicknessRows(thicknessesIn: readonly number[] = CHART_THICKNESSES_IN): ChartRowRequest[] {
  return thicknessesIn.map((thicknessIn) => ({ over: 'thickness', thicknessIn, spacingIn: null }));
}

/** Rows over bracket spacing at one thickness; see `thicknessRows`. */
export function spacingRows(thicknessIn: number): ChartRowRequest[] {
  return CHART_SPACING_ROWS_IN.map((spacingIn) => ({ over: 'spacing', thicknessIn, spacingIn }));
}

/** What the entries of a row ask, from left to right. */
export function casesOf({ thicknessIn, spacingIn }: ChartRowRequest): ChartCase[] {
  const bare = [false, true].map((withSteel) => ({ thicknessIn, withSteel, spacingIn }));
  if (spacingIn !== null) return bare;
  return [...bare, ...CHART_SPACINGS_IN.map((at) => ({ thicknessIn, withSteel: false, spacingIn: at }))];
}

/** Computes the rows one after another and gives each as soon as it is done; ends early where cancelled. */
export function* overhangChart(
  basis: ChartBasis,
  requests: readonly ChartRowRequest[],
  hooks: ChartHooks = {},
): Generator<ChartRow, void, void> {
  const total = requests.reduce((sum, request) => sum + casesOf(request).length, 0);
  let done = 0;
  for (const request of requests) {
    const entries: ChartEntry[] = [];
    for (const asked of casesOf(request)) {
      const entry = chartEntry(basis, asked, asked.withSteel ? (entries[0] ?? null) : null, {
        onRun: (overhangIn) => hooks.onProgress?.({ done, total, asked, overhangIn }),
        ...(hooks.isCancelled === undefined ? {} : { isCancelled: hooks.isCancelled }),
      });
      if (entry === null) return;
      entries.push(entry);
      done++;
    }
    yield { ...request, entries };
  }
}
