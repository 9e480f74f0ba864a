/** `swap`: the order in which cabinets take the place of falsework, every moment of it checked. */
import { swapResult } from '../../../src-core/sequence';
import type { OptionSpec } from '../arguments';
import type { CliIo, Command } from '../io';
import { EXIT } from '../io';
import { openJob } from '../open-job';
import { startProgress } from '../progress';
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
  const opened = await openJob(args, io, { options: OPTIONS, help: HELP, purpose: 'walk through' });
  if (!opened.ok) return opened.code;
  const { job, given, values } = opened;
  const pieceId = values.get('piece');
  const wanted = job.pieces.filter(({ id }) => pieceId === undefined || id === pieceId);

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
