import { describe, expect, test } from 'vitest';
import type { SectionAnalysis, SectionInput } from '../../../src-core/concrete';
import {
  analyseSection,
  beta1,
  crackingMoment,
  minimumSteel,
  modulusOfRupture,
  neutralAxisUnyielded,
  nominalMoment,
  phiFlexure,
  steelStress,
  stressBlockDepth,
} from '../../../src-core/concrete';
import { recompute, recomputeTolerance } from '../../support/recompute';
import { expectWithin } from './within';

function analyse(input: SectionInput): SectionAnalysis {
  const result = analyseSection(input);
  if (result === null) throw new Error('a section with steel gives no result');
  return result;
}

/** One layer by area a foot and depth from the compressed face. */
function oneLayer(
  thicknessIn: number,
  areaIn2PerFt: number,
  depthIn: number,
  yieldPsi: number,
  tensionFace: 'top' | 'bottom' = 'top',
): SectionInput {
  const depthFromTopIn = tensionFace === 'top' ? thicknessIn - depthIn : depthIn;
  const layers = [{ areaIn2PerIn: areaIn2PerFt / 12, depthFromTopIn, yieldPsi }];
  return { thicknessIn, strengthPsi: 4000, layers, tensionFace };
}

const crackingPerFt = (h: number) =>
  12 * crackingMoment({ fr: modulusOfRupture({ fc: 4000, lambda: 1 }).value, h }).value;

