import { Heading } from '../look/Heading';
import { Prose } from '../look/Prose';
import { useJob, usePiece } from '../state/store-context';
import { useWorks } from '../state/works-store';
import { FindingList } from './FindingList';
import { placedFindings } from './finding-rows';
import styles from './PourPanel.module.css';
import { PourView } from './PourView';
import { pourOfPiece } from './pour-choice';

/** The right panel for "Pour it": the pour of the selected piece, batch by batch and minute by minute. */
export function PourPanel() {
  const job = useJob();
  const piece = usePiece();
  const planned = useWorks((works) => works.job);
  const plan = useWorks((works) => works.pour);
  const fault = useWorks((works) => works.fault);
  const isOfThisJob = planned !== null && plan !== null && planned.id === job.id;
  const pour = isOfThisJob ? pourOfPiece(plan, piece.id) : null;
  return (
    <div className={styles.panel}>
      {fault !== null && (
        <p className={styles.fault} role="alert">
          The plan of the pour stopped on a fault of this tool. What stands below may be out of date, so do
          not build by it. What is known: {fault}
        </p>
      )}
      {!isOfThisJob && (
        <p className={styles.wait} role="status">
          {fault === null ? 'Working out the pour.' : ''}
        </p>
      )}
      {isOfThisJob && pour !== null && <PourView job={job} planned={planned} plan={plan} pour={pour} />}
      {isOfThisJob && pour === null && (
        <>
          <Heading>Nothing to pour</Heading>
          <FindingList rows={placedFindings(plan, null).first} label="Why there is nothing to pour" />
        </>
      )}
      {isOfThisJob && (
        <section aria-labelledby="pour-cautions-heading">
          <Heading id="pour-cautions-heading">Mind</Heading>
          <ul className={styles.cautions}>
            {plan.cautions.map((caution) => (
              <li key={caution}>
                <Prose text={caution} />
              </li>
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}
