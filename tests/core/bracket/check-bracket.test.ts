import { describe, expect, test } from 'vitest';
import {
  BRACKET_REACH_LIMIT_IN,
  type BracketCheck,
  type BracketCheckId,
  type BracketLoad,
  bracketIsDecidable,
  checkBracketCouple,
  STOCK_ARMS,
  worstBracketCheck,
} from '../../../src-core/bracket';
import type { BracketSupport } from '../../../src-core/job';
import { recompute, recomputeTolerance } from '../../support/recompute';
import { apart, BOLTS, BRACE, bracketOf, FLAT, LAGS } from './samples';

function loadOn(bracket: BracketSupport, changes: Partial<BracketLoad> = {}): BracketLoad {
  return {
    bracket,
    deadLbf: 50,
    liveLbf: 200,
    atIn: 8,
    strengthPsi: 3000,
    isWet: false,
    reachLimitIn: BRACKET_REACH_LIMIT_IN,
    ...changes,
  };
}

function pick(checks: readonly BracketCheck[], id: BracketCheckId): BracketCheck {
  const found = checks.find((check) => check.id === id);
  if (!found) throw new Error(`no check ${id}`);
  return found;
}

describe('a tube bracket with lags on a stud', () => {
  const checks = checkBracketCouple(loadOn(bracketOf()));

  // By hand: 250 x 8 = 2000 lb-in against 36 000 x .2824 / 1.67 = 6087.
  test('250 lb at 8 in use 33 % of the bending of a 1-1/2 tube', () => {
    const bending = pick(checks, 'arm-bending');
    expect(bending.demand).toBe(2000);
    expect(apart(bending.ratio, 2000 / 6087)).toBeLessThan(1e-3);
  });

  // By hand: lever 9 - .5 = 8.5; T = 2000/8.5 = 235.3, 117.6 a lag; V 62.5; R 133.2. W'p 234.8 x 2.5 = 587.0. Lateral,
  // lag 3/8 (root .265) through .12 plate in gravity .42: Fe 4704, Re .07606;
  // IIIs: k3 = sqrt(2 x 1.07606/.07606 + 2 x 45 000 x 2.07606 x .07023/(3 x 4704 x .0144)) - 1 = sqrt(28.29 + 64.57) - 1 = 8.636;
  // Z = 8.636 x .265 x .12 x 4704/(2.07606 x 3.2) = 194.5; combined 587 x 194.5 x (117.6^2 + 62.5^2)
  //   / (587 x 62.5^2 + 194.5 x 117.6^2) = 405.9 lb.
  test('its top lags, pulled and sheared, stand at 133.2 of 405.9 lb', () => {
    const top = pick(checks, 'top-fastener');
    expect(apart(top.demand, 133.2)).toBeLessThan(1e-3);
    expect(apart(top.capacity, 405.9)).toBeLessThan(3e-3);
  });

  // By hand: f(10, 8) = 64 x (30 - 8)/(6 x 29e6 x .2118) = 3.821e-5; fixing 80 x .0174533/7451 = 1.874e-4;
  // 250 lb -> .0564 in against 20/360 = .0556.
  test('its tip sinks .0564 in with the soft fixing, past the .0556 in of a 10 in overhang', () => {
    const sinking = pick(checks, 'arm-deflection');
    expect(apart(sinking.demand, 0.0564)).toBeLessThan(2e-3);
    expect(apart(sinking.capacity, 0.05556)).toBeLessThan(1e-3);
    expect(sinking.ratio).toBeGreaterThan(1);
    expect(sinking.lines.filter((line) => line.symbol === 'delta')).toHaveLength(2);
  });

  // By hand: 20/360 over 1.874e-4 + 3.821e-5 = 2.256e-4 in/lbf is 246.3 lb.
  test('the tip sinks within its limit under 245 lb and past it under 248 lb', () => {
    const at = (liveLbf: number) =>
      pick(checkBracketCouple(loadOn(bracketOf(), { deadLbf: 0, liveLbf })), 'arm-deflection').ratio;
    expect(at(245)).toBeLessThan(1);
    expect(at(248)).toBeGreaterThan(1);
  });

  // By hand: 235.3 lb against 425 x 1.375 x 1.5 x 1 = 876.6 lb.
  test('its heel presses 235.3 of 876.6 lb into a spruce stud', () => {
    const heel = pick(checks, 'heel-bearing');
    expect(apart(heel.demand, 235.3)).toBeLessThan(1e-3);
    expect(apart(heel.capacity, 876.6)).toBeLessThan(1e-3);
  });

  // By hand: 1.2 x 50 + 1.6 x 200 = 380 lb against .65 x .85 x 3000 x 1.5 = 2486 lb.
  test('the concrete on the arm stands at 380 of 2486 lb', () => {
    const concrete = pick(checks, 'concrete-bearing');
    expect(concrete.demand).toBeCloseTo(380, 9);
    expect(apart(concrete.capacity, 2486)).toBeLessThan(1e-3);
  });

  test('its worst check is the sinking of its tip', () => {
    expect(worstBracketCheck(checks).id).toBe('arm-deflection');
  });

  test('every printed line of every check recomputes', () => {
    for (const line of checks.flatMap((check) => check.lines).filter((each) => each.formula !== '')) {
      expect(Math.abs(recompute(line) - Number(line.result))).toBeLessThanOrEqual(recomputeTolerance(line));
    }
  });

  test('a bracket without load uses nothing but its reach, its thread and its edge distance', () => {
    const idle = checkBracketCouple(loadOn(bracketOf(), { deadLbf: 0, liveLbf: 0 }));
    const used = idle.filter((check) => check.ratio > 0).map((check) => check.id);
    expect(used).toEqual(['fastener-penetration', 'fastener-edge', 'reach']);
  });

  test('wet timber takes 30 % of the lags and 33 % of the heel', () => {
    const wet = checkBracketCouple(loadOn(bracketOf(), { isWet: true }));
    expect(
      apart(pick(wet, 'top-fastener').capacity, 0.7 * pick(checks, 'top-fastener').capacity),
    ).toBeLessThan(1e-9);
    expect(
      apart(pick(wet, 'heel-bearing').capacity, 0.67 * pick(checks, 'heel-bearing').capacity),
    ).toBeLessThan(1e-9);
  });

  test('a lateral value entered in the job is used as it stands', () => {
    const entered = bracketOf({ fixing: { ...LAGS, lateralLbf: 150 } });
    const atWall = checkBracketCouple(loadOn(entered, { atIn: 0 }));
    expect(pick(atWall, 'top-fastener').capacity).toBeCloseTo(150, 9);
    expect(pick(atWall, 'top-fastener').demand).toBe(62.5);
  });

  // 4 D of a 3/8 lag is 1.5 in.
  test('1.6 in of thread are enough for a 3/8 lag and 1.4 in are not', () => {
    const at = (threadIn: number) =>
      pick(checkBracketCouple(loadOn(bracketOf({ fixing: { ...LAGS, threadIn } }))), 'fastener-penetration')
        .ratio;
    expect(at(1.6)).toBeLessThan(1);
    expect(at(1.4)).toBeGreaterThan(1);
  });

  test('a load beyond the tip is refused as a bug', () => {
    expect(() => checkBracketCouple(loadOn(bracketOf(), { atIn: 11 }))).toThrow('11 in');
  });
});

