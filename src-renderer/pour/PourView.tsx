import { useMemo, useState } from 'react';
import type { Job } from '../../src-core/job';
import type { Pour, PourPlan } from '../../src-core/pour';
import { EntryField } from '../forms/fields/EntryField';
import { BagFigures } from './BagFigures';
import { BatchList } from './BatchList';
import { CrewFacts } from './CrewFacts';
import { TIME_WRITING, USUAL_START_MINUTES } from './clock-time';
import { FillOrder } from './FillOrder';
import { FindingList } from './FindingList';
import { FinishList } from './FinishList';
import { placedFindings } from './finding-rows';
import { PourHead } from './PourHead';
import styles from './PourView.module.css';
import { PourWorkings } from './PourWorkings';
import { ScreedList } from './ScreedList';
import { Timeline } from './Timeline';
import { ticksOf } from './ticks';
import { WeatherBands } from './WeatherBands';

interface Props {
  /** The job as it is now, with its ticks. */
  readonly job: Job;
  /** The job that was planned; the drawing may be a moment ahead of it. */
  readonly planned: Job;
  readonly plan: PourPlan;
  readonly pour: Pour;
}

/** One pour from its head to its cautions, in the order of the day. */
export function PourView({ job, planned, plan, pour }: Props) {
  const [startMinutes, setStartMinutes] = useState(USUAL_START_MINUTES);
  const ticks = useMemo(() => ticksOf(job), [job]);
  const findings = useMemo(() => placedFindings(plan, pour), [plan, pour]);
  const system = job.shownIn;
  const isBagged = pour.bags !== null;
  return (
    <div className={styles.view}>
      <PourHead job={job} plan={plan} pour={pour} />
      <FindingList rows={findings.first} label="What to mind about this pour" />
      {isBagged && (
        <>
          <BagFigures pour={pour} system={system} />
          <EntryField
            label="First water at"
            value={startMinutes}
            writing={TIME_WRITING}
            onCommit={(minutes) => {
              setStartMinutes(minutes);
              return null;
            }}
          />
          <BatchList pour={pour} ticks={ticks} startMinutes={startMinutes} system={system} />
          <Timeline pour={pour} startMinutes={startMinutes} system={system} />
          <FillOrder job={planned} pour={pour} />
        </>
      )}
      <ScreedList pour={pour} system={system} />
      {isBagged && <FinishList pour={pour} ticks={ticks} startMinutes={startMinutes} />}
      <WeatherBands pour={pour} notes={findings.weather} system={system} />
      <CrewFacts job={job} plan={plan} pour={pour} notes={findings.lifting} />
      <PourWorkings pour={pour} system={system} />
    </div>
  );
}
