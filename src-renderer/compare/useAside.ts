import { useEffect, useState } from 'react';
import type { Job } from '../../src-core/job';
import type { PieceResult } from '../../src-core/verdict';
import { checkAside } from '../state/verdict-loop';

interface Answer {
  readonly job: Job;
  readonly pieceId: string;
  readonly result: PieceResult | null;
}

/** Where the check of another version stands; `result` is null while it is not there. */
export interface AsideCheck {
  readonly result: PieceResult | null;
  readonly state: 'nothing-asked' | 'checking' | 'answered' | 'no-answer';
}

/** Checks a piece of a job beside the one in the window; an answer that was overtaken is not shown. null asks nothing. */
export function useAside(job: Job | null, pieceId: string): AsideCheck {
  const [answer, setAnswer] = useState<Answer | null>(null);
  useEffect(() => {
    if (job === null) return;
    let isNewest = true;
    const take = (result: PieceResult | null) => {
      if (isNewest) setAnswer({ job, pieceId, result });
    };
    checkAside(job, pieceId, take).then(take, () => take(null));
    return () => {
      isNewest = false;
    };
  }, [job, pieceId]);
  if (job === null) return { result: null, state: 'nothing-asked' };
  if (answer === null || answer.job !== job || answer.pieceId !== pieceId) {
    return { result: null, state: 'checking' };
  }
  return { result: answer.result, state: answer.result === null ? 'no-answer' : 'answered' };
}
