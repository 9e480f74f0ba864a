import { useState } from 'react';
import type { HostApi } from '../../src-core/host-contract';
import { Button } from '../look/Button';
import type { FileActions } from '../state/file-actions';
import { SheetBody } from './SheetBody';
import { Trouble } from './Trouble';
import { faultSentence, useAnswer } from './use-answer';
import { whenWords } from './when-words';

interface Props {
  readonly host: HostApi;
  readonly files: FileActions;
  readonly onClose: () => void;
}

/** Offers unsaved work of a run that did not end well. It wants an answer, because the next draft takes the place of this one. */
export function RecoverSheet({ host, files, onClose }: Props) {
  const answer = useAnswer(host, 'findDraft', {});
  const [trouble, setTrouble] = useState<string | null>(null);
  const draft = answer.state === 'answered' ? answer.reply.draft : null;
  if (draft === null) {
    return (
      <SheetBody title="Unsaved work" onClose={onClose}>
        {answer.state === 'waiting' && <p>Looking for unsaved work...</p>}
        {answer.state === 'answered' && <p>There is no unsaved work.</p>}
        {answer.state === 'failed' && <Trouble sentence={answer.sentence} />}
      </SheetBody>
    );
  }
  const discard = () => files.discardDraft().then(onClose, (fault) => setTrouble(faultSentence(fault)));
  return (
    <SheetBody
      role="alertdialog"
      title={`Unsaved work found: ${draft.name}`}
      foot={
        <>
          <Button onPress={discard}>Discard it</Button>
          <Button weight="main" autoFocus onPress={() => files.recover(draft)}>
            Recover it
          </Button>
        </>
      }
    >
      <p>
        The last run did not end well. This work was kept {whenWords(draft.keptAt, new Date())}
        {draft.path === null ? ' and never saved to a file.' : ` and belongs to ${draft.path}.`}
      </p>
      {trouble !== null && <Trouble sentence={trouble} />}
    </SheetBody>
  );
}
