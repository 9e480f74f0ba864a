import { useDeferredValue } from 'react';
import { DayHead } from '../hold/DayHead';
import { Button } from '../look/Button';
import { Heading } from '../look/Heading';
import { useDays } from '../state/day-store';
import { useJob, usePiece, useStore, useWindow } from '../state/store-context';
import { useVerdict, useVerdicts } from '../state/verdict-store';
import { ChangeList } from './ChangeList';
import { CheckList } from './CheckList';
import { JobVerdict } from './JobVerdict';
import { OnTheWay } from './OnTheWay';
import { Reactions } from './Reactions';
import { VerdictHead } from './VerdictHead';
import styles from './VerdictPanel.module.css';

/** The right panel for "Does it stand?": of the finished job, or of the day on which the day line stands. */
export function VerdictPanel() {
  const day = useWindow((state) => state.day);
  return day === null ? <FinishedVerdict /> : <DayVerdict day={day} />;
}

/** What stands on a day: its verdict and its checks. Changes are looked for in the finished job alone. */
function DayVerdict({ day }: { readonly day: number }) {
  const job = useJob();
  const piece = usePiece();
  const store = useStore();
  const result = useDays(({ pieces }) => pieces[piece.id]);
  return (
    <div className={styles.panel}>
      <DayHead job={job} piece={piece} day={day} />
      {result !== undefined && <CheckList piece={piece} checks={result.checks} system={job.shownIn} />}
      <Button onPress={() => store.getState().setDay(null)}>Show the finished job</Button>
    </div>
  );
}

/** The verdict of the selected piece as it stays, its checks, changes that pass, and the whole job. */
function FinishedVerdict() {
  const drawn = usePiece();
  const system = useWindow(({ history }) => history.job.shownIn);
  const newest = useVerdict(drawn.id);
  const jobId = useWindow(({ history }) => history.job.id);
  // the long list may come a moment after the words at its head, so that a drag never waits for it
  const laterPiece = useDeferredValue(drawn);
  const laterVerdict = useDeferredValue(newest);
  const laterJobId = useDeferredValue(jobId);
  // but of another piece or job nothing is left to press
  const isSameSubject = laterJobId === jobId && laterPiece.id === drawn.id;
  const piece = isSameSubject ? laterPiece : drawn;
  const listed = isSameSubject ? laterVerdict : newest;
  const verdict = listed?.result.id === piece.id ? listed : undefined;
  const fault = useVerdicts((state) => state.fault);
  return (
    <div className={styles.panel}>
      {fault !== null && (
        <p className={styles.fault} role="alert">
          The check stopped on a fault of this tool. What stands below may be out of date, so do not build by
          it. What is known: {fault}
        </p>
      )}
      <VerdictHead name={drawn.name} verdict={newest} system={system} />
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
