/** What goes into the mixer with each bag, as large figures. */
import type { Pour } from '../../src-core/pour';
import type { UnitSystem } from '../../src-core/units';
import { figure, jugWords, massWords, shareWords } from './amount-words';

export interface BagFigure {
  readonly term: string;
  /** "6.75 lb". */
  readonly value: string;
  readonly words: string;
  /** Whether there is no amount to give, which a finding explains. */
  readonly isRefused: boolean;
}

/** Water, and pigment where there is a colour; nothing where the bag is not known. */
export function bagFigures({ bags, colour }: Pour, system: UnitSystem): BagFigure[] {
  if (bags === null) return [];
  const { waterLb, waterGal, waterCementRatio, pigmentLb } = bags.perBag;
  const ratio = waterCementRatio === null ? '' : `, ${figure(waterCementRatio)} of the cement`;
  const water: BagFigure =
    waterLb === null || waterGal === null
      ? { term: 'Water', value: 'Refused', words: 'outside the range of the bag', isRefused: true }
      : {
          term: 'Water',
          value: massWords(waterLb, system),
          words: `${jugWords(waterGal, system)}${ratio}`,
          isRefused: false,
        };
  if (colour === null) return [water];
  const pigment: BagFigure = {
    term: colour.pigment,
    value: pigmentLb === null ? 'Not given' : massWords(pigmentLb, system),
    words: shareWords(colour),
    isRefused: pigmentLb === null,
  };
  return [water, pigment];
}
