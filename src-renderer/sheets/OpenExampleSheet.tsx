import { useState } from 'react';
import type { HostApi } from '../../src-core/host-contract';
import { Button } from '../look/Button';
import type { FileActions } from '../state/file-actions';
import styles from './OpenExampleSheet.module.css';
import { SheetBody } from './SheetBody';
import { SheetNotice } from './SheetNotice';
import { Trouble } from './Trouble';
import { useAnswer } from './use-answer';

interface Props {
  readonly host: HostApi;
  readonly files: FileActions;
  readonly onClose: () => void;
}

/** The example jobs; one opens as a job that stands in no file yet. */
export function OpenExampleSheet({ host, files, onClose }: Props) {
  const answer = useAnswer(host, 'listExamples', {});
  const [opening, setOpening] = useState<string | null>(null);
  const open = async (id: string) => {
    setOpening(id);
    await files.openExample(id);
    setOpening(null);
  };
  return (
    <SheetBody title="Open an example" onClose={onClose} foot={<Button onPress={onClose}>Cancel</Button>}>
      <p className={styles.lead}>
        A whole job to look around in. Saving it asks for a file of your own; the example stays as it is.
      </p>
      <SheetNotice />
      {answer.state === 'failed' && <Trouble sentence={answer.sentence} />}
      {answer.state === 'waiting' && <p className={styles.lead}>Looking...</p>}
      {answer.state === 'answered' && (
        <ul className={styles.list}>
          {answer.reply.examples.map(({ id, name }) => (
            <li key={id}>
              <Button weight="quiet" isDisabled={opening !== null} onPress={() => open(id)}>
                {name}
              </Button>
            </li>
          ))}
        </ul>
      )}
    </SheetBody>
  );
}
