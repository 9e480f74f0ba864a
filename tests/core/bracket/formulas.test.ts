import { describe, expect, test } from 'vitest';
import * as armChecks from '../../../src-core/bracket/arm-checks';
import * as flexibility from '../../../src-core/bracket/arm-flexibility';
import * as strength from '../../../src-core/bracket/arm-strength';
import * as timber from '../../../src-core/bracket/brace-timber';
import * as checks from '../../../src-core/bracket/bracket-check';
import * as corbel from '../../../src-core/bracket/corbel';
import * as dowel from '../../../src-core/bracket/dowel-strength';
import * as fixing from '../../../src-core/bracket/fixing-moment';
import * as brace from '../../../src-core/bracket/knee-brace';
import * as open from '../../../src-core/bracket/open-sections';
import * as solid from '../../../src-core/bracket/solid-sections';
import * as studs from '../../../src-core/bracket/stud-bending';
import * as bolts from '../../../src-core/bracket/through-bolts';
import * as couple from '../../../src-core/bracket/wall-couple';
import * as withdrawal from '../../../src-core/bracket/withdrawal';
import * as modes from '../../../src-core/bracket/yield-modes';
import type { Line } from '../../../src-core/workings';
import { recompute, recomputeTolerance } from '../../support/recompute';

/** One likely value of each symbol of the room; two values where a branch turns on it. */
const VALUES: Readonly<Record<string, readonly number[]>> = {
  b: [2],
  d: [2, 1.25],
  t: [0.25, 0.12],
  y: [0.5917],
  x: [0.5917],
  yp: [0.234, 0.61],
  I: [0.21177],
  c: [0.75],
  A: [0.6624],
  A1: [2],
  Ix: [0.348],
  Iy: [0.348],
  Ixy: [-0.204],
  Fy: [36_000],
  Z: [0.125, 150],
  S: [0.0833],
  Lb: [12],
  r: [96, 1700],
  E: [29_000_000],
  Mn: [4500],
  G: [0.42, 0.5],
  mc: [19],
  L: [10, 250],
  h: [12],
  P: [250],
  e: [8],
  Ls: [15.62],
  xi: [4, 9],
  xj: [10],
  ft: [2.2e-5],
  Emin: [510_000],
  FcE: [3860],
  Fcs: [1322],
  F: [875],
  CD: [1],
  CM: [1, 0.7],
  CF: [1.5],
  Cp: [0.9],
  T: [125],
  V: [62.5],
  Ft: [675],
  Fb: [1312],
  Fv: [135],
  M: [1250],
  D: [0.265, 0.162],
  W: [234.8],
  p: [2.5],
  Ceg: [1, 0.75],
  Wp: [587],
  k: [4],
  theta: [0, 90],
  lm: [2.5],
  ls: [0.12],
  Fem: [4704],
  Fes: [61_850],
  Fyb: [45_000],
  Re: [0.07605],
  Rt: [20.83],
  Rd: [3.2],
  Fnv: [27_000],
  Fnt: [45_000],
  Ab: [0.1104],
  dw: [1.25],
  Fcp: [425],
  Ca: [876.6],
  Fa: [742.5],
  Aw: [1.08],
  lt: [1],
  z: [8.5],
  n: [2],
  lb: [1],
  Cb: [1.375],
  w: [1.5],
  fc: [4000, 9000],
  s: [24],
  Vu: [5000],
  av: [3],
  Nuc: [1000],
  fy: [60_000],
  mu: [1.4],
  Mu: [500],
  Af: [0.057],
  An: [0.0222],
  Avf: [0.0794],
  Asc: [0.1387],
  T1: [587],
  Pr: [300],
  er: [10],
  Mr: [4990],
  f: [8e-5],
  Kcr: [1.5],
  a: [10],
};

interface AnyFormula {
  (inputs: Readonly<Record<string, number>>): { readonly value: number; readonly line: Line };
  readonly spec: { readonly units: Readonly<Record<string, string>>; readonly source: string };
}

function isFormula(value: unknown): value is AnyFormula {
  return typeof value === 'function' && 'spec' in value && 'compute' in value;
}

const ROOM = [
  armChecks,
  flexibility,
  strength,
  timber,
  checks,
  corbel,
  dowel,
  fixing,
  brace,
  open,
  solid,
  studs,
  bolts,
  couple,
  withdrawal,
  modes,
];
const FORMULAS = ROOM.flatMap((module) =>
  Object.entries(module).flatMap(([name, value]): [string, AnyFormula][] =>
    isFormula(value) ? [[name, value]] : [],
  ),
);

/** The sample at place `turn` of each symbol's list. */
function inputsOf(each: AnyFormula, turn: number): Record<string, number> {
  return Object.fromEntries(
    Object.keys(each.spec.units).map((symbol) => {
      const values = VALUES[symbol];
      if (!values) throw new Error(`no sample value for ${symbol}`);
      return [symbol, values[turn % values.length] ?? Number.NaN];
    }),
  );
}

describe('the printed arithmetic of the bracket formulas', () => {
  test('is tried for all 88 formulas of the room', () => {
    expect(FORMULAS.length).toBe(88);
  });

  test.each(FORMULAS)('%s prints numbers that land on its printed result', (_, each) => {
    for (const turn of [0, 1]) {
      const { value, line } = each(inputsOf(each, turn));
      expect(Number.isFinite(value)).toBe(true);
      expect(Math.abs(recompute(line) - Number(line.result))).toBeLessThanOrEqual(recomputeTolerance(line));
    }
  });

  test.each(FORMULAS)('%s names its source and puts every symbol into its line', (_, each) => {
    const { line } = each(inputsOf(each, 0));
    expect(line.source.length).toBeGreaterThan(5);
    for (const symbol of Object.keys(each.spec.units)) {
      expect(line.formula).toMatch(new RegExp(`\\b${symbol}\\b`));
    }
  });
});
