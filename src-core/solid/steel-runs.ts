/** Mesh wires and bars as they lie in a slab. */
import type { Piece, Reinforcement } from '../job';
import { pieceRegion, steelSets } from '../job';
import type { Direction, Point, Region } from '../outline';
import { clipSegmentToRegion, directionAt, leftOf, moved, offsetPolygon } from '../outline';
import type { SteelRun } from './types';

/** Most wires one way across one layer that are given; of a denser layer every second, third ... is left out. */
export const MOST_RUNS_ONE_WAY = 400;

interface WireSet {
  readonly along: Direction;
  readonly spacingIn: number;
  readonly diameterIn: number;
  readonly zIn: number;
}

/**
 * The wires and bars of every layer, straight from edge cover to edge cover and cut off as far from an opening. The
 * first lies half the odd remainder in from the cover. Hooks are not drawn. Fabric and fibre give none.
 */
export function steelRuns(piece: Piece): readonly SteelRun[] {
  const plan = pieceRegion(piece);
  if (!plan.ok) return [];
  return piece.reinforcement.flatMap((layer): SteelRun[] => {
    if (layer.kind !== 'mesh' && layer.kind !== 'bars') return [];
    const within = coveredRegions(plan, layer.edgeCoverIn);
    const field = layer.kind === 'bars' ? layer.corners : null;
    return setsOf(layer, piece.topElevationIn).flatMap((set) =>
      linesAcross(field ?? plan.outer, set)
        .flatMap((line) => (field === null ? [line] : clipSegmentToRegion(line, { outer: field, holes: [] })))
        .flatMap((line) => within.flatMap((region) => clipSegmentToRegion(line, region)))
        .map(({ a, b }) => ({
          layerId: layer.id,
          from: [a.xIn, a.yIn, set.zIn] as const,
          to: [b.xIn, b.yIn, set.zIn] as const,
          diameterIn: set.diameterIn,
        })),
    );
  });
}

function setsOf(layer: Extract<Reinforcement, { kind: 'mesh' | 'bars' }>, topIn: number): WireSet[] {
  return steelSets(layer).map(({ angleDeg, spacingIn, diameterIn, centreDepthIn }) => {
    const along = directionAt((angleDeg * Math.PI) / 180);
    return { along, spacingIn, diameterIn, zIn: topIn - centreDepthIn };
  });
}

/** The slab less the cover along its edges and round its openings; several where a neck is too narrow. */
function coveredRegions({ outer, holes }: Region, coverIn: number): Region[] {
  const openings = holes.flatMap((hole) => offsetPolygon(hole, coverIn, 'round'));
  return offsetPolygon(outer, -coverIn, 'mitre').map((part) => ({ outer: part, holes: openings }));
}

/** Parallel lines over the whole extent of an outline, evenly about its middle. */
function linesAcross(outline: readonly Point[], { along, spacingIn }: WireSet): { a: Point; b: Point }[] {
  const across = leftOf(along);
  const onto = (axis: Direction) => outline.map(({ xIn, yIn }) => xIn * axis.x + yIn * axis.y);
  const [lengths, widths] = [onto(along), onto(across)];
  const [startIn, endIn] = [Math.min(...lengths), Math.max(...lengths)];
  const [lowIn, highIn] = [Math.min(...widths), Math.max(...widths)];
  const count = Math.floor((highIn - lowIn) / spacingIn + 1e-9) + 1;
  const firstIn = (lowIn + highIn - (count - 1) * spacingIn) / 2;
  const step = Math.ceil(count / MOST_RUNS_ONE_WAY);
  const origin = { xIn: 0, yIn: 0 };
  return Array.from({ length: Math.ceil(count / step) }, (_, k) => {
    const on = moved(origin, across, firstIn + k * step * spacingIn);
    return { a: moved(on, along, startIn), b: moved(on, along, endIn) };
  });
}
