/** How a command about one job file begins: its options, its help, the file read, the piece looked up. */
import type { Job } from '../../src-core/job';
import type { Arguments, OptionSpec } from './arguments';
import { readArguments } from './arguments';
import type { CliIo } from './io';
import { EXIT, refuse } from './io';
import { readJobFile } from './read-job-file';

type Values = Extract<Arguments, { ok: true }>['values'];

interface Manner {
  readonly options: { readonly [name: string]: OptionSpec };
  readonly help: string;
  /** Ends "Say which job file to ...". */
  readonly purpose: string;
  /** What is wrong with the command's own options, said before any file is read. */
  readonly faultsOf?: (values: Values, path: string | undefined) => readonly string[];
}

export type OpenedJob =
  | {
      readonly ok: true;
      readonly job: Job;
      readonly path: string;
      readonly given: Extract<Arguments, { ok: true }>['given'];
      readonly values: Values;
    }
  /** Help was given, or what is wrong was said; the command ends with this code. */
  | { readonly ok: false; readonly code: number };

/** Opens the one job file that `args` name. An option `piece` must name a piece of it. An older file is read, and said to be. */
export async function openJob(args: readonly string[], io: CliIo, manner: Manner): Promise<OpenedJob> {
  const no = (...faults: readonly string[]): OpenedJob => ({ ok: false, code: refuse(io, faults) });
  const read = readArguments(args, manner.options);
  if (!read.ok) return no(...read.faults);
  const { given, values, rest } = read;
  if (given.has('help')) {
    io.out.write(manner.help);
    return { ok: false, code: EXIT.allHolds };
  }
  const [path, ...more] = rest;
  const isNamed = path !== undefined && path !== '';
  const faults = [
    ...(isNamed ? [] : [`Say which job file to ${manner.purpose}.`]),
    ...(more.length === 0 ? [] : [`One job file at a time; these are too many: ${more.join(' ')}`]),
    ...(manner.faultsOf?.(values, path) ?? []),
  ];
  if (!isNamed || faults.length > 0) return no(...faults);
  const file = await readJobFile(path, io.currentFolder);
  if (!file.ok) return no(...file.faults);
  const { job, migratedFrom } = file;
  const pieceId = values.get('piece');
  if (pieceId !== undefined && !job.pieces.some(({ id }) => id === pieceId)) {
    const known = job.pieces.map(({ id }) => id).join(', ');
    return no(`${path}: There is no piece "${pieceId}". Its pieces: ${known}`);
  }
  if (migratedFrom !== null) {
    io.err.write(`This job was written in version ${migratedFrom} and is read as version ${job.version}.\n`);
  }
  return { ok: true, job, path, given, values };
}
