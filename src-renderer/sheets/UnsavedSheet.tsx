import { useState } from 'react';
import { Button } from '../look/Button';
import type { FileActions } from '../state/file-actions';
import { useStore, useWindow } from '../state/store-context';
import { SheetBody } from './SheetBody';
import { SheetNotice } from './SheetNotice';
import { saveThen } from './save-then';

interface Props {
  /** What the changes stand before. */
  readonly goOn: () => void;
  readonly files: FileActions;
  readonly onClose: () => void;
}

/** Asks what becomes of unsaved changes before another job takes the place of this one. */
export function UnsavedSheet({ goOn, files, onClose }: Props) {
  const store = useStore();
  const name = useWindow(({ history }) => history.job.name);
  const [isSaving, setSaving] = useState(false);
  const save = async () => {
    setSaving(true);
    await saveThen(store, files, goOn);
    setSaving(false);
  };
  return (
    <SheetBody
      role="alertdialog"
      title={`Keep the changes to ${name}?`}
      foot={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button
            onPress={() => {
              onClose();
              goOn();
            }}
          >
            Don't keep
          </Button>
          <Button weight="main" autoFocus isDisabled={isSaving} onPress={save}>
            Save
          </Button>
        </>
      }
    >
      <p>They are not in a file yet. What is not kept is gone.</p>
      <SheetNotice />
    </SheetBody>
  );
}
