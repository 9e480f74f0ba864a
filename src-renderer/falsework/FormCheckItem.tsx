import { ChevronRight } from 'lucide-react';
import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { FormCheck } from '../../src-core/falsework';
import { printRatio } from '../../src-core/report';
import type { UnitSystem } from '../../src-core/units';
import { Prose } from '../look/Prose';
import { comparedWords } from '../verdict/check-rows';
import { levelWords } from '../verdict/level-words';
import { Tape } from '../verdict/Tape';
import { Workings } from '../verdict/Workings';
import styles from './FormCheckItem.module.css';

interface Props {
  readonly check: FormCheck;
  readonly endRatio: number;
  readonly system: UnitSystem;
}

/** One check of a section as a tape, with its workings below once it is opened. */
export function FormCheckItem({ check, endRatio, system }: Props) {
  const { title, ratio, level, words, workings } = check;
  const compared = comparedWords(check, system);
  return (
    <li className={styles.item}>
      <Disclosure className={styles.check!}>
        <Heading level={5} className={styles.heading!}>
          <Button slot="trigger" className={styles.head!}>
            <span className={styles.line}>
              <ChevronRight size={14} className={styles.arrow} aria-hidden="true" />
              <span className={styles.title}>{title}</span>
              <span className={styles.ratio} style={{ color: `var(--${level})` }}>
                {printRatio(ratio)}
              </span>
              <span className={styles.unseen}>{levelWords(level)}</span>
            </span>
            <Tape ratio={ratio} level={level} endRatio={endRatio} />
          </Button>
        </Heading>
        <DisclosurePanel className={styles.open!}>
          <p>
            <Prose text={words} />
          </p>
          {compared !== null && (
            <dl className={styles.compared}>
              <dt>Demand</dt>
              <dd>{compared.demand}</dd>
              <dt>Capacity</dt>
              <dd>{compared.capacity}</dd>
            </dl>
          )}
          {workings.length > 0 && system === 'metric' && (
            <p className={styles.note}>
              Workings stay in inch, pound-force and psi, as their formulas are written.
            </p>
          )}
          <Workings lines={workings} />
        </DisclosurePanel>
      </Disclosure>
    </li>
  );
}