describe('other arms and fixings', () => {
  // basis 7.1: 269 lb at 10 in.
  test('a flat bar 2 x 1/2 bends within its limit under 268 lb at 10 in and past it under 271 lb', () => {
    const at = (liveLbf: number) =>
      pick(
        checkBracketCouple(loadOn(bracketOf({ arm: FLAT }), { deadLbf: 0, liveLbf, atIn: 10 })),
        'arm-bending',
      ).ratio;
    expect(at(268)).toBeLessThan(1);
    expect(at(271)).toBeGreaterThan(1);
  });

  // By hand: T = 2000/8.5 = 235.3 on one bolt; washer 457.7 lb; bolt 45 000 x .1104/2 = 2485 lb.
  test('a through-bolt is governed by its washer, 235.3 of 457.7 lb', () => {
    const checks = checkBracketCouple(loadOn(bracketOf({ fixing: BOLTS })));
    expect(apart(pick(checks, 'washer-bearing').ratio, 235.3 / 457.7)).toBeLessThan(1e-3);
    expect(apart(pick(checks, 'bolt-pull').capacity, 2485)).toBeLessThan(1e-3);
    expect(pick(checks, 'bolt-lateral').ratio).toBeLessThan(1);
    expect(pick(checks, 'bolt-shear').ratio).toBeLessThan(0.1);
  });

  test('a washer smaller than its hole gives a finite ratio far past 1', () => {
    const tiny = bracketOf({ fixing: { ...BOLTS, washerIn: 0.4 } });
    const ratio = pick(checkBracketCouple(loadOn(tiny)), 'washer-bearing').ratio;
    expect(ratio).toBe(999);
  });

  test('an entered rating of 300 lb at 12 in is asked for 250 lb and 2000 lb-in, and no fastener is reckoned', () => {
    const rated = bracketOf({
      fixing: { kind: 'rated', ratedLoadLbf: 300, ratedAtIn: 12, ratedBy: 'maker' },
    });
    const checks = checkBracketCouple(loadOn(rated));
    expect(pick(checks, 'rated-load').ratio).toBeCloseTo(250 / 300, 9);
    expect(pick(checks, 'rated-moment').ratio).toBeCloseTo(2000 / 3600, 9);
    expect(checks.some((check) => check.id === 'top-fastener')).toBe(false);
  });

  // By hand, spruce 2x4 at 45 degrees, 12 in reach, 250 lb at 8 in: tip share 166.7; strut 235.7 lb, 16.97 in long about 1.5 in;
  // Fc* 1150 x 1.15 = 1322.5; FcE = .822 x 510 000/11.314^2 = 3275; ratio 2.4765; Cp = 2.1728 - sqrt(4.7211 - 3.0956) = .8978;
  // 1322.5 x .8978 x 5.25 = 6234 lb. Arm: T 166.7, M = 250 x 8 x 4/12 = 666.7; 166.7/(5.25 x 675) + 666.7/(3.0625 x 1312.5) = .2129.
  test('a 2x4 knee brace carries 250 lb at 8 in with a strut at 235.7 of 6234 lb and an arm at .213', () => {
    const brace = bracketOf({ arm: BRACE, reachIn: 12, make: 'timber', heelIn: 12 });
    const checks = checkBracketCouple(loadOn(brace));
    expect(apart(pick(checks, 'brace-strut').demand, 235.7)).toBeLessThan(1e-3);
    expect(apart(pick(checks, 'brace-strut').capacity, 6234)).toBeLessThan(1e-3);
    expect(apart(pick(checks, 'brace-arm').ratio, 0.2129)).toBeLessThan(2e-3);
    // 2/3 x 135 x 5.25 = 472.5 lb.
    expect(apart(pick(checks, 'brace-arm-shear').ratio, 250 / 472.5)).toBeLessThan(1e-9);
    expect(pick(checks, 'brace-strut-slenderness').demand).toBeCloseTo(11.31, 2);
  });

  test('timber of a brace creeps under its dead load half as far again, and twice as far when wet', () => {
    const brace = bracketOf({ arm: BRACE, reachIn: 12, make: 'timber' });
    const at = (changes: Partial<BracketLoad>) =>
      pick(checkBracketCouple(loadOn(brace, changes)), 'arm-deflection').demand;
    const live = at({ deadLbf: 0, liveLbf: 100 });
    expect(at({ deadLbf: 100, liveLbf: 0 }) / live).toBeCloseTo(1.5, 9);
    expect(at({ deadLbf: 100, liveLbf: 0, isWet: true }) / live).toBeCloseTo(2, 9);
  });
});

