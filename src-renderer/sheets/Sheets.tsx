import { Modal, ModalOverlay } from 'react-aria-components';
import type { HostApi } from '../../src-core/host-contract';
import type { FileActions } from '../state/file-actions';
import { useStore, useWindow } from '../state/store-context';
import { OpenSheet } from './OpenSheet';
import styles from './Sheets.module.css';
import { sheetManner } from './sheet-manner';

interface Props {
  readonly host: HostApi;
  readonly files: FileActions;
}

/**
 * What is open over the drawing. One overlay stays while one sheet follows another, so that the focus goes back to where it
 * was before the first of them.
 */
export function Sheets({ host, files }: Props) {
  const store = useStore();
  const sheet = useWindow((state) => state.sheet);
  const close = () => store.getState().openSheet(null);
  if (sheet === null) return null;
  const { width, closesOutside, closesByKey } = sheetManner(sheet.kind);
  return (
    <ModalOverlay
      className={styles.overlay!}
      isOpen
      isDismissable={closesOutside}
      isKeyboardDismissDisabled={!closesByKey}
      onOpenChange={(isOpen) => !isOpen && close()}
    >
      <Modal className={`${styles.modal} ${styles[width]}`}>
        <OpenSheet key={sheet.kind} sheet={sheet} host={host} files={files} onClose={close} />
      </Modal>
    </ModalOverlay>
  );
}
