/** Every strip of a piece and its copies as a thing of its own, to be cut, set and perhaps used again. */
import type { EdgeProfile } from '../job';
import type { Trace } from '../trace';
import type { CurvedForm, EdgeForm, EdgeForms, FormKind, FormMaterial } from './types';

/** What strips must have in common to be cut from one stock. */
export interface StripKind {
  /** Alike for strips of one kind, stuff, profile, height and thickness. */
  readonly id: string;
  readonly kind: FormKind;
  readonly material: FormMaterial;
  readonly profile: EdgeProfile;
  readonly heightIn: number;
  readonly faceIn: number;
}

export interface Strip {
  readonly id: string;
  readonly trace: Trace;
  readonly pieceId: string;
  /** The part that it is cut for, and for which copy of the piece, from 1. */
  readonly partId: string;
  readonly copy: number;
  readonly of: StripKind;
  readonly made: 'straight' | CurvedForm['made'];
  readonly longIn: number;
  /** Cuts as in `FormEnd`. */
  readonly startRad: number;
  readonly endRad: number;
  /** Of a curve: positive round an outside corner of the slab, negative round an inside corner or an opening; null where straight. */
  readonly bendRadiusIn: number | null;
}

/** All strips of a piece, copy by copy. */
export function stripsOf({ pieceId, copies, forms }: EdgeForms): Strip[] {
  return Array.from({ length: copies }, (_, k) => k + 1).flatMap((copy) =>
    forms.flatMap((form) =>
      form.parts.map((part): Strip => {
        const { start, end } = part;
        return {
          id: copy === 1 ? part.id : `${part.id}/copy/${copy}`,
          trace: part.trace,
          pieceId,
          partId: part.id,
          copy,
          of: stripKind(form),
          made: form.shape === 'straight' ? 'straight' : form.made,
          longIn: part.longIn,
          startRad: start.cutRad,
          endRad: end.cutRad,
          bendRadiusIn: form.shape === 'straight' ? null : Math.sign(form.turnRad) * form.radiusIn,
        };
      }),
    ),
  );
}

function stripKind({ kind, material, profile, heightIn, faceIn }: EdgeForm): StripKind {
  const words = kind === 'profiled' ? [profile.kind, ...profileWords(profile)] : [material];
  const id = [kind, ...words, heightIn, faceIn].join('/');
  return { id, kind, material, profile, heightIn, faceIn };
}

function profileWords({ sizeIn, points }: EdgeProfile): (string | number)[] {
  if (points !== null) return [points.map(({ outIn, upIn }) => `${outIn},${upIn}`).join(';')];
  return sizeIn === null ? [] : [sizeIn];
}
