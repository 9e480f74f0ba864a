export type { ChartBasis, ChartBracket, ChartRoot, ChartSteel } from './basis';
export {
  CHART_SPACING_ROWS_IN,
  CHART_SPACINGS_IN,
  CHART_THICKNESSES_IN,
  DEFAULT_CHART_BASIS,
} from './basis';
export type { ChartHooks, ChartProgress } from './chart';
export { overhangChart, spacingRows, thicknessRows } from './chart';
export type { ChartProblem } from './problems';
export { chartProblems } from './problems';
export type { ChartCase, ChartEntry, ChartRow, ChartRowRequest } from './row';
export { chartRow as chartRowSchema } from './row';
export { ruleOfThumbIn } from './rule-of-thumb';
