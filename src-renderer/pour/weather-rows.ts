/** The weather of a pour: what it is, and which of three bands of drying it falls into. */
import type { DryingBand, PourWeather } from '../../src-core/pour';
import type { UnitSystem } from '../../src-core/units';
import { printTemperature } from '../../src-core/units';
import { windWords } from './amount-words';

export interface WeatherFact {
  readonly term: string;
  readonly value: string;
}

export interface BandRow {
  readonly band: DryingBand;
  readonly title: string;
  readonly isNow: boolean;
}

const BANDS: readonly { readonly band: DryingBand; readonly title: string }[] = [
  { band: 'slow', title: 'Dries slowly' },
  { band: 'watch', title: 'Watch it' },
  { band: 'act', title: 'Act first' },
];

/** Air, concrete, humidity and wind that the plan counts with. */
export function weatherFacts(weather: PourWeather, system: UnitSystem): WeatherFact[] {
  const degrees = (tempC: number) => printTemperature(tempC, { system, digits: 2 });
  return [
    { term: 'Air', value: degrees(weather.airC) },
    { term: 'Concrete', value: degrees(weather.concreteC) },
    { term: 'Humidity', value: `${Math.round(100 * weather.humidityRatio)} %` },
    { term: 'Wind', value: windWords(weather.windMph, system) },
  ];
}

/** The three bands, slowest first. The method is too rough to place the day more finely than that. */
export function bandRows({ drying }: PourWeather): BandRow[] {
  return BANDS.map(({ band, title }) => ({ band, title, isNow: band === drying }));
}
