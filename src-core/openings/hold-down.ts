/** What keeps an opening's form from floating: screws from below, or a rod through the drain of a bowl. */
import { adjustedWithdrawal, screwWithdrawal } from '../bracket';
import type { ShapeSize } from '../edge-forms';
import { leastScrews } from '../edge-forms';
import type { Job } from '../job';
import { PANELS, SPECIES } from '../timber';
import { printExactLength } from '../units';
import type { Line } from '../workings';
import { formula } from '../workings';
import type { OpeningPractice } from './practice';
import { FORM_SCREW, LEAST_THREAD_DIAMETERS, ROD_LBF, WET_SCREW_FACTOR } from './practice';

/** Pull that the screws of a form may take together, lbf. n: a count; Wp: pull that one may take, lbf. Arithmetic. */
export const screwsTogether = formula<Readonly<Record<'n' | 'Wp', number>>>({
  symbol: 'Wn',
  label: 'pull that the screws of the form may take together',
  formula: 'n * Wp',
  units: { n: '', Wp: 'lbf' },
  unit: 'lbf',
  source: 'arithmetic',
  compute: ({ n, Wp }) => n * Wp,
});

export type HoldDown =
  | {
      readonly kind: 'screws';
      readonly count: number;
      readonly lengthIn: number;
      /** Thread in the form, in. */
      readonly threadIn: number;
      readonly capacityLbf: number;
      readonly words: string;
      /** Screws are driven and drawn from here, and must be out before the form can come out. */
      readonly reachedFrom: 'below';
      readonly mustComeOut: true;
      readonly lines: readonly Line[];
    }
  | {
      readonly kind: 'rod';
      readonly capacityLbf: number;
      readonly words: string;
      readonly reachedFrom: 'below';
      readonly mustComeOut: true;
      readonly lines: readonly Line[];
    }
  | {
      readonly kind: 'none';
      readonly capacityLbf: 0;
      readonly words: string;
      readonly lines: readonly Line[];
    };

export interface HeldForm {
  readonly heightIn: number;
  /** Length round the opening, in, and its size. */
  readonly roundIn: number;
  readonly size: ShapeSize;
  readonly isFrame: boolean;
  /** It stands in a bowl, so that no screw reaches it from below. */
  readonly isOnBowl: boolean;
  readonly upliftLbf: number;
}

/** How a form is held down against its uplift. */
export function holdDown(job: Job, form: HeldForm, practice: OpeningPractice): HoldDown {
  if (form.isOnBowl) {
    return {
      kind: 'rod',
      capacityLbf: ROD_LBF,
      words:
        'A 1/4 in threaded rod through the drain of the bowl, from a bar across the form to a bar under the deck. Undo it from below.',
      reachedFrom: 'below',
      mustComeOut: true,
      lines: [],
    };
  }
  const panelIn = PANELS[job.falsework.panel].thicknessIn;
  const lengthIn = screwLengthIn(panelIn, form.heightIn, practice);
  if (lengthIn === null) {
    return {
      kind: 'none',
      capacityLbf: 0,
      words:
        'No screw from below finds enough wood in so low a form: hold it with a bar across it, weighted or clamped to the edge forms, and keep the bar clear of the straightedge.',
      lines: [],
    };
  }
  return screws(job, form, lengthIn, lengthIn - panelIn - FORM_SCREW.tipIn, practice);
}

/** The longest common screw that goes through the deck, finds enough wood and stays below the top; null where none does. */
function screwLengthIn(panelIn: number, heightIn: number, practice: OpeningPractice): number | null {
  const leastIn = LEAST_THREAD_DIAMETERS * FORM_SCREW.diameterIn;
  const fitting = FORM_SCREW.lengthsIn.filter(
    (lengthIn) =>
      lengthIn - panelIn - FORM_SCREW.tipIn >= leastIn &&
      lengthIn - panelIn <= heightIn - practice.screwCoverIn,
  );
  return fitting.at(-1) ?? null;
}

function screws(
  job: Job,
  form: HeldForm,
  lengthIn: number,
  threadIn: number,
  practice: OpeningPractice,
): HoldDown {
  const { falsework, shownIn } = job;
  const perInch = screwWithdrawal({ G: SPECIES[falsework.species].gravity, D: FORM_SCREW.diameterIn });
  const one = adjustedWithdrawal({
    W: perInch.value,
    p: threadIn,
    CD: falsework.durationFactor,
    CM: WET_SCREW_FACTOR,
    Ceg: 1,
  });
  const along = form.isFrame ? Math.ceil(form.roundIn / practice.screwSpacingIn - 1e-9) : 0;
  const count = Math.max(leastScrews(form.size), along, Math.ceil(form.upliftLbf / one.value - 1e-9));
  const group = screwsTogether({ n: count, Wp: one.value });
  const length = printExactLength(lengthIn, { system: shownIn });
  return {
    kind: 'screws',
    count,
    lengthIn,
    threadIn,
    capacityLbf: group.value,
    words: `${count} #8 wood ${count === 1 ? 'screw' : 'screws'}, ${length} long, with ${count === 1 ? 'a washer' : 'washers'}, driven from below through the deck into side grain. ${count === 1 ? 'It comes' : 'They come'} out before the form does.`,
    reachedFrom: 'below',
    mustComeOut: true,
    lines: [perInch.line, one.line, group.line],
  };
}
