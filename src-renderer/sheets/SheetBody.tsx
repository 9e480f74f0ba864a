import { X } from 'lucide-react';
import type { ReactNode } from 'react';
import { Dialog, Heading } from 'react-aria-components';
import { Button } from '../look/Button';
import styles from './SheetBody.module.css';

interface Props {
  readonly title: string;
  readonly children: ReactNode;
  /** Buttons under the part that scrolls. */
  readonly foot?: ReactNode;
  /** What the cross does; there is none where this is left out, because the sheet wants an answer. */
  readonly onClose?: () => void;
  /** An alert dialog is read out whole when it opens. */
  readonly role?: 'dialog' | 'alertdialog';
  /** Nothing in the middle takes the focus, so the middle itself does, for the keys that scroll. */
  readonly isText?: boolean;
}

/** A sheet over the drawing: its title, a middle that scrolls, and its buttons. */
export function SheetBody({ title, children, foot, onClose, role = 'dialog', isText = false }: Props) {
  return (
    <Dialog className={styles.dialog!} role={role}>
      <header className={styles.head}>
        <Heading slot="title" level={1} className={styles.title!}>
          {title}
        </Heading>
        {onClose !== undefined && (
          <Button weight="quiet" isIcon aria-label="Close" onPress={onClose}>
            <X size={18} aria-hidden />
          </Button>
        )}
      </header>
      {isText ? (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a page of text that scrolls has to be reached by the keyboard
        <section className={styles.middle} aria-label={title} tabIndex={0}>
          {children}
        </section>
      ) : (
        <div className={styles.middle}>{children}</div>
      )}
      {foot !== undefined && <footer className={styles.foot}>{foot}</footer>}
    </Dialog>
  );
}