describe('brackets that are for an engineer', () => {
  const rated = { kind: 'rated', ratedLoadLbf: 300, ratedAtIn: 12, ratedBy: 'maker' } as const;

  test('a rolled tube with lags on a stud is decided here', () => {
    expect(bracketIsDecidable(bracketOf())).toBeNull();
    expect(bracketIsDecidable(bracketOf({ fixing: BOLTS }))).toBeNull();
    expect(bracketIsDecidable(bracketOf({ arm: BRACE, make: 'timber' }))).toBeNull();
  });

  test.each([
    ['hollow-block', 'hollow block'],
    ['brick-veneer', 'veneer'],
    ['unknown', 'not known'],
  ] as const)('%s is for an engineer even with a rated load', (backing, words) => {
    expect(bracketIsDecidable(bracketOf({ backing }))).toContain(words);
    expect(bracketIsDecidable(bracketOf({ backing, fixing: rated }))).toContain(words);
  });

  test.each([
    ['grouted-block', 'grouted block'],
    ['concrete', 'concrete'],
    ['steel-post', 'steel post'],
  ] as const)('%s is for an engineer until a rated load is entered', (backing, words) => {
    expect(bracketIsDecidable(bracketOf({ backing, fixing: BOLTS }))).toContain(words);
    expect(bracketIsDecidable(bracketOf({ backing, fixing: rated }))).toBeNull();
  });

  test('a shop-welded bracket needs a rated load, and a cast corbel an engineer in any case', () => {
    expect(bracketIsDecidable(bracketOf({ make: 'shop-welded' }))).toContain('welded');
    expect(bracketIsDecidable(bracketOf({ make: 'shop-welded', fixing: rated }))).toBeNull();
    expect(bracketIsDecidable(bracketOf({ make: 'cast-concrete', fixing: rated }))).toContain('corbel');
  });

  test('a reach of 16 in is decided and one of 16.25 in is not', () => {
    expect(bracketIsDecidable(bracketOf({ reachIn: 16 }))).toBeNull();
    expect(bracketIsDecidable(bracketOf({ reachIn: 16.25 }))).toContain('16.25 in');
    expect(bracketIsDecidable(bracketOf({ reachIn: 16.25 }), 18)).toBeNull();
  });

  test('a rating of nothing, a tube without room inside and a wall like foil are refused in words', () => {
    expect(bracketIsDecidable(bracketOf({ fixing: { ...rated, ratedLoadLbf: 0 } }))).toContain('nothing');
    const tube = { kind: 'tube', widthIn: 1, depthIn: 1, yieldPsi: 36_000 } as const;
    expect(bracketIsDecidable(bracketOf({ arm: { ...tube, wallIn: 0.5 } }))).toContain('no room');
    expect(bracketIsDecidable(bracketOf({ arm: { ...tube, wallIn: 0.02 } }))).toContain('thin');
  });

  test('a brace of 6x6 timber is for an engineer and one of 4x4 is not', () => {
    const brace = (sideIn: number) => bracketOf({ arm: { ...BRACE, widthIn: sideIn, depthIn: sideIn } });
    expect(bracketIsDecidable(brace(3.5))).toBeNull();
    expect(bracketIsDecidable(brace(5.5))).toContain('post timber');
  });
});

describe('stock arms', () => {
  test.each(STOCK_ARMS.map((stock) => [stock.words, stock] as const))(
    '%s is decided and checked at 12 in',
    (_, stock) => {
      const bracket = bracketOf({
        arm: stock.arm,
        fixing: stock.fixing,
        make: stock.make,
        heelIn: stock.heelIn,
        seatWidthIn: stock.seatWidthIn,
        reachIn: 12,
      });
      expect(bracketIsDecidable(bracket)).toBeNull();
      const worst = worstBracketCheck(checkBracketCouple(loadOn(bracket, { deadLbf: 20, liveLbf: 60 })));
      expect(worst.ratio).toBeGreaterThan(0);
      expect(worst.ratio).toBeLessThan(20);
      expect(stock.weightLbPerFt).toBeGreaterThan(1);
      expect(stock.weightLbPerFt).toBeLessThan(8);
    },
  );

  test('have ids of their own', () => {
    expect(new Set(STOCK_ARMS.map((stock) => stock.id)).size).toBe(STOCK_ARMS.length);
  });
});
