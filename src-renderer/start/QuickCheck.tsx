import { useState } from 'react';
import { starterJob } from '../../src-core/starters';
import { Button } from '../look/Button';
import { SheetBody } from '../sheets/SheetBody';
import { StarterCards } from '../sheets/StarterCards';
import type { FileActions } from '../state/file-actions';
import { useJob } from '../state/store-context';
import { QuickPage } from './QuickPage';

interface Props {
  readonly files: FileActions;
  readonly onClose: () => void;
}

/** The first page of the notebook: eight fields and a verdict, or a starter to begin from. */
export function QuickCheck({ files, onClose }: Props) {
  const { shownIn } = useJob();
  const [system, setSystem] = useState(shownIn);
  const [isChoosing, setChoosing] = useState(false);
  if (!isChoosing) {
    return (
      <QuickPage
        files={files}
        system={system}
        onSystem={setSystem}
        onStarters={() => setChoosing(true)}
        onClose={onClose}
      />
    );
  }
  return (
    <SheetBody
      title="Start from a blank starter"
      onClose={onClose}
      foot={<Button onPress={() => setChoosing(false)}>Back to the quick check</Button>}
    >
      <p>One piece that stands as it is, in a job of its own. Change its sizes from there.</p>
      <StarterCards
        system={system}
        onChoose={(id) => files.openFresh({ ...starterJob(id), shownIn: system })}
      />
    </SheetBody>
  );
}