describe('a section with one layer of steel', () => {
  // ACI 318-19 22.2, Table 21.2.2.
  test('basis 4.1: W2.1 wire at 4 in, mid-depth of 2.5 in, yields but carries less than cracks the slab', () => {
    const section = analyse(oneLayer(2.5, 0.063, 1.25, 65_000));
    expectWithin(section.neutralAxisIn * 0.85, 0.1004, 2e-3);
    expectWithin(section.extremeStrainRatio, 0.0288, 2e-3);
    expectWithin(12 * section.nominalMomentLbfInPerIn, 4913, 2e-3);
    expectWithin(12 * section.designMomentLbfInPerIn, 4422, 2e-3);
    expectWithin(crackingPerFt(2.5), 5929, 2e-3);
    expect(12 * section.designMomentLbfInPerIn).toBeLessThan(crackingPerFt(2.5));
  });

  // ACI 318-19 22.2, Table 21.2.2.
  test('basis 4.2: #3 at 6 in near the top of 3 in carries 22 581 lbf in a foot', () => {
    const section = analyse(oneLayer(3, 0.22, 2.0625, 60_000));
    expectWithin(section.neutralAxisIn, 0.3806, 2e-3);
    expectWithin(section.extremeStrainRatio, 0.01326, 2e-3);
    expectWithin(12 * section.nominalMomentLbfInPerIn, 25_090, 2e-3);
    expectWithin(12 * section.designMomentLbfInPerIn, 22_581, 2e-3);
    expect(section.isTensionControlled).toBe(true);
    expect(section.cautiousMomentLbfInPerIn).toBeNull();
  });

  // ACI 318-19 22.2, Table 21.2.2.
  test('basis 4.3: #3 at 6 in with 3/4 in cover in 2 in is just tension-controlled', () => {
    const section = analyse(oneLayer(2, 0.22, 1.0625, 60_000));
    expectWithin(section.extremeStrainRatio, 0.00537, 2e-3);
    expectWithin(section.phiRatio, 0.9, 1e-12);
    expectWithin(12 * section.designMomentLbfInPerIn, 10_701, 2e-3);
    expectWithin(crackingPerFt(2), 3795, 2e-3);
  });

  // ACI 318-19 22.2.1, 22.2.2: strain compatibility, steel below yield.
  test('basis 4.4: #4 at 4 in at mid-depth of 2 in does not yield and counts 0.65', () => {
    const section = analyse(oneLayer(2, 0.6, 1, 60_000));
    expectWithin(section.neutralAxisIn, 0.6867, 3e-3);
    expectWithin(section.layers[0]?.stressPsi ?? 0, 39_690, 3e-3);
    expectWithin(12 * section.nominalMomentLbfInPerIn, 16_865, 3e-3);
    expect(section.phiRatio).toBe(0.65);
    expect(section.isTensionControlled).toBe(false);
    expectWithin(12 * (section.cautiousMomentLbfInPerIn ?? 0), 0.65 * 16_865, 3e-3);
  });

  // ACI 318-19 Table 21.2.2; 21.2.2.1 permits 0.002 as the yield strain of grade 60.
  test('basis 4.5: #3 at 4 in at mid-depth of 2 in yields but is not tension-controlled', () => {
    const section = analyse(oneLayer(2, 0.33, 1, 60_000));
    expectWithin(section.extremeStrainRatio, 0.002255, 3e-3);
    expectWithin(section.phiRatio, 0.6655, 3e-3);
    expectWithin(phiFlexure({ et: section.extremeStrainRatio, ety: 0.002 }).value, 0.671, 3e-3);
    expect(section.isTensionControlled).toBe(false);
    expectWithin(section.cautiousMomentLbfInPerIn ?? 0, 0.65 * section.nominalMomentLbfInPerIn, 1e-12);
  });

  // ACI 318-19 22.2.2.4.3.
  test('basis 4.6: the block factor falls from 0.85 to 0.65 between 4000 and 8000 psi', () => {
    const expected = [
      [2500, 0.85],
      [4000, 0.85],
      [5000, 0.8],
      [6000, 0.75],
      [8000, 0.65],
      [10_000, 0.65],
    ] as const;
    for (const [fc, ratio] of expected) expectWithin(beta1({ fc }).value, ratio, 1e-12);
  });

  // ACI 318-19 7.6.1.1, 24.4.3.2.
  test('basis 4.7: 2, 2.5 and 3 in want at least 0.0432, 0.0540 and 0.0648 in2 a foot', () => {
    expectWithin(12 * minimumSteel({ h: 2 }).value, 0.0432, 1e-3);
    expectWithin(12 * minimumSteel({ h: 2.5 }).value, 0.054, 1e-3);
    expectWithin(12 * minimumSteel({ h: 3 }).value, 0.0648, 1e-3);
  });

  // From memory: Wight, Reinforced Concrete: Mechanics and Design, ch. 4: b 12, d 17.5, four #7, f'c 4000,
  // fy 60 ksi: a 3.53 in, Mn 189 kip ft.
  test('a 12 x 20 in beam with 2.40 in2 has a nominal moment of 189 kip ft', () => {
    const section = analyse(oneLayer(20, 2.4, 17.5, 60_000, 'bottom'));
    expectWithin(section.neutralAxisIn * 0.85, 3.53, 2e-3);
    expectWithin((12 * section.nominalMomentLbfInPerIn) / 12_000, 189, 2e-3);
  });

  // From memory: Nilson, Darwin & Dolan, Design of Concrete Structures, ch. 3: b 10, d 23, As 2.37 in2, f'c 4000,
  // fy 60 ksi: a 4.18 in, Mn 2970 kip in = 248 kip ft.
  test('a 10 x 25 in beam with 2.37 in2 has a nominal moment of 248 kip ft', () => {
    const section = analyse(oneLayer(25, 2.37 * 1.2, 23, 60_000, 'bottom'));
    expectWithin(section.neutralAxisIn * 0.85, 4.18, 2e-3);
    expectWithin((10 * section.nominalMomentLbfInPerIn) / 12_000, 248, 3e-3);
  });

  test('the same layer gives the same moment whichever face is in tension', () => {
    const top = analyse(oneLayer(3, 0.22, 2.0625, 60_000, 'top'));
    const bottom = analyse(oneLayer(3, 0.22, 2.0625, 60_000, 'bottom'));
    expect(top.nominalMomentLbfInPerIn).toBe(bottom.nominalMomentLbfInPerIn);
    expect(top.crackedInertiaIn4PerIn).toBe(bottom.crackedInertiaIn4PerIn);
  });

  test('it follows the closed forms to the last bit, yielding or not', () => {
    const yielding = analyse(oneLayer(3, 0.24, 2, 60_000));
    const a = stressBlockDepth({ As: 0.02, fy: 60_000, fc: 4000 }).value;
    expect(yielding.nominalMomentLbfInPerIn).toBe(nominalMoment({ As: 0.02, fs: 60_000, d: 2, a }).value);

    const elastic = analyse(oneLayer(2, 0.6, 1, 60_000));
    const inputs = { As: 0.6 / 12, Es: 29e6, d: 1, fc: 4000, beta1: 0.85 };
    const c = neutralAxisUnyielded(inputs).value;
    const fs = steelStress({ fy: 60_000, Es: 29e6, d: 1, c }).value;
    expect(elastic.neutralAxisIn).toBe(c);
    expect(elastic.nominalMomentLbfInPerIn).toBe(
      nominalMoment({ As: 0.6 / 12, fs, d: 1, a: 0.85 * c }).value,
    );
  });

  test('a strain just over yield plus 0.003 is tension-controlled, just under is not', () => {
    const limitC = (0.003 * 1.0625) / (0.006 + 60_000 / 29e6);
    const areaAtLimit = (0.85 * 4000 * 0.85 * limitC * 12) / 60_000;
    expect(analyse(oneLayer(2, areaAtLimit * 0.999, 1.0625, 60_000)).isTensionControlled).toBe(true);
    expect(analyse(oneLayer(2, areaAtLimit * 1.001, 1.0625, 60_000)).isTensionControlled).toBe(false);
  });
});

