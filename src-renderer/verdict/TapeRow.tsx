import { ChevronRight } from 'lucide-react';
import type { ReactNode } from 'react';
import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { Level } from '../../src-core/checks';
import { Tape } from './Tape';
import styles from './TapeRow.module.css';

interface Props {
  readonly title: string;
  /** What the check is about beside its title; empty where the title says it. */
  readonly about?: string;
  /** Demand over limit as it is printed; empty where there is no such number, and then no tape. */
  readonly ratioWords: string;
  readonly ratio: number;
  readonly level: Level;
  readonly levelWords: string;
  readonly endRatio: number;
  /** Rank of its heading. */
  readonly headingLevel: number;
  /** Left out, the row opens and shuts by itself. */
  readonly isOpen?: boolean;
  readonly onToggle?: (opens: boolean) => void;
  readonly children: ReactNode;
}

/** One check as a tape, with what is behind it below once it is opened. */
export function TapeRow(props: Props) {
  const { title, about = '', ratioWords, ratio, level, levelWords, endRatio, headingLevel, children } = props;
  const { isOpen, onToggle } = props;
  return (
    <li className={styles.item}>
      <Disclosure
        className={styles.check!}
        {...(isOpen === undefined ? {} : { isExpanded: isOpen })}
        {...(onToggle === undefined ? {} : { onExpandedChange: onToggle })}
      >
        <Heading level={headingLevel} className={styles.heading!}>
          <Button slot="trigger" className={styles.head!}>
            <span className={styles.line}>
              <ChevronRight size={14} className={styles.arrow} aria-hidden="true" />
              <span className={styles.title}>
                {title}
                {about !== '' && <span className={styles.about}> {about}</span>}
              </span>
              {ratioWords !== '' && (
                <span className={styles.ratio} style={{ color: `var(--${level})` }}>
                  {ratioWords}
                </span>
              )}
              <span className={ratioWords === '' ? styles.level : styles.unseen}>{levelWords}</span>
            </span>
            {ratioWords !== '' && <Tape ratio={ratio} level={level} endRatio={endRatio} />}
          </Button>
        </Heading>
        <DisclosurePanel>{children}</DisclosurePanel>
      </Disclosure>
    </li>
  );
}
