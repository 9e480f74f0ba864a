import { useDeferredValue, useEffect, useMemo, useState } from 'react';
import type { Job } from '../../src-core/job';
import type { DayLine } from '../../src-core/sequence';
import { dayLine } from '../../src-core/sequence';
import { useJob, useWindow } from '../state/store-context';

export interface LineOfJob {
  /** The job that the line is of. */
  readonly job: Job;
  readonly line: DayLine;
}

/**
 * The job in time; null before it was laid out once. Laying it out asks for the strength of every piece on every day, so it waits
 * until a drag of the drawing has ended and gives way to what is more urgent.
 */
export function useDayLine(): LineOfJob | null {
  const job = useJob();
  const isDragging = useWindow((state) => state.isDragging);
  const [rested, setRested] = useState<Job | null>(null);
  useEffect(() => {
    if (!isDragging) setRested(job);
  }, [job, isDragging]);
  const shown = useDeferredValue(rested);
  return useMemo(() => (shown === null ? null : { job: shown, line: dayLine(shown) }), [shown]);
}
