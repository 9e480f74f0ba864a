import { useMemo } from 'react';
import type { FalseworkDesign } from '../../src-core/falsework';
import type { Job } from '../../src-core/job';
import { Fold } from '../look/Fold';
import { Heading } from '../look/Heading';
import { Prose } from '../look/Prose';
import { CutLists } from './CutLists';
import { stockWords } from './cut-rows';
import { DrawInJob } from './DrawInJob';
import styles from './FalseworkView.module.css';
import { FasteningTable } from './FasteningTable';
import { FloorBelow } from './FloorBelow';
import { FormHead } from './FormHead';
import { FormPlan } from './FormPlan';
import { fasteningGroups } from './fastening-rows';
import { LegTable } from './LegTable';
import { SectionItem } from './SectionItem';
import { sectionRows } from './section-rows';
import { UsedAgain } from './UsedAgain';

interface Props {
  readonly design: FalseworkDesign;
  /** The job that it was designed for. */
  readonly job: Job;
}

/** The falsework of a piece as it is built: what it comes to, its plan, legs, sections, screws, stock, and when to level again. */
export function FalseworkView({ design, job }: Props) {
  const system = job.shownIn;
  const piece = job.pieces.find(({ id }) => id === design.pieceId);
  const rows = useMemo(() => sectionRows(job, design), [job, design]);
  const screws = useMemo(() => fasteningGroups(design), [design]);
  if (piece === undefined) return null;
  const isBuilt = design.sections.length > 0;
  return (
    <section className={styles.view} aria-labelledby="falsework-heading">
      <Heading id="falsework-heading">Falsework to build</Heading>
      <FormHead design={design} />
      {isBuilt && (
        <>
          <DrawInJob design={design} job={job} />
          <FormPlan design={design} piece={piece} />
          <LegTable design={design} system={system} />
          <div>
            <h3 className={styles.part}>Sections</h3>
            <ul className={styles.sections}>
              {rows.map((row) => (
                <SectionItem key={row.id} row={row} system={system} />
              ))}
            </ul>
          </div>
          <UsedAgain design={design} job={job} />
          <div>
            <Fold title="Screws, and from where they are reached">
              <FasteningTable groups={screws} />
            </Fold>
            <Fold title={`What to cut, from ${stockWords(design)}`}>
              <CutLists design={design} system={system} />
            </Fold>
          </div>
          {design.floorLoad !== null && <FloorBelow load={design.floorLoad} system={system} />}
          <div>
            <h3 className={styles.part}>Shoot the levels again</h3>
            <ul className={styles.again}>
              {design.levelAgain.map((words) => (
                <li key={words}>{words}</li>
              ))}
            </ul>
          </div>
          <div>
            <h3 className={styles.part}>Mind, while it stands</h3>
            <ul className={styles.cautions}>
              {design.cautions.map((words) => (
                <li key={words}>
                  <Prose text={words} />
                </li>
              ))}
            </ul>
          </div>
        </>
      )}
    </section>
  );
}
