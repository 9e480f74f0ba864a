/** Puts an order of the swap into the job, with the days of the supports and sections that it moves. */
import type { Command } from '../../src-core/edit';
import { setField } from '../../src-core/edit';
import type { Support, SwapStep } from '../../src-core/job';
import { withSwapSteps } from '../../src-core/sequence';

interface Args {
  readonly pieceId: string;
  readonly steps: readonly SwapStep[];
  /** Props that the steps need. */
  readonly props: readonly Support[];
}

const TITLE = 'Use the swap order';

/** The parts of a job that an order of the swap touches. */
const TOUCHED = ['pieces', 'falsework', 'swap'] as const;

/** Steps of the job and days of what stands change together, so that undo takes them back together. */
export const useSwapOrder: Command<Args> = {
  id: 'use-swap-order',
  perform: (job, { pieceId, steps, props }) => {
    const wanted = withSwapSteps(job, pieceId, steps, props);
    const [first, ...rest] = TOUCHED;
    const set = (to: typeof job, field: (typeof TOUCHED)[number]) =>
      setField.perform(to, { path: [field], value: wanted[field], title: TITLE });
    let edited = set(job, first);
    for (const field of rest) if (edited.ok) edited = set(edited.job, field);
    return edited;
  },
};
