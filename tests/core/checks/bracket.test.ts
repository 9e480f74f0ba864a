import { describe, expect, test } from 'vitest';
import { caseField, preparePiece } from '../../../src-core/analysis';
import type { Check } from '../../../src-core/checks';
import { DEFAULT_LIMITS } from '../../../src-core/checks';
import type { ArmLoad } from '../../../src-core/checks/arm-loads';
import { armLoads, armsOf, governingLoads, resultantOn } from '../../../src-core/checks/arm-loads';
import { bracket } from '../../../src-core/checks/bracket';
import { armTipSinking, worstParts } from '../../../src-core/checks/bracket-parts';
import { ruleOfThumbReach } from '../../../src-core/checks/bracket-rules';
import type { ArmSection, BracketFixing, BracketSupport, Job, JobDraft } from '../../../src-core/job';
import { runCheckCase } from '../../support/check-harness';
import { analyse, jobOf, rectangle, wallAlongX } from '../../support/pieces';

type PieceDraft = Partial<JobDraft['pieces'][number]>;

const MESH_IN = 2.5;
const TUBE: ArmSection = { kind: 'tube', widthIn: 1.5, depthIn: 1.5, wallIn: 0.12, yieldPsi: 36_000 };
const STRONG_TUBE: ArmSection = { kind: 'tube', widthIn: 2, depthIn: 2, wallIn: 0.25, yieldPsi: 36_000 };
const FLAT: ArmSection = { kind: 'flat-bar', widthIn: 2, depthIn: 0.5, yieldPsi: 36_000 };
const BRACE: ArmSection = { kind: 'knee-brace', species: 'spf', widthIn: 1.5, depthIn: 3.5, dropIn: 12 };
const LAG: BracketFixing = {
  kind: 'lags',
  diameterIn: 0.375,
  threadIn: 2.5,
  topCount: 1,
  totalCount: 3,
  leverIn: 11,
  specificGravity: 0.42,
  lateralLbf: null,
};
const rated = (ratedLoadLbf: number): BracketFixing => ({
  kind: 'rated',
  ratedLoadLbf,
  ratedAtIn: 10,
  ratedBy: 'maker',
});
/** Springs so stiff that only statics is left. */
const STIFF = { low: 150_000, high: 200_000 };

function row(rootXIn: readonly number[], faceYIn: number, more: Partial<BracketSupport> = {}) {
  return {
    kind: 'bracket' as const,
    id: 'arms',
    roots: rootXIn.map((xIn) => ({ xIn, yIn: faceYIn })),
    directionDeg: 270,
    reachIn: 10,
    seatWidthIn: 1.5,
    heelIn: 12,
    arm: TUBE,
    backing: 'timber-stud' as const,
    fixing: LAG,
    ...more,
  };
}

/** 30 x 10 x 2 in on two arms alone, their wall face along its back edge; 50 psf and nothing roving. */
function onTwoArms(more: Partial<BracketSupport> = {}, piece: PieceDraft = {}): Job {
  return jobOf({
    corners: rectangle(30, 10),
    thicknessIn: 2,
    loads: { spreadPsf: 50, roving: { setting: 'none' } },
    supports: [row([5, 25], 10, more)],
    ...piece,
  });
}

/** Ledge E1, loose on its stud wall unless told otherwise, with arms 8 in long at every stud 16 in on centre. */
function ledgeOnBrackets(more: Partial<BracketSupport> = {}, spacingIn = 16, wall: object = {}): Job {
  const count = Math.floor(93 / spacingIn) + 1;
  const roots = Array.from({ length: count }, (_, i) => 1.5 + i * spacingIn);
  return jobOf({
    use: 'bar-ledge',
    corners: rectangle(96, 17.5),
    thicknessIn: 1.5,
    supports: [wallAlongX('wall', 0, 96, 13.75, 5.5, { ...wall }), row(roots, 11, { reachIn: 8, ...more })],
  });
}

const partRatioOf = (check: Check | undefined, label: string) =>
  check?.workings.find((line) => line.symbol === 'ratio' && line.label.startsWith(label))?.value ??
  Number.NaN;
const lineOf = (check: Check | undefined, symbol: string) =>
  check?.workings.find((line) => line.symbol === symbol)?.value ?? Number.NaN;

