/** Water and pigment to a bag: the same in every batch, by weight. */
import type { Mix, Piece } from '../job';
import type { UnitSystem } from '../units';
import { printMass } from '../units';
import type { Line } from '../workings';
import type { FindingDraft } from './finding';
import { midwayWater, pigmentForBag, waterCementRatio, waterGallons } from './mix-formulas';
import { MOST_PIGMENT_RATIO } from './practice';

export type Bag = NonNullable<Mix['bag']>;
export type Colour = NonNullable<Piece['colour']>;

export interface BagAmounts {
  /** Null where the water of the job is outside the bag's range, which is refused. */
  readonly waterLb: number | null;
  readonly waterGal: number | null;
  /** By mass; null where the cement in the bag is not stated or the water is refused. */
  readonly waterCementRatio: number | null;
  /** Null where there is none, where it is refused, or where the cement in the bag is not stated. */
  readonly pigmentLb: number | null;
  readonly lines: readonly Line[];
  readonly findings: readonly FindingDraft[];
}

/** Amounts may pass a limit by this share of it without being past it: rounding of their arithmetic. */
const SAME_RATIO = 1e-9;

/** What goes into the mixer with each bag. Water stays in the bag's range, pigment under a tenth of the cement. */
export function bagAmounts(mix: Mix, bag: Bag, colour: Colour | null, system: UnitSystem): BagAmounts {
  const water = waterOf(mix, bag, system);
  const pigment = pigmentOf(mix, bag, colour);
  const lines = [...water.lines, ...pigment.lines];
  const findings = [...water.findings, ...pigment.findings];
  const { waterLb } = water;
  if (waterLb === null)
    return { waterLb, waterGal: null, waterCementRatio: null, pigmentLb: pigment.pigmentLb, lines, findings };
  const gallons = waterGallons({ Ww: waterLb });
  const ratio =
    bag.cementLb === null || bag.cementLb === 0 ? null : waterCementRatio({ Ww: waterLb, Wc: bag.cementLb });
  return {
    waterLb,
    waterGal: gallons.value,
    waterCementRatio: ratio?.value ?? null,
    pigmentLb: pigment.pigmentLb,
    lines: [...lines, gallons.line, ...(ratio === null ? [] : [ratio.line])],
    findings,
  };
}

interface Part {
  readonly lines: readonly Line[];
  readonly findings: readonly FindingDraft[];
}

function waterOf(mix: Mix, bag: Bag, system: UnitSystem): Part & { readonly waterLb: number | null } {
  const { waterLb, waterLeastLb, waterMostLb } = bag;
  if (waterLb === null) {
    const midway = midwayWater({ w1: waterLeastLb, w2: waterMostLb });
    return { waterLb: midway.value, lines: [midway.line], findings: [] };
  }
  const isInside = waterLb >= waterLeastLb * (1 - SAME_RATIO) && waterLb <= waterMostLb * (1 + SAME_RATIO);
  if (isInside) return { waterLb, lines: [], findings: [] };
  const [chosen, least, most] = [waterLb, waterLeastLb, waterMostLb].map((lb) => printMass(lb, { system }));
  return {
    waterLb: null,
    lines: [],
    findings: [
      {
        kind: 'water-outside',
        level: 'refused',
        trace: null,
        words: `A bag of ${mix.name} takes ${least} to ${most} of water; ${chosen} is outside that and is left out. More water weakens the concrete and lets it shrink, less leaves it too stiff to fill the form.`,
        source: 'the range on the bag',
      },
    ],
  };
}

function pigmentOf(
  mix: Mix,
  { cementLb }: Bag,
  colour: Colour | null,
): Part & { readonly pigmentLb: number | null } {
  if (colour === null) return { pigmentLb: null, lines: [], findings: [] };
  const { pigment, pigmentRatio } = colour;
  const refuse = (finding: Omit<FindingDraft, 'trace'>) => ({
    pigmentLb: null,
    lines: [],
    findings: [{ ...finding, trace: null }],
  });
  if (pigmentRatio > MOST_PIGMENT_RATIO * (1 + SAME_RATIO)) {
    return refuse({
      kind: 'pigment-over',
      level: 'refused',
      words: `${pigment} at ${percent(pigmentRatio)} of the cement is refused: a tenth of the cement by mass is the most. More weakens the concrete and deepens the colour no further.`,
      source: 'ASTM C979 1.4',
    });
  }
  if (cementLb === null) {
    return refuse({
      kind: 'cement-unknown',
      level: 'attention',
      words: `How much ${pigment} a bag takes cannot be said: the cement in a bag of ${mix.name} is not known. Ask its maker, and write it down with the mix.`,
      source: 'ASTM C979: pigment is measured by the mass of the cement',
    });
  }
  const forBag = pigmentForBag({ r: pigmentRatio, Wc: cementLb });
  return { pigmentLb: forBag.value, lines: [forBag.line], findings: [] };
}

function percent(ratio: number): string {
  return `${Number((100 * ratio).toPrecision(4))} %`;
}
