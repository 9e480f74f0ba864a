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

/** A piece that is turned by less than this from the plan is measured in the plan's own directions. */
const SQUARE_RAD = 0.02;
const QUARTER_RAD = Math.PI / 2;

/** "46 in from the left, 4 in from the front": as the plan shows it, or along its own edges where a piece stands askew. */
export function printPlace(at: Point, region: Region, axisRad: number, print: Printers): string {
  const measuredRad = measuringRad(axisRad);
  const corners = region.outer.map((p) => turned(p, -measuredRad));
  const place = turned(at, -measuredRad);
  const left = place.xIn - Math.min(...corners.map((p) => p.xIn));
  const front = place.yIn - Math.min(...corners.map((p) => p.yIn));
  return `${print.length(left)} from the left, ${print.length(front)} from the front`;
}

/** Direction that "from the left" runs along: never backwards, and the plan's own where the piece lies square to it. */
function measuringRad(axisRad: number): number {
  const askewRad = axisRad - QUARTER_RAD * Math.round(axisRad / QUARTER_RAD);
  return Math.abs(askewRad) < SQUARE_RAD ? 0 : askewRad;
}
