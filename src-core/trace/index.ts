export type { Trace, TracePart } from './trace';
export { traceWord } from './trace';
