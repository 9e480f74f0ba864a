/** The overhang chart with the rows that are kept taken from the cache, and the others computed and kept. */
import type { ChartBasis, ChartHooks, ChartRow, ChartRowRequest } from '../../src-core/overhang-chart';
import { overhangChart } from '../../src-core/overhang-chart';
import type { RowCache } from './row-cache';

export interface KeptRow {
  readonly row: ChartRow;
  readonly isFromCache: boolean;
  /** Why a row that was computed could not be kept, or null. */
  readonly trouble: string | null;
}

/** Gives the rows in the order asked for, each as soon as it is there. `fresh` computes all of them anew. */
export function* keptChart(
  basis: ChartBasis,
  requests: readonly ChartRowRequest[],
  cache: RowCache | null,
  hooks: ChartHooks & { readonly fresh?: boolean } = {},
): Generator<KeptRow, void, void> {
  const kept = requests.map((request) =>
    hooks.fresh === true ? null : (cache?.find(basis, request) ?? null),
  );
  const missing = requests.filter((_, i) => kept[i] === null);
  const computed = overhangChart(basis, missing, hooks);
  for (const [i, request] of requests.entries()) {
    const found = kept[i] ?? null;
    if (found !== null) {
      yield { row: found, isFromCache: true, trouble: null };
      continue;
    }
    const next = computed.next();
    if (next.done === true) return;
    const row = next.value;
    yield { row, isFromCache: false, trouble: cache?.keep(basis, request, row) ?? null };
  }
}
