/** Checks the piece of the quick check while its fields change. */
import { useEffect, useState } from 'react';
import type { Job } from '../../src-core/job';
import type { PieceResult } from '../../src-core/verdict';
import { checkAside } from '../state/verdict-loop';
import type { QuickAnswer } from './quick-answer';
import { quickAnswer } from './quick-answer';

/** A field that rests this long is taken for done, ms. */
const REST_MS = 200;

export interface QuickVerdictState {
  /** The last answer, also while the next one is worked out; null before the first. */
  readonly answer: QuickAnswer | null;
  readonly isChecking: boolean;
  readonly trouble: string | null;
}

export type CheckOne = (
  job: Job,
  pieceId: string,
  onLook: (result: PieceResult) => void,
) => Promise<PieceResult | null>;

/** The verdict of the only piece of a job; null where the fields make no job. An answer to older fields is dropped. */
export function useQuickVerdict(job: Job | null, check: CheckOne = checkAside): QuickVerdictState {
  const [state, setState] = useState<QuickVerdictState>({ answer: null, isChecking: false, trouble: null });
  useEffect(() => {
    if (job === null) {
      setState({ answer: null, isChecking: false, trouble: null });
      return;
    }
    let isWanted = true;
    setState(({ answer }) => ({ answer, isChecking: true, trouble: null }));
    const end = (answer: QuickAnswer | null, trouble: string | null) =>
      isWanted && setState({ answer, isChecking: false, trouble });
    const rest = setTimeout(() => {
      const look = (result: PieceResult) =>
        isWanted && setState({ answer: quickAnswer(result), isChecking: true, trouble: null });
      check(job, job.pieces[0]!.id, look).then(
        (result) =>
          result === null
            ? end(null, 'The check came to no answer. Change a field to try again.')
            : end(quickAnswer(result), null),
        (fault: unknown) => end(null, `The check came to no answer: ${String(fault)}`),
      );
    }, REST_MS);
    return () => {
      isWanted = false;
      clearTimeout(rest);
    };
  }, [job, check]);
  return state;
}
