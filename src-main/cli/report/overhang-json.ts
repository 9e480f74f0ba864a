/** The overhang chart as JSON in core units: inch, pound-force, psi, pound, day. */
import type { ChartBasis, ChartRow } from '../../../src-core/overhang-chart';
import { ruleOfThumbIn } from '../../../src-core/overhang-chart';
import { NOTICE } from '../../../src-core/report';

export interface OverhangFacts {
  readonly version: string;
  readonly engine: string;
  readonly seconds: number;
  readonly fromCache: number;
}

/** The rows with what they were computed for; only the seconds, and how many rows were kept from before, differ between runs. */
export function overhangJson(basis: ChartBasis, rows: readonly ChartRow[], facts: OverhangFacts): string {
  const report = {
    tool: 'ledgewright',
    version: facts.version,
    engine: facts.engine,
    basis,
    rows,
    ruleOfThumbIn: ruleOfThumbIn(basis),
    units: 'inch, pound-force, psi, pound, day',
    rowsFromCache: facts.fromCache,
    seconds: Math.round(facts.seconds * 1000) / 1000,
    notice: NOTICE,
  };
  return `${JSON.stringify(report, null, 2)}\n`;
}
