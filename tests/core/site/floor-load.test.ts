import { describe, expect, test } from 'vitest';
import type { JobDraft } from '../../../src-core/job';
import { areaNeeded, floorLoad, pourLoad } from '../../../src-core/site/floor-load';
import { jobOf, rectangle } from '../../support/pieces';
import { recompute, recomputeTolerance } from '../../support/recompute';

type StandsOn = NonNullable<NonNullable<JobDraft['site']>['standsOn']>;

function finding(standsOn: StandsOn, piece: object = {}) {
  const job = jobOf({ corners: rectangle(96, 25.5), thicknessIn: 2.5, ...piece }, { site: { standsOn } });
  const found = floorLoad(job)!;
  for (const line of found.workings) {
    expect(Math.abs(recompute(line) - Number(line.result))).toBeLessThanOrEqual(recomputeTolerance(line));
  }
  return found;
}

describe('load on the floor or deck', () => {
  // Derived: 2.5 in of wet concrete at 150 pcf and 5 psf of forms on 17 ft2, two people of 250 lb, 40 psf of deck.
  test('basis 6.12: 616 lb, with two people 1116 lb, ask for 27.9 ft2 of a 40 psf deck', () => {
    const at = { An: 2448, h: 2.5, w: 150, A: 2448, f: 5 };
    expect(Math.abs(pourLoad({ ...at, p: 0 }).value - 616)).toBeLessThan(616 * 0.005);
    const withTwo = pourLoad({ ...at, p: 500 / 17 }).value;
    expect(Math.abs(withTwo - 1116)).toBeLessThan(1116 * 0.005);
    expect(Math.abs(areaNeeded({ Q: withTwo, qa: 40 }).value - 27.9)).toBeLessThan(27.9 * 0.005);
  });

  // Hand: 31.25 + 5 + 50 = 86.25 psf while it is poured (basis 6.2); finished 30.2 + 50 psf is less.
  test('a deck that may carry 87 psf holds the pour of 86.25 psf, one of 86 psf does not', () => {
    const holds = finding({ kind: 'timber-deck', allowancePsf: 87 });
    expect(holds.demand?.value).toBeCloseTo(86.25, 9);
    expect(holds.level).toBe('holds');
    const over = finding({ kind: 'timber-deck', allowancePsf: 86 });
    expect(over.level).toBe('change');
    expect(over.words).toContain('sills over 17.05 sq ft instead of its own 17 sq ft');
  });

  test('an equipped piece may weigh more finished than wet', () => {
    // Hand: 513.5 lb of slab, 900 lb of stove, 80 lb of cabinet, 50 psf on 17 ft2: 2343.5 lb, 137.9 psf.
    const found = finding(
      { kind: 'timber-floor', allowancePsf: 140 },
      {
        loads: {
          fixed: [
            { id: 's', name: 'Stove', centre: { xIn: 48, yIn: 12 }, widthIn: 20, depthIn: 20, weightLb: 900 },
          ],
        },
        supports: [
          { kind: 'cabinet', id: 'c', corner: { xIn: 0, yIn: 0 }, widthIn: 96, depthIn: 24, weightLb: 80 },
        ],
      },
    );
    expect(Math.abs((found.demand?.value ?? 0) - 137.86)).toBeLessThan(0.05);
    expect(found.cautions[0]).toContain('1494 lb together');
  });

  test('a timber deck that nobody vouches for is for an engineer, the ground is not', () => {
    expect(finding({ kind: 'timber-deck' }).level).toBe('engineer');
    expect(finding({ kind: 'timber-floor' }).level).toBe('engineer');
    expect(finding({ kind: 'suspended-concrete' }).level).toBe('engineer');
    expect(finding({ kind: 'slab-on-ground' }).level).toBe('holds');
    expect(finding({ kind: 'ground' }).level).toBe('holds');
  });

  // Edge of validity: nothing is known, or the figure for the ground is below the load.
  test('an unstated floor holds with the question asked; a slab on the ground is kept to a figure that is stated for it', () => {
    const unknown = finding({ kind: 'unknown' });
    expect(unknown.level).toBe('holds');
    expect(unknown.cautions.join()).toContain('State what the job stands on');
    const ground = finding({ kind: 'slab-on-ground', allowancePsf: 60 });
    expect(ground.level).toBe('change');
    expect(ground.words).toMatch(/more than the 60 psf it may carry: spread it with sills/);
    expect(ground.words).not.toContain('shore');
    expect(ground.cautions.join()).toContain('ask where the figure comes from');
  });

  test('copies count in the total, not in the load per area', () => {
    const one = finding({ kind: 'slab-on-ground' });
    const three = finding({ kind: 'slab-on-ground' }, { copies: 3 });
    expect(three.demand).toEqual(one.demand);
    expect(one.cautions[0]).toContain('514 lb');
    expect(three.cautions[0]).toContain('1541 lb');
  });
});
