/** `check`: the load check of a job file. */
import { checkJob } from '../../../src-core/verdict';
import type { OptionSpec } from '../arguments';
import type { CliIo, Command } from '../io';
import { EXIT } from '../io';
import { openJob } from '../open-job';
import { startProgress } from '../progress';
import { jobReport } from '../report/job-report';
import { jsonReport } from '../report/json-report';
import { pieceReport } from '../report/piece-report';

const OPTIONS = {
  json: { takes: null },
  remedies: { takes: null },
  day: { takes: 'a whole number of days from the start of the job, 0 to 3650' },
  piece: { takes: 'the id of a piece in the job' },
  help: { takes: null, short: 'h' },
} as const satisfies { readonly [name: string]: OptionSpec };

const LAST_DAY = 3650;

const HELP = `npm run -s cli -- check JOB [--json] [--day N] [--piece ID] [--remedies]

Checks whether every piece of the job file JOB stands.

  --json       everything as JSON, in inches, pounds-force, psi, pounds and days
  --day N      what stands on day N of the job, at that day's strength; without it the
               finished job, and beside it the worst moment on the way
  --piece ID   one piece only, with every check and its workings
  --remedies   look for a passing change of every kind, not only the smallest
`;

export const check: Command = {
  name: 'check',
  summary: 'check whether every piece of a job stands',
  help: HELP,
  run: runCheck,
};

async function runCheck(args: readonly string[], io: CliIo): Promise<number> {
  const opened = await openJob(args, io, {
    options: OPTIONS,
    help: HELP,
    purpose: 'check',
    faultsOf: (values) => dayFaults(values.get('day')),
  });
  if (!opened.ok) return opened.code;
  const { job, given, values } = opened;
  const day = values.get('day');
  const pieceId = values.get('piece') ?? null;

  const progress = startProgress(io);
  const result = checkJob(job, {
    day: day === undefined ? null : Number(day),
    pieceId,
    changes: given.has('remedies') ? 'all' : 'first',
    onProgress: progress.take,
  });
  progress.end();

  const seconds = progress.seconds();
  const how = { system: job.shownIn, colour: io.colour };
  if (given.has('json')) io.out.write(jsonReport(result, { version: io.version, job, seconds, progress }));
  else if (pieceId !== null) io.out.write(pieceReport(result, how));
  else io.out.write(jobReport(result, { ...how, seconds }));
  return result.needsAttention ? EXIT.needsAttention : EXIT.allHolds;
}

function dayFaults(day: string | undefined): string[] {
  return day === undefined || isDay(day) ? [] : [`--day ${day}: the day is ${OPTIONS.day.takes}.`];
}

function isDay(text: string): boolean {
  return /^\d{1,4}$/.test(text) && Number(text) <= LAST_DAY;
}
