/** Deck panel, joists, headers and stringers of a section against what they may take. */
import type { Job } from '../job';
import type { BeamCheck, BeamCheckId, SagLimits } from '../timber';
import { checkBeam, panelCapacity, panelValues, spanCountOf } from '../timber';
import { formula } from '../workings';
import type { CarriedSection, LoadedStick } from './carry';
import { serviceOf } from './carry';
import { joinScrews } from './fastener-values';
import type { FormCheck, FormCheckId } from './form-check';
import { formCheck } from './form-check';
import { SCREW } from './practice';

/** Limits on sag of a job's falsework. */
export function sagLimitsOf({ falsework }: Job): SagLimits {
  return { spanLimit: falsework.spanLimit, deflectionLimitIn: falsework.deflectionLimitIn };
}

/** Share of its load that a panel uses (a ratio). q, wa: psf. */
export const panelShare = formula<Readonly<Record<'q' | 'wa', number>>>({
  symbol: 'up',
  label: 'share of what the panel may carry that is used',
  formula: 'q / wa',
  units: { q: 'psf', wa: 'psf' },
  unit: '',
  source: 'arithmetic',
  compute: ({ q, wa }) => q / wa,
});

/** Panel between joists: the least of bending, shear and sag. */
export function checkSheathing(job: Job, carried: CarriedSection): FormCheck {
  const { framing, design, wet } = carried;
  const values = panelValues({
    panel: job.falsework.panel,
    service: serviceOf(job),
    stripWidthIn: framing.alongIn,
  });
  const capacity = panelCapacity({
    values,
    joistSpacingIn: framing.widestIn,
    spanCount: spanCountOf(framing.gaps),
    limits: sagLimitsOf(job),
  });
  const governing = capacity.limits.find(({ id }) => id === capacity.governs)!;
  const share = panelShare({ q: design.value, wa: capacity.loadPsf });
  return formCheck(framing.section, {
    id: 'falsework-sheathing',
    title: 'Deck panel between joists',
    demand: { value: design.value, unit: 'psf' },
    capacity: { value: capacity.loadPsf, unit: 'psf' },
    words: `${values.words} over joists; ${GOVERNS[capacity.governs]} governs. Its strength axis runs across the joists.`,
    workings: [wet.line, design.line, ...governing.lines, share.line],
  });
}

const GOVERNS = {
  bending: 'bending',
  shear: 'shear',
  'span-ratio': 'sag as a share of the span',
  sag: 'the plain limit on sag',
} as const;

type Role = 'joist' | 'stringer';

const TITLES: { readonly [R in Role]: { readonly [K in BeamCheckId]: string } } = {
  joist: { bending: 'Joists in bending', shear: 'Joists in shear', deflection: 'Sag of the joists' },
  stringer: {
    bending: 'Stringers in bending',
    shear: 'Stringers in shear',
    deflection: 'Sag of the stringers',
  },
};

const UNITS = { bending: 'lbf-in', shear: 'lbf', deflection: 'in' } as const;

/** Bending, shear and sag of all sticks of a role, each by the worst of them. */
export function checkSticks(job: Job, carried: CarriedSection, role: Role): readonly FormCheck[] {
  const sticks = role === 'joist' ? carried.joists : carried.stringers;
  if (sticks.length === 0) return [];
  const verdicts = sticks.map((stick) => ({
    stick,
    checks: checkBeam(stick.beam, stick.member, sagLimitsOf(job)).checks,
  }));
  return [0, 1, 2].map((i) => {
    const worst = verdicts.reduce((a, b) => (b.checks[i]!.ratio > a.checks[i]!.ratio ? b : a));
    return stickCheck(carried, role, worst.stick, worst.checks[i]!);
  });
}

function stickCheck(
  { framing, design }: CarriedSection,
  role: Role,
  { member, words }: LoadedStick,
  { id, demand, capacity, lines }: BeamCheck,
): FormCheck {
  return formCheck(framing.section, {
    id: `falsework-${role}-${id}` satisfies FormCheckId,
    title: TITLES[role][id],
    demand: { value: demand, unit: UNITS[id] },
    capacity: { value: capacity, unit: UNITS[id] },
    words: `${member.words}; the ${words} is worst.`,
    workings: [design.line, ...lines],
  });
}

/** Headers at openings: the worst of bending, shear and sag, and the screws at their ends. */
export function checkHeaders(job: Job, carried: CarriedSection): readonly FormCheck[] {
  if (carried.headers.length === 0) return [];
  const { section } = carried.framing;
  const worst = carried.headers
    .flatMap((stick) =>
      checkBeam(stick.beam, stick.member, sagLimitsOf(job)).checks.map((check) => ({ stick, check })),
    )
    .reduce((a, b) => (b.check.ratio > a.check.ratio ? b : a));
  const screws = joinScrews(job, carried.headerEndLbf);
  return [
    formCheck(section, {
      id: 'falsework-header',
      title: 'Headers at openings',
      demand: { value: worst.check.demand, unit: UNITS[worst.check.id] },
      capacity: { value: worst.check.capacity, unit: UNITS[worst.check.id] },
      words: `${worst.stick.member.words}; the ${worst.stick.words} is worst, in ${worst.check.id}.`,
      workings: worst.check.lines,
    }),
    formCheck(section, {
      id: 'falsework-header-screws',
      title: 'Screws of headers into trimmers',
      demand: { value: carried.headerEndLbf, unit: 'lbf' },
      capacity: { value: screws.capacityLbf, unit: 'lbf' },
      words: `${screws.count} ${SCREW.words} through each trimmer into the header's end, with a block or hanger under it: screws in end grain count only in shear.`,
      workings: screws.lines,
    }),
  ];
}
