/** The pour plan as JSON in core units, with the tick of each batch and step as the job keeps it. */
import type { Job } from '../../../src-core/job';
import type { Pour, PourPlan } from '../../../src-core/pour';
import { tickIdOf } from '../../../src-core/pour';
import { NOTICE } from '../../../src-core/report';
import { finite } from './finite';
import { pourFindings, stopsThePour } from './pour-findings';

/** The whole plan; every item has its id, and its trace into the drawing where it has one. */
export function pourJson(job: Job, plan: PourPlan, version: string): string {
  const done = new Set(job.ticks.filter((tick) => tick.done).map(({ id }) => id));
  const report = {
    tool: 'ledgewright',
    version,
    jobId: job.id,
    name: job.name,
    ...plan,
    pours: plan.pours.map((pour) => withTicks(pour, done)),
    needsAttention: pourFindings(plan).some(stopsThePour),
    units: 'cubic foot, pound, inch, minute from the first water, day, degree Celsius',
    shownIn: job.shownIn,
    notice: NOTICE,
  };
  return `${JSON.stringify(report, finite, 2)}\n`;
}

function withTicks(pour: Pour, done: ReadonlySet<string>): object {
  const ticked = <Item extends { readonly id: string }>(item: Item) => {
    const tickId = tickIdOf(item);
    return { ...item, tickId, isDone: done.has(tickId) };
  };
  const { batches, clock } = pour;
  return {
    ...pour,
    batches: batches.map(ticked),
    clock: clock === null ? null : { ...clock, finish: clock.finish.map(ticked) },
  };
}
