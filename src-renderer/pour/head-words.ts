/** What a pour comes to, in a few words and large figures. */
import type { Batch, Pour } from '../../src-core/pour';
import type { UnitSystem } from '../../src-core/units';
import { countWords, figure, shareWords, volumeWords } from './amount-words';

export interface HeadFigure {
  readonly id: 'volume' | 'bags' | 'slack';
  readonly label: string;
  readonly value: string;
  /** Beside the value, smaller. */
  readonly unit: string;
  /** Whether it asks for a change. */
  readonly isWrong: boolean;
}

/** Volume to mix; bags and the least time to spare where they are known. */
export function headFigures({ volumes, bags, clock }: Pour, system: UnitSystem): HeadFigure[] {
  const [volume, ...unit] = volumeWords(volumes.totalFt3, system).split(' ');
  const figures: HeadFigure[] = [
    { id: 'volume', label: 'To mix', value: volume!, unit: unit.join(' '), isWrong: false },
  ];
  if (bags !== null) {
    const unitWords = bags.bags === 1 ? 'bag' : 'bags';
    figures.push({ id: 'bags', label: 'Out of', value: String(bags.bags), unit: unitWords, isWrong: false });
  }
  if (clock !== null) {
    const isWrong = clock.leastSlackMinutes < 0;
    figures.push({
      id: 'slack',
      label: isWrong ? 'Too late by' : 'Least to spare',
      value: String(isWrong ? Math.ceil(-clock.leastSlackMinutes) : Math.floor(clock.leastSlackMinutes)),
      unit: 'min',
      isWrong,
    });
  }
  return figures;
}

/** "Mix 5 batches of 2 bags."; "Mix 3 batches: 2 of 2 bags, 1 of 1 bag." */
export function batchesWords(batches: readonly Pick<Batch, 'bags'>[]): string {
  const sizes = [...new Set(batches.map(({ bags }) => bags))];
  const count = countWords(batches.length, 'batch', 'batches');
  const [size] = sizes;
  if (size === undefined) return 'Nothing to mix.';
  if (sizes.length === 1) return `Mix ${count} of ${countWords(size, 'bag', 'bags')}.`;
  const each = sizes.map((bags) => {
    const alike = batches.filter((batch) => batch.bags === bags).length;
    return `${alike} of ${countWords(bags, 'bag', 'bags')}`;
  });
  return `Mix ${count}: ${each.join(', ')}.`;
}

/** "Bagged countertop mix, Slate grey at 3 % of the cement." */
export function mixWords({ mixName, colour }: Pour): string {
  return colour === null
    ? `${mixName}, no pigment.`
    : `${mixName}, ${colour.pigment} at ${shareWords(colour)}.`;
}

/** What the volume is made of. */
export function volumeParts({ volumes, bags }: Pour, system: UnitSystem): string {
  const { drawnFt3, overfillFt3, wasteFt3, topUpFt3, totalYd3 } = volumes;
  const parts = [
    `${volumeWords(drawnFt3, system)} as drawn`,
    ...(overfillFt3 > 0 ? [`${volumeWords(overfillFt3, system)} above the rims`] : []),
    ...(wasteFt3 > 0 ? [`${volumeWords(wasteFt3, system)} lost in mixer and buckets`] : []),
    ...(topUpFt3 > 0 ? [`${volumeWords(topUpFt3, system)} kept back to top up`] : []),
  ];
  const yards = system === 'imperial' ? ` In all ${figure(totalYd3)} cu yd.` : '';
  const over =
    bags === null || bags.surplusFt3 <= 0
      ? ''
      : ` Whole bags give ${volumeWords(bags.surplusFt3, system)} more.`;
  return `${parts.join(', ')}.${yards}${over}`;
}
