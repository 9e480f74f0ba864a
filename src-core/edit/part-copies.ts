/** Where the copy of a part may go: right of it, left, behind, in front, as far off as the part is large. */
import type { Cutout, Piece, Reinforcement, Support } from '../job';
import { bearingPatches } from '../job';
import type { Point } from '../outline';
import { boundingBox, patchOutline } from '../outline';
import { cutoutCentre, cutoutSize } from './cutout-shapes';
import type { PartRef } from './part-ref';
import { movedShape, movedSupport, shift } from './placement';

/** Room between openings, and between loads, in. */
const APART_IN = 2;
/** Room between a joint and its copy, in. */
const JOINT_APART_IN = 12;

/** Anything that a piece has in one of its lists. */
export type PiecePart =
  | Cutout
  | Support
  | Reinforcement
  | Piece['joints'][number]
  | Piece['loads']['fixed'][number];

/** By how much a copy is shifted. */
export interface CopyPlace {
  readonly dxIn: number;
  readonly dyIn: number;
}

/** Shifts to try one after another; none where the piece has no such part. */
export function copyPlaces(piece: Piece, part: PartRef): readonly CopyPlace[] {
  if (part.kind === 'steel') return [{ dxIn: 0, dyIn: 0 }];
  const size = sizeOf(piece, part);
  return size === null ? [] : around(size.widthIn, size.depthIn);
}

/** The part of a piece shifted; its id and name are still those of the part. */
export function shiftedPart(piece: Piece, part: PartRef, { dxIn, dyIn }: CopyPlace): PiecePart {
  const motion = shift(dxIn, dyIn);
  switch (part.kind) {
    case 'cutout': {
      const cutout = byId(piece.cutouts, part.id);
      return { ...cutout, shape: movedShape(cutout.shape, motion) };
    }
    case 'support':
      return movedSupport(byId(piece.supports, part.id), motion);
    case 'load': {
      const load = byId(piece.loads.fixed, part.id);
      return { ...load, centre: motion.point(load.centre) };
    }
    case 'joint': {
      const joint = byId(piece.joints, part.id);
      return { ...joint, from: motion.point(joint.from), to: motion.point(joint.to) };
    }
    case 'steel':
      return byId(piece.reinforcement, part.id);
  }
}

function sizeOf(piece: Piece, part: PartRef): { readonly widthIn: number; readonly depthIn: number } | null {
  switch (part.kind) {
    case 'cutout': {
      const { shape } = byId(piece.cutouts, part.id);
      const angleDeg = shape.kind === 'rectangle' ? shape.angleDeg : 0;
      const { widthIn, depthIn } = cutoutSize(shape);
      return grown(boxOf(cutoutCentre(shape), widthIn, depthIn, angleDeg), APART_IN);
    }
    case 'load': {
      const { centre, widthIn, depthIn, angleDeg } = byId(piece.loads.fixed, part.id);
      return grown(boxOf(centre, widthIn, depthIn, angleDeg), APART_IN);
    }
    case 'support': {
      const patches = bearingPatches(byId(piece.supports, part.id), piece.corners);
      return grown(
        patches.flatMap(({ corners }) => corners),
        0,
      );
    }
    case 'joint':
      return { widthIn: JOINT_APART_IN, depthIn: JOINT_APART_IN };
    case 'steel':
      return null;
  }
}

function boxOf(centre: Point, widthIn: number, depthIn: number, angleDeg: number): readonly Point[] {
  return patchOutline(centre, widthIn, depthIn, (angleDeg * Math.PI) / 180);
}

function grown(
  points: readonly Point[],
  byIn: number,
): { readonly widthIn: number; readonly depthIn: number } {
  const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(points);
  return { widthIn: maxXIn - minXIn + byIn, depthIn: maxYIn - minYIn + byIn };
}

function around(widthIn: number, depthIn: number): readonly CopyPlace[] {
  return [
    { dxIn: widthIn, dyIn: 0 },
    { dxIn: -widthIn, dyIn: 0 },
    { dxIn: 0, dyIn: depthIn },
    { dxIn: 0, dyIn: -depthIn },
  ];
}

function byId<Thing extends { readonly id: string }>(list: readonly Thing[], id: string): Thing {
  const thing = list.find((one) => one.id === id);
  if (thing === undefined) throw new Error(`No part "${id}" to copy`);
  return thing;
}
