import type { CutEdgeForms, EdgeForms as FormsOfPiece } from '../../src-core/edge-forms';
import type { Job } from '../../src-core/job';
import { Prose } from '../look/Prose';
import styles from './EdgeForms.module.css';
import { againRows, stripRows } from './form-rows';
import { Source } from './Source';
import { StickDrawing } from './StickDrawing';

interface Props {
  readonly cuts: CutEdgeForms;
  /** The forms of every piece, which tell where a strip that is used again comes from. */
  readonly forms: readonly FormsOfPiece[];
  readonly job: Job;
}

/** Edge forms stick by stick: each drawn with its cuts, and the cuts in order with the edges that they are for. */
export function EdgeForms({ cuts, forms, job }: Props) {
  const again = againRows(job, cuts.reuses, forms);
  return (
    <div className={styles.forms}>
      <p className={styles.soft}>
        Lengths to scale, long point to long point; thickness drawn larger. The heavy side is the face against
        the slab. "Back" is a mitre whose long point is on that face, as at an inside corner.
      </p>
      {stripRows(job, cuts).map(({ id, title, words, isMitredAfter, longestIn, sticks, notCut }) => (
        <div key={id}>
          <h4 className={styles.title}>
            <Prose text={title} />
          </h4>
          <p className={styles.soft}>
            {words}
            {isMitredAfter && '. Cut square apart first, then mitre each end.'}
          </p>
          {notCut.map((sentence) => (
            <p key={sentence} className={styles.caution}>
              <Prose text={sentence} />
            </p>
          ))}
          <ol className={styles.sticks}>
            {sticks.map(({ id: stickId, title: stickTitle, stick, cuts: rows, left }) => (
              <li key={stickId}>
                <p className={styles.line}>
                  <span>{stickTitle}</span>
                  <span className={styles.soft}>{left}</span>
                </p>
                <StickDrawing stick={stick} longestIn={longestIn} rows={rows} />
                <ol className={styles.cuts}>
                  {rows.map(({ key, number, length, ends, place, trace }) => (
                    <li key={key} className={styles.cut}>
                      <span className={styles.number}>{number}</span>
                      <span className={styles.length}>{length}</span>
                      <span className={styles.ends}>{ends}</span>
                      <span className={styles.place}>
                        <Source trace={trace}>{place}</Source>
                      </span>
                    </li>
                  ))}
                </ol>
              </li>
            ))}
          </ol>
        </div>
      ))}
      {again.length > 0 && (
        <div>
          <h4 className={styles.title}>Used again, not cut</h4>
          <ul className={styles.again}>
            {again.map(({ id, words, trace }) => (
              <li key={id}>
                <Source trace={trace}>{words}</Source>
              </li>
            ))}
          </ul>
        </div>
      )}
    </div>
  );
}
