/** The boards that hold wet concrete in: edge forms round a piece, and the panels of the falsework sections under it. */
import { ShapeUtils, Vector2 } from 'three';
import type { FalseworkSection, Piece } from '../../src-core/job';
import { pieceOutline } from '../../src-core/job';
import type { Point } from '../../src-core/outline';
import { counterClockwise } from '../../src-core/outline';
import type { Solid } from '../../src-core/solid';
import { mergedSolid } from './solid-arrays';

/** A sawn board on edge, in. Drawn to be seen; what is bought stands in the cut list. */
const BOARD_IN = 1.5;
/** A deck panel, in. */
const PANEL_IN = 0.75;
/** Mitres of sharp corners run out at this many boards. */
const LONGEST_MITRE = 3;
/** Where the outline turns by more than this there is a joint between two boards; less is an arc, whose board is bent. */
const JOINT_RAD = 0.35;

type Place = readonly [number, number, number];

/** Boards round the free edges of a piece, from soffit to top, mitred at corners; null where it has none. */
export function edgeForms(piece: Piece): Solid | null {
  const outline = pieceOutline(piece);
  if (!outline.ok) return null;
  const { outer, edgeOfPoint } = outline;
  const n = outer.length;
  const isBoarded = (i: number) => {
    const edge = piece.edges?.[edgeOfPoint[(i + n) % n]!];
    return edge === undefined || edge.kind === 'free';
  };
  const topIn = piece.topElevationIn;
  const heights: Heights = { lowIn: topIn - piece.thicknessIn, highIn: topIn };
  const boards = outer.flatMap((from, i) => {
    if (!isBoarded(i)) return [];
    const to = outer[(i + 1) % n]!;
    const out = outwards(from, to);
    const before = isBoarded(i - 1) ? outwards(outer[(i + n - 1) % n]!, from) : null;
    const after = isBoarded(i + 1) ? outwards(to, outer[(i + 2) % n]!) : null;
    return [
      boardSolid([from, to, mitred(to, out, after), mitred(from, out, before)], heights, {
        startsJoint: before === null || isJoint(before, out),
        endsJoint: after === null || isJoint(out, after),
        startsOpen: before === null,
        endsOpen: after === null,
      }),
    ];
  });
  return boards.length === 0 ? null : mergedSolid(boards);
}

/** The panel of a falsework section, hard under the soffit. */
export function sectionPanel({ corners }: FalseworkSection, soffitIn: number): Solid {
  const ring = counterClockwise(corners);
  const heights: Heights = { lowIn: soffitIn - PANEL_IN, highIn: soffitIn };
  const flat = ShapeUtils.triangulateShape(
    ring.map(({ xIn, yIn }) => new Vector2(xIn, yIn)),
    [],
  );
  const faces = [heights.highIn, heights.lowIn].map((zIn) => {
    const up = zIn === heights.highIn;
    return flat.map((triangle) => {
      const places = triangle.map((k): Place => [ring[k!]!.xIn, ring[k!]!.yIn, zIn]);
      return faceSolid(up ? places : places.reverse(), [0, 0, up ? 1 : -1]);
    });
  });
  const sides = ring.map((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    return wall(from, to, heights, outwards(from, to));
  });
  const lines = ring.flatMap((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    return [...levelLine(from, to, heights.highIn), ...levelLine(from, to, heights.lowIn)];
  });
  return { ...mergedSolid([...faces.flat(), ...sides]), inkLines: Float32Array.from(lines) };
}

interface Heights {
  readonly lowIn: number;
  readonly highIn: number;
}

interface Ends {
  readonly startsJoint: boolean;
  readonly endsJoint: boolean;
  /** Where no other board follows, the end grain shows. */
  readonly startsOpen: boolean;
  readonly endsOpen: boolean;
}

interface Direction {
  readonly x: number;
  readonly y: number;
}

/** To the right of the way from one point to another: outside of an outline that runs counter-clockwise. */
function outwards(from: Point, to: Point): Direction {
  const [x, y] = [to.xIn - from.xIn, to.yIn - from.yIn];
  const length = Math.hypot(x, y);
  return length === 0 ? { x: 0, y: 0 } : { x: y / length, y: -x / length };
}

function isJoint(one: Direction, other: Direction): boolean {
  return one.x * other.x + one.y * other.y < Math.cos(JOINT_RAD);
}

/** The outer corner of a board at one of its ends. */
function mitred(at: Point, own: Direction, neighbour: Direction | null): Point {
  const other = neighbour ?? own;
  const [x, y] = [own.x + other.x, own.y + other.y];
  const scale = Math.min(LONGEST_MITRE, 1 / Math.max(1e-6, (x * x + y * y) / 2)) * BOARD_IN;
  return { xIn: at.xIn + x * scale, yIn: at.yIn + y * scale };
}

/** One board over a strip of the plan: inner edge from start to end, then outer edge back. */
function boardSolid(strip: readonly [Point, Point, Point, Point], heights: Heights, ends: Ends): Solid {
  const [innerFrom, innerTo, outerTo, outerFrom] = strip;
  const { lowIn, highIn } = heights;
  const out = outwards(innerFrom, innerTo);
  const level = (zIn: number) => strip.map(({ xIn, yIn }): Place => [xIn, yIn, zIn]);
  const faces = [
    // seen from above the strip runs clockwise
    faceSolid(level(highIn).reverse(), [0, 0, 1]),
    faceSolid(level(lowIn), [0, 0, -1]),
    wall(outerFrom, outerTo, heights, out),
    wall(innerTo, innerFrom, heights, { x: -out.x, y: -out.y }),
    ...(ends.startsOpen ? [wall(innerFrom, outerFrom, heights, outwards(innerFrom, outerFrom))] : []),
    ...(ends.endsOpen ? [wall(outerTo, innerTo, heights, outwards(outerTo, innerTo))] : []),
  ];
  const lines = [
    ...levelLine(innerFrom, innerTo, highIn),
    ...levelLine(outerFrom, outerTo, highIn),
    ...levelLine(outerFrom, outerTo, lowIn),
    ...(ends.startsJoint
      ? [...levelLine(innerFrom, outerFrom, highIn), ...plumbLine(outerFrom, heights)]
      : []),
    ...(ends.endsJoint ? [...levelLine(innerTo, outerTo, highIn), ...plumbLine(outerTo, heights)] : []),
  ];
  return { ...mergedSolid(faces), inkLines: Float32Array.from(lines) };
}

/** An upright face whose outside lies to the right of its way. */
function wall(from: Point, to: Point, { lowIn, highIn }: Heights, { x, y }: Direction): Solid {
  return faceSolid(
    [
      [from.xIn, from.yIn, lowIn],
      [to.xIn, to.yIn, lowIn],
      [to.xIn, to.yIn, highIn],
      [from.xIn, from.yIn, highIn],
    ],
    [x, y, 0],
  );
}

/** A flat face of three or four corners, counter-clockwise from outside. */
function faceSolid(corners: readonly Place[], normal: Place): Solid {
  return {
    positions: Float32Array.from(corners.flat()),
    normals: Float32Array.from(corners.flatMap(() => normal)),
    triangles: Uint32Array.from(corners.length === 3 ? [0, 1, 2] : [0, 1, 2, 0, 2, 3]),
    inkLines: new Float32Array(),
  };
}

function levelLine(from: Point, to: Point, zIn: number): number[] {
  return [from.xIn, from.yIn, zIn, to.xIn, to.yIn, zIn];
}

function plumbLine({ xIn, yIn }: Point, { lowIn, highIn }: Heights): number[] {
  return [xIn, yIn, lowIn, xIn, yIn, highIn];
}
