/** `check`: the load check of a job file. */
import type { Job } from '../../../src-core/job';
import { checkJob } from '../../../src-core/verdict';
import type { OptionSpec } from '../arguments';
import { readArguments } from '../arguments';
import type { CliIo, Command } from '../io';
import { EXIT, refuse } from '../io';
import { startProgress } from '../progress';
import { readJobFile } from '../read-job-file';
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

interface Wanted {
  readonly path: string;
  readonly day: number | null;
  readonly pieceId: string | null;
  readonly isJson: boolean;
  readonly allChanges: boolean;
}

type Asked =
  | { readonly kind: 'help' }
  | { readonly kind: 'faults'; readonly faults: readonly string[] }
  | { readonly kind: 'check'; readonly wanted: Wanted };

async function runCheck(args: readonly string[], io: CliIo): Promise<number> {
  const asked = readWanted(args);
  if (asked.kind === 'faults') return refuse(io, asked.faults);
  if (asked.kind === 'help') {
    io.out.write(HELP);
    return EXIT.allHolds;
  }
  const { wanted } = asked;
  const file = await readJobFile(wanted.path, io.currentFolder);
  if (!file.ok) return refuse(io, file.faults);
  const { job, migratedFrom } = file;
  const unknown = unknownPiece(job, wanted);
  if (unknown !== null) return refuse(io, [unknown]);
  if (migratedFrom !== null) {
    io.err.write(`This job was written in version ${migratedFrom} and is read as version ${job.version}.\n`);
  }

  const progress = startProgress(io);
  const result = checkJob(job, {
    day: wanted.day,
    pieceId: wanted.pieceId,
    changes: wanted.allChanges ? 'all' : 'first',
    onProgress: progress.take,
  });
  progress.end();

  const seconds = progress.seconds();
  const how = { system: job.shownIn, colour: io.colour };
  if (wanted.isJson) io.out.write(jsonReport(result, { version: io.version, job, seconds, progress }));
  else if (wanted.pieceId !== null) io.out.write(pieceReport(result, how));
  else io.out.write(jobReport(result, { ...how, seconds }));
  return result.needsAttention ? EXIT.needsAttention : EXIT.allHolds;
}

function readWanted(args: readonly string[]): Asked {
  const read = readArguments(args, OPTIONS);
  if (!read.ok) return { kind: 'faults', faults: read.faults };
  const { given, values, rest } = read;
  if (given.has('help')) return { kind: 'help' };

  const faults: string[] = [];
  const [path, ...more] = rest;
  if (path === undefined || path === '') faults.push('Say which job file to check.');
  if (more.length > 0) faults.push(`One job file at a time; these are too many: ${more.join(' ')}`);
  const day = values.get('day') ?? null;
  if (day !== null && !isDay(day)) faults.push(`--day ${day}: the day is ${OPTIONS.day.takes}.`);
  if (path === undefined || faults.length > 0) return { kind: 'faults', faults };
  return {
    kind: 'check',
    wanted: {
      path,
      day: day === null ? null : Number(day),
      pieceId: values.get('piece') ?? null,
      isJson: given.has('json'),
      allChanges: given.has('remedies'),
    },
  };
}

function isDay(text: string): boolean {
  return /^\d{1,4}$/.test(text) && Number(text) <= LAST_DAY;
}

function unknownPiece({ pieces }: Job, { path, pieceId }: Wanted): string | null {
  if (pieceId === null || pieces.some(({ id }) => id === pieceId)) return null;
  return `${path}: There is no piece "${pieceId}". Its pieces: ${pieces.map(({ id }) => id).join(', ')}`;
}
