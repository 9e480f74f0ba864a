/** What hands have to lift on the day of a pour. */
import type { Job, Mix } from '../job';
import { printMass } from '../units';
import type { Line } from '../workings';
import type { FindingDraft } from './finding';
import { bucketVolume } from './mix-formulas';
import { MOST_LIFT_LB } from './practice';
import { weightOf } from './volume-formulas';

export interface BucketLift {
  readonly volumeFt3: number;
  readonly weightLb: number;
  /** Share of the bucket that weighs 51 lb, at the most 1. */
  readonly mostFillRatio: number;
  readonly lines: readonly Line[];
  readonly findings: readonly FindingDraft[];
}

const SOURCE =
  'NIOSH 94-110: 51 lb for one person in the best posture, less from the floor or far from the body';

/** A bucket as the job fills it, by the wet density of the falsework. */
export function bucketLift({ crew, falsework, shownIn }: Job): BucketLift {
  const volume = bucketVolume({ G: crew.bucketGal, f: crew.bucketFill });
  const weight = weightOf({ V: volume.value, w: falsework.wetDensityPcf });
  const mostFillRatio = Math.min(1, (MOST_LIFT_LB / weight.value) * crew.bucketFill);
  const how = { system: shownIn, digits: 3 };
  return {
    volumeFt3: volume.value,
    weightLb: weight.value,
    mostFillRatio,
    lines: [volume.line, weight.line],
    findings:
      weight.value <= MOST_LIFT_LB
        ? []
        : [
            {
              kind: 'bucket-heavy',
              level: 'attention',
              trace: null,
              words: `A bucket of concrete weighs ${printMass(weight.value, how)}, over the ${printMass(MOST_LIFT_LB, how)} of one pair of hands: fill it to ${Math.floor(100 * mostFillRatio)} %, or carry it by two.`,
              source: SOURCE,
            },
          ],
  };
}

/** Whether a bag takes two. */
export function bagLiftFindings({ name, bag }: Mix, system: Job['shownIn']): FindingDraft[] {
  if (bag === null || bag.weightLb <= MOST_LIFT_LB) return [];
  const how = { system, digits: 3 };
  return [
    {
      kind: 'bag-heavy',
      level: 'note',
      trace: null,
      words: `A bag of ${name} weighs ${printMass(bag.weightLb, how)}, over the ${printMass(MOST_LIFT_LB, how)} of one pair of hands: lift it by two, or keep bags at waist height beside the mixer and tip them in.`,
      source: SOURCE,
    },
  ];
}
