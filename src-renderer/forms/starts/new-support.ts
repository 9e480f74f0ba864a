/** A support of each kind, complete and in a sensible place under its piece. */
import { STOCK_ARMS } from '../../../src-core/bracket';
import type { Piece, Support, SupportKind } from '../../../src-core/job';
import type { Point } from '../../../src-core/outline';
import { boundingBox, moved } from '../../../src-core/outline';
import { backSide, roomiest, slabOf } from './room-on-slab';

/** Width of the bearing of a stud wall of 2x6, and of a ledger of 2x lumber, actual sizes. */
const WALL_WIDTH_IN = 5.5;
const LEDGER_WIDTH_IN = 1.5;
const BLOCK_IN = 8;
const CABINET_WIDTH_IN = 24;
const CABINET_DEPTH_IN = 24;
/** Studs, and so the brackets that are fixed to them. */
const STUD_SPACING_IN = 16;
const REACH_IN = 8;

/** What every support has; it stands from the first day, touches and rests. */
const PLAIN = {
  firstDay: 0,
  lastDay: null,
  gapIn: 0,
  raisedIn: 0,
  stiffness: null,
  hold: { kind: 'resting' },
} as const;

/** A new support; about `near` where that is given, else where the slab has most room. */
export function newSupport(kind: SupportKind, piece: Piece, id: string, near: Point | null = null): Support {
  const slab = slabOf(piece);
  const place = near ?? roomiest(slab, legPlaces(piece)).at;
  const every = { ...PLAIN, id };
  switch (kind) {
    case 'cabinet':
      return { ...every, kind, ...cabinetAt(piece, place) };
    case 'wall':
      return { ...every, kind, build: 'stud', ...strip(piece, WALL_WIDTH_IN), ...STUDS, heightIn: null };
    case 'ledger':
      return { ...every, kind, ...strip(piece, LEDGER_WIDTH_IN) };
    case 'pier': {
      const footprint = { kind: 'rectangle', centre: place, widthIn: BLOCK_IN, depthIn: BLOCK_IN } as const;
      return {
        ...every,
        kind,
        build: 'block',
        footprint: { ...footprint, angleDeg: 0 },
        bed: 'mortar',
        heightIn: null,
      };
    }
    case 'leg':
      return { ...every, kind, centre: place, widthIn: 3.5, depthIn: 1.5, angleDeg: 0 };
    case 'bracket':
      return { ...every, kind, ...bracketsOn(piece) };
    case 'full-bed':
      return { ...every, kind, corners: null };
  }
}

const STUDS = { studSpacingIn: STUD_SPACING_IN } as const;

/** Middle of what a support takes up in plan; null for a bed of the whole piece. */
export function supportPlace(support: Support): Point | null {
  switch (support.kind) {
    case 'cabinet': {
      const rad = (support.angleDeg * Math.PI) / 180;
      const along = { x: Math.cos(rad), y: Math.sin(rad) };
      const back = { x: -along.y, y: along.x };
      return moved(moved(support.corner, along, support.widthIn / 2), back, support.depthIn / 2);
    }
    case 'wall':
    case 'ledger':
      return middle([support.from, support.to]);
    case 'pier':
      return support.footprint.centre;
    case 'leg':
      return support.centre;
    case 'bracket':
      return middle(support.roots);
    case 'full-bed':
      return support.corners === null ? null : middle(support.corners);
  }
}

/** New legs keep away from those that stand. */
function legPlaces(piece: Piece): Point[] {
  return piece.supports.flatMap((support) =>
    support.kind === 'leg' || support.kind === 'pier' ? [supportPlace(support)!] : [],
  );
}

function cabinetAt(piece: Piece, centre: Point) {
  const box = boundingBox(piece.corners);
  const widthIn = Math.min(CABINET_WIDTH_IN, box.maxXIn - box.minXIn);
  const depthIn = Math.min(CABINET_DEPTH_IN, box.maxYIn - box.minYIn);
  const soffitIn = piece.topElevationIn - piece.thicknessIn;
  return {
    corner: { xIn: centre.xIn - widthIn / 2, yIn: centre.yIn - depthIn / 2 },
    angleDeg: 0,
    widthIn,
    depthIn,
    // a slab at or below the datum says nothing about its cabinet; then the usual box
    heightIn: soffitIn >= 1 ? soffitIn : 34.5,
    panelIn: 0.75,
    frontRail: true,
    backRail: true,
    subTop: false,
    railStiffness: null,
    feet: null,
    removableParts: [],
    backingBoardIn: null,
    weightLb: 0,
  };
}

/** A strip along the back with its outer face flush with the slab. */
function strip(piece: Piece, widthIn: number) {
  const { a, b, inward } = backSide(piece);
  return { from: moved(a, inward, widthIn / 2), to: moved(b, inward, widthIn / 2), widthIn };
}

/** Angles on the studs behind the back edge, one a stud, lagged; as many as fit and one at the least. */
function bracketsOn(piece: Piece) {
  const { a, lengthIn, along, inward } = backSide(piece);
  const count = Math.max(1, Math.floor(lengthIn / STUD_SPACING_IN));
  const firstIn = (lengthIn - (count - 1) * STUD_SPACING_IN) / 2;
  const roots = Array.from({ length: count }, (_, i) => moved(a, along, firstIn + i * STUD_SPACING_IN));
  const stock = STOCK_ARMS.find(({ arm }) => arm.kind === 'angle')!;
  const turnDeg = (Math.atan2(inward.y, inward.x) * 180) / Math.PI;
  return {
    // from the left, as they would be marked on the wall
    roots: roots.sort((p, q) => p.xIn - q.xIn || p.yIn - q.yIn),
    directionDeg: (Math.round(turnDeg * 1e6) / 1e6 + 360) % 360,
    reachIn: REACH_IN,
    seatWidthIn: stock.seatWidthIn,
    heelIn: stock.heelIn,
    arm: stock.arm,
    backing: 'timber-stud' as const,
    fixing: stock.fixing,
    make: stock.make,
  };
}

function middle(points: readonly Point[]): Point {
  const sum = points.reduce((s, p) => ({ xIn: s.xIn + p.xIn, yIn: s.yIn + p.yIn }), { xIn: 0, yIn: 0 });
  return { xIn: sum.xIn / points.length, yIn: sum.yIn / points.length };
}
