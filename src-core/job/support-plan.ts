/** Where each part of a support can touch the slab, as polygons in plan. */
import type { Point } from '../outline';
import {
  circlePoints,
  directionAt,
  directionBetween,
  distanceIn,
  leftOf,
  moved,
  patchOutline,
  TOUCH_IN,
} from '../outline';
import type { CabinetSupport, Support } from './support';

export type BearingPart =
  | 'left-side'
  | 'right-side'
  | 'front-rail'
  | 'back-rail'
  | 'sub-top'
  | 'arm'
  | 'whole'
  | 'strip';

export interface BearingPatch {
  readonly part: BearingPart;
  /** For an arm the index of its root; 0 otherwise. */
  readonly index: number;
  readonly corners: readonly Point[];
}

/** A circle's chords leave it by at most this much; far below what a saw or a mason works to. */
const CHORD_IN = 1 / 64;

/**
 * Plan polygons of a support's parts, in inches in the drawing's coordinates. `outline` is the piece's own, which
 * a full bed without corners of its own fills. A wall or ledger without length gives none.
 */
export function bearingPatches(support: Support, outline: readonly Point[]): BearingPatch[] {
  switch (support.kind) {
    case 'cabinet':
      return cabinetPatches(support);
    case 'wall':
    case 'ledger': {
      const corners = strip(support.from, support.to, support.widthIn);
      return corners === null ? [] : [{ part: 'strip', index: 0, corners }];
    }
    case 'pier': {
      const { footprint } = support;
      const corners =
        footprint.kind === 'circle'
          ? circlePoints(footprint.centre, footprint.diameterIn / 2, CHORD_IN)
          : patchOutline(footprint.centre, footprint.widthIn, footprint.depthIn, radians(footprint.angleDeg));
      return [{ part: 'whole', index: 0, corners }];
    }
    case 'leg':
      return [
        {
          part: 'whole',
          index: 0,
          corners: patchOutline(support.centre, support.widthIn, support.depthIn, radians(support.angleDeg)),
        },
      ];
    case 'bracket': {
      const direction = directionAt(radians(support.directionDeg));
      return support.roots.flatMap((root, index): BearingPatch[] => {
        const corners = strip(root, moved(root, direction, support.reachIn), support.seatWidthIn);
        return corners === null ? [] : [{ part: 'arm', index, corners }];
      });
    }
    case 'full-bed':
      return [{ part: 'whole', index: 0, corners: support.corners ?? outline }];
  }
}

/** Sides always; rails and sub-top where the cabinet has them. A rail is as thick as a panel, between the sides. */
function cabinetPatches(cabinet: CabinetSupport): BearingPatch[] {
  const { widthIn: w, depthIn: d } = cabinet;
  const panel = Math.min(cabinet.panelIn, w / 2, d / 2);
  const along = directionAt(radians(cabinet.angleDeg));
  const back = leftOf(along);
  const part = (
    name: BearingPart,
    fromX: number,
    toX: number,
    depths: readonly [number, number],
  ): BearingPatch => {
    const at = (x: number, y: number): Point => moved(moved(cabinet.corner, along, x), back, y);
    const [near, far] = depths;
    return { part: name, index: 0, corners: [at(fromX, near), at(toX, near), at(toX, far), at(fromX, far)] };
  };
  const patches = [part('left-side', 0, panel, [0, d]), part('right-side', w - panel, w, [0, d])];
  if (cabinet.frontRail) patches.push(part('front-rail', panel, w - panel, [0, panel]));
  if (cabinet.backRail) patches.push(part('back-rail', panel, w - panel, [d - panel, d]));
  if (cabinet.subTop) patches.push(part('sub-top', 0, w, [0, d]));
  return patches;
}

function strip(from: Point, to: Point, widthIn: number): Point[] | null {
  if (distanceIn(from, to) <= TOUCH_IN) return null;
  const across = leftOf(directionBetween(from, to));
  const half = widthIn / 2;
  return [
    moved(from, across, -half),
    moved(to, across, -half),
    moved(to, across, half),
    moved(from, across, half),
  ];
}

function radians(angleDeg: number): number {
  return (angleDeg * Math.PI) / 180;
}