describe('brackets that statics alone decides', () => {
  // Hand: 30 x 10 x 2 in at 145 pcf weighs 50.35 lb; 50 psf on it 104.17 lb; each arm carries 77.26 lb, in the middle of its 10 in.
  test('each of two arms alone carries half, 77.26 lb at 5 in: rated for 78 lb it holds, for 77 lb it does not', () => {
    const at = (ratedLbf: number, level: 'holds' | 'change') =>
      runCheckCase(bracket, {
        says: `rated ${ratedLbf} lb`,
        job: onTwoArms({ fixing: rated(ratedLbf), stiffness: STIFF }),
        meshSizeIn: MESH_IN,
        level,
        ratio: { near: 77.257 / ratedLbf, within: 5e-4 },
      })[0];
    const holds = at(78, 'holds');
    expect(lineOf(holds, 'P')).toBeCloseTo(77.257, 2);
    expect(lineOf(holds, 'e')).toBeCloseTo(5, 3);
    expect(lineOf(holds, 'share')).toBe(100);
    expect(holds?.words).toContain('the slab stays uncracked, and the row takes 100 % of the whole load');
    const fails = at(77, 'change');
    expect(fails?.needs).toEqual(['corbel', 'support']);
    expect(fails?.words).toContain('load against the rating of the bracket is 1 times what is let pass');
  });

  // Hand: M 386.3 lb-in; T = 386.3 / (4 - .5) = 110.4 lb; V = 77.26 / 2 = 38.6; R 116.9. 1/4 lag in gravity .42, 2 in:
  // 1800 x .42^1.5 x .25^.75 x 2 = 346.4; 346.4 x 150 x 116.9^2 / (346.4 x 38.6^2 + 150 x 110.4^2) = 303.0: .386.
  // Toe: 110.4 / 876.6 = .126. Arm 36 000 x .2824 / 1.67 = 6089: .0634. Concrete: (1.2 x 25.17 + 1.6 x 52.08) / (.65 x .85 x 5000 x 1.5) = .0274.
  test('their top lags stand at .386, the toe at .126, the arm at .063 and the concrete on it at .027', () => {
    const fixing: BracketFixing = {
      ...LAG,
      diameterIn: 0.25,
      threadIn: 2,
      totalCount: 2,
      leverIn: 4,
      lateralLbf: 150,
    };
    const [check] = runCheckCase(bracket, {
      says: 'lags',
      job: onTwoArms({ fixing, stiffness: STIFF }),
      meshSizeIn: MESH_IN,
      level: 'holds',
      ratio: { near: 0.386, within: 0.003 },
    });
    expect(check?.words).toContain('top fastener, pulled and sheared at once uses 0.39');
    expect(partRatioOf(check, 'Toe')).toBeCloseTo(0.126, 3);
    expect(partRatioOf(check, 'Bending')).toBeCloseTo(0.0634, 4);
    expect(partRatioOf(check, 'Concrete')).toBeCloseTo(0.0274, 4);
  });

  // The slab rests on nothing but the arms, so its node over the tip sinks as the arm does, and by the give of the seat.
  test("the arm's tip sinks as far as the engine's slab above it does", () => {
    const job = onTwoArms({ arm: FLAT });
    const [piece] = job.pieces;
    const result = preparePiece(job, piece!, { day: null, meshSizeIn: MESH_IN });
    if (!result.ok) throw new Error(result.cannot.sentence);
    const { prepared } = result;
    const spread = prepared.labels.findIndex(({ live }) => live.kind === 'spread');
    const [check] = bracket.run({
      job,
      analysis: analyse(job, { meshSizeIn: MESH_IN }),
      limits: DEFAULT_LIMITS,
    });
    const field = caseField(prepared, 'low', spread);
    const tips = prepared.contacts.flatMap(({ node, at }, i) =>
      at.yIn < 1e-9 ? [field.wIn[node]! - field.contactLbf[i]! / 200_000] : [],
    );
    expect(tips).toHaveLength(2);
    expect(lineOf(check, 'S') / Math.max(...tips)).toBeCloseTo(1, 4);
  });
});

