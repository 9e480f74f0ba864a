/** Jobs for tests of the pour. */
import type { Job, JobDraft } from '../../../src-core/job';
import { jobOf, rectangle } from '../../support/pieces';

type Bag = NonNullable<NonNullable<JobDraft['mixes'][number]>['bag']>;

export const BAG = { weightLb: 80, yieldFt3: 0.6, cementLb: 20, waterLeastLb: 6, waterMostLb: 7.5 };

/** A mix of 45 minutes' working time, in 80 lb bags of .6 ft3. */
export function mixOf(bag: Partial<Bag> | null = {}, more: Partial<JobDraft['mixes'][number]> = {}) {
  return { id: 'mix', name: 'Countertop mix', bag: bag === null ? null : { ...BAG, ...bag }, ...more };
}

/** A slab 60 x 24 x 2 in with square edges, 2880 in3, without overfill or waste unless told. */
export function slabJob(more: Partial<JobDraft> = {}, piece: Partial<JobDraft['pieces'][number]> = {}): Job {
  const square = { kind: 'free', profile: { kind: 'square' } } as const;
  return jobOf(
    { corners: rectangle(60, 24), thicknessIn: 2, edges: [square, square, square, square], ...piece },
    { mixes: [mixOf()], forms: { wasteRatio: 0, overfillRatio: 0 }, ...more },
  );
}
