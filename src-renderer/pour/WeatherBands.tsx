import type { Pour } from '../../src-core/pour';
import type { UnitSystem } from '../../src-core/units';
import { Heading } from '../look/Heading';
import { Prose } from '../look/Prose';
import { FindingList } from './FindingList';
import type { FindingRow } from './finding-rows';
import styles from './WeatherBands.module.css';
import { bandRows, weatherFacts } from './weather-rows';

interface Props {
  readonly pour: Pour;
  readonly notes: readonly FindingRow[];
  readonly system: UnitSystem;
}

/** How fast the surface dries on the day, as one of three bands, and what to do about it. */
export function WeatherBands({ pour: { weather }, notes, system }: Props) {
  return (
    <section aria-labelledby="pour-weather-heading">
      <Heading id="pour-weather-heading">{weather.isOutdoors ? 'Weather, outdoors' : 'Air, indoors'}</Heading>
      <dl className={styles.facts}>
        {weatherFacts(weather, system).map(({ term, value }) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <ol className={styles.bands} aria-label="How fast the surface dries">
        {bandRows(weather).map(({ band, title, isNow }) => (
          <li key={band} className={`${styles.band} ${styles[band]} ${isNow ? styles.now : ''}`}>
            {title}
            <span className={styles.today}>{isNow ? 'this day' : ''}</span>
          </li>
        ))}
      </ol>
      <p>
        <Prose text={weather.dryingWords} />
      </p>
      <FindingList rows={notes} label="Notes on the weather" />
    </section>
  );
}