describe('brackets that share with the slab', () => {
  test('E1 with a 1-1/2 in tube 8 in long at every stud holds: fasteners at .41, bending at .24, the tip at .74', () => {
    const [check] = runCheckCase(bracket, {
      says: 'E1 with brackets',
      job: ledgeOnBrackets(),
      meshSizeIn: MESH_IN,
      level: 'holds',
      ratio: { near: 0.735, within: 0.03 },
    });
    expect(check?.words).toContain('sinking of the tip of the arm uses 0.7');
    expect(check?.words).toContain('the slab stays uncracked');
    expect(partRatioOf(check, 'Top fastener')).toBeCloseTo(0.41, 1);
    expect(partRatioOf(check, 'Bending')).toBeCloseTo(0.24, 1);
    expect(check?.cautions).toHaveLength(1);
  });

  test('the same on flat bars 2 x 1/2 in does not hold, though the rule of the trade is kept, and says so', () => {
    const [check] = runCheckCase(bracket, {
      says: 'limp',
      job: ledgeOnBrackets({ arm: FLAT, seatWidthIn: 2 }),
      meshSizeIn: MESH_IN,
      level: 'change',
      ratio: { from: 1.1, to: 1.5 },
    });
    expect(check?.cautions[0]).toContain("The trade's rule for spacing and reach is kept");
  });

  test('at 32 in under a ledge that is tied behind they hold against the rule of 24 in, and say why', () => {
    const job = ledgeOnBrackets({}, 32, { hold: { kind: 'tied', ratingLbf: 1000 } });
    const [check] = runCheckCase(bracket, {
      says: '32 in',
      job,
      meshSizeIn: MESH_IN,
      level: 'holds',
      ratio: { from: 0.5, to: 0.999 },
    });
    expect(check?.cautions[0]).toContain('these are 32 in apart instead of 24 in at the most');
    expect(ruleOfThumbReach({ share: 2 / 3, a: 11 }).value).toBeCloseTo(7.333, 3);
  });

  test('arms of 7 in under an overhang of 11 in hold against the rule of two thirds of it, and say why', () => {
    // 2/3 * 11 = 7.33 in, common practice, no source
    const sentenceAt = (reachIn: number) => {
      const job = ledgeOnBrackets({ reachIn, arm: STRONG_TUBE }, 16, {
        hold: { kind: 'tied', ratingLbf: 1000 },
      });
      const [check] = bracket.run({
        job,
        analysis: analyse(job, { meshSizeIn: MESH_IN }),
        limits: DEFAULT_LIMITS,
      });
      expect(check?.level).toBe('holds');
      return check?.cautions.find((caution) => caution.includes("The trade's rule"));
    };
    expect(sentenceAt(7)).toContain('7 in long instead of 7-5/16 in, two thirds of the overhang');
    expect(sentenceAt(7.3)).toBeUndefined();
  });

  test('the tip of a timber arm sinks half as far again under what lasts, twice as far outdoors, and one of steel does not', () => {
    // NDS 2018 3.5.2: Kcr 1.5 seasoned and dry, 2.0 wet
    expect(armTipSinking.compute({ S: 0.03, D: 0.01, Kcr: 1.5 })).toBeCloseTo(0.035, 9);
    const factorOf = (arm: ArmSection, exposure: 'indoors' | 'outdoors') => {
      const job = onTwoArms({ arm, make: arm.kind === 'knee-brace' ? 'timber' : 'rolled' }, { exposure });
      const [check] = bracket.run({ job, analysis: analyse(job, { meshSizeIn: 3 }), limits: DEFAULT_LIMITS });
      const sinking = check?.workings.find(({ symbol }) => symbol === 'dtip');
      return Number(sinking?.inputs.find(({ symbol }) => symbol === 'Kcr')?.printed);
    };
    expect(factorOf(BRACE, 'indoors')).toBe(1.5);
    expect(factorOf(BRACE, 'outdoors')).toBe(2);
    expect(factorOf(TUBE, 'outdoors')).toBe(1);
  });

  test('of the loads on an arm those are looked at that are worst near, far, between the ends, factored, or for the tip', () => {
    const reachIn = 10;
    const load = (totalLbf: number, atIn: number, own: Partial<ArmLoad> = {}) =>
      ({
        totalLbf,
        atIn,
        momentLbfIn: totalLbf * atIn,
        deadLbf: 150,
        sinkingIn: 0,
        deadSinkingIn: 0,
        ...own,
      }) as ArmLoad;
    const heaviest = load(200, 5);
    const nearer = load(180, 1);
    const farther = load(99, 9.9);
    // beaten on its way out by one that is as large and farther, on its way in by one that is as large and nearer
    const between = load(210, 5.1);
    const [in1, out1] = [load(220, 0.5), load(220, 9.9)];
    // 1.2 * 10 + 1.6 * 189 = 314 lbf against 1.2 * 150 + 1.6 * 70 = 292 lbf of the heaviest (ASCE 7-22 2.3.1)
    const living = load(199, 5, { deadLbf: 10 });
    const sinking = load(50, 2, { sinkingIn: 0.01, deadSinkingIn: 0.002 });
    const least = load(60, 3);
    expect(new Set(governingLoads([heaviest, nearer, farther, least], reachIn))).toEqual(
      new Set([heaviest, nearer, farther]),
    );
    expect(new Set(governingLoads([in1, out1, between, living, sinking, least], reachIn))).toEqual(
      new Set([in1, out1, between, living, sinking]),
    );
  });

  test('a limp arm carries less and the slab more, with a rigid fixing and with one that gives', () => {
    const tied = (arm: ArmSection) =>
      analyse(
        jobOf({
          use: 'bar-ledge',
          corners: rectangle(48, 18),
          thicknessIn: 1.5,
          loads: { roving: { setting: 'none' } },
          supports: [
            wallAlongX('wall', 0, 48, 14, 8, { build: 'block', hold: { kind: 'tied', spacingIn: 12 } }),
            row([8, 24, 40], 10, { reachIn: 9, arm }),
          ],
        }),
        { meshSizeIn: 3 },
      );
    const limp = tied(FLAT);
    const stiff = tied(STRONG_TUBE);
    const onArms = ({ bearings, elastic }: typeof limp, bound: 'low' | 'high') =>
      elastic[bound].cases[1]!.reactions.reduce(
        (sum, { bearing, pushLbf }) => sum + (bearings[bearing]!.part === 'arm' ? pushLbf : 0),
        0,
      );
    for (const bound of ['low', 'high'] as const) {
      expect(onArms(limp, bound)).toBeGreaterThan(1);
      expect(onArms(limp, bound)).toBeLessThan(0.97 * onArms(stiff, bound));
      expect(limp.elastic[bound].hogging.momentLbfInPerIn).toBeGreaterThan(
        stiff.elastic[bound].hogging.momentLbfInPerIn,
      );
    }
    for (const { cases } of [limp.elastic.low, stiff.elastic.high]) {
      for (const { contactLbf, totalLbf } of cases) {
        const sum = contactLbf.reduce((total, lbf) => total + lbf, 0);
        expect(Math.abs(sum - totalLbf)).toBeLessThan(1e-6 * totalLbf);
      }
    }
  });

  test.each([
    ['tube', TUBE, 'rolled'],
    ['knee brace', BRACE, 'timber'],
  ] as const)('the few loads looked at hold the worst of all for every part of a %s', (_, arm, make) => {
    const job = ledgeOnBrackets({ arm, make }, 46);
    const analysis = analyse(job, { meshSizeIn: 3 });
    const brackets = job.pieces[0]!.supports[1] as BracketSupport;
    const parts = analysis.bearings.flatMap((bearing, i) => (bearing.part === 'arm' ? [i] : []));
    const arms = armsOf(analysis, brackets, parts);
    const all = armLoads(analysis, brackets, arms);
    const few = governingLoads(all, brackets.reachIn);
    expect(few.length).toBeLessThan(all.length / 10);
    const context = { job, analysis, limits: DEFAULT_LIMITS };
    const worst = (loads: typeof all) =>
      worstParts(context, brackets, loads).map(({ label, ratio }) => `${label} ${ratio.toFixed(9)}`);
    expect(worst(few).sort()).toEqual(worst(all).sort());
    const heaviest = Math.max(...all.map(({ totalLbf }) => totalLbf));
    expect(few.some(({ totalLbf }) => totalLbf === heaviest)).toBe(true);
  });
});

