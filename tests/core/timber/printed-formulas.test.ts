import { describe, expect, test } from 'vitest';
import * as timber from '../../../src-core/timber';
import type { Worked } from '../../../src-core/workings';
import { recompute, recomputeTolerance } from '../../support/recompute';

type Inputs = Readonly<Record<string, number>>;
type AnyFormula = ((inputs: Inputs) => Worked) & {
  readonly compute: (inputs: Inputs) => number;
  readonly spec: {
    readonly formula: string;
    readonly units: Readonly<Record<string, string>>;
    readonly source: string;
  };
};

const FUNCTIONS = new Set(['sqrt', 'cbrt', 'min', 'max']);

/** Two likely values of each symbol; the second takes the other branch where there is one. */
const VALUES: Readonly<Record<string, readonly [number, number]>> = {
  A: [5.25, 12.25],
  Af: [17, 6.5],
  CD: [1.15, 1.25],
  CF: [1.5, 1.1],
  CM: [0.85, 1],
  Cb: [1.25, 1],
  Cfu: [1, 1.15],
  Cp: [0.39, 0.9],
  Cr: [1.15, 1],
  Cs: [0.8, 1],
  D: [616, 40_000],
  E: [1_400_000, 1_600_000],
  EI: [7_503_000, 225_000],
  Ea: [1_260_000, 1_600_000],
  Emin: [510_000, 580_000],
  Emina: [459_000, 580_000],
  Fb: [875, 900],
  FbS: [320, 625],
  Fba: [1604, 1887],
  Fc: [1150, 1350],
  FcE: [827.7, 4000],
  Fcp: [425, 625],
  Fcpa: [284.75, 425],
  Fcs: [1653, 1553],
  FsIbQ: [150, 205],
  Fv: [135, 180],
  Fva: [168.75, 200],
  I: [5.359, 20.8],
  L: [48, 16],
  Le: [8, 2],
  M: [2560, 800],
  Ma: [5778, 1905],
  P: [500, 250],
  S: [3.0625, 7.5625],
  V: [300, 120],
  Va: [590.6, 700],
  W: [616, 290],
  a: [14, 6],
  b: [1.5, 3.5],
  c: [0.8, 0.8],
  d: [3.5, 1.5],
  delta: [0.031, 0.05],
  dlim: [0.0625, 0.05],
  dmax: [0.0625, 0.03],
  h: [2.5, 1.5],
  kb: [120, 96],
  kd: [145, 76.8],
  km: [10, 8],
  kp: [1743, 921.6],
  kr: [1.1, 1.25],
  ks: [20, 24],
  kv: [0.6, 0.5],
  lb: [1.5, 3.5],
  le: [36, 60],
  n: [360, 240],
  q: [100, 125],
  qa: [40, 100],
  qf: [5, 3],
  ql: [50, 75],
  qmin: [100, 40],
  qw: [31.25, 25],
  s: [16, 12],
  w: [11.11, 8.33],
  wc: [150, 115],
  x: [25.5, 6],
};

const FORMULAS = Object.entries(timber as Readonly<Record<string, unknown>>).filter(
  (entry): entry is [string, AnyFormula] => typeof entry[1] === 'function' && 'spec' in entry[1],
);

function inputsOf({ spec }: AnyFormula, turn: 0 | 1): Inputs {
  return Object.fromEntries(
    Object.keys(spec.units).map((symbol) => {
      const values = VALUES[symbol];
      if (values === undefined) throw new Error(`no value for ${symbol}`);
      return [symbol, values[turn]];
    }),
  );
}

describe('printed formulas of the timber room', () => {
  test('are all found by this test', () => {
    expect(FORMULAS.map(([name]) => name)).toContain('columnStability');
    expect(FORMULAS.length).toBe(59);
  });

  test.each(FORMULAS)('%s lands on its printed result when worked by hand', (_, each) => {
    for (const turn of [0, 1] as const) {
      const inputs = inputsOf(each, turn);
      const { value, line } = each(inputs);
      expect(Number.isFinite(value)).toBe(true);
      expect(Math.abs(recompute(line) - Number(line.result)), line.substituted).toBeLessThanOrEqual(
        recomputeTolerance(line),
      );
      expect(each.compute(inputs)).toBe(value);
    }
  });

  test.each(FORMULAS)('%s prints numbers and known functions only, and names its source', (_, { spec }) => {
    const words = spec.formula.match(/[A-Za-z_][A-Za-z0-9_]*/g) ?? [];
    const symbols = new Set(words.filter((word) => !FUNCTIONS.has(word)));
    expect([...symbols].sort()).toEqual(Object.keys(spec.units).sort());
    expect(spec.source.length).toBeGreaterThan(5);
  });
});
