export type { CsvCell, CsvTable } from './csv';
export { csvOf } from './csv';
