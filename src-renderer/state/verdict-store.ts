/** What the worker has answered so far, piece by piece. Filled by the verdict loop; views read it. */
import { create } from 'zustand';
import type { DeflectedShape, PieceMap } from '../../src-core/field-map';
import type { JobResult, PieceResult } from '../../src-core/verdict';
import type { Quality } from '../worker/messages';

export interface PieceVerdict {
  readonly result: PieceResult;
  /** null where the piece cannot be analysed. */
  readonly map: PieceMap | null;
  readonly quality: Quality;
  readonly isSearching: boolean;
  /** True where the piece has changed since; the answer is the last one until the next is there. */
  readonly isStale: boolean;
}

export interface CheckProgress {
  readonly done: number;
  readonly total: number;
  readonly words: string;
}

export interface VerdictState {
  readonly pieces: Readonly<Record<string, PieceVerdict>>;
  /** The job as a whole; null until every piece has been checked once. */
  readonly job: JobResult | null;
  readonly progress: CheckProgress | null;
  readonly deflected: DeflectedShape | null;
  /** A fault of the tool's own while checking. */
  readonly fault: string | null;
}

export const useVerdicts = create<VerdictState>()(() => ({
  pieces: {},
  job: null,
  progress: null,
  deflected: null,
  fault: null,
}));

/** Verdict of one piece, or undefined before the first answer. */
export function useVerdict(pieceId: string): PieceVerdict | undefined {
  return useVerdicts(({ pieces }) => pieces[pieceId]);
}
