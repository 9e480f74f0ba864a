/** `swap`: the order in which cabinets take the place of falsework, every moment of it checked. */
import type { Job, Piece } from '../../../src-core/job';
import { swapResult } from '../../../src-core/sequence';
import type { OptionSpec } from '../arguments';
import { readArguments } from '../arguments';
import type { CliIo, Command } from '../io';
import { EXIT, refuse } from '../io';
import { startProgress } from '../progress';
import { readJobFile } from '../read-job-file';
import { swapJson } from '../report/swap-json';
import { swapReport } from '../report/swap-report';

const OPTIONS = {
  json: { takes: null },
  propose: { takes: null },
  piece: { takes: 'the id of a piece in the job' },
  help: { takes: null, short: 'h' },
} as const satisfies { readonly [name: string]: OptionSpec };

const HELP = `npm run -s cli -- swap JOB [--json] [--piece ID] [--propose]

Walks through the swap from falsework to cabinets: what goes out and what comes in, how near the
slab is to cracking while a bay is open and once its cabinet is in, and how far its feet may be
wound up. A job without steps of its own gets an order proposed, with props beside its open bays
where no order keeps the slab whole without. Where the job's own steps do not, such an order is told.

  --json       everything as JSON, in inches, pounds-force, psi, pounds and days
  --piece ID   one piece only
  --propose    look for the mildest order though the job has one of its own
`;

export const swap: Command = {
  name: 'swap',
  summary: 'walk through the swap from falsework to cabinets',
  help: HELP,
  run: runSwap,
};

async function runSwap(args: readonly string[], io: CliIo): Promise<number> {
  const read = readArguments(args, OPTIONS);
  if (!read.ok) return refuse(io, read.faults);
  const { given, values, rest } = read;
  if (given.has('help')) {
    io.out.write(HELP);
    return EXIT.allHolds;
  }
  const [path, ...more] = rest;
  if (path === undefined || path === '') return refuse(io, ['Say which job file to walk through.']);
  if (more.length > 0) return refuse(io, [`One job file at a time; these are too many: ${more.join(' ')}`]);
  const file = await readJobFile(path, io.currentFolder);
  if (!file.ok) return refuse(io, file.faults);
  const { job } = file;
  const wanted = piecesOf(job, values.get('piece') ?? null);
  if (wanted === null) {
    const known = job.pieces.map(({ id }) => id).join(', ');
    return refuse(io, [`${path}: There is no piece "${values.get('piece')}". Its pieces: ${known}`]);
  }

  const progress = startProgress(io);
  const results = wanted.map((piece, done) => {
    progress.take({ done, total: wanted.length, words: piece.name });
    return swapResult(job, piece, { propose: given.has('propose') });
  });
  progress.end();

  const facts = { version: io.version, seconds: progress.seconds() };
  io.out.write(
    given.has('json')
      ? swapJson(job, results, facts)
      : swapReport(job, results, { ...facts, colour: io.colour }),
  );
  return results.some(({ needsAttention }) => needsAttention) ? EXIT.needsAttention : EXIT.allHolds;
}

/** Every piece, or the one asked for; null where the job has no such piece. */
function piecesOf({ pieces }: Job, pieceId: string | null): readonly Piece[] | null {
  if (pieceId === null) return pieces;
  const found = pieces.filter(({ id }) => id === pieceId);
  return found.length === 0 ? null : found;
}
