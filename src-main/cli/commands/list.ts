/** `list`: what a job takes, how it is cut, and what is bought for it. */
import { designJob } from '../../../src-core/falsework';
import { jobTakeoff, listCsv } from '../../../src-core/takeoff';
import type { OptionSpec } from '../arguments';
import type { CliIo, Command } from '../io';
import { EXIT, refuse } from '../io';
import { openJob } from '../open-job';
import { listJson } from '../report/list-json';
import { listReport } from '../report/list-report';

const OPTIONS = {
  csv: { takes: null },
  json: { takes: null },
  piece: { takes: 'the id of a piece in the job' },
  help: { takes: null, short: 'h' },
} as const satisfies { readonly [name: string]: OptionSpec };

const HELP = `npm run -s cli -- list JOB [--csv] [--json] [--piece ID]

Takes off the job file JOB what it needs, and lists what to buy by where one buys it: edge forms,
backing boards, falsework, mix, pigment, steel, screws, tape, sealant, protection. Beside it the cut
lists of sticks, boards, mesh and bars, and the tools.

  --csv        the shopping list as comma-separated text
  --json       everything as JSON, in inches, square inches, pounds, cubic feet and gallons; each
               item with its id and the part of the drawing that it comes from
  --piece ID   one piece only
`;

export const list: Command = {
  name: 'list',
  summary: 'list what to cut and what to buy',
  help: HELP,
  run: runList,
};

async function runList(args: readonly string[], io: CliIo): Promise<number> {
  const opened = await openJob(args, io, { options: OPTIONS, help: HELP, purpose: 'list' });
  if (!opened.ok) return opened.code;
  const { job, given, values } = opened;
  if (given.has('csv') && given.has('json'))
    return refuse(io, ['Ask for --csv or for --json, not for both.']);
  const takeoff = jobTakeoff(job, designJob(job), { pieceId: values.get('piece') ?? null });
  if (given.has('csv')) io.out.write(listCsv(takeoff.list));
  else if (given.has('json')) io.out.write(listJson(job, takeoff, io.version));
  else io.out.write(listReport(job, takeoff));
  return takeoff.list.gaps.length > 0 ? EXIT.needsAttention : EXIT.allHolds;
}
