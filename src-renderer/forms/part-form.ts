/** Which form a part of a piece has, and where the part stands. */
import type { Job, Piece } from '../../src-core/job';
import type { Part } from '../state/selection';
import { CUTOUT_FIELDS } from './specs/cutout-fields';
import { CORNER_FIELDS, EDGE_FIELDS } from './specs/edge-fields';
import type { Field } from './specs/field';
import { FIXED_LOAD_FIELDS, JOINT_FIELDS, STEEL_FIELDS } from './specs/steel-fields';
import { SUPPORT_FIELDS } from './specs/support-fields';
import { partRows } from './summaries';
import type { Step } from './target';

type PartOfPiece = Exclude<Part, { kind: 'piece' }>;

export interface PartFormData {
  readonly title: string;
  readonly fields: readonly Field[];
  /** From the piece to the part. */
  readonly steps: readonly Step[];
}

const FIELDS: { readonly [K in PartOfPiece['kind']]: readonly Field[] } = {
  corner: CORNER_FIELDS,
  edge: EDGE_FIELDS,
  cutout: CUTOUT_FIELDS,
  support: SUPPORT_FIELDS,
  load: FIXED_LOAD_FIELDS,
  steel: STEEL_FIELDS,
  joint: JOINT_FIELDS,
};

/** The form of a part that the piece has. */
export function partForm(piece: Piece, part: PartOfPiece, job: Job): PartFormData {
  const [list, things] = listOf(piece, part.kind);
  const index =
    'index' in part ? part.index : things.findIndex((thing) => 'id' in thing && thing.id === part.id);
  const row = partRows(part.kind, piece, job)[index]!;
  return { title: row.name, fields: FIELDS[part.kind], steps: [...list, index] };
}

function listOf(piece: Piece, kind: PartOfPiece['kind']): [readonly Step[], readonly object[]] {
  switch (kind) {
    case 'corner':
      return [['corners'], piece.corners];
    case 'edge':
      return [['edges'], piece.edges ?? []];
    case 'cutout':
      return [['cutouts'], piece.cutouts];
    case 'support':
      return [['supports'], piece.supports];
    case 'load':
      return [['loads', 'fixed'], piece.loads.fixed];
    case 'steel':
      return [['reinforcement'], piece.reinforcement];
    case 'joint':
      return [['joints'], piece.joints];
  }
}
