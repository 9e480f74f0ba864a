import { memo, useMemo } from 'react';
import type { Job } from '../../src-core/job';
import type { JobTakeoff } from '../../src-core/takeoff';
import { Fold } from '../look/Fold';
import { Heading } from '../look/Heading';
import { Boards } from './Boards';
import styles from './CutSections.module.css';
import { EdgeForms } from './EdgeForms';
import { Openings } from './Openings';
import { Steel } from './Steel';
import { sectionTitles } from './section-titles';
import { Tools } from './Tools';

interface Props {
  readonly takeoff: JobTakeoff;
  /** The job that it was taken off. */
  readonly job: Job;
  /** Boards, openings and steel are those of this piece. */
  readonly pieceId: string;
}

/** How the parts are cut and set: forms of the whole job, then boards, openings and steel of the selected piece, then tools. */
export const CutSections = memo(function CutSections({ takeoff, job, pieceId }: Props) {
  const forms = useMemo(
    () => takeoff.pieces.flatMap((piece) => (piece.forms === null ? [] : [piece.forms])),
    [takeoff],
  );
  const own = takeoff.pieces.find((piece) => piece.pieceId === pieceId);
  const name = job.pieces.find(({ id }) => id === pieceId)?.name ?? '';
  const titles = sectionTitles(takeoff, own);
  const system = job.shownIn;
  return (
    <>
      <section aria-labelledby="cut-job-heading">
        <Heading id="cut-job-heading">Cut for the whole job</Heading>
        <Fold title={titles.forms}>
          <EdgeForms cuts={takeoff.formCuts} forms={forms} job={job} />
        </Fold>
        <Fold title={titles.tools}>
          <Tools tools={takeoff.tools} />
        </Fold>
      </section>
      {own !== undefined && (
        <section aria-labelledby="cut-piece-heading">
          <Heading id="cut-piece-heading">{name}</Heading>
          {own.forms !== null && own.forms.cautions.length > 0 && (
            <ul className={styles.cautions} aria-label="What the forms cannot do as drawn">
              {own.forms.cautions.map((words) => (
                <li key={words}>{words}</li>
              ))}
            </ul>
          )}
          {own.boards !== null && (
            <Fold title={titles.boards}>
              <Boards boards={own.boards} copies={own.copies} system={system} />
            </Fold>
          )}
          {own.openings.length > 0 && (
            <Fold title={titles.openings}>
              <Openings openings={own.openings} system={system} />
            </Fold>
          )}
          {own.steel !== null && (
            <Fold title={titles.steel}>
              <Steel placing={own.steel} system={system} />
            </Fold>
          )}
        </section>
      )}
    </>
  );
});
