import { ChevronRight } from 'lucide-react';
import { use } from 'react';
import { Button } from 'react-aria-components';
import type { Job, Piece } from '../../../src-core/job';
import { isSameSelection } from '../../state/selection';
import { useStore } from '../../state/store-context';
import type { PartsField } from '../specs/field';
import { partRows } from '../summaries';
import { WalkContext } from '../walk';
import styles from './PartsView.module.css';

interface Props {
  readonly of: PartsField['part'];
  readonly piece: Piece;
  readonly job: Job;
}

/** A line a part, each a button that selects it. */
export function PartRows({ of, piece, job }: Props) {
  const { setHover } = useStore().getState();
  const { cameFrom, open } = use(WalkContext);
  return (
    <ul>
      {partRows(of, piece, job).map(({ part, name, facts }) => {
        const selection = { pieceId: piece.id, part };
        return (
          <li key={'id' in part ? part.id : 'index' in part ? part.index : ''}>
            <Button
              className={styles.row!}
              autoFocus={isSameSelection(cameFrom, selection)}
              onPress={() => open(selection)}
              onHoverChange={(isHovered) => setHover(isHovered ? selection : null)}
            >
              <span className={styles.words}>
                <span className={styles.name}>{name}</span>
                <span className={styles.facts}>{facts}</span>
              </span>
              <ChevronRight size={16} className={styles.arrow} aria-hidden="true" />
            </Button>
          </li>
        );
      })}
    </ul>
  );
}
