/** Words for places and sizes in the job's own units. */
import type { Job } from '../job';
import type { Point, Region } from '../outline';
import { turned } from '../outline';
import { printForce, printLength } from '../units';

/** Printers bound to the units in which a job is shown. */
export interface Printers {
  readonly length: (valueIn: number) => string;
  readonly force: (valueLbf: number) => string;
}

export function printersOf(job: Job): Printers {
  const system = job.shownIn;
  return {
    length: (valueIn) => printLength(valueIn, { system, style: 'inches' }),
    force: (valueLbf) => printForce(Math.round(valueLbf), { system }),
  };
}

/** "46 in from the left, 4 in from the front": measured in the piece's own directions. */
export function printPlace(at: Point, region: Region, axisRad: number, print: Printers): string {
  const corners = region.outer.map((p) => turned(p, -axisRad));
  const place = turned(at, -axisRad);
  const left = place.xIn - Math.min(...corners.map((p) => p.xIn));
  const front = place.yIn - Math.min(...corners.map((p) => p.yIn));
  return `${print.length(left)} from the left, ${print.length(front)} from the front`;
}
