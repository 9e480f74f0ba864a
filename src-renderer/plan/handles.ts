/** What of a piece can be taken hold of in the plan, in the order in which Tab reaches it. */
import { namePoint, supportCentre } from '../../src-core/drawing';
import { cutoutCentre, cutoutSize } from '../../src-core/edit';
import type { Piece, Support } from '../../src-core/job';
import type { Direction, Point } from '../../src-core/outline';
import { between, directionAt, leftOf, moved, outlineEdges } from '../../src-core/outline';
import type { Part } from '../state/selection';

interface Held {
  /** Stable while the thing is there; also its name in the document. */
  readonly key: string;
  readonly part: Part;
  /** Where the handle stands. */
  readonly at: Point;
}

export type Handle =
  | (Held & { readonly role: 'piece' | 'cutout' | 'support' | 'load' })
  | (Held & { readonly role: 'corner'; readonly index: number })
  | (Held & { readonly role: 'edge'; readonly index: number; readonly outward: Direction })
  | (Held & {
      readonly role: 'cutout-size';
      readonly centre: Point;
      readonly along: Direction;
      readonly isRound: boolean;
    })
  | (Held & { readonly role: 'support-end'; readonly end: 'from' | 'to' });

/** A piece is never altered, so its handles are found once. */
const known = new WeakMap<Piece, readonly Handle[]>();

/** Every handle of a piece: itself, corners and edges in turn, cutouts, supports with their ends, loads. */
export function handlesOf(piece: Piece): readonly Handle[] {
  const found = known.get(piece) ?? findHandles(piece);
  known.set(piece, found);
  return found;
}

/** The handle of that key, or undefined where the piece has it no more. */
export function handleOf(piece: Piece, key: string): Handle | undefined {
  return handlesOf(piece).find((handle) => handle.key === key);
}

/** Points of a thing that a drag may bring to rest on what is drawn; the nearest to the hand is used. */
export function anchorsOf(piece: Piece, handle: Handle): readonly Point[] {
  if (handle.role === 'piece') return piece.corners;
  if (handle.role !== 'support' || handle.part.kind !== 'support') return [handle.at];
  const { id } = handle.part;
  const support = piece.supports.find((one) => one.id === id);
  if (support?.kind === 'bracket') return support.roots;
  if (support?.kind !== 'cabinet') return [handle.at];
  const along = directionAt((support.angleDeg * Math.PI) / 180);
  const right = moved(support.corner, along, support.widthIn);
  const back = (corner: Point) => moved(corner, leftOf(along), support.depthIn);
  return [support.corner, right, back(right), back(support.corner)];
}

/** Keys of the targets that move along with a handle, and so cannot hold it; see `snapTargets`. */
export function movesAlong(piece: Piece, handle: Handle): string[] {
  const n = piece.corners.length;
  const own = (key: string) => `${piece.id}/${key}`;
  const around = (from: number, count: number, what: string) =>
    Array.from({ length: count }, (_, k) => own(`${what}-${(from + k + n) % n}`));
  switch (handle.role) {
    case 'piece':
      return [`${piece.id}/`];
    case 'corner':
      return [
        ...around(handle.index, 1, 'corner'),
        ...around(handle.index - 1, 2, 'edge'),
        own('centre-line'),
      ];
    case 'edge':
      return [
        ...around(handle.index, 2, 'corner'),
        ...around(handle.index - 1, 3, 'edge'),
        own('centre-line'),
      ];
    case 'cutout':
    case 'cutout-size':
    case 'support':
    case 'support-end':
      return 'id' in handle.part ? [own(`${handle.part.kind}-${handle.part.id}`)] : [];
    case 'load':
      return [];
  }
}

function findHandles(piece: Piece): Handle[] {
  return [
    { role: 'piece', key: 'piece', part: { kind: 'piece' }, at: namePoint(piece) },
    ...outlineHandles(piece),
    ...piece.cutouts.flatMap(cutoutHandles),
    ...piece.supports.flatMap(supportHandles),
    ...piece.loads.fixed.map(
      ({ id, centre }): Handle => ({
        role: 'load',
        key: `load-${id}`,
        part: { kind: 'load', id },
        at: centre,
      }),
    ),
  ];
}

function outlineHandles(piece: Piece): Handle[] {
  return outlineEdges(piece.corners).flatMap(({ edge, a, b, inward }): Handle[] => [
    {
      role: 'corner',
      key: `corner-${edge}`,
      part: { kind: 'corner', index: edge },
      at: { xIn: a.xIn, yIn: a.yIn },
      index: edge,
    },
    {
      role: 'edge',
      key: `edge-${edge}`,
      part: { kind: 'edge', index: edge },
      at: between(a, b, 0.5),
      index: edge,
      outward: { x: -inward.x, y: -inward.y },
    },
  ]);
}

/** The middle moves a cutout, its front right corner (the right of a circle) sizes it about the middle. */
function cutoutHandles({ id, shape }: Piece['cutouts'][number]): Handle[] {
  const part: Part = { kind: 'cutout', id };
  const centre = cutoutCentre(shape);
  const { widthIn, depthIn } = cutoutSize(shape);
  const isRound = shape.kind === 'circle';
  const along = directionAt(shape.kind === 'rectangle' ? (shape.angleDeg * Math.PI) / 180 : 0);
  const right = moved(centre, along, widthIn / 2);
  return [
    { role: 'cutout', key: `cutout-${id}`, part, at: centre },
    {
      role: 'cutout-size',
      key: `cutout-size-${id}`,
      part,
      at: isRound ? right : moved(right, leftOf(along), -depthIn / 2),
      centre,
      along,
      isRound,
    },
  ];
}

function supportHandles(support: Support): Handle[] {
  const part: Part = { kind: 'support', id: support.id };
  const at = supportCentre(support);
  if (at === null) return [];
  const middle: Handle = { role: 'support', key: `support-${support.id}`, part, at };
  if (support.kind !== 'wall' && support.kind !== 'ledger') return [middle];
  const end = (which: 'from' | 'to'): Handle => ({
    role: 'support-end',
    key: `support-${which}-${support.id}`,
    part,
    at: support[which],
    end: which,
  });
  return [end('from'), middle, end('to')];
}
