/** What stands along each edge of a piece: a strip in the open, a strip in a gap, or nothing. */
import type { EdgeProfile, Job, Piece, PieceEdge } from '../job';
import type { GrooveSection } from '../profile';
import { edgeSection } from '../profile';
import { sizedProfile } from './profile-size';
import type { FormKind, FormMaterial } from './types';

export interface Side {
  readonly kind: FormKind;
  readonly material: FormMaterial;
  readonly profile: EdgeProfile;
  readonly groove: GrooveSection | null;
  /** Thickness of the strip in plan; 0 where there is none. */
  readonly faceIn: number;
  /** Room between the slab and what stands beside it; null where the edge is open. */
  readonly gapIn: number | null;
  readonly isWall: boolean;
}

const SQUARE: EdgeProfile = { kind: 'square', sizeIn: null, points: null };

const FREE_EDGE: PieceEdge = {
  kind: 'free',
  profile: { kind: 'eased', sizeIn: null, points: null },
  dripGroove: null,
};

/** The side of an opening: a square strip as wide as the job's. */
export function openingSide(job: Job): Side {
  return {
    kind: 'sink',
    material: 'form-strip',
    profile: SQUARE,
    groove: null,
    faceIn: job.forms.stripWidthIn,
    gapIn: null,
    isWall: false,
  };
}

/**
 * The side along edge `index` as drawn. Beside a wall, or a slab that is there before this one, the gap is all the room
 * there is, and the isolation strip in it is the form. Beside a slab that is poured on a later day the edge is open
 * until then and takes a flat form. Of two slabs poured on one day the first in the job has the strip.
 */
export function sideOf(job: Job, piece: Piece, index: number): Side {
  const edge = piece.edges?.[index] ?? FREE_EDGE;
  switch (edge.kind) {
    case 'free':
      return {
        ...openingSide(job),
        kind: 'profiled',
        profile: sizedProfile(edge.profile, piece.thicknessIn),
        groove: edgeSection(edge, piece.thicknessIn).groove,
      };
    case 'wall':
      return { ...gapSide(edge.gapIn), isWall: true };
    case 'butted': {
      const comes = neighbourComes(job, piece, edge.toPieceId);
      if (comes === 'later') return { ...openingSide(job), kind: 'flat' };
      return comes === 'same-day-and-has-the-strip' ? gapSide(0) : gapSide(edge.gapIn);
    }
  }
}

function gapSide(gapIn: number): Side {
  return {
    kind: 'flat',
    material: 'isolation-strip',
    profile: SQUARE,
    groove: null,
    faceIn: gapIn,
    gapIn,
    isWall: false,
  };
}

type NeighbourComes = 'earlier' | 'later' | 'same-day' | 'same-day-and-has-the-strip';

function neighbourComes(job: Job, piece: Piece, toPieceId: string): NeighbourComes {
  const other = job.pieces.find(({ id }) => id === toPieceId);
  if (other === undefined || other.pourDay < piece.pourDay) return 'earlier';
  if (other.pourDay > piece.pourDay) return 'later';
  const meetsBack = (other.edges ?? []).some(
    (edge) => edge.kind === 'butted' && edge.toPieceId === piece.id && edge.gapIn > 0,
  );
  const isFirst =
    job.pieces.findIndex(({ id }) => id === other.id) < job.pieces.findIndex(({ id }) => id === piece.id);
  return isFirst && meetsBack ? 'same-day-and-has-the-strip' : 'same-day';
}
