/** What is said quietly while an answer is not the last word. */
import { stands } from '../../src-core/checks';
import type { CheckProgress, PieceVerdict } from '../state/verdict-store';

interface Standing extends Pick<PieceVerdict, 'quality' | 'isSearching' | 'isStale'> {
  readonly result: { readonly verdict: Pick<PieceVerdict['result']['verdict'], 'level'> };
}

/** How far the answer about a piece is; empty once it is whole. */
export function answerWords(verdict: Standing | undefined): string {
  if (verdict === undefined) return 'Working out whether it stands.';
  if (verdict.isStale) return 'Changed since; checking again.';
  if (verdict.quality === 'coarse') return 'A quick look; the full answer follows.';
  if (verdict.isSearching) {
    return stands(verdict.result.verdict.level)
      ? 'Looking at the days before it.'
      : 'Looking for changes that pass.';
  }
  return '';
}

/** How far the check of the whole job is; empty where none goes on. */
export function progressWords(progress: CheckProgress | null): string {
  if (progress === null || progress.done >= progress.total) return '';
  return `Checking ${progress.words}, ${progress.done + 1} of ${progress.total}.`;
}
