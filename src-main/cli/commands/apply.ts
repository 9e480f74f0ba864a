/** `apply`: writes the job with one of the changes that `check --remedies` offers. */
import { resolve } from 'node:path';
import writeFileAtomic from 'write-file-atomic';
import type { Job } from '../../../src-core/job';
import type { Change } from '../../../src-core/remedies';
import { applyChange } from '../../../src-core/remedies';
import { checkJob } from '../../../src-core/verdict';
import type { OptionSpec } from '../arguments';
import { readArguments } from '../arguments';
import type { CliIo, Command } from '../io';
import { EXIT, refuse } from '../io';
import { startProgress } from '../progress';
import { readJobFile } from '../read-job-file';

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
  const read = readArguments(args, OPTIONS);
  if (!read.ok) return refuse(io, read.faults);
  if (read.given.has('help')) {
    io.out.write(HELP);
    return EXIT.allHolds;
  }
  const [path, ...more] = read.rest;
  const remedyId = read.values.get('remedy');
  const out = read.values.get('out');
  const faults: string[] = [];
  if (path === undefined || path === '') faults.push('Say which job file to change.');
  if (more.length > 0) faults.push(`One job file at a time; these are too many: ${more.join(' ')}`);
  if (remedyId === undefined) faults.push(`--remedy is missing: ${OPTIONS.remedy.takes}.`);
  if (out === undefined) faults.push(`--out is missing: ${OPTIONS.out.takes}.`);
  if (
    path !== undefined &&
    out !== undefined &&
    resolve(io.currentFolder, path) === resolve(io.currentFolder, out)
  ) {
    faults.push(`--out ${out}: that is the job itself; name another file.`);
  }
  if (path === undefined || remedyId === undefined || out === undefined || faults.length > 0) {
    return refuse(io, faults);
  }

  const file = await readJobFile(path, io.currentFolder);
  if (!file.ok) return refuse(io, file.faults);
  const progress = startProgress(io);
  const changes = offeredChanges(file.job, remedyId, progress.take);
  progress.end();
  const change = changes.find(({ id }) => id === remedyId);
  if (change === undefined) {
    const known = changes.map(({ id }) => id).join(', ');
    return refuse(io, [
      `${path}: There is no remedy "${remedyId}". ${known === '' ? 'None is offered for it.' : `Offered there: ${known}`}`,
    ]);
  }
  const changed = applyChange(file.job, change);
  try {
    await writeFileAtomic(resolve(io.currentFolder, out), `${JSON.stringify(changed, null, 2)}\n`);
  } catch (cause) {
    return refuse(io, [
      `${out}: The file cannot be written: ${cause instanceof Error ? cause.message : String(cause)}`,
    ]);
  }
  io.out.write(`${out}: ${change.title}. Worst ratio ${change.worstRatio.toFixed(2)}.\n`);
  return EXIT.allHolds;
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
