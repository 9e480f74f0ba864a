/** What fills a bowl that stands in the form while the slab is poured. */
import type { Cutout } from '../job';
import { polygonAreaIn2 } from '../outline';
import type { Line } from '../workings';
import { fillWeight } from './plug-form';
import type { OpeningPractice } from './practice';
import { SAND_PCF, TIMBER_PCF } from './practice';
import type { SinkFit } from './sink-fit';

export interface BowlInfill {
  /** The bowl filled to its rim, in3. */
  readonly volumeIn3: number;
  readonly bowlWeightLb: number;
  /** Damp sand that fills it, lb. */
  readonly sandWeightLb: number;
  /** Or a board laid over it on bearers, lb: far lighter, but it must not sag under the form on it. */
  readonly lidWeightLb: number;
  readonly words: string;
  readonly lines: readonly Line[];
}

/** The infill of a bowl that is cast in; null for a sink that is set later, and for what is no sink. */
export function bowlInfill(
  cutout: Cutout,
  fit: SinkFit | null,
  practice: OpeningPractice,
): BowlInfill | null {
  if (cutout.sink === null || fit === null || !fit.isCastIn || fit.bowl === null) return null;
  const areaIn2 = polygonAreaIn2(fit.bowl.outline);
  const volumeIn3 = areaIn2 * cutout.sink.bowlDepthIn;
  const sand = fillWeight({ V: volumeIn3, g: SAND_PCF });
  const lid = fillWeight({ V: areaIn2 * practice.lidIn, g: TIMBER_PCF });
  return {
    volumeIn3,
    bowlWeightLb: cutout.sink.emptyWeightLb,
    sandWeightLb: sand.value,
    lidWeightLb: lid.value,
    words:
      'Fill the bowl with damp sand to its rim, or lay a board over it on bearers, so that the form stands firm. Tape the joint of form and rim: mix must not run into the bowl.',
    lines: [sand.line, lid.line],
  };
}
