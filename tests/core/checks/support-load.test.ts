import { describe, expect, test } from 'vitest';
import type { Check } from '../../../src-core/checks';
import { cannotCheck } from '../../../src-core/checks';
import { supportLoad } from '../../../src-core/checks/support-load';
import { runCheckCase } from '../../support/check-harness';
import { HEARTH_E3, jobOf, rectangle } from '../../support/pieces';
import { lightMesh } from './plank';

const INFORMS = { from: 0, to: 0 } as const;

const numberOf = (check: Check | undefined, symbol: string) =>
  check?.workings.find((line) => line.symbol === symbol)?.value ?? Number.NaN;

/** 30 x 24 x 2 in on one cabinet without rails: two panels 29.25 in apart. */
function onCabinet(ratingLb: number) {
  return jobOf({
    corners: rectangle(30, 24),
    thicknessIn: 2,
    loads: { spreadPsf: 50, roving: { setting: 'leaning' } },
    supports: [
      {
        kind: 'cabinet',
        id: 'b1',
        corner: { xIn: 0, yIn: 0 },
        widthIn: 30,
        depthIn: 24,
        frontRail: false,
        backRail: false,
        weightLb: 60,
        feet: { count: 4, shortestIn: 3, longestIn: 6, ratingLb },
      },
    ],
  });
}

/** A slab `lengthIn` by 24 by 2 in under 50 psf on a 30 in cabinet that begins at `cornerXIn`, feet rated for 200 lb. */
function spreadOn(rails: { frontRail?: boolean; backRail?: boolean }, lengthIn: number, cornerXIn: number) {
  return jobOf({
    corners: rectangle(lengthIn, 24),
    thicknessIn: 2,
    loads: { spreadPsf: 50, roving: { setting: 'none' } },
    supports: [
      {
        kind: 'cabinet',
        id: 'b1',
        corner: { xIn: cornerXIn, yIn: 0 },
        widthIn: 30,
        depthIn: 24,
        weightLb: 60,
        feet: { count: 4, shortestIn: 3, longestIn: 6, ratingLb: 200 },
        ...rails,
      },
    ],
  });
}

function onThreePosts(middle: object, more: object = {}) {
  const post = (id: string, xIn: number, own: object = {}) => ({
    kind: 'pier' as const,
    id,
    build: 'timber-post' as const,
    footprint: { kind: 'rectangle' as const, centre: { xIn, yIn: 8 }, widthIn: 4, depthIn: 14 },
    ...own,
  });
  return jobOf({
    corners: rectangle(60, 16),
    thicknessIn: 2,
    supports: [post('left', 3), post('middle', 30, middle), post('right', 57)],
    ...more,
  });
}

