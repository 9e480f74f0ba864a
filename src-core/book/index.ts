export type { BookJson } from './book-json';
export { bookJson } from './book-json';
export type { BookFacts, PieceFacts, SwapFacts } from './facts';
export type { GatherOptions, GatherProgress } from './gather-book';
export { gatherBook } from './gather-book';
export { jobBook } from './job-book';
