import { useMemo } from 'react';
import type { FalseworkDesign } from '../../src-core/falsework';
import { useFalsework as useFalseworkCommand } from '../../src-core/falsework';
import type { Job } from '../../src-core/job';
import { Button } from '../look/Button';
import { useStore } from '../state/store-context';
import styles from './DrawInJob.module.css';
import { drawState, drawWords } from './draw-state';

interface Props {
  readonly design: FalseworkDesign;
  readonly job: Job;
}

/** Puts the design into the job as one step of undo, and says so beforehand. */
export function DrawInJob({ design, job }: Props) {
  const store = useStore();
  const state = useMemo(() => drawState(job, design), [job, design]);
  const draw = () => {
    const [problem, ...more] = store.getState().run(useFalseworkCommand, { design });
    store.getState().say(
      problem === undefined
        ? {
            tone: 'plain',
            sentence: `The falsework under "${design.pieceName}" is in the job. Undo takes it out again.`,
          }
        : {
            tone: 'trouble',
            sentence: `The falsework does not fit the drawing any more: ${problem.sentence}`,
            details: more.map(({ sentence }) => sentence),
          },
    );
  };
  return (
    <div className={styles.draw}>
      {(state.kind === 'new' || state.kind === 'instead') && (
        <Button weight="main" onPress={draw}>
          Draw it in the job
        </Button>
      )}
      <p className={styles.words}>{drawWords(state, design)}</p>
    </div>
  );
}
