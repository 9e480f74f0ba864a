/** The forms of the job, in the order in which they stand at the foot of the panel. */
import type { Field } from './field';
import { JOB_FIELDS, MIX_FIELDS, SITE_FIELDS } from './job-fields';
import { WORK_FIELDS } from './work-fields';

export interface JobForm {
  readonly id: string;
  readonly title: string;
  /** Place of its thing in the job. */
  readonly at: '' | 'site';
  readonly fields: readonly Field[];
}

export const JOB_FORMS: readonly JobForm[] = [
  { id: 'job', title: 'The job', at: '', fields: JOB_FIELDS },
  { id: 'site', title: 'The site', at: 'site', fields: SITE_FIELDS },
  { id: 'mixes', title: 'Concrete mixes', at: '', fields: MIX_FIELDS },
  { id: 'work', title: 'How the work is done', at: '', fields: WORK_FIELDS },
];
