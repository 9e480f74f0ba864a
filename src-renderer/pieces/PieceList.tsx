import { useDeferredValue, useMemo } from 'react';
import { ListBox } from 'react-aria-components';
import { Button } from '../look/Button';
import { Heading } from '../look/Heading';
import { useStore, useWindow } from '../state/store-context';
import { useAtRest } from '../state/use-at-rest';
import { PieceItem } from './PieceItem';
import styles from './PieceList.module.css';
import { densityOf, jobWeightLine } from './piece-facts';

/** The left column: every piece of the job by its own outline, and what they weigh together. */
export function PieceList() {
  const store = useStore();
  // measuring every piece may wait until the hand rests: the drawing dimensions what moves
  const job = useDeferredValue(useAtRest(({ history }) => history.job));
  const selectedId = useWindow(({ selection }) => selection?.pieceId) ?? job.pieces[0]!.id;
  const weightLine = useMemo(() => jobWeightLine(job), [job]);
  return (
    <div className={styles.column}>
      <Heading id="pieces-heading">Pieces</Heading>
      <ListBox
        aria-labelledby="pieces-heading"
        className={styles.list!}
        items={job.pieces}
        dependencies={[job.mixes, job.shownIn]}
        selectionMode="single"
        selectionBehavior="replace"
        disallowEmptySelection
        selectedKeys={[selectedId]}
        onSelectionChange={(keys) => {
          const [pieceId] = keys === 'all' ? [] : keys;
          if (pieceId !== undefined) {
            store.getState().select({ pieceId: String(pieceId), part: { kind: 'piece' } });
          }
        }}
      >
        {(piece) => <PieceItem piece={piece} densityPcf={densityOf(job, piece)} system={job.shownIn} />}
      </ListBox>
      <div className={styles.add}>
        <Button weight="quiet" onPress={() => store.getState().openSheet({ kind: 'add-piece' })}>
          Add a piece...
        </Button>
      </div>
      <p className={styles.weight}>{weightLine}</p>
    </div>
  );
}
