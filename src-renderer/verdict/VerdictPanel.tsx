import { Heading } from '../look/Heading';
import { useJob, usePiece } from '../state/store-context';
import { useVerdict, useVerdicts } from '../state/verdict-store';
import { ChangeList } from './ChangeList';
import { CheckList } from './CheckList';
import { JobVerdict } from './JobVerdict';
import { OnTheWay } from './OnTheWay';
import { Reactions } from './Reactions';
import { VerdictHead } from './VerdictHead';
import styles from './VerdictPanel.module.css';

/** The right panel for "Does it stand?": the verdict of the selected piece, its checks, changes that pass, and the whole job. */
export function VerdictPanel() {
  const piece = usePiece();
  const system = useJob().shownIn;
  const verdict = useVerdict(piece.id);
  const fault = useVerdicts((state) => state.fault);
  return (
    <div className={styles.panel}>
      {fault !== null && (
        <p className={styles.fault} role="alert">
          The check stopped on a fault of this tool. What stands below may be out of date, so do not build by
          it. What is known: {fault}
        </p>
      )}
      <VerdictHead name={piece.name} verdict={verdict} system={system} />
      {verdict !== undefined && (
        <>
          <CheckList piece={piece} checks={verdict.result.checks} system={system} />
          <ChangeList
            result={verdict.result}
            isStale={verdict.isStale}
            isSearching={verdict.isSearching}
            system={system}
          />
          {verdict.result.worstOnTheWay !== null && <OnTheWay moment={verdict.result.worstOnTheWay} />}
          <Reactions reactions={verdict.result.reactions} system={system} />
          {verdict.result.remarks.length > 0 && (
            <section aria-labelledby="remarks-heading">
              <Heading id="remarks-heading">What was simplified</Heading>
              <ul>
                {verdict.result.remarks.map((remark) => (
                  <li key={remark}>{remark}</li>
                ))}
              </ul>
            </section>
          )}
        </>
      )}
      <JobVerdict system={system} />
    </div>
  );
}
