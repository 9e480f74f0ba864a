import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src-core/job';
import { lookAtPiece } from '../../../src-core/verdict';
import { jobOf, rectangle, wallAlongX } from '../../support/pieces';
import { lightMesh } from '../checks/plank';

const look = (job: Job, meshSizeIn: number) => lookAtPiece(job, job.pieces[0]!, { meshSizeIn }).result;

describe('what each support of a piece carries', () => {
  // Hand, statics: 96 x 17.5 x 1.5 in weighs 211.5 lb, and what one wall pushes up less what its ties pull down is that weight
  // and the 250 lbf of a person.
  test('one tied wall carries the weight, and with a person 250 lbf more, however hard its ties pull', () => {
    const ledge = jobOf({
      use: 'bar-ledge',
      corners: rectangle(96, 17.5),
      thicknessIn: 1.5,
      loads: { spreadPsf: 0 },
      supports: [
        wallAlongX('wall', 0, 96, 13.75, 5.5, { hold: { kind: 'tied', spacingIn: 16, ratingLbf: 500 } }),
      ],
    });
    const { reactions } = look(ledge, 3);
    expect(reactions.map(({ bound }) => bound)).toEqual(['low', 'high']);
    for (const { deadLbf, mostLbf, leastLbf, tieLbf } of reactions) {
      expect(deadLbf).toBeCloseTo(211.46, 1);
      expect(leastLbf).toBeCloseTo(211.46, 1);
      expect(mostLbf).toBeCloseTo(461.46, 1);
      expect(tieLbf).toBeGreaterThan(100);
    }
  });

  test('is told of the cracked slab where it cracks', () => {
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
    const { reactions, checks } = look(job, 2);
    const loads = checks.filter(({ id }) => id === 'support-load');
    expect(loads).toHaveLength(3);
    for (const { where, workings } of loads) {
      const id = where.kind === 'support' ? where.supportId : '';
      for (const bound of ['low', 'high']) {
        const read = workings.find(({ label }) => label.includes(`their ${bound} stiffness, after cracking`));
        const told = reactions.find((one) => one.supportId === id && one.bound === bound);
        expect(told?.mostLbf).toBeCloseTo(read!.value, 6);
      }
    }
  });
});
