/** `falsework`: what holds the wet slabs of a job up, and how it comes out again. */

import type { FalseworkDesign, FalseworkReuse } from '../../../src-core/falsework';
import { designFalsework, designJob, falseworkPatch } from '../../../src-core/falsework';
import type { Job } from '../../../src-core/job';
import { NOTICE } from '../../../src-core/report';
import type { OptionSpec } from '../arguments';
import type { CliIo, Command } from '../io';
import { EXIT } from '../io';
import { openJob } from '../open-job';
import { falseworkReport } from '../report/falsework-report';
import { finite } from '../report/finite';

const OPTIONS = {
  json: { takes: null },
  piece: { takes: 'the id of a piece in the job' },
  help: { takes: null, short: 'h' },
} as const satisfies { readonly [name: string]: OptionSpec };

const HELP = `npm run -s cli -- falsework JOB [--json] [--piece ID]

Designs the falsework under every piece of the job file JOB: the cheapest framing that passes, in
sections that come out one by one, with legs cut to the floor, screws, and a cut list; and what of
an earlier pour is used again for a later one, so that less is bought.

  --json       everything as JSON, in inches, pounds-force, psi, pounds and days, with a patch
               that writes sections, legs and ledgers into the job
  --piece ID   one piece only
`;

export const falsework: Command = {
  name: 'falsework',
  summary: 'design what holds the wet slabs up',
  help: HELP,
  run: runFalsework,
};

async function runFalsework(args: readonly string[], io: CliIo): Promise<number> {
  const opened = await openJob(args, io, { options: OPTIONS, help: HELP, purpose: 'hold up' });
  if (!opened.ok) return opened.code;
  const { job, given, values } = opened;
  const pieceId = values.get('piece') ?? null;
  const { designs, reuse } =
    pieceId === null ? designJob(job) : { designs: [designFalsework(job, pieceId)], reuse: null };
  if (given.has('json')) io.out.write(falseworkJson(io.version, job, designs, reuse));
  else {
    io.out.write(
      falseworkReport({ name: job.name, designs, reuse }, { system: job.shownIn, colour: io.colour }),
    );
  }
  return designs.some(({ needsAttention }) => needsAttention) ? EXIT.needsAttention : EXIT.allHolds;
}

/** `reuse` is of the whole job; null where one piece alone was asked for. */
function falseworkJson(
  version: string,
  job: Job,
  designs: readonly FalseworkDesign[],
  reuse: FalseworkReuse | null,
): string {
  const report = {
    tool: 'ledgewright',
    version,
    name: job.name,
    pieces: designs.map((design) => ({
      ...design,
      sections: design.sections.map(({ worked, ...section }) => ({
        ...section,
        framing: { ...worked.framing, section: section.section.id },
        lateral: { ...worked.lateral, checks: worked.lateral.checks.map(({ id }) => id) },
        handlingLb: worked.carried.handlingLb,
        loadLbf: worked.carried.totalLbf,
      })),
      patch: falseworkPatch(job, design),
    })),
    ...(reuse === null ? {} : { reuse }),
    needsAttention: designs.some(({ needsAttention }) => needsAttention),
    units: 'inch, pound-force, psi, pound, day',
    shownIn: job.shownIn,
    notice: NOTICE,
  };
  return `${JSON.stringify(report, finite, 2)}\n`;
}
