import type { Job } from '../../src-core/job';
import type { Pour, PourPlan } from '../../src-core/pour';
import { dayTitle } from '../days/day-words';
import { ChoiceField } from '../forms/fields/ChoiceField';
import { Prose } from '../look/Prose';
import { useStore } from '../state/store-context';
import { batchesWords, headFigures, mixWords, volumeParts } from './head-words';
import { PieceLink } from './PieceLink';
import styles from './PourHead.module.css';
import { pourTitle } from './pour-choice';

interface Props {
  readonly job: Job;
  readonly plan: PourPlan;
  readonly pour: Pour;
}

/** Which pour it is and what it comes to. Choosing another pour selects its first piece, as its panel follows the selection. */
export function PourHead({ job, plan, pour }: Props) {
  const store = useStore();
  const { calendar } = job.site;
  const choose = (id: string) => {
    const chosen = plan.pours.find((one) => one.id === id);
    if (chosen !== undefined) {
      store.getState().select({ pieceId: chosen.trace.pieceId, part: { kind: 'piece' } });
    }
    return null;
  };
  return (
    <header className={styles.head}>
      {plan.pours.length > 1 && (
        <ChoiceField
          label={`Which of ${plan.pours.length} pours`}
          value={pour.id}
          choices={plan.pours.map((one) => ({ value: one.id, words: pourTitle(one) }))}
          onCommit={choose}
        />
      )}
      <h2 className={styles.day}>{dayTitle(calendar, pour.day)}</h2>
      <ul className={styles.pieces} aria-label="Pieces of this pour">
        {pour.pieces.map(({ pieceId, name, copies }) => (
          <li key={pieceId}>
            <PieceLink pieceId={pieceId} name={copies > 1 ? `${name} x ${copies}` : name} />
          </li>
        ))}
      </ul>
      <dl className={styles.figures}>
        {headFigures(pour, job.shownIn).map(({ id, label, value, unit, isWrong }) => (
          <div key={id} className={styles.figure}>
            <dt>{label}</dt>
            <dd className={isWrong ? styles.wrong : undefined}>
              <span className={styles.value}>{value}</span> {unit}
            </dd>
          </div>
        ))}
      </dl>
      {pour.bags !== null && <p className={styles.batches}>{batchesWords(pour.batches)}</p>}
      <p className={styles.soft}>
        <Prose text={mixWords(pour)} /> <Prose text={volumeParts(pour, job.shownIn)} />
      </p>
    </header>
  );
}
