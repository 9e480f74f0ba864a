import { ChevronRight } from 'lucide-react';
import { Button as AriaButton, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { UnitSystem } from '../../src-core/units';
import { useStore, useWindow } from '../state/store-context';
import styles from './CheckItem.module.css';
import { CheckWorkings } from './CheckWorkings';
import type { CheckRow } from './check-rows';
import { Tape } from './Tape';

interface Props {
  readonly row: CheckRow;
  readonly endRatio: number;
  readonly system: UnitSystem;
}

/** One check as a tape. Opening it sends both views to its point and shows its workings below. */
export function CheckItem({ row, endRatio, system }: Props) {
  const store = useStore();
  const isOpen = useWindow(({ openCheck }) => openCheck === row.key);
  const { check, about, ratio, level, at, key } = row;
  const toggle = (opens: boolean) =>
    store.getState().lookAtCheck(opens ? { key, pieceId: check.pieceId, at } : null);
  return (
    <li className={styles.item}>
      <Disclosure isExpanded={isOpen} onExpandedChange={toggle} className={styles.check!}>
        <Heading level={3} className={styles.heading!}>
          <AriaButton slot="trigger" className={styles.head!}>
            <span className={styles.line}>
              <ChevronRight size={14} className={styles.arrow} aria-hidden="true" />
              <span className={styles.title}>
                {check.title}
                {about !== '' && <span className={styles.about}> {about}</span>}
              </span>
              {ratio !== '' && (
                <span className={styles.ratio} style={{ color: `var(--${check.level})` }}>
                  {ratio}
                </span>
              )}
              <span className={ratio === '' ? styles.level : styles.unseen}>{level}</span>
            </span>
            {ratio !== '' && <Tape ratio={check.ratio} level={check.level} endRatio={endRatio} />}
          </AriaButton>
        </Heading>
        <DisclosurePanel>{isOpen && <CheckWorkings check={check} system={system} />}</DisclosurePanel>
      </Disclosure>
    </li>
  );
}
