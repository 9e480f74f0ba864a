import { describe, expect, test } from 'vitest';
import type { Check } from '../../../src-core/checks';
import { shrinkage } from '../../../src-core/checks/shrinkage';
import type { Job } from '../../../src-core/job';
import { runCheckCase } from '../../support/check-harness';
import { jobOf, rectangle, wallAlongX } from '../../support/pieces';

function run(job: Job): Check {
  const [check] = runCheckCase(shrinkage, {
    says: 'movement informs',
    job,
    meshSizeIn: 3,
    level: 'holds',
    ratio: { from: 0, to: 0 },
  });
  return check!;
}

function top(more: object = {}, lengthIn = 96, depthIn = 24): Job {
  return jobOf({
    corners: rectangle(lengthIn, depthIn),
    thicknessIn: 2,
    supports: [wallAlongX('wall', 0, lengthIn, depthIn / 2, depthIn - 1)],
    ...more,
  });
}

/** Against a wall along its back. */
function againstWall(gapIn: number, more: object = {}): Job {
  return top({
    edges: [{ kind: 'free' }, { kind: 'free' }, { kind: 'wall', gapIn }, { kind: 'free' }],
    ...more,
  });
}

const value = (check: Check, label: string) =>
  check.workings.find((line) => line.label.includes(label))?.value ?? Number.NaN;

describe('shrinkage and movement', () => {
  // Common practice figure of 500 microstrain: 96 x .0005.
  test('basis 11.2: 96 in shortens by .048 in', () => {
    const check = run(top());
    expect(Math.abs(check.demand.value - 0.048)).toBeLessThan(0.048 * 0.005);
    expect(check.words).toContain('0.048 in');
    expect(check.cautions).toEqual([]);
  });

  // ACI 209R, from memory: 9.9e-6 per deg C; 28 deg C is 50 deg F.
  test('basis 11.3: outdoors 96 in moves .0264 in with 50 deg F', () => {
    const check = run(top({ exposure: 'outdoors' }));
    expect(Math.abs(value(check, 'temperature') - 0.0264)).toBeLessThan(0.0264 * 0.01);
    expect(value(run(top()), 'temperature')).toBeNaN();
  });

  // 24 in square to the wall shortens by .012 in.
  test('a gap of .0125 in lets 24 in move, .0115 in does not', () => {
    expect(run(againstWall(0.0125)).cautions).toEqual([]);
    const check = run(againstWall(0.0115));
    expect(check.cautions[0]).toContain('The gap at edge 3');
    expect(check.words).toContain('it may crack');
  });

  test('a slab cast hard against its wall is strongly advised to be isolated, though it does not fall for it', () => {
    const check = run(againstWall(0));
    expect(check.level).toBe('holds');
    expect(check.cautions[0]).toContain('expect it to crack');
    expect(check.cautions[0]).toContain('1/8 in to 1/4 in of foam');
  });

  test('an inside corner wants a diagonal bar or a joint, and either settles it', () => {
    const corners = [
      { xIn: 0, yIn: 0 },
      { xIn: 48, yIn: 0 },
      { xIn: 48, yIn: 24 },
      { xIn: 24, yIn: 24 },
      { xIn: 24, yIn: 48 },
      { xIn: 0, yIn: 48 },
    ];
    const supports = [wallAlongX('wall', 0, 48, 12, 22), wallAlongX('far', 0, 24, 40, 10)];
    const bent = (more: object) => jobOf({ corners, thicknessIn: 2, supports, ...more });
    const bare = run(bent({}));
    expect(bare.cautions[0]).toContain('One inside corner has neither a joint nor a diagonal bar');
    expect(bare.where).toEqual({ kind: 'point', at: { xIn: 24, yIn: 24 } });
    const joint = { id: 'j', kind: 'control', from: { xIn: 24, yIn: 24 }, to: { xIn: 24, yIn: 0 } };
    expect(run(bent({ joints: [joint] })).cautions).toEqual([]);
    const beside = (awayIn: number) => ({
      ...joint,
      from: { xIn: 24 - awayIn, yIn: 24 },
      to: { xIn: 24 - awayIn, yIn: 0 },
    });
    expect(run(bent({ joints: [beside(0.9)] })).cautions).toEqual([]);
    expect(run(bent({ joints: [beside(1.1)] })).cautions).toHaveLength(1);
    const bars = {
      kind: 'bars',
      id: 'diagonal',
      barIn: 0.375,
      areaIn2: 0.11,
      spacingIn: 4,
      angleDeg: 135,
      depthIn: 1,
      corners: rectangle(36, 36),
    };
    expect(run(bent({ reinforcement: [bars] })).cautions).toEqual([]);
    for (const angleDeg of [0, 20, 70, 90, 160]) {
      expect(run(bent({ reinforcement: [{ ...bars, angleDeg }] })).cautions, `${angleDeg}`).toHaveLength(1);
    }
    for (const angleDeg of [30, 60, 120]) {
      expect(run(bent({ reinforcement: [{ ...bars, angleDeg }] })).cautions, `${angleDeg}`).toEqual([]);
    }
    expect(run(bent({ reinforcement: [{ ...bars, corners: rectangle(20, 20) }] })).cautions).toHaveLength(1);
  });

  // Edge of validity: a round opening has no corners, a square one four.
  test('a sink has four corners that crack, a round drain none', () => {
    const centre = { xIn: 48, yIn: 12 };
    const opening = (shape: object) => ({ cutouts: [{ id: 'c', purpose: 'other', shape }] });
    expect(run(top(opening({ kind: 'circle', centre, diameterIn: 6 }))).cautions).toEqual([]);
    const square = run(top(opening({ kind: 'rectangle', centre, widthIn: 12, depthIn: 10 })));
    expect(square.cautions[0]).toContain('4 inside and cutout corners');
  });

  // ACI 302.1R and 360R, from memory: 24 to 36 times the thickness, on ground only.
  test('basis 11.4: on a full bed 2 in wants a joint every 48 to 72 in, over supports the rule is silent', () => {
    const bedded = (lengthIn: number, more: object = {}) =>
      run(top({ supports: [{ kind: 'full-bed', id: 'bed' }], ...more }, lengthIn));
    expect(value(bedded(96), 'close joint spacing')).toBe(48);
    expect(value(bedded(96), 'wide joint spacing')).toBe(72);
    expect(bedded(73).cautions[0]).toContain('48 in to 72 in apart');
    expect(bedded(71).cautions).toEqual([]);
    expect(value(run(top()), 'joint spacing')).toBeNaN();
  });
});
