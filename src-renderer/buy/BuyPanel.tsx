import { useDeferredValue, useMemo } from 'react';
import { Heading } from '../look/Heading';
import { Prose } from '../look/Prose';
import { useJob, usePiece } from '../state/store-context';
import { isSameWork, useWorks } from '../state/works-store';
import { BuyHead } from './BuyHead';
import styles from './BuyPanel.module.css';
import { CutSections } from './CutSections';
import { stateWords, totalWords } from './head-words';
import { ShoppingList } from './ShoppingList';
import { buyGroups, countWords } from './shopping-rows';

/** The right panel for "Cut and buy": what is bought, and how every part is cut and set. */
export function BuyPanel() {
  const job = useJob();
  const piece = usePiece();
  const works = useWorks();
  // the long lists may come a moment after the hand, so that a drag never waits for them
  const { takeoff, wholeList, job: takenOff } = useDeferredValue(works);
  const isStale = !isSameWork(takenOff, job);
  const { ticks, shownIn } = job;
  const groups = useMemo(
    () => (takeoff === null ? [] : buyGroups(takeoff, wholeList, { ticks, shownIn })),
    [takeoff, wholeList, ticks, shownIn],
  );
  const state = stateWords(takeoff, { isStale, isWorking: works.isWorking });
  return (
    <div className={styles.panel} aria-busy={isStale}>
      {works.fault !== null && (
        <p className={styles.fault} role="alert">
          The take-off stopped on a fault of this tool. What stands below may be out of date, so do not buy by
          it. What is known: {works.fault}
        </p>
      )}
      <BuyHead
        jobName={job.name}
        title={takeoff === null ? 'What to buy' : countWords(groups)}
        total={takeoff === null ? '' : totalWords(takeoff)}
        state={state}
      />
      {takeoff !== null && takenOff !== null && (
        <>
          <Sentences id="buy-gaps" title="Not in the list" sentences={takeoff.list.gaps} isCaution />
          <ShoppingList groups={groups} />
          <Sentences id="buy-remarks" title="Used again" sentences={takeoff.list.remarks} isCaution={false} />
          <CutSections takeoff={takeoff} job={takenOff} pieceId={piece.id} />
        </>
      )}
    </div>
  );
}

interface SentencesProps {
  readonly id: string;
  readonly title: string;
  readonly sentences: readonly string[];
  readonly isCaution: boolean;
}

/** Sentences that stand beside the list; nothing where there are none. */
function Sentences({ id, title, sentences, isCaution }: SentencesProps) {
  if (sentences.length === 0) return null;
  return (
    <section aria-labelledby={id}>
      <Heading id={id}>{title}</Heading>
      <ul className={isCaution ? styles.cautions : styles.sentences}>
        {sentences.map((words) => (
          <li key={words}>
            <Prose text={words} />
          </li>
        ))}
      </ul>
    </section>
  );
}
