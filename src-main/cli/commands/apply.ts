/** `apply`: writes the job with one of the changes that `check --remedies` offers. */
import { resolve } from 'node:path';
import type { Job } from '../../../src-core/job';
import type { Change } from '../../../src-core/remedies';
import { applyChange } from '../../../src-core/remedies';
import { checkJob } from '../../../src-core/verdict';
import type { OptionSpec } from '../arguments';
import { writeOut } from '../book/output-file';
import type { CliIo, Command } from '../io';
import { EXIT, refuse } from '../io';
import { openJob } from '../open-job';
import { startProgress } from '../progress';

const OPTIONS = {
  remedy: { takes: 'the id of a change, as check --remedies --json gives it' },
  out: { takes: 'the file to write the changed job to' },
  help: { takes: null, short: 'h' },
} as const satisfies { readonly [name: string]: OptionSpec };

const HELP = `npm run -s cli -- apply JOB --remedy ID --out NEW

Looks again for the changes that pass, makes the one named ID, and writes the changed job to NEW.

  --remedy ID  the id of a change, as check --remedies prints it
  --out NEW    where the changed job goes; JOB itself is left as it is
`;

export const apply: Command = {
  name: 'apply',
  summary: 'write a job with one of its remedies made',
  help: HELP,
  run: runApply,
};

async function runApply(args: readonly string[], io: CliIo): Promise<number> {
  const opened = await openJob(args, io, {
    options: OPTIONS,
    help: HELP,
    purpose: 'change',
    faultsOf: (values, path) => faultsOf(values.get('remedy'), values.get('out'), path, io),
  });
  if (!opened.ok) return opened.code;
  const { job, path, values } = opened;
  const remedyId = values.get('remedy')!;
  const out = values.get('out')!;
  const progress = startProgress(io);
  const changes = offeredChanges(job, remedyId, progress.take);
  progress.end();
  const change = changes.find(({ id }) => id === remedyId);
  if (change === undefined) {
    const known = changes.map(({ id }) => id).join(', ');
    return refuse(io, [
      `${path}: There is no remedy "${remedyId}". ${known === '' ? 'None is offered for it.' : `Offered there: ${known}`}`,
    ]);
  }
  const changed = applyChange(job, change);
  const trouble = await writeOut(io, out, `${JSON.stringify(changed, null, 2)}\n`);
  if (trouble !== null) return refuse(io, [trouble]);
  io.out.write(`${out}: ${change.title}. Worst ratio ${change.worstRatio.toFixed(2)}.\n`);
  return EXIT.allHolds;
}

function faultsOf(
  remedyId: string | undefined,
  out: string | undefined,
  path: string | undefined,
  io: CliIo,
): string[] {
  const isItself =
    path !== undefined &&
    out !== undefined &&
    resolve(io.currentFolder, path) === resolve(io.currentFolder, out);
  return [
    ...(remedyId === undefined ? [`--remedy is missing: ${OPTIONS.remedy.takes}.`] : []),
    ...(out === undefined ? [`--out is missing: ${OPTIONS.out.takes}.`] : []),
    ...(isItself ? [`--out ${out}: that is the job itself; name another file.`] : []),
  ];
}

/** Changes offered for the pieces whose id starts the remedy's own; every piece where none does. */
function offeredChanges(
  job: Job,
  remedyId: string,
  onProgress: NonNullable<Parameters<typeof checkJob>[1]>['onProgress'],
): readonly Change[] {
  const named = job.pieces.filter(({ id }) => remedyId.startsWith(`${id}-`));
  return (named.length > 0 ? named : job.pieces).flatMap(
    ({ id }) =>
      checkJob(job, { pieceId: id, changes: 'all', ...(onProgress === undefined ? {} : { onProgress }) })
        .pieces[0]?.changes ?? [],
  );
}
