/** `pour`: what is mixed, when, and where it goes on the day of each pour. */
import { pourPlan } from '../../../src-core/pour';
import type { OptionSpec } from '../arguments';
import type { CliIo, Command } from '../io';
import { EXIT } from '../io';
import { openJob } from '../open-job';
import { pourFindings, stopsThePour } from '../report/pour-findings';
import { pourJson } from '../report/pour-json';
import { pourReport } from '../report/pour-report';

const OPTIONS = {
  json: { takes: null },
  help: { takes: null, short: 'h' },
} as const satisfies { readonly [name: string]: OptionSpec };

const HELP = `npm run -s cli -- pour JOB [--json]

Plans every pour of the job file JOB: volume, bags, water and pigment to a bag, batches by the
minute and where each goes, buckets and lifting, crew, what the straightedge rides on, when to
float and trowel, weather, and cautions.

  --json       everything as JSON, in cubic feet, pounds, inches, minutes from the first water and
               degrees Celsius; each item with its id and the part of the drawing that it is of
`;

export const pour: Command = {
  name: 'pour',
  summary: 'plan the day of each pour, batch by batch',
  help: HELP,
  run: runPour,
};

async function runPour(args: readonly string[], io: CliIo): Promise<number> {
  const opened = await openJob(args, io, { options: OPTIONS, help: HELP, purpose: 'pour' });
  if (!opened.ok) return opened.code;
  const { job, given } = opened;
  const plan = pourPlan(job);
  io.out.write(
    given.has('json') ? pourJson(job, plan, io.version) : pourReport(job, plan, { colour: io.colour }),
  );
  return pourFindings(plan).some(stopsThePour) ? EXIT.needsAttention : EXIT.allHolds;
}
