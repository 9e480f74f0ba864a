/** What is wrong with what a chart is asked for, in sentences for a reader. */
import { STOCK_ARMS } from '../bracket';
import { BARS, MESHES } from '../concrete';
import type { ChartBasis } from './basis';
import type { ChartRowRequest } from './row';

export interface ChartProblem {
  /** Place in the basis, or "rows". */
  readonly path: string;
  readonly sentence: string;
}

/** Thinnest stretch of wall, in, and strengths, psi, within which the job's own reading lets a number pass. */
const LEAST_LENGTH_IN = 24;
const STRENGTHS_PSI = { least: 500, most: 20_000 };
const BAR_SPACINGS_IN = { least: 1, most: 48 };

/** Every reason why the chart cannot be computed; none where it can. */
export function chartProblems(basis: ChartBasis, requests: readonly ChartRowRequest[]): ChartProblem[] {
  const problems: ChartProblem[] = [];
  const refuse = (path: string, sentence: string) => problems.push({ path, sentence });
  const { steel, bracket, strengthPsi, lengthIn, limits } = basis;
  const names = (steel.kind === 'mesh' ? MESHES : BARS).map(({ id }) => id);
  if (!names.includes(steel.id)) {
    refuse('steel', `There is no ${steel.kind} "${steel.id}". There are: ${names.join(', ')}.`);
  }
  if (steel.kind === 'bars' && !isWithin(steel.spacingIn, BAR_SPACINGS_IN)) {
    refuse('steel', `Bars lie ${BAR_SPACINGS_IN.least} to ${BAR_SPACINGS_IN.most} in apart.`);
  }
  if (STOCK_ARMS.every(({ id }) => id !== bracket.armId)) {
    const arms = STOCK_ARMS.map(({ id }) => id).join(', ');
    refuse('bracket', `There is no bracket "${bracket.armId}". There are: ${arms}.`);
  }
  if (strengthPsi !== null && !isWithin(strengthPsi, STRENGTHS_PSI)) {
    refuse('strengthPsi', `Concrete has ${STRENGTHS_PSI.least} to ${STRENGTHS_PSI.most} psi.`);
  }
  if (!(lengthIn >= LEAST_LENGTH_IN)) refuse('lengthIn', `The ledge is ${LEAST_LENGTH_IN} in long or more.`);
  const { thinnestIn, thickestIn } = limits;
  if (requests.some(({ thicknessIn }) => !isWithin(thicknessIn, { least: thinnestIn, most: thickestIn }))) {
    refuse(
      'rows',
      `From ${thinnestIn} to ${thickestIn} in thick is decided here; the rest is for an engineer.`,
    );
  }
  return problems;
}

function isWithin(
  value: number,
  { least, most }: { readonly least: number; readonly most: number },
): boolean {
  return value >= least && value <= most;
}
