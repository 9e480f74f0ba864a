import { ChevronRight } from 'lucide-react';
import type { ReactNode } from 'react';
import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import styles from './Fold.module.css';

interface Props {
  readonly title: string;
  /** Rank of its heading. */
  readonly level: number;
  readonly children: ReactNode;
}

/** Fields that are folded away until they are asked for; only then are they built. */
export function Fold({ title, level, children }: Props) {
  return (
    <Disclosure className={styles.part!}>
      {({ isExpanded }) => (
        <>
          <Heading level={level} className={styles.heading!}>
            <Button slot="trigger" className={styles.title!}>
              <ChevronRight size={16} className={styles.arrow} aria-hidden="true" />
              {title}
            </Button>
          </Heading>
          <DisclosurePanel className={styles.body!}>{isExpanded && children}</DisclosurePanel>
        </>
      )}
    </Disclosure>
  );
}