describe('a section with several layers', () => {
  const layer = (areaIn2PerIn: number, depthFromTopIn: number, yieldPsi = 60_000) => ({
    areaIn2PerIn,
    depthFromTopIn,
    yieldPsi,
  });
  const bottom = (thicknessIn: number, layers: SectionInput['layers']): SectionInput => ({
    thicknessIn,
    strengthPsi: 4000,
    layers,
    tensionFace: 'bottom',
  });

  test('two halves of a layer at one depth act as the whole layer', () => {
    for (const area of [0.01, 0.03, 0.06]) {
      const whole = analyse(bottom(2.5, [layer(area, 1.75)]));
      const halves = analyse(bottom(2.5, [layer(area / 2, 1.75), layer(area / 2, 1.75)]));
      expectWithin(halves.neutralAxisIn, whole.neutralAxisIn, 1e-12);
      expectWithin(halves.nominalMomentLbfInPerIn, whole.nominalMomentLbfInPerIn, 1e-12);
      expectWithin(halves.crackedDepthIn, whole.crackedDepthIn, 1e-12);
      expectWithin(halves.crackedInertiaIn4PerIn, whole.crackedInertiaIn4PerIn, 1e-12);
    }
  });

  // By hand: both yield, c = (.01 + .015) 60000 / (.85 4000 .85) = .51903, a = .44118;
  // Mn = 600 (1.5 - .22059) + 900 (2.5 - .22059) = 767.65 + 2051.47 = 2819.1 lbf in/in.
  test('two yielding layers at 1.5 and 2.5 in carry 2819 lbf in/in', () => {
    const section = analyse(bottom(3.25, [layer(0.01, 1.5), layer(0.015, 2.5)]));
    expectWithin(section.neutralAxisIn, 0.51903, 1e-4);
    expectWithin(section.nominalMomentLbfInPerIn, 2819.1, 1e-4);
    expectWithin(section.effectiveDepthIn, 2.1, 1e-9);
    expectWithin(section.tensionSteelIn2PerIn, 0.025, 1e-9);
  });

  // By hand, upper layer elastic: 2890 c = 900 + .01 87000 (.6 - c) / c, so 2890 c^2 - 30 c - 522 = 0,
  // c = (30 + sqrt(900 + 6 034 320)) / 5780 = .430218; fs = 87000 (.6 - c) / c = 34 334 psi; a = .365685;
  // Mn = 343.34 (.6 - .182843) + 900 (2.5 - .182843) = 143.23 + 2085.44 = 2228.7 lbf in/in.
  test('a layer close to the neutral axis stays elastic and counts its 34 334 psi', () => {
    const section = analyse(bottom(3.25, [layer(0.01, 0.6), layer(0.015, 2.5)]));
    expectWithin(section.neutralAxisIn, 0.430218, 1e-5);
    expectWithin(section.layers[0]?.stressPsi ?? 0, 34_334, 1e-4);
    expectWithin(section.nominalMomentLbfInPerIn, 2228.7, 1e-4);
  });

  // By hand: n 8.0444, kd^2 / 2 = n [.01 (1.5 - kd) + .015 (2.5 - kd)]: kd = -.20111 + sqrt(.040446 + .84466)
  // = .73969; Icr = .13491 + 8.0444 [.01 .76031^2 + .015 1.76031^2] = .13491 + .04650 + .37391 = .5553 in4/in.
  test('two layers crack to an axis 0.7397 in down and 0.5553 in4 an inch', () => {
    const section = analyse(bottom(3.25, [layer(0.01, 1.5), layer(0.015, 2.5)]));
    expectWithin(section.crackedDepthIn, 0.73969, 1e-4);
    expectWithin(section.crackedInertiaIn4PerIn, 0.5553, 2e-4);
  });

  test('steel in the compression zone counts nothing, in strength and in stiffness', () => {
    const alone = analyse(bottom(3, [layer(0.02, 2.25)]));
    const withTop = analyse(bottom(3, [layer(0.01, 0.2), layer(0.02, 2.25)]));
    expectWithin(withTop.nominalMomentLbfInPerIn, alone.nominalMomentLbfInPerIn, 1e-12);
    expectWithin(withTop.crackedInertiaIn4PerIn, alone.crackedInertiaIn4PerIn, 1e-12);
    expect(withTop.layers[0]?.stressPsi).toBe(0);
  });

  test('compression and pull balance, and every line of workings comes out as printed, over 300 sections', () => {
    const random = generator(7);
    for (let trial = 0; trial < 300; trial++) {
      const thicknessIn = 1 + 5 * random();
      const layers = Array.from({ length: 1 + Math.floor(3 * random()) }, () =>
        layer(0.001 + 0.05 * random(), thicknessIn * (0.1 + 0.8 * random()), 40_000 + 40_000 * random()),
      );
      const strengthPsi = 2500 + 6000 * random();
      const tensionFace = random() < 0.5 ? 'top' : 'bottom';
      const section = analyse({ thicknessIn, strengthPsi, layers, tensionFace });

      const block = 0.85 * strengthPsi * beta1({ fc: strengthPsi }).value * section.neutralAxisIn;
      const pull = section.layers.reduce((sum, each) => sum + each.areaIn2PerIn * each.stressPsi, 0);
      expectWithin(pull, block, 1e-9);

      const kd = section.crackedDepthIn;
      const elasticPull = section.layers.reduce(
        (sum, each) => sum + section.modularRatio * each.areaIn2PerIn * Math.max(0, each.depthIn - kd),
        0,
      );
      expectWithin(elasticPull, kd ** 2 / 2, 1e-9);

      for (const line of section.lines) {
        const printed = Number(line.result);
        expect(Math.abs(recompute(line) - printed), line.substituted).toBeLessThanOrEqual(
          recomputeTolerance(line),
        );
      }
    }
  });

  test('the order in which layers are given does not matter', () => {
    const one = analyse(bottom(3, [layer(0.01, 1), layer(0.02, 2.25)]));
    const other = analyse(bottom(3, [layer(0.02, 2.25), layer(0.01, 1)]));
    expectWithin(other.nominalMomentLbfInPerIn, one.nominalMomentLbfInPerIn, 1e-12);
    expect(other.layers.map((each) => each.depthIn)).toEqual([2.25, 1]);
  });
});

describe('a section at the edge of sense', () => {
  test('without steel there is nothing to analyse', () => {
    const plain = { thicknessIn: 2, strengthPsi: 4000, tensionFace: 'top' } as const;
    expect(analyseSection({ ...plain, layers: [] })).toBeNull();
    const empty = [{ areaIn2PerIn: 0, depthFromTopIn: 1, yieldPsi: 60_000 }];
    expect(analyseSection({ ...plain, layers: empty })).toBeNull();
  });

  test('steel outside the slab is refused with its numbers', () => {
    const layers = [{ areaIn2PerIn: 0.01, depthFromTopIn: 2, yieldPsi: 60_000 }];
    expect(() => analyseSection({ thicknessIn: 2, strengthPsi: 4000, layers, tensionFace: 'top' })).toThrow(
      '2 in deep does not fit a 2 in slab',
    );
  });
});

/** A repeatable run of numbers from 0 to 1 (linear congruential, Numerical Recipes constants). */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
