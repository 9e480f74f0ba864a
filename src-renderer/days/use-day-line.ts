import { useDeferredValue, useEffect, useMemo, useState } from 'react';
import type { Job } from '../../src-core/job';
import type { DayLine } from '../../src-core/sequence';
import { dayLine } from '../../src-core/sequence';
import { useDays } from '../state/day-store';
import { useJob, useWindow } from '../state/store-context';

export interface LineOfJob {
  /** The job that the line is of. */
  readonly job: Job;
  readonly line: DayLine;
}

/**
 * The job in time; null before it was laid out once. Laying it out asks for the strength of every piece on every day, so it waits
 * until a drag of the drawing has ended and gives way to what is more urgent. Falsework that is used again is told for the pieces
 * whose falsework was worked out.
 */
export function useDayLine(): LineOfJob | null {
  const job = useJob();
  const isDragging = useWindow((state) => state.isDragging);
  const [rested, setRested] = useState<Job | null>(null);
  useEffect(() => {
    if (!isDragging) setRested(job);
  }, [job, isDragging]);
  const shown = useDeferredValue(rested);
  const held = useDays((state) => state.held);
  return useMemo(() => {
    if (shown === null) return null;
    const uses = Object.values(held).flatMap(({ falsework }) => falsework.reuse.from);
    return { job: shown, line: dayLine(shown, uses) };
  }, [shown, held]);
}
