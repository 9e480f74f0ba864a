import type { Job } from '../../src-core/job';
import { Fold } from '../look/Fold';
import { useStore } from '../state/store-context';
import { JOB_FORMS } from './specs/job-forms';
import { below, jobTarget, stepsOf } from './target';
import { FieldList } from './views/FieldList';

interface Props {
  readonly job: Job;
}

/** What belongs to the job and to no single piece, folded away at the foot of the panel. */
export function JobForms({ job }: Props) {
  const { run } = useStore().getState();
  const target = jobTarget(job, run);
  return JOB_FORMS.map(({ id, title, at, fields }) => (
    <Fold key={id} title={title} level={2}>
      <FieldList fields={fields} target={below(target, stepsOf(at))} />
    </Fold>
  ));
}
