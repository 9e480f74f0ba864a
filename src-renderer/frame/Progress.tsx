import { useEffect, useState } from 'react';
import { ProgressBar } from 'react-aria-components';
import { useVerdicts } from '../state/verdict-store';
import styles from './Progress.module.css';

/** What takes less is not worth a bar, ms. */
const PATIENCE_MS = 500;

/** How far the check has come, for one that takes a while. */
export function Progress() {
  const progress = useVerdicts(({ progress: known }) => known);
  const isRunning = progress !== null;
  const [isLong, setLong] = useState(false);
  useEffect(() => {
    if (!isRunning) return;
    const timer = setTimeout(() => setLong(true), PATIENCE_MS);
    return () => {
      clearTimeout(timer);
      setLong(false);
    };
  }, [isRunning]);
  if (progress === null || !isLong) return null;
  return (
    <ProgressBar
      aria-label={`Checking ${progress.words}`}
      value={progress.done}
      maxValue={progress.total}
      className={styles.progress ?? ''}
    >
      {({ percentage }) => (
        <>
          <span className={styles.words}>{progress.words}</span>
          <span className={styles.track}>
            <span className={styles.fill} style={{ width: `${percentage ?? 0}%` }} />
          </span>
        </>
      )}
    </ProgressBar>
  );
}
