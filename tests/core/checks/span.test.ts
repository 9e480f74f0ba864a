import { describe, expect, test } from 'vitest';
import { DEFAULT_LIMITS } from '../../../src-core/checks';
import { span } from '../../../src-core/checks/span';
import { runCheckCase } from '../../support/check-harness';
import { analyse, CAP_E4, HEARTH_E3, jobOf, rectangle } from '../../support/pieces';

/** 12 in deep on two piers 6 in wide, `clearIn` apart. */
function plank(clearIn: number) {
  const pier = (id: string, xIn: number) => ({
    kind: 'pier' as const,
    id,
    build: 'block' as const,
    footprint: { kind: 'rectangle' as const, centre: { xIn, yIn: 6 }, widthIn: 6, depthIn: 12 },
  });
  return jobOf({
    corners: rectangle(clearIn + 12, 12),
    thicknessIn: 3,
    supports: [pier('a', 3), pier('b', clearIn + 9)],
  });
}

describe('span between supports', () => {
  // Hand: piers from 0 to 8 and 38 to 46 in leave 30 in; 30 / 96 = .3125; 15 thicknesses of 2 in.
  test('the hearth E3 spans 30 in between its piers, .31 of the 8 ft decided here', () => {
    const [check] = runCheckCase(span, {
      says: 'E3',
      job: HEARTH_E3(),
      meshSizeIn: 3,
      level: 'holds',
      ratio: { near: 0.3125, within: 1e-6 },
    });
    expect(check?.words).toContain('30 in, 23 in from the left');
    expect(check?.workings.find(({ symbol }) => symbol === 'L/h')?.value).toBeCloseTo(15, 9);
  });

  test('95-1/2 in is decided here, 96-1/2 in is for an engineer', () => {
    const at = (clearIn: number, level: 'holds' | 'engineer') =>
      runCheckCase(span, {
        says: `${clearIn} in`,
        job: plank(clearIn),
        meshSizeIn: 3,
        level,
        ratio: { near: clearIn / 96, within: 1e-6 },
      });
    at(95.5, 'holds');
    expect(at(96.5, 'engineer')[0]?.words).toContain('more than the 96 in');
  });

  // Edge of validity: one bearing, nothing to span.
  test('a cap on one pier spans nothing', () => {
    const job = CAP_E4();
    expect(span.run({ job, analysis: analyse(job, { meshSizeIn: 3 }), limits: DEFAULT_LIMITS })).toEqual([]);
  });
});
