import { ChevronRight } from 'lucide-react';
import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { UnitSystem } from '../../src-core/units';
import { Prose } from '../look/Prose';
import { VerdictMark } from '../look/VerdictMark';
import { tapeEndRatio } from '../verdict/tape';
import { FormCheckItem } from './FormCheckItem';
import styles from './SectionItem.module.css';
import type { SectionRow } from './section-rows';

interface Props {
  readonly row: SectionRow;
  readonly system: UnitSystem;
}

/** One section, folded away until it is asked for: how it is built, and its checks as tapes. */
export function SectionItem({ row, system }: Props) {
  const { letter, name, level, ratio, facts, cautions, checks } = row;
  const endRatio = tapeEndRatio(checks.map((check) => check.ratio));
  return (
    <li className={styles.item}>
      <Disclosure className={styles.section!}>
        <Heading level={4} className={styles.heading!}>
          <Button slot="trigger" className={styles.head!}>
            <ChevronRight size={16} className={styles.arrow} aria-hidden="true" />
            <span className={styles.letter}>{letter}</span>
            <span className={styles.name}>{name}</span>
            <span className={styles.ratio}>{ratio}</span>
            <VerdictMark level={level} size={12} />
          </Button>
        </Heading>
        <DisclosurePanel className={styles.body!}>
          <dl className={styles.facts}>
            {facts.map(({ term, words, level: wrong }) => (
              <div key={term} className={styles.fact}>
                <dt>{term}</dt>
                <dd>
                  {wrong !== null && <VerdictMark level={wrong} size={12} />} <Prose text={words} />
                </dd>
              </div>
            ))}
          </dl>
          {cautions.length > 0 && (
            <ul className={styles.cautions} aria-label="Cautions">
              {cautions.map((words) => (
                <li key={words}>
                  <Prose text={words} />
                </li>
              ))}
            </ul>
          )}
          <ul aria-label="Checks, worst first">
            {checks.map((check) => (
              <FormCheckItem
                key={`${check.id} ${check.title}`}
                check={check}
                endRatio={endRatio}
                system={system}
              />
            ))}
          </ul>
        </DisclosurePanel>
      </Disclosure>
    </li>
  );
}
