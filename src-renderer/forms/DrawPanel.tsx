import { useMemo, useState } from 'react';
import type { Selection } from '../state/selection';
import { isSameSelection } from '../state/selection';
import { useJob, usePiece, useStore, useWindow } from '../state/store-context';
import styles from './DrawPanel.module.css';
import { JobForms } from './JobForms';
import { PartForm } from './PartForm';
import { PieceForm } from './PieceForm';
import { WalkContext } from './walk';

/** Everything that the job file holds, as fields: what is selected first, then the job. */
export function DrawPanel() {
  const job = useJob();
  const piece = usePiece();
  const store = useStore();
  const selection = useWindow((state) => state.selection);
  const part = selection?.part ?? { kind: 'piece' };
  const [opened, setOpened] = useState<Selection | null>(null);
  const [cameFrom, setCameFrom] = useState<Selection | null>(null);

  const walk = useMemo(
    () => ({
      cameFrom,
      open: (to: Selection) => {
        const { select, setHover } = store.getState();
        // the row goes, and with it the pointer's leaving it
        setHover(null);
        setCameFrom(null);
        setOpened(to);
        select(to);
      },
    }),
    [cameFrom, store],
  );
  const goBack = () => {
    setCameFrom(selection);
    setOpened(null);
    store.getState().select({ pieceId: piece.id, part: { kind: 'piece' } });
  };

  return (
    <div className={styles.panel}>
      {part.kind === 'piece' ? (
        <WalkContext value={walk}>
          <PieceForm key={piece.id} job={job} piece={piece} />
        </WalkContext>
      ) : (
        <PartForm
          key={`${piece.id} ${part.kind} ${'id' in part ? part.id : part.index}`}
          {...{ job, piece, part }}
          isOpenedHere={isSameSelection(opened, selection)}
          onBack={goBack}
        />
      )}
      <JobForms job={job} />
    </div>
  );
}
