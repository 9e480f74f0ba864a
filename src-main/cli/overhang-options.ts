/** Reads the words after `overhang` into what the chart is drawn for. */
import type { ChartBasis, ChartRowRequest, ChartSteel } from '../../src-core/overhang-chart';
import {
  chartProblems,
  DEFAULT_CHART_BASIS,
  spacingRows,
  thicknessRows,
} from '../../src-core/overhang-chart';
import type { Refusal, UnitSystem } from '../../src-core/units';
import { parseForce, parseLength, parseStress } from '../../src-core/units';
import type { OptionSpec } from './arguments';
import { readArguments } from './arguments';

export const OVERHANG_OPTIONS = {
  thickness: { takes: 'a thickness, such as 1.5 or 38 mm' },
  root: { takes: 'stud or block' },
  load: { takes: 'leaning, sitting, climbing or none' },
  strength: { takes: 'the strength of the concrete, such as 4000 or 30 MPa' },
  steel: { takes: 'a mesh, such as 4x4-W2.9, or bars, such as #3@6' },
  bracket: { takes: 'a stock arm, such as flat-2x0.5' },
  rating: { takes: "a bracket's rated load at its tip, such as 150 or 700 N" },
  metric: { takes: null },
  json: { takes: null },
  fresh: { takes: null },
  help: { takes: null, short: 'h' },
} as const satisfies { readonly [name: string]: OptionSpec };

export interface OverhangWanted {
  readonly basis: ChartBasis;
  readonly requests: readonly ChartRowRequest[];
  readonly system: UnitSystem;
  readonly isJson: boolean;
  readonly isFresh: boolean;
}

export type OverhangAsked =
  | { readonly kind: 'help' }
  | { readonly kind: 'faults'; readonly faults: readonly string[] }
  | { readonly kind: 'chart'; readonly wanted: OverhangWanted };

/** Every fault at once, in lines for a reader. */
export function readOverhangWanted(args: readonly string[]): OverhangAsked {
  const read = readArguments(args, OVERHANG_OPTIONS);
  if (!read.ok) return { kind: 'faults', faults: read.faults };
  const { given, values, rest } = read;
  if (given.has('help')) return { kind: 'help' };

  const faults: string[] = [];
  if (rest.length > 0) faults.push(`The chart is of no job file; these are too many: ${rest.join(' ')}`);
  const system: UnitSystem = given.has('metric') ? 'metric' : 'imperial';
  /** A quantity as typed; null where it was not given, or was refused. */
  const numberOf = (name: string, parse: (text: string) => number | Refusal): number | null => {
    const text = values.get(name);
    const found = text === undefined ? null : parse(text);
    if (found === null || typeof found === 'number') return found;
    faults.push(`--${name} ${text}: ${found.problem.sentence}`);
    return null;
  };
  const choiceOf = <Choice extends string>(name: string, choices: readonly Choice[]): Choice | null => {
    const text = values.get(name);
    const choice = choices.find((one) => one === text);
    if (text !== undefined && choice === undefined)
      faults.push(`--${name} ${text}: say ${choices.join(' or ')}.`);
    return choice ?? null;
  };

  const standard = DEFAULT_CHART_BASIS;
  const thicknessIn = numberOf('thickness', (text) => {
    const read = parseLength(text, system);
    return read.ok ? read.valueIn : read;
  });
  const strengthPsi = numberOf('strength', (text) => {
    const read = parseStress(text, system);
    return read.ok ? read.valuePsi : read;
  });
  const ratedLbf = numberOf('rating', (text) => {
    const read = parseForce(text, system);
    return read.ok ? read.valueLbf : read;
  });
  const build = choiceOf('root', ['stud', 'block']);
  const setting = choiceOf('load', ['leaning', 'sitting', 'climbing', 'none']);
  const steel = values.get('steel');
  const basis: ChartBasis = {
    ...standard,
    root: { ...standard.root, build: build ?? standard.root.build },
    roving: setting === null ? standard.roving : { setting },
    strengthPsi: strengthPsi ?? standard.strengthPsi,
    steel: steel === undefined ? standard.steel : steelOf(steel),
    bracket: {
      armId: values.get('bracket') ?? standard.bracket.armId,
      ratedAtTipLbf: ratedLbf ?? standard.bracket.ratedAtTipLbf,
    },
  };
  const requests =
    thicknessIn === null ? thicknessRows() : [...thicknessRows([thicknessIn]), ...spacingRows(thicknessIn)];
  for (const { path, sentence } of chartProblems(basis, requests)) {
    faults.push(`--${OPTION_OF[path] ?? path}: ${sentence}`);
  }
  if (faults.length > 0) return { kind: 'faults', faults };
  const isJson = given.has('json');
  return { kind: 'chart', wanted: { basis, requests, system, isJson, isFresh: given.has('fresh') } };
}

/** Options by the place in the basis that they set, where the names differ. */
const OPTION_OF: { readonly [path: string]: string } = { rows: 'thickness', strengthPsi: 'strength' };

/** "#3@6" is bars 6 in apart, anything else the name of a mesh. */
function steelOf(text: string): ChartSteel {
  const [id, apart] = text.split('@');
  return id !== undefined && apart !== undefined
    ? { kind: 'bars', id, spacingIn: Number(apart) }
    : { kind: 'mesh', id: text };
}
