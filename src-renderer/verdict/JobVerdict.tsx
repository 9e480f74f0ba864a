import { NOTICE } from '../../src-core/report';
import type { UnitSystem } from '../../src-core/units';
import { Heading } from '../look/Heading';
import { VerdictMark } from '../look/VerdictMark';
import { useVerdicts } from '../state/verdict-store';
import { progressWords } from './answer-words';
import styles from './JobVerdict.module.css';
import { SiteList } from './SiteList';
import { siteRows } from './site-rows';

interface Props {
  readonly system: UnitSystem;
}

/** The job as a whole, the findings about its site, and the notice that stands under every verdict. */
export function JobVerdict({ system }: Props) {
  const job = useVerdicts((state) => state.job);
  const progress = useVerdicts((state) => state.progress);
  return (
    <section aria-labelledby="job-heading" className={styles.job}>
      <Heading id="job-heading">The whole job</Heading>
      {job === null ? (
        <p className={styles.quiet}>{progressWords(progress) || 'Not every piece has been checked yet.'}</p>
      ) : (
        <>
          <p className={styles.line}>
            <VerdictMark level={job.verdict.level} />
            <span>{job.verdict.words}</span>
          </p>
          <SiteList rows={siteRows(job.site, system)} />
        </>
      )}
      <p className={styles.notice}>{NOTICE}</p>
    </section>
  );
}
