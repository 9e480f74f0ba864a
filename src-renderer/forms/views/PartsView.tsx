import { useId } from 'react';
import type { PartsField } from '../specs/field';
import type { Target } from '../target';
import { AddPart } from './AddPart';
import { CornerTable } from './CornerTable';
import group from './GroupView.module.css';
import { PartRows } from './PartRows';
import styles from './PartsView.module.css';

interface Props {
  readonly field: PartsField;
  /** The piece. */
  readonly target: Target;
}

/** Parts of a piece: a line each that opens the part's own form, and what adds another. Corners are edited in place. */
export function PartsView({ field, target }: Props) {
  const heading = useId();
  const { piece, job } = target.around;
  if (piece === null) return null;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a row of the form
    <div role="group" aria-labelledby={heading} className={styles.part}>
      <h3 id={heading} className={group.heading}>
        {field.label}
      </h3>
      {field.part === 'corner' ? (
        <CornerTable piece={piece} field={field} target={target} />
      ) : (
        <PartRows of={field.part} piece={piece} job={job} />
      )}
      {field.part !== 'edge' && <AddPart piece={piece} part={field.part} />}
    </div>
  );
}
