/** The take-off as JSON in core units: every item with its id and the part of the drawing that it comes from. */
import type { Job } from '../../../src-core/job';
import { NOTICE } from '../../../src-core/report';
import type { JobTakeoff } from '../../../src-core/takeoff';
import { finite } from './finite';

/** The whole take-off. */
export function listJson(job: Job, takeoff: JobTakeoff, version: string): string {
  const { jobId, list, tools, ...taken } = takeoff;
  const report = {
    tool: 'ledgewright',
    version,
    jobId,
    name: job.name,
    list,
    tools,
    ...taken,
    needsAttention: list.gaps.length > 0,
    units: 'inch, square inch, pound, cubic foot, gallon',
    shownIn: job.shownIn,
    notice: NOTICE,
  };
  return `${JSON.stringify(report, finite, 2)}\n`;
}