describe('load on each support', () => {
  // Hand: 46 x 20 x 2 in weighs 154.4 lb; two piers alike carry half each.
  test('each pier of the hearth carries half its weight, 77.2 lbf, and a sitting person over it 250 lbf more', () => {
    const checks = runCheckCase(supportLoad, {
      says: 'E3',
      job: HEARTH_E3(),
      meshSizeIn: 2,
      level: 'holds',
      ratio: INFORMS,
    });
    expect(checks.map(({ where }) => where.kind === 'support' && where.supportId)).toEqual([
      'pier-1',
      'pier-2',
    ]);
    for (const check of checks) {
      expect(Math.abs(numberOf(check, 'RD') - 77.2)).toBeLessThan(0.05);
      expect(check.demand.value).toBeGreaterThan(325);
      expect(check.demand.value).toBeLessThan(340);
    }
  });

  // Hand: slab 120.8 lb; 200 lbf 2 in from the left edge puts 200 * (29.625 - 2) / 29.25 = 188.9 lbf on the left panel;
  // with half the slab 249.3 lbf, with half the cabinet 279.3 lbf on two feet: 139.6 lbf each.
  test('a foot carries 139.6 lbf: one rated for 140 lbf passes, one rated for 139 lbf does not', () => {
    const handLbf = ((200 * 27.625) / 29.25 + 120.8333 / 2 + 30) / 2;
    const at = (ratingLb: number, level: 'holds' | 'change') =>
      runCheckCase(supportLoad, {
        says: `feet rated ${ratingLb}`,
        job: onCabinet(ratingLb),
        meshSizeIn: 2,
        level,
        ratio: { near: handLbf / ratingLb, within: 0.002 },
      })[0];
    expect(at(140, 'holds')?.needs).toEqual([]);
    const over = at(139, 'change');
    expect(over?.needs).toEqual(['support']);
    expect(over?.words).toContain('more than the 139 lbf it is rated for');
    // either panel: the piece is alike from both ends
    expect(over?.words).toMatch(/200 lbf leaning (2|28) in from the left/);
  });

  // Hand, statics: 40 x 24 x 2 in weighs 161.1 lb, with 50 psf 494.4 lbf at its middle; panels 29.25 in apart, 10 in beyond one of
  // them: that one takes 494.4 * (20 - 0.375) / 29.25 = 331.7 lbf, with half the cabinet 361.7 lbf on two feet.
  test('the feet on the side to which the slab reaches out carry 180.9 lbf each, whichever side that is', () => {
    for (const xIn of [0, 10]) {
      const [check] = runCheckCase(supportLoad, {
        says: `cabinet at ${xIn} in`,
        job: spreadOn({ frontRail: false, backRail: false }, 40, xIn),
        meshSizeIn: 2,
        level: 'holds',
        ratio: { near: 180.87 / 200, within: 0.001 },
      });
      expect(Math.abs(check!.demand.value - 180.87)).toBeLessThan(0.1);
    }
  });

  // Hand: 120.8 lb and 250 lbf lie evenly over the cabinet, so a side takes half with its panel and half the rails; (185.4 + 30) / 2.
  test('a side takes half of what its rails carry: 107.7 lbf a foot under an even load', () => {
    const [check] = runCheckCase(supportLoad, {
      says: 'with rails',
      job: spreadOn({}, 30, 0),
      meshSizeIn: 2,
      level: 'holds',
      ratio: { near: 107.71 / 200, within: 0.001 },
    });
    expect(Math.abs(check!.demand.value - 107.71)).toBeLessThan(0.1);
  });

  test('the most of all states counts, of the whole slab for one support and of the cracked one for another', () => {
    const job = jobOf({
      use: 'other',
      corners: rectangle(98, 16),
      thicknessIn: 2,
      loads: { roving: { setting: 'none' }, spreadPsf: 150 },
      reinforcement: [lightMesh(0.5)],
      supports: [5, 49, 93].map((xIn) => ({
        kind: 'pier' as const,
        id: `pier-${xIn}`,
        build: 'timber-post' as const,
        footprint: { kind: 'rectangle' as const, centre: { xIn, yIn: 8 }, widthIn: 2, depthIn: 16 },
      })),
    });
    const checks = runCheckCase(supportLoad, {
      says: 'three',
      job,
      meshSizeIn: 2,
      level: 'holds',
      ratio: INFORMS,
    });
    const governing = checks.map(({ workings, demand }) => {
      const read = workings.filter(({ symbol }) => symbol === 'R');
      expect(read).toHaveLength(4);
      const most = read.reduce((a, b) => (b.value > a.value ? b : a));
      expect(demand.value).toBe(most.value);
      return most.label.includes('after cracking');
    });
    expect(new Set(governing)).toEqual(new Set([true, false]));
  });

  test('a post 1/4 in short never touches, and says so', () => {
    const checks = runCheckCase(supportLoad, {
      says: 'a gap',
      job: onThreePosts({ gapIn: 0.25 }, { thicknessIn: 4 }),
      meshSizeIn: 3,
      level: 'holds',
      ratio: INFORMS,
    });
    const middle = checks[1];
    expect(middle?.words).toBe(
      'Pier middle never touches the slab, the gap of 1/4 in never closes: the slab stands without it.',
    );
    expect(middle?.cautions[0]).toContain('Shim pier middle tight');
  });

  // Edge of validity: a gap that only a load closes.
  test('a post 1/128 in short is reached only under a load, and says so', () => {
    const middle = runCheckCase(supportLoad, {
      says: 'a small gap',
      job: onThreePosts({ gapIn: 1 / 128 }),
      meshSizeIn: 3,
      level: 'holds',
      ratio: INFORMS,
    })[1];
    expect(middle?.demand.value).toBeGreaterThan(0.5);
    expect(middle?.cautions[0]).toContain('does not reach pier middle');
  });

  test('an end post off which a heavy far overhang lifts the slab is named', () => {
    const job = onThreePosts(
      {},
      {
        loads: {
          fixed: [
            { id: 'pot', name: 'Pot', centre: { xIn: 58, yIn: 8 }, widthIn: 3, depthIn: 12, weightLb: 150 },
          ],
        },
        supports: [
          {
            kind: 'pier',
            id: 'left',
            build: 'block',
            footprint: { kind: 'rectangle', centre: { xIn: 3, yIn: 8 }, widthIn: 4, depthIn: 14 },
          },
          {
            kind: 'pier',
            id: 'middle',
            build: 'block',
            footprint: { kind: 'rectangle', centre: { xIn: 24, yIn: 8 }, widthIn: 4, depthIn: 14 },
          },
          {
            kind: 'pier',
            id: 'right',
            build: 'block',
            footprint: { kind: 'rectangle', centre: { xIn: 46, yIn: 8 }, widthIn: 4, depthIn: 14 },
          },
        ],
      },
    );
    const checks = runCheckCase(supportLoad, {
      says: 'lift-off',
      job,
      meshSizeIn: 3,
      level: 'holds',
      ratio: INFORMS,
    });
    expect(checks[1]?.cautions.join()).toContain('comes off pier middle');
  });

  test('a piece that nothing carries answers by the same check', () => {
    expect(cannotCheck('piece', 'no-support', 'Nothing is drawn under it.')).toMatchObject({
      id: supportLoad.id,
      title: supportLoad.title,
      level: 'change',
    });
  });
});
