import { useState } from 'react';
import { addStarter } from '../../src-core/edit';
import type { StarterId } from '../../src-core/starters';
import { Button } from '../look/Button';
import { useJob, useStore } from '../state/store-context';
import styles from './AddPieceSheet.module.css';
import { clearPlace } from './clear-place';
import { SheetBody } from './SheetBody';
import { StarterCards } from './StarterCards';
import { Trouble } from './Trouble';

interface Props {
  readonly onClose: () => void;
}

/** Adds a starter beside what is drawn, and picks it out. */
export function AddPieceSheet({ onClose }: Props) {
  const store = useStore();
  const system = useJob().shownIn;
  const [problems, setProblems] = useState<readonly string[]>([]);
  const add = (starterId: StarterId) => {
    const { history, run } = store.getState();
    const refused = run(addStarter, { starterId, at: clearPlace(history.job) });
    if (refused.length > 0) return setProblems(refused.map(({ sentence }) => sentence));
    const { job } = store.getState().history;
    store.getState().select({ pieceId: job.pieces.at(-1)!.id, part: { kind: 'piece' } });
    onClose();
  };
  return (
    <SheetBody title="Add a piece" onClose={onClose} foot={<Button onPress={onClose}>Cancel</Button>}>
      <p className={styles.lead}>
        It comes to lie to the right of what is drawn; move it and change its sizes from there. To draw an
        outline corner by corner, use "Draw a piece" in the plan.
      </p>
      {problems.length > 0 && <Trouble sentence="The piece was not added." details={problems} />}
      <StarterCards system={system} onChoose={add} />
    </SheetBody>
  );
}
