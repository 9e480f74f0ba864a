/** The whole job file. Numbers are stored in core units: inch, pound-force, psi, pound, day, degree Celsius. */
import { z } from 'zod';
import { mix } from './mix';
import { piece } from './piece';
import { id, name, note } from './quantities';
import { site } from './site';
import { crew, falsework, forms, stock, swap, tick } from './work';

export const JOB_FORMAT = 'ledgewright-job';
export const JOB_VERSION = 1;

export const job = z.strictObject({
  format: z.literal(JOB_FORMAT),
  version: z.literal(JOB_VERSION),
  id,
  name,
  /** System in which this job is shown; the numbers stay in core units. */
  shownIn: z.enum(['imperial', 'metric']).default('imperial'),
  note: note.default(''),
  site: site.prefault({}),
  mixes: z.array(mix).min(1),
  pieces: z.array(piece).min(1).max(200),
  falsework: falsework.prefault({}),
  swap: swap.prefault({}),
  forms: forms.prefault({}),
  crew: crew.prefault({}),
  stock: stock.default([]),
  ticks: z.array(tick).default([]),
});

export type Job = z.infer<typeof job>;
/** A job as a person or a program may write it, with defaults left out. */
export type JobDraft = z.input<typeof job>;
