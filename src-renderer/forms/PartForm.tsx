import { ChevronLeft } from 'lucide-react';
import { useEffect, useRef } from 'react';
import type { Job, Piece } from '../../src-core/job';
import { Button } from '../look/Button';
import type { Part } from '../state/selection';
import { useStore } from '../state/store-context';
import styles from './DrawPanel.module.css';
import { EdgeLength } from './EdgeLength';
import { PartActions } from './PartActions';
import { partForm } from './part-form';
import { below, edgeTarget, pieceTarget } from './target';
import { FieldList } from './views/FieldList';
import { Flush } from './views/Flush';

interface Props {
  readonly job: Job;
  readonly piece: Piece;
  readonly part: Exclude<Part, { kind: 'piece' }>;
  /** It was opened from a row of the panel, and so takes the focus; what was picked in a drawing leaves the focus there. */
  readonly isOpenedHere: boolean;
  readonly onBack: () => void;
}

/** The form of one part of a piece, with the way back to the piece. */
export function PartForm({ job, piece, part, isOpenedHere, onBack }: Props) {
  const { run } = useStore().getState();
  const top = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (isOpenedHere) top.current?.scrollIntoView({ block: 'start' });
    else top.current?.closest('section')?.scrollTo(0, 0);
  }, [isOpenedHere]);
  const form = partForm(piece, part, job);
  const target =
    part.kind === 'edge'
      ? edgeTarget(job, piece, part.index, run)
      : below(pieceTarget(job, piece, run), form.steps);
  return (
    <div className={styles.form} ref={top}>
      <Flush>
        <Button weight="quiet" autoFocus={isOpenedHere} onPress={onBack}>
          <ChevronLeft size={16} aria-hidden="true" />
          Back to {piece.name}
        </Button>
      </Flush>
      <h2 className={styles.title}>{form.title}</h2>
      {part.kind === 'edge' && <EdgeLength piece={piece} index={part.index} />}
      <FieldList fields={form.fields} target={target} />
      <PartActions piece={piece} part={part} />
    </div>
  );
}
