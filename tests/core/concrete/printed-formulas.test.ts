import { describe, expect, test } from 'vitest';
import * as concrete from '../../../src-core/concrete';
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

const FUNCTIONS = new Set(['sqrt', 'cbrt', 'min', 'max', 'exp']);

/** Sensible range of every symbol; one that stands in several formulas fits them all. */
const RANGES: Readonly<Record<string, readonly [number, number]>> = {
  A1: [1, 40],
  A2: [40, 400],
  Ab: [0.003, 0.44],
  As: [0.001, 0.06],
  Ec: [2e6, 6e6],
  Es: [28e6, 30e6],
  Icr: [0.02, 0.6],
  Ig: [0.6, 10],
  L: [10, 150],
  M: [10, 800],
  Ma: [10, 800],
  Mcr: [60, 700],
  Mn: [50, 3000],
  Q: [4000, 6000],
  T: [-5, 35],
  T0: [-10, 0],
  Ta: [-5, 35],
  Ts: [20, 23],
  Vc: [20, 300],
  a: [0.1, 4],
  alpha: [7e-6, 13e-6],
  alphas: [20, 40],
  b: [0.8, 0.95],
  beta: [1, 6],
  beta1: [0.65, 0.85],
  bo: [4, 60],
  c: [0.1, 0.9],
  cc: [0.5, 2],
  d: [0.95, 5],
  dT: [-30, 40],
  db: [0.06, 0.75],
  dc: [0.5, 2],
  dt: [0.1, 30],
  eps: [1e-4, 1e-3],
  epsu: [4e-4, 9e-4],
  et: [0.001, 0.03],
  ety: [0.0013, 0.0028],
  f1: [500, 3000],
  f2: [3000, 6000],
  f28: [2500, 8000],
  fc: [500, 12_000],
  fct: [500, 8000],
  fp: [500, 8000],
  fr: [200, 800],
  fs: [5000, 60_000],
  ft: [500, 8000],
  fy: [40_000, 80_000],
  g: [0, 10],
  gx: [0, 10],
  gy: [0, 10],
  h: [1, 6],
  kd: [0.1, 0.9],
  lambda: [0.75, 1],
  lambdas: [0.8, 1],
  ld0: [0.5, 40],
  ldh0: [2, 12],
  n: [5, 14],
  phi: [0.55, 0.9],
  phic: [0, 3],
  psic: [0.7, 1],
  psie: [1, 1.5],
  psig: [1, 1.3],
  psio: [1, 1.25],
  psir: [1, 1.6],
  psit: [1, 1.3],
  psiw: [0.4, 1],
  r: [0.1, 0.95],
  rhoc: [0, 0.01],
  rhow: [0.001, 0.03],
  s: [2, 18],
  sx: [1, 12],
  t: [0.5, 400],
  t1: [1, 7],
  t2: [10, 28],
  vc: [100, 400],
  wc: [90, 160],
  x: [1, 12],
  xi: [1, 2],
  y: [1, 12],
};

const exported: readonly [string, unknown][] = Object.entries(concrete);
const formulas = exported.filter(
  (entry): entry is [string, AnyFormula] => typeof entry[1] === 'function' && 'spec' in entry[1],
);

/** A repeatable run of numbers from 0 to 1 (linear congruential, Numerical Recipes constants). */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

describe('printed formulas', () => {
  test('every formula of the room is found by this test', () => {
    expect(formulas.map(([name]) => name)).toContain('neutralAxisUnyielded');
    expect(formulas.length).toBeGreaterThanOrEqual(60);
  });

  test.each(formulas)('%s lands on its printed result when worked by hand', (_, worked) => {
    const random = generator(1);
    const symbols = Object.keys(worked.spec.units);
    for (let trial = 0; trial < 40; trial++) {
      const inputs = Object.fromEntries(
        symbols.map((symbol) => {
          const range = RANGES[symbol];
          if (range === undefined) throw new Error(`no range for ${symbol}`);
          return [symbol, range[0] + (range[1] - range[0]) * random()];
        }),
      );
      const { value, line } = worked(inputs);
      expect(Number.isFinite(value), `${JSON.stringify(inputs)}`).toBe(true);
      const byHand = recompute(line);
      expect(Math.abs(byHand - Number(line.result)), line.substituted).toBeLessThanOrEqual(
        recomputeTolerance(line),
      );
      // The printed inputs carry seven digits, so the reader comes closer than the printed result.
      expect(Math.abs(byHand - value), line.substituted).toBeLessThanOrEqual(1e-4 * Math.abs(value) + 1e-12);
      expect(worked.compute(inputs)).toBe(value);
    }
  });

  test.each(formulas)(
    '%s prints nothing but numbers and known functions, and names its source',
    (_, worked) => {
      const words = worked.spec.formula.match(/[A-Za-z_][A-Za-z0-9_]*/g) ?? [];
      const symbols = new Set(words.filter((word) => !FUNCTIONS.has(word)));
      expect([...symbols].sort()).toEqual(Object.keys(worked.spec.units).sort());
      expect(worked.spec.source.length).toBeGreaterThan(5);
    },
  );
});
