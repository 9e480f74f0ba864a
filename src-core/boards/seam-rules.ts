/** Where seams of backing boards do not belong: by corners that crack, along edges, under an overhang. */
import type { CutoutShape, Piece } from '../job';
import { bearingPatches } from '../job';
import type { Direction, Point, Region, Segment } from '../outline';
import {
  cutoutOutline,
  directionBetween,
  distanceIn,
  insideCorners,
  measureOverhangs,
  moved,
  outlineEdges,
  roundCorners,
} from '../outline';
import { toFrame } from './lay-frame';
import {
  ALONG_EDGE_RAD,
  INSIDE_TURN_RAD,
  MEASURE_STEP_IN,
  SAME_IN,
  SEAM_CLEAR_IN,
  STRIP_CONTACT_IN,
} from './practice';

/** A strip of slab along an edge in which no seam may run along that edge. */
export interface BareStrip {
  readonly a: Point;
  readonly b: Point;
  readonly inward: Direction;
  readonly depthIn: number;
  readonly why: 'edge' | 'overhang';
}

export interface SeamRules {
  /** Corners of openings and inside corners, arcs as points on them; round openings all the way round. */
  readonly corners: readonly Point[];
  readonly strips: readonly BareStrip[];
}

export type SeamFault = 'corner' | BareStrip['why'];

/** Chords leave a rounded corner by at most this, in. */
const CHORD_IN = 1 / 64;

/** The rules of a piece, in its plan. Supports that stay count for overhangs; where nothing stays, edges alone do. */
export function seamRules(piece: Piece, region: Region): SeamRules {
  return {
    corners: [...openingCorners(piece, region), ...turningCorners(piece)],
    strips: strips(piece, region),
  };
}

/** Every corner of the openings' outlines, and where a corner is rounded the drawn one as well. */
function openingCorners(piece: Piece, region: Region): Point[] {
  return piece.cutouts.flatMap(({ shape }, i) => [...(region.holes[i] ?? []), ...drawnCorners(shape)]);
}

function drawnCorners(shape: CutoutShape): readonly Point[] {
  if (shape.kind === 'circle') return [];
  if (shape.kind === 'polygon') return shape.corners;
  const sharp = cutoutOutline({ ...shape, radiusIn: 0 }, CHORD_IN);
  return sharp.ok ? sharp.points : [];
}

function turningCorners(piece: Piece): Point[] {
  const inside = new Map(insideCorners(piece.corners, INSIDE_TURN_RAD).map(({ corner, at }) => [corner, at]));
  const rounding = roundCorners(piece.corners, CHORD_IN);
  if (!rounding.ok) return [...inside.values()];
  const { points, arcCorners } = rounding.outline;
  const isOnArc = (k: number) => {
    const corner = arcCorners[k];
    return corner !== null && corner !== undefined && inside.has(corner);
  };
  const onArcs = points.filter((_, k) => isOnArc(k) || isOnArc((k + points.length - 1) % points.length));
  return [...inside.values(), ...onArcs];
}

function strips(piece: Piece, region: Region): BareStrip[] {
  const staying = piece.supports.filter(({ lastDay }) => lastDay === null);
  const bearings = staying.flatMap((support) =>
    bearingPatches(support, region.outer).map(({ corners }) => ({
      kind: 'polygon' as const,
      points: corners,
    })),
  );
  const drawn = { outer: piece.corners, holes: region.holes };
  const overhangs = new Map(
    measureOverhangs({ region: drawn, bearings, sampleIn: MEASURE_STEP_IN }).map(({ edge, overhangIn }) => [
      edge,
      overhangIn ?? 0,
    ]),
  );
  return outlineEdges(piece.corners).map(({ edge, a, b, inward }) => {
    const isFree = piece.edges === null || piece.edges[edge]?.kind === 'free';
    const overhangIn = isFree ? (overhangs.get(edge) ?? 0) : 0;
    const isOver = overhangIn > SEAM_CLEAR_IN;
    return { a, b, inward, depthIn: isOver ? overhangIn : SEAM_CLEAR_IN, why: isOver ? 'overhang' : 'edge' };
  });
}

/** The rules in a frame with this x axis. */
export function rulesInFrame({ corners, strips: list }: SeamRules, axis: Direction): SeamRules {
  return {
    corners: corners.map((corner) => toFrame(corner, axis)),
    strips: list.map((strip) => {
      const inward = toFrame({ xIn: strip.inward.x, yIn: strip.inward.y }, axis);
      return {
        ...strip,
        a: toFrame(strip.a, axis),
        b: toFrame(strip.b, axis),
        inward: { x: inward.xIn, y: inward.yIn },
      };
    }),
  };
}

/** What is wrong with a seam of a layout in its frame; empty where nothing is. */
export function seamFaults(seam: Segment, { corners, strips: list }: SeamRules): SeamFault[] {
  const isNearCorner = corners.some((corner) => distanceToSeamIn(corner, seam) < SEAM_CLEAR_IN - SAME_IN);
  const inStrips = new Set(list.filter((strip) => runsInStrip(seam, strip)).map(({ why }) => why));
  return [...(isNearCorner ? (['corner'] as const) : []), ...inStrips];
}

/** Distance from a point to a seam, which is level or upright in its frame, in. */
function distanceToSeamIn({ xIn, yIn }: Point, { a, b }: Segment): number {
  const dx = Math.max(Math.min(a.xIn, b.xIn) - xIn, 0, xIn - Math.max(a.xIn, b.xIn));
  const dy = Math.max(Math.min(a.yIn, b.yIn) - yIn, 0, yIn - Math.max(a.yIn, b.yIn));
  return Math.hypot(dx, dy);
}

/** Whether enough of a seam lies in the strip and runs along its edge. */
function runsInStrip(seam: Segment, { a, b, inward, depthIn }: BareStrip): boolean {
  const edge = directionBetween(a, b);
  const direction = directionBetween(seam.a, seam.b);
  const across = Math.abs(edge.x * direction.y - edge.y * direction.x);
  if (across > Math.sin(ALONG_EDGE_RAD)) return false;
  const lengthIn = distanceIn(a, b);
  const along = [seam.a, seam.b].map((p) => (p.xIn - a.xIn) * edge.x + (p.yIn - a.yIn) * edge.y);
  const fromIn = Math.max(0, Math.min(...along));
  const toIn = Math.min(lengthIn, Math.max(...along));
  if (toIn - fromIn < STRIP_CONTACT_IN) return false;
  const share = ((fromIn + toIn) / 2 - along[0]!) / (along[1]! - along[0]!);
  const middle = moved(seam.a, direction, share * distanceIn(seam.a, seam.b));
  const insideIn = (middle.xIn - a.xIn) * inward.x + (middle.yIn - a.yIn) * inward.y;
  return insideIn > -SAME_IN && insideIn < depthIn - SAME_IN;
}
