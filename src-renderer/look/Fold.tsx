import { ChevronRight } from 'lucide-react';
import type { ReactNode } from 'react';
import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import styles from './Fold.module.css';

interface Props {
  readonly title: string;
  /** Rank of its heading; 3 where it is left out. */
  readonly level?: number;
  readonly children: ReactNode;
}

/** A part of a panel that is folded away until it is asked for; only then is it built. */
export function Fold({ title, level = 3, children }: Props) {
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
