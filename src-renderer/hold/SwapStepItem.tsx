import { SIZE_CAUTION } from '../../src-core/sequence';
import { Button } from '../look/Button';
import { Fold } from '../look/Fold';
import { Prose } from '../look/Prose';
import { VerdictMark } from '../look/VerdictMark';
import { useStore, useWindow } from '../state/store-context';
import { Tape } from '../verdict/Tape';
import { Finding } from './Finding';
import { Heights } from './Heights';
import styles from './SwapStepItem.module.css';
import type { StepRow } from './step-rows';

interface Props {
  readonly row: StepRow;
  readonly endRatio: number;
}

/** One step of the swap: what goes and comes, its worst moment as a tape, and how far feet may be wound. */
export function SwapStepItem({ row, endRatio }: Props) {
  const store = useStore();
  const isShown = useWindow(({ day }) => day === row.day);
  const { title, out, comesIn, note, governing, ratio, ratioWords, level, where } = row;
  const { heights, attention, fine, cautions } = row;
  return (
    <li className={styles.step}>
      <div className={styles.head}>
        <h3 className={styles.title}>{title}</h3>
        <Button
          weight="quiet"
          aria-label={`${isShown ? 'Shown' : 'Show this day'}: ${title}`}
          onPress={() => store.getState().setDay(row.day)}
        >
          {isShown ? 'Shown' : 'Show this day'}
        </Button>
      </div>
      <dl className={styles.moves}>
        {out !== '' && (
          <>
            <dt>Out</dt>
            <dd>{out}</dd>
          </>
        )}
        {comesIn !== '' && (
          <>
            <dt>In</dt>
            <dd>{comesIn}</dd>
          </>
        )}
      </dl>
      {note !== '' && <p className={styles.soft}>{note}</p>}
      <p className={styles.ratio}>
        <span>{governing === '' ? 'Worst moment' : `Worst moment: ${governing.toLowerCase()}`}</span>
        <span className={styles.level} style={{ color: `var(--${level})` }}>
          <span aria-hidden="true" className={styles.mark}>
            <VerdictMark level={level} size={12} />
          </span>
          {ratioWords}
        </span>
      </p>
      <Tape ratio={ratio} level={level} endRatio={endRatio} />
      <p>
        <Prose text={where} />
      </p>
      {heights.length > 0 && <Heights rows={heights} />}
      {attention.length > 0 && (
        <ul>
          {attention.map((finding) => (
            <Finding key={`${finding.id} ${finding.aboutId}`} finding={finding} />
          ))}
        </ul>
      )}
      {fine.length + cautions.length > 0 && (
        <Fold title={`Fit and way in (${fine.length + cautions.length})`}>
          <ul>
            {fine.map((finding) => (
              <Finding key={`${finding.id} ${finding.aboutId}`} finding={finding} />
            ))}
            {cautions.map((caution) => (
              <li key={caution} className={styles.caution}>
                For a while beyond what a finished piece may have: <Prose text={caution} />
              </li>
            ))}
          </ul>
          {cautions.length > 0 && <p className={styles.soft}>{SIZE_CAUTION}</p>}
        </Fold>
      )}
    </li>
  );
}
