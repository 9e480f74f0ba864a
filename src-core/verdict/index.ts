export type { CheckedOne, CheckJobOptions, CheckProgress } from './check-job';
export { checkJob, checkOnePiece, jobResult, lookAtPiece, seekChanges } from './check-job';
export type { Flag, Verdict } from './ladder';
export { judge, needWords } from './ladder';
export { daysOnTheWay, EARLIEST_STRIP_DAYS } from './on-the-way';
export type { Governing, JobResult, MeshFacts, OnTheWay, PieceResult, SupportReaction } from './results';
