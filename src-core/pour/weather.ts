/** The weather of a pour day, and what it asks for. */
import { airOnDayC } from '../analysis';
import type { Job } from '../job';
import { printTemperature } from '../units';
import type { Line } from '../workings';
import type { DryingBand } from './evaporation';
import { dryingBand, evaporation, evaporationSi, fahrenheit, KMH_PER_MPH } from './evaporation';
import type { FindingDraft } from './finding';
import { COLD_C, FROST_DAYS, HOT_C } from './practice';

export interface PourWeather {
  /** Mean of the pour day where it is forecast, else the air of the job. */
  readonly airC: number;
  readonly concreteC: number;
  readonly humidityRatio: number;
  readonly windMph: number;
  readonly isOutdoors: boolean;
  readonly evaporationLbFt2H: number;
  readonly drying: DryingBand;
  readonly dryingWords: string;
  readonly lines: readonly Line[];
  readonly findings: readonly FindingDraft[];
}

const DRYING_WORDS: { readonly [K in DryingBand]: string } = {
  slow: 'The surface dries slowly: cover it once it is trowelled, and cure it moist.',
  watch:
    'The surface may dry faster than water rises in a thin top: break the wind, shade it, and mist or cover it between the steps.',
  act: 'The surface dries so fast that it cracks: do not pour before there is a windbreak and shade; cover it with film between all steps and fog the air above it, never the slab.',
};

const INDOORS_WORDS = ' Indoors, fans, heaters and open doors are the wind: turn them away from the slab.';

/** What the weather of a day means for a pour. Three bands of drying; hot, cold, frost and rain. */
export function pourWeather(job: Job, day: number): PourWeather {
  const { concreteC, humidity, windMph, outdoors } = job.site.weather;
  const airC = airOnDayC(job, day);
  const drying = evaporation({
    Tc: fahrenheit(concreteC),
    Ta: fahrenheit(airC),
    r: humidity,
    V: windMph,
  });
  const si = evaporationSi({ Tc: concreteC, Ta: airC, r: humidity, V: windMph * KMH_PER_MPH });
  const band = dryingBand(drying.value);
  const dryingWords = `${DRYING_WORDS[band]}${outdoors || band === 'slow' ? '' : INDOORS_WORDS}`;
  return {
    airC,
    concreteC,
    humidityRatio: humidity,
    windMph,
    isOutdoors: outdoors,
    evaporationLbFt2H: drying.value,
    drying: band,
    dryingWords,
    lines: [drying.line, ...(job.shownIn === 'metric' ? [si.line] : [])],
    findings: [
      ...dryingFinding(band, dryingWords),
      ...temperatureFindings(job, day, Math.max(airC, concreteC), airC),
      ...(outdoors ? [RAIN] : []),
    ],
  };
}

function dryingFinding(band: DryingBand, words: string): FindingDraft[] {
  if (band === 'slow') return [];
  const level = band === 'act' ? 'attention' : 'note';
  return [
    {
      kind: 'drying',
      level,
      trace: null,
      words,
      source:
        band === 'act'
          ? 'Uno 1998; ACI 305R: .2 lb/ft2/h (1.0 kg/m2/h)'
          : 'Uno 1998; from .1 lb/ft2/h for thin tops: common practice, from memory',
    },
  ];
}

const RAIN: FindingDraft = {
  kind: 'rain',
  level: 'note',
  trace: null,
  words:
    'Under the open sky: have a cover on a frame ready before the first batch, tight over the whole slab and clear of it. Do not begin with rain due before the trowel is off; rain on fresh concrete washes out cement and colour.',
  source: 'common practice, no source',
};

function temperatureFindings(job: Job, day: number, warmestC: number, airC: number): FindingDraft[] {
  const how = { system: job.shownIn };
  const findings: FindingDraft[] = [];
  if (warmestC > HOT_C) {
    findings.push({
      kind: 'hot',
      level: 'attention',
      trace: null,
      words: `At ${printTemperature(warmestC, how)} it is too hot to pour as planned: begin at dawn, chill the water and shade bags, forms and slab. Above ${printTemperature(HOT_C, how)} concrete stiffens, dries and cracks early.`,
      source: 'ACI 305R, limit from memory',
    });
  }
  if (airC < COLD_C) {
    findings.push({
      kind: 'cold',
      level: 'attention',
      trace: null,
      words: `At ${printTemperature(airC, how)} it is too cold to pour unprotected: warm the room or tent, the water and the forms, and keep the slab above ${printTemperature(10, how)} until it is hard. No unvented heater over fresh concrete.`,
      source: 'ACI 306R, limit from memory',
    });
  }
  const coldestC = Math.min(...Array.from({ length: FROST_DAYS }, (_, k) => airOnDayC(job, day + k)));
  if (airC >= COLD_C && coldestC < COLD_C) {
    findings.push({
      kind: 'frost',
      level: 'attention',
      trace: null,
      words: `It turns cold, ${printTemperature(coldestC, how)}, within ${FROST_DAYS} days of the pour: have insulation or warmth ready, for young concrete that freezes is lost.`,
      source: 'ACI 306R, from memory',
    });
  }
  return findings;
}
