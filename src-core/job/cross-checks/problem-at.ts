/** Builds the problems of the cross-checks. */
import type { Piece } from '../piece';
import type { CrossCheckCode, FieldPath, JobProblem } from '../problem';
import { writePath } from '../problem';

/** A problem of one piece; the path starts below the piece. */
export function pieceProblem(
  at: { readonly piece: Piece; readonly index: number },
  code: CrossCheckCode,
  path: FieldPath,
  sentence: string,
): JobProblem {
  return { code, path: writePath(['pieces', at.index, ...path]), pieceId: at.piece.id, sentence };
}

/** A problem of the job outside its pieces. */
export function jobProblem(code: CrossCheckCode, path: FieldPath, sentence: string): JobProblem {
  return { code, path: writePath(path), sentence };
}

/** A support in words: its kind with its name, else its id. */
export function supportWords(support: {
  readonly kind: string;
  readonly id: string;
  readonly name?: string | undefined;
}): string {
  return `${support.kind === 'full-bed' ? 'full bed' : support.kind} "${support.name ?? support.id}"`;
}
