export type { Formula, FormulaSpec, Line, LineInput, Worked } from './worked';
export { formula, printSignificant, readingLine } from './worked';
