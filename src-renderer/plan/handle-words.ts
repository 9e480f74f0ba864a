/** Names and sizes of handles, for those who hear the plan. */
import { cutoutSize } from '../../src-core/edit';
import type { Piece } from '../../src-core/job';
import type { Point } from '../../src-core/outline';
import { boundingBox, outlineEdges } from '../../src-core/outline';
import type { UnitSystem } from '../../src-core/units';
import { printLength } from '../../src-core/units';
import type { Handle } from './handles';

/** "Corner 2, 96 in from the left, 0 in from the front": measured from the piece's own left and front. */
export function handleLabel(piece: Piece, handle: Handle, system: UnitSystem): string {
  const print = (valueIn: number) => printLength(valueIn, { system });
  const box = boundingBox(piece.corners);
  const place = ({ xIn, yIn }: Point) =>
    `${print(xIn - box.minXIn)} from the left, ${print(yIn - box.minYIn)} from the front`;
  switch (handle.role) {
    case 'piece':
      return `${piece.name}, ${print(box.maxXIn - box.minXIn)} by ${print(box.maxYIn - box.minYIn)}`;
    case 'corner': {
      const { radiusIn } = piece.corners[handle.index]!;
      const round = radiusIn > 0 ? `, radius ${print(radiusIn)}` : '';
      return `Corner ${handle.index + 1}, ${place(handle.at)}${round}`;
    }
    case 'edge': {
      const edge = outlineEdges(piece.corners).find(({ edge: index }) => index === handle.index)!;
      const kind = EDGE_WORDS[piece.edges?.[handle.index]?.kind ?? 'free'];
      return `Edge ${handle.index + 1}, ${print(edge.lengthIn)} long, ${kind}`;
    }
    case 'cutout':
      return `${cutoutWords(piece, handle, print)}, middle ${place(handle.at)}`;
    case 'cutout-size':
      return `Size of ${cutoutWords(piece, handle, print)}`;
    case 'support':
      return `${supportName(piece, handle)}, middle ${place(handle.at)}`;
    case 'support-end':
      return `${handle.end === 'from' ? 'Start' : 'End'} of ${supportName(piece, handle)}, ${place(handle.at)}`;
    case 'load':
      return `${loadName(piece, handle)}, middle ${place(handle.at)}`;
  }
}

const EDGE_WORDS = { free: 'free', wall: 'at a wall', butted: 'butted to another piece' } as const;

const SUPPORT_WORDS = {
  cabinet: 'Cabinet',
  wall: 'Wall',
  ledger: 'Ledger',
  pier: 'Pier',
  leg: 'Leg',
  bracket: 'Brackets',
  'full-bed': 'Full bed',
} as const;

function cutoutWords(piece: Piece, { part }: Handle, print: (valueIn: number) => string): string {
  const cutout = 'id' in part ? piece.cutouts.find(({ id }) => id === part.id) : undefined;
  if (cutout === undefined) return 'cutout';
  const { widthIn, depthIn } = cutoutSize(cutout.shape);
  const size =
    cutout.shape.kind === 'circle' ? `${print(widthIn)} across` : `${print(widthIn)} by ${print(depthIn)}`;
  return `${cutout.name ?? cutout.purpose}, ${size}`;
}

function supportName(piece: Piece, { part }: Handle): string {
  const support = 'id' in part ? piece.supports.find(({ id }) => id === part.id) : undefined;
  return support === undefined ? 'support' : `${SUPPORT_WORDS[support.kind]} ${support.name ?? support.id}`;
}

function loadName(piece: Piece, { part }: Handle): string {
  return ('id' in part ? piece.loads.fixed.find(({ id }) => id === part.id)?.name : undefined) ?? 'load';
}