describe('brackets at the edge of what is decided', () => {
  test('in hollow block they are for an engineer, who is told the load', () => {
    const [check] = runCheckCase(bracket, {
      says: 'hollow block',
      job: onTwoArms({ backing: 'hollow-block', stiffness: STIFF }),
      meshSizeIn: MESH_IN,
      level: 'engineer',
      ratio: { from: 0, to: 0 },
    });
    expect(check?.words).toContain('Anchors into hollow block are for an engineer');
    expect(check?.words).toContain('must carry 77 lbf at 5 in from the wall');
  });

  test('a reach of 16 in is decided here and one of 16-1/4 in is not', () => {
    const levelAt = (reachIn: number) => {
      const job = jobOf({
        corners: rectangle(30, 18),
        thicknessIn: 2,
        loads: { spreadPsf: 0, roving: { setting: 'none' } },
        supports: [row([5, 25], 18, { reachIn, arm: STRONG_TUBE, stiffness: STIFF })],
      });
      return bracket.run({ job, analysis: analyse(job, { meshSizeIn: 3 }), limits: DEFAULT_LIMITS })[0]!
        .level;
    };
    expect(levelAt(16)).toBe('holds');
    expect(levelAt(16.25)).toBe('engineer');
  });

  // NDS 2018 12.1.4.6: 4 x .375 = 1.5 in of thread.
  test('too short a thread fails by itself, and a long enough one is not counted as work', () => {
    const at = (threadIn: number, level: 'holds' | 'change', ratio: { from: number; to: number }) =>
      runCheckCase(bracket, {
        says: `${threadIn} in of thread`,
        job: onTwoArms({ fixing: { ...LAG, threadIn }, stiffness: STIFF }),
        meshSizeIn: MESH_IN,
        level,
        ratio,
      });
    at(1.55, 'holds', { from: 0.1, to: 0.5 });
    at(1.45, 'change', { from: 1.5 / 1.45 - 1e-9, to: 1.5 / 1.45 + 1e-9 });
  });

  test('outdoors the timber counts as wet: the top lags take 70 % of what they take indoors', () => {
    const capacityAt = (exposure: 'indoors' | 'outdoors') => {
      const job = onTwoArms({ stiffness: STIFF }, { exposure });
      const [check] = bracket.run({ job, analysis: analyse(job, { meshSizeIn: 3 }), limits: DEFAULT_LIMITS });
      return lineOf(check, 'Zalpha');
    };
    expect(capacityAt('outdoors') / capacityAt('indoors')).toBeCloseTo(0.7, 6);
  });

  test('brackets 1 in below the slab carry nothing and say so', () => {
    const [check] = runCheckCase(bracket, {
      says: 'a gap',
      job: jobOf({
        corners: rectangle(48, 18),
        thicknessIn: 3,
        loads: { spreadPsf: 50, roving: { setting: 'none' } },
        supports: [wallAlongX('wall', 0, 48, 10, 12), row([8, 40], 4, { reachIn: 4, gapIn: 1 })],
      }),
      meshSizeIn: 3,
      level: 'holds',
      ratio: { from: 0, to: 1e-9 },
    });
    expect(check?.words).toContain('carries nothing');
  });

  test('arms near the middle, tied to the slab, are said to be lifted by a person at its end', () => {
    const job = jobOf({
      use: 'bench',
      corners: rectangle(30, 10),
      thicknessIn: 2,
      supports: [
        row([12, 18], 10, { hold: { kind: 'tied', spacingIn: 16, ratingLbf: 500, stiffness: STIFF } }),
      ],
    });
    const analysis = analyse(job, { meshSizeIn: 3 });
    const [check] = bracket.run({ job, analysis, limits: DEFAULT_LIMITS });
    expect(check?.cautions.at(-1)).toContain('ties lift an arm');
    const arms = armsOf(analysis, job.pieces[0]!.supports[0] as BracketSupport, [0, 1]);
    const least = Math.min(
      ...analysis.elastic.low.cases.flatMap((one) => arms.map((arm) => resultantOn(arm, one, 10).P)),
    );
    expect(least).toBe(0);
  });
});
