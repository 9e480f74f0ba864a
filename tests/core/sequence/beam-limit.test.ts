import { describe, expect, test } from 'vitest';
import type { PieceAnalysis } from '../../../src-core/analysis';
import { analyseMoment, layOutSupports } from '../../../src-core/analysis';
import { rectangle } from '../../support/pieces';
import { expectWithin } from '../concrete/within';
import { counterJob } from './swap-jobs';

const BAY_IN = 48;
const WIDE_IN = 3;
/** Outer supports stand so that their contact is this far in from the ends. */
const END_IN = 1 / 16;
const LONG_IN = 4 * BAY_IN + 2 * END_IN;

/** A strip so narrow that it is a beam, over four equal bays on five stiff knife edges. */
const strip = counterJob({
  thicknessIn: 1,
  corners: rectangle(LONG_IN, WIDE_IN),
  supports: [0, 1, 2, 3, 4].map((i) => {
    const xIn = i === 0 ? 0 : i === 4 ? LONG_IN : END_IN + i * BAY_IN;
    return {
      kind: 'wall' as const,
      build: 'block' as const,
      id: `edge-${i}`,
      from: { xIn, yIn: 0 },
      to: { xIn, yIn: WIDE_IN },
      widthIn: 0.25,
      stiffness: { low: 1e7, high: 1e8 },
    };
  }),
});
const laidOut = layOutSupports(strip, strip.pieces[0]!, 1);

function analyse(out: readonly number[]): PieceAnalysis {
  if (!laidOut.ok) throw new Error(laidOut.cannot.sentence);
  const standing = [0, 1, 2, 3, 4].filter((i) => !out.includes(i)).map((i) => `edge-${i}`);
  const result = analyseMoment(laidOut.sets, { day: 28, standing });
  if (!result.ok) throw new Error(result.cannot.sentence);
  return result.analysis;
}

/** Largest hogging and sagging moment over wL2 and reaction over wL, by statics from the reactions under self weight. */
function multipliers({ bearings, elastic }: PieceAnalysis): { hog: number; sag: number; push: number } {
  const [self] = elastic.high.cases;
  const w = self!.totalLbf / LONG_IN;
  const supports = self!.reactions.map(({ bearing, pushLbf }) => {
    const id = bearings[bearing]!.support.id;
    return { xIn: END_IN + Number(id.at(-1)) * BAY_IN, pushLbf };
  });
  let hog = 0;
  let sag = 0;
  for (let xIn = 0; xIn <= LONG_IN; xIn += 1 / 64) {
    const left = supports.filter((support) => support.xIn < xIn);
    const moment =
      left.reduce((sum, support) => sum + support.pushLbf * (xIn - support.xIn), 0) - (w * xIn * xIn) / 2;
    hog = Math.max(hog, -moment / (w * BAY_IN ** 2));
    sag = Math.max(sag, moment / (w * BAY_IN ** 2));
  }
  return { hog, sag, push: Math.max(...supports.map(({ pushLbf }) => pushLbf)) / (w * BAY_IN) };
}

/** Basis 10.7 to 10.10: continuous beam by the three-moment equation, uniform load, simple outer supports. */
const CASES = [
  { id: '10.7', words: 'four bays intact', out: [], hog: 0.1071, sag: 0.0772, push: 1.143 },
  { id: '10.8', words: 'the middle leg out', out: [2], hog: 0.2813, sag: 0.2188, push: 1.781 },
  { id: '10.9', words: 'the second leg out', out: [1], hog: 0.3696, sag: 0.3323, push: 2.022 },
  { id: '10.10', words: 'alternate legs out', out: [1, 3], hog: 0.5, sag: 0.2813, push: 2.5 },
] as const;

describe('a missing leg under a beam of four bays, all from one factor', () => {
  test.each(CASES)('basis $id: $words, hogging $hog wL2, sagging $sag wL2, reaction $push wL', (expected) => {
    const found = multipliers(analyse(expected.out));
    expectWithin(found.hog, expected.hog, 2e-3);
    expectWithin(found.sag, expected.sag, 2e-3);
    expectWithin(found.push, expected.push, 2e-3);
  });

  test('the moment that the cracking check reads grows 2.63, 3.45 and 4.67 times, within 2 %', () => {
    const hogging = ({ out }: (typeof CASES)[number]) => analyse(out).elastic.high.hogging.momentLbfInPerIn;
    const [intact, ...missing] = CASES.map(hogging) as [number, ...number[]];
    [2.63, 3.45, 4.67].forEach((factor, i) => {
      expectWithin(missing[i]! / intact, factor, 2e-2);
    });
  });

  test('with two legs side by side out the strip hogs more than with any two others of the three out', () => {
    const pairs = [
      [1, 2],
      [1, 3],
      [2, 3],
    ].map((out) => analyse(out).elastic.high.hogging.momentLbfInPerIn);
    expect(Math.max(pairs[0]!, pairs[2]!)).toBeGreaterThan(pairs[1]!);
  });
});
