/** What slab, falsework and people put on the floor or deck below, against what that may carry. */
import type { Level } from '../checks';
import type { Job } from '../job';
import { floorAreaNeeded } from '../timber';
import { printArea, printSpreadLoad } from '../units';
import type { Line } from '../workings';
import { formula } from '../workings';
import type { CarriedSection } from './carry';

/** Usual load of a house floor or deck, psf: an example only, since local code and the floor itself decide. IRC Table R301.5. */
export const EXAMPLE_ALLOWANCE_PSF = 40;

export interface FormFloorLoad {
  readonly totalLbf: number;
  readonly perAreaPsf: number;
  readonly allowancePsf: number;
  /** True where nobody stated the allowance: it is an example, and a matter for local code. */
  readonly isExample: boolean;
  readonly neededFt2: number;
  readonly level: Level;
  readonly words: string;
  readonly lines: readonly Line[];
}

/** Load of all sections together on a square foot of their floor, psf. W: lbf; A: ft2. Arithmetic. */
export const loadOnFloor = formula<Readonly<Record<'W' | 'P' | 'Af', number>>>({
  symbol: 'qf',
  label: 'load on a square foot of floor below the falsework',
  formula: '(W + P) / Af',
  units: { W: 'lbf', P: 'lbf', Af: 'ft2' },
  unit: 'psf',
  source: 'arithmetic',
  compute: ({ W, P, Af }) => (W + P) / Af,
});

/** Total and per area. Ground takes it; a floor or deck needs a stated allowance, and without one an example is shown and an engineer asked. */
export function formFloorLoad(job: Job, sections: readonly CarriedSection[]): FormFloorLoad | null {
  if (sections.length === 0) return null;
  const sum = (of: (section: CarriedSection) => number) =>
    sections.reduce((all, section) => all + of(section), 0);
  const Af = sum(({ framing }) => (framing.acrossIn * framing.alongIn) / 144);
  const P = job.falsework.livePsf * Af;
  // Whatever is over slab, form and people hangs in the openings.
  const openings = sum(({ framing }) =>
    framing.section.openings.reduce((all, { weightLb }) => all + weightLb, 0),
  );
  const W = sum(({ deadLbf }) => deadLbf) + openings;
  const { kind, allowancePsf } = job.site.standsOn;
  const isExample = allowancePsf === null;
  const qa = allowancePsf ?? EXAMPLE_ALLOWANCE_PSF;
  const per = loadOnFloor({ W, P, Af });
  const needed = floorAreaNeeded({ W, P, qa });
  const isGround = kind === 'slab-on-ground' || kind === 'ground';
  const fits = per.value <= qa;
  const level: Level = isGround
    ? 'holds'
    : isExample
      ? kind === 'unknown'
        ? 'holds'
        : 'engineer'
      : fits
        ? 'holds'
        : 'change';
  const psf = (value: number) => printSpreadLoad(value, { system: job.shownIn, digits: 3 });
  const area = printArea(needed.value * 144, { system: job.shownIn });
  const against = isExample
    ? `Nobody has stated what the floor may carry; ${psf(qa)} is an example for a house floor or deck (IRC Table R301.5), a matter of local code and of the floor itself`
    : `The floor may carry ${psf(qa)} as stated`;
  const spread = fits ? '' : `, and the load would need ${area} of it: spread it with sills, or shore below`;
  return {
    totalLbf: W + P,
    perAreaPsf: per.value,
    allowancePsf: qa,
    isExample,
    neededFt2: needed.value,
    level,
    words: `${psf(per.value)} on the floor below the falsework, people included. ${isGround && isExample ? 'Firm ground takes that' : `${against}${spread}`}.`,
    lines: [per.line, needed.line],
  };
}
