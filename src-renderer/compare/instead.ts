/** The other version of a piece: the drawn one with what was chosen for it put in. */

import { setField } from '../../src-core/edit';
import type { EdgeProfile, Job, Piece } from '../../src-core/job';
import { thicker } from '../../src-core/remedies';

export type ProfileKind = Exclude<EdgeProfile['kind'], 'own'>;

/** What is chosen for the other version; what is left out stays as drawn. */
export interface Choices {
  readonly thicknessIn?: number;
  /** Of every free edge. */
  readonly profile?: ProfileKind;
  readonly finish?: Piece['finish'];
  /** null for plain grey concrete. */
  readonly colour?: Piece['colour'];
}

/**
 * The piece with the choices put in. Another thickness keeps the soffit where it is and brings the top up or down; steel in the
 * lower half keeps its cover below, as in the changes that the checks try.
 */
export function insteadOf(piece: Piece, choices: Choices): Piece {
  const { thicknessIn, profile, finish, colour } = choices;
  return {
    ...(thicknessIn === undefined ? piece : thicker(piece, thicknessIn)),
    ...(profile === undefined ? {} : { edges: withProfile(piece, profile) }),
    ...(finish === undefined ? {} : { finish }),
    ...(colour === undefined ? {} : { colour }),
  };
}

/** The choice with one thing changed; choosing what is drawn takes the choice back. */
export function choose(piece: Piece, choices: Choices, next: Choices): Choices {
  const all = { ...choices, ...next };
  return {
    ...(all.thicknessIn === undefined || all.thicknessIn === piece.thicknessIn
      ? {}
      : { thicknessIn: all.thicknessIn }),
    ...(all.profile === undefined || all.profile === drawnProfile(piece) ? {} : { profile: all.profile }),
    ...(all.finish === undefined || all.finish === piece.finish ? {} : { finish: all.finish }),
    ...(all.colour === undefined || isSameColour(all.colour, piece.colour) ? {} : { colour: all.colour }),
  };
}

/** Whether nothing is chosen. */
export function isAsDrawn(choices: Choices): boolean {
  return Object.keys(choices).length === 0;
}

/** Profile of the piece's free edges; null where they differ or there is none. */
export function drawnProfile({ edges, corners }: Piece): EdgeProfile['kind'] | null {
  if (corners.length > 0 && edges === null) return 'eased';
  const kinds = new Set((edges ?? []).flatMap((edge) => (edge.kind === 'free' ? [edge.profile.kind] : [])));
  const [only] = kinds;
  return kinds.size === 1 && only !== undefined ? only : null;
}

export type OtherJob =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly sentences: readonly string[] };

/** What `setField` is given to put the other version into the drawing, as one step of the history. */
export function insteadArgs(job: Job, piece: Piece, choices: Choices) {
  return {
    path: ['pieces', job.pieces.findIndex(({ id }) => id === piece.id)],
    value: insteadOf(piece, choices),
    title: 'Use the other version',
  };
}

/** The job with the other version in it, or why it cannot be built. */
export function insteadJob(job: Job, piece: Piece, choices: Choices): OtherJob {
  const args = insteadArgs(job, piece, choices);
  const edited = setField.perform(job, args);
  if (edited.ok) return { ok: true, job: edited.job };
  // a thickness that no slab has is to blame before the steel that it leaves no room for
  const ofThickness = edited.problems.filter(({ path }) => path === `pieces[${args.path[1]}].thicknessIn`);
  const above = insteadOf(piece, choices).reinforcement.find(
    (steel) => 'depthIn' in steel && steel.depthIn <= 0,
  );
  if (ofThickness.length === 0 && above !== undefined) {
    const sentence = `Steel "${above.label ?? above.id}" keeps its cover below and would lie above so thin a slab. Move it up in the drawing first.`;
    return { ok: false, sentences: [sentence] };
  }
  const told = ofThickness.length > 0 ? ofThickness : edited.problems;
  return { ok: false, sentences: told.map(({ sentence }) => sentence) };
}

function withProfile({ edges, corners }: Piece, kind: ProfileKind): NonNullable<Piece['edges']> {
  const profile = { kind, sizeIn: null, points: null };
  if (edges === null) return corners.map(() => ({ kind: 'free', profile, dripGroove: null }));
  return edges.map((edge) => (edge.kind === 'free' ? { ...edge, profile } : edge));
}

function isSameColour(a: Piece['colour'], b: Piece['colour']): boolean {
  if (a === null || b === null) return a === b;
  return a.pigment === b.pigment && a.pigmentRatio === b.pigmentRatio;
}
