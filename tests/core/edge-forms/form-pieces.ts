/** Pieces with their forms, for tests. */
import { expect } from 'vitest';
import type { EdgeForm, EdgeForms, StraightForm } from '../../../src-core/edge-forms';
import { edgeForms } from '../../../src-core/edge-forms';
import type { JobDraft } from '../../../src-core/job';
import { jobSchema } from '../../../src-core/job';
import type { Point } from '../../../src-core/outline';
import { directionBetween, moved } from '../../../src-core/outline';
import { jobOf } from '../../support/pieces';

export type PieceDraft = Partial<JobDraft['pieces'][number]> &
  Pick<JobDraft['pieces'][number], 'corners' | 'thicknessIn'>;

export const FREE = { kind: 'free' } as const;
export const WALL = { kind: 'wall' } as const;

/** Forms of the one piece of a job; throws where it cannot be drawn. */
export function formsOf(piece: PieceDraft, more: Partial<JobDraft> = {}): EdgeForms {
  const job = jobOf(piece, more);
  const result = edgeForms(job, job.pieces[0]!);
  if (!result.ok) throw new Error(result.problems.map(({ sentence }) => sentence).join(' '));
  return result.forms;
}

/** Forms of two pieces of one job, the second added as it is. */
export function twoPieces(
  piece: PieceDraft,
  other: JobDraft['pieces'][number],
): { readonly first: EdgeForms; readonly second: EdgeForms } {
  const draft = jobOf(piece);
  const job = jobSchema.parse({ ...draft, pieces: [...draft.pieces, other] });
  const [first, second] = job.pieces.map((each) => {
    const result = edgeForms(job, each);
    if (!result.ok) throw new Error(`${each.id} cannot be drawn`);
    return result.forms;
  });
  return { first: first!, second: second! };
}

/** The end of a straight form's outer face, from its slab face and its cut. */
export function outerPoint(form: StraightForm, at: 'start' | 'end'): Point {
  const along = directionBetween(form.from, form.to);
  const out = { x: along.y, y: -along.x };
  const [corner, way] = at === 'start' ? [form.from, -1] : [form.to, 1];
  return moved(moved(corner, along, way * form[at].outerFacePastIn), out, form.faceIn);
}

/** A number within a millionth, for lists. */
export function near(value: number): unknown {
  return expect.closeTo(value, 6);
}

/** The straight forms along the piece's edges, in their order as drawn. */
export function straightForms({ forms }: EdgeForms): StraightForm[] {
  return forms
    .filter((form): form is StraightForm => form.shape === 'straight' && form.trace.part.kind === 'edge')
    .sort((a, b) => edgeOf(a) - edgeOf(b));
}

/** Forms of one cutout. */
export function openingFormsOf({ forms }: EdgeForms, id: string): EdgeForm[] {
  return forms.filter(({ trace }) => trace.part.kind === 'cutout' && trace.part.id === id);
}

function edgeOf({ trace }: EdgeForm): number {
  return trace.part.kind === 'edge' ? trace.part.index : -1;
}

/** Corners of a regular polygon with edges of one length, counter-clockwise. */
export function regular(count: number, edgeIn: number): { xIn: number; yIn: number }[] {
  const radiusIn = edgeIn / (2 * Math.sin(Math.PI / count));
  return Array.from({ length: count }, (_, k) => ({
    xIn: radiusIn * Math.cos((2 * Math.PI * k) / count),
    yIn: radiusIn * Math.sin((2 * Math.PI * k) / count),
  }));
}

/** An L: 96 x 25.5 in with a leg of 25.5 x 48 in forward from its left end. Corner 2 (from 0) is the inside corner. */
export const L_CORNERS = [
  { xIn: 0, yIn: -48 },
  { xIn: 25.5, yIn: -48 },
  { xIn: 25.5, yIn: 0 },
  { xIn: 96, yIn: 0 },
  { xIn: 96, yIn: 25.5 },
  { xIn: 0, yIn: 25.5 },
];
