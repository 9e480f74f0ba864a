/** Jobs of one piece with openings. */
import type { Job, JobDraft } from '../../../src-core/job';
import type { OpeningForm } from '../../../src-core/openings';
import { openingForms } from '../../../src-core/openings';
import { jobOf, rectangle } from '../../support/pieces';

type PieceDraft = JobDraft['pieces'][number];
type CutoutDraft = NonNullable<PieceDraft['cutouts']>[number];
type SinkDraft = NonNullable<CutoutDraft['sink']>;

/** A counter 96 x 25.5 in with these openings, 2 in thick unless told. */
export function counterWith(cutouts: CutoutDraft[], more: Partial<JobDraft> = {}, thicknessIn = 2): Job {
  return jobOf({ corners: rectangle(96, 25.5), thicknessIn, cutouts }, more);
}

/** A rectangular sink in the middle of the counter, or about `xIn`. */
export function sinkOf(
  size: { readonly widthIn: number; readonly depthIn: number; readonly radiusIn?: number },
  sink: SinkDraft,
  { id = 'sink', xIn = 48 } = {},
): CutoutDraft {
  return {
    id,
    purpose: 'sink',
    shape: { kind: 'rectangle', centre: { xIn, yIn: 12.75 }, ...size },
    sink,
  };
}

/** A round opening. */
export function roundOf(
  purpose: 'tap' | 'drain' | 'hob' | 'other',
  diameterIn: number,
  at: { readonly xIn: number; readonly yIn: number },
): CutoutDraft {
  return { id: purpose, purpose, shape: { kind: 'circle', centre: at, diameterIn } };
}

/** The forms of the job's first piece. */
export function formsOf(job: Job): readonly OpeningForm[] {
  return openingForms(job, job.pieces[0]!);
}

/** The finding of a form about one thing, or throws. */
export function findingOf(form: OpeningForm, check: OpeningForm['findings'][number]['check']) {
  const finding = form.findings.find((one) => one.check === check);
  if (finding === undefined) throw new Error(`No finding about ${check}`);
  return finding;
}
