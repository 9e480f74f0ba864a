import { readdirSync, readFileSync } from 'node:fs';
import type { Job, Piece } from '../../../src-core/job';
import { readJobText } from '../../../src-core/job';

const FOLDER = new URL('../../../assets/jobs/', import.meta.url);

/** Every example job that is shipped. */
export const EXAMPLE_JOBS: readonly Job[] = readdirSync(FOLDER)
  .filter((file) => file.endsWith('.json'))
  .map((file) => {
    const reading = readJobText(readFileSync(new URL(file, FOLDER), 'utf8'));
    if (!reading.ok) throw new Error(`${file}: ${reading.problems[0]?.sentence}`);
    return reading.job;
  });

export interface ExamplePiece {
  readonly called: string;
  readonly job: Job;
  readonly piece: Piece;
}

/** Every piece of every example job. */
export const EXAMPLE_PIECES: readonly ExamplePiece[] = EXAMPLE_JOBS.flatMap((job) =>
  job.pieces.map((piece) => ({ called: `${piece.id} of ${job.id}`, job, piece })),
);

/** One piece by its id. */
export function examplePiece(jobId: string, pieceId: string): ExamplePiece {
  const found = EXAMPLE_PIECES.find(({ job, piece }) => job.id === jobId && piece.id === pieceId);
  if (found === undefined) throw new Error(`No piece ${pieceId} in ${jobId}`);
  return found;
}
