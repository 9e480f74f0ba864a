/** Finds what a command is about, and puts what it made in its place. */
import type { Job, Piece } from '../job';
import { crossCheck, jobSchema } from '../job';
import type { Edited } from './command';
import { keepIdentity } from './keep-identity';
import { refuse, settle } from './settle';

export interface PieceAt {
  readonly job: Job;
  readonly piece: Piece;
  readonly index: number;
}

/** Runs `change` on the piece with an id; refuses where the job has none. */
export function atPiece(job: Job, pieceId: string, change: (at: PieceAt) => Edited): Edited {
  const index = job.pieces.findIndex(({ id }) => id === pieceId);
  const piece = job.pieces[index];
  if (piece === undefined) {
    return refuse('reference-unknown', 'pieces', `The job has no piece "${pieceId}".`, pieceId);
  }
  return change({ job, piece, index });
}

/** The job with another piece, finished or a draft, in the place of the one at hand. */
export function withPiece({ job, index }: PieceAt, piece: unknown): unknown {
  return { ...job, pieces: job.pieces.map((own, i) => (i === index ? piece : own)) };
}

/** Settles the job with the piece replaced; a step of a drag (one with a merge key) by the quicker way. */
export function settlePiece(
  at: PieceAt,
  piece: unknown,
  title: string,
  mergeKey: string | null = null,
  madeId?: string,
): Edited {
  const draft = withPiece(at, piece);
  if (mergeKey === null) return settle(at.job, draft, title, null, madeId);
  const job = draggedJob(at, piece);
  return job === null ? settle(at.job, draft, title, mergeKey) : { ok: true, job, title, mergeKey };
}

/**
 * The job with a piece in which a drag changed numbers and nothing else: so only that piece is parsed again, and how the parts
 * fit together is asked of the job. Null where something is wrong, for the full reading to put into words.
 */
function draggedJob(at: PieceAt, piece: unknown): Job | null {
  const parsed = jobSchema.shape.pieces.element.safeParse(piece);
  if (!parsed.success) return null;
  const settled = keepIdentity(at.piece, parsed.data);
  if (settled === at.piece) return at.job;
  const job = { ...at.job, pieces: replaced(at.job.pieces, at.index, settled) };
  return crossCheck(job).length === 0 ? job : null;
}

/** Refuses in one sentence about a place below the piece, such as `corners`. */
export function refuseAt(
  at: PieceAt,
  code: Parameters<typeof refuse>[0],
  under: string,
  sentence: string,
): Edited {
  return refuse(code, `pieces[${at.index}].${under}`, sentence, at.piece.id);
}

/** The thing with an id in a list of the piece, and its place there; null where there is none. */
export function findIn<Thing extends { readonly id: string }>(
  list: readonly Thing[],
  id: string,
): { readonly thing: Thing; readonly index: number } | null {
  const index = list.findIndex((thing) => thing.id === id);
  const thing = list[index];
  return thing === undefined ? null : { thing, index };
}

/** A list with the entry at `index` replaced. */
export function replaced<Thing>(list: readonly Thing[], index: number, thing: Thing): Thing[] {
  return list.map((own, i) => (i === index ? thing : own));
}
