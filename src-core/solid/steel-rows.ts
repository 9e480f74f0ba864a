/** How many bars or wires of a set a slab takes, and the lines on which they lie. The model and the cut list both ask here. */
import type { Piece, Reinforcement, SteelSet } from '../job';
import type { Point, Region } from '../outline';
import { boundingBox, clipSegmentToRegion, turned } from '../outline';
import { coveredRegions, withinField } from './covered';

/** A bar cut shorter than this holds nothing and is left out, in. Common practice, no source. */
export const SHORTEST_BAR_IN = 6;

/** Bars or wires side by side: how many, and how far apart. */
export interface RowCount {
  readonly count: number;
  readonly pitchIn: number;
}

/** One line of bars or wires, in the set's own axes: so far across, over stretches along. */
export interface SteelRow {
  readonly acrossIn: number;
  readonly stretches: readonly { readonly fromIn: number; readonly toIn: number }[];
}

export interface SteelRows {
  readonly pitchIn: number;
  readonly rows: readonly SteelRow[];
}

/**
 * Wires of a mesh over `spreadIn` from the first to the last that cover leaves room for: the mesh has its spacing.
 */
export function wiresOver(spreadIn: number, spacingIn: number): RowCount {
  return { count: Math.floor(spreadIn / spacingIn + 1e-9) + 1, pitchIn: spacingIn };
}

/** Concrete between two bars side by side at the least, in: an inch, or a bar. ACI 318-19 25.2.1. */
const CLEAR_IN = 1;

/**
 * Bars over a width of slab, of which the cover leaves `spreadIn` from the first to the last. At their spacing, unless
 * the width would then have less steel than a bar each spacing, which is what the load check counts: then one more,
 * closer together, if there is room. ACI 318-19 7.7.2 gives spacings as the most; a bar no farther than half a spacing
 * from the edge is common practice, no source.
 */
export function barsOver(
  spreadIn: number,
  {
    widthIn,
    spacingIn,
    barIn,
  }: { readonly widthIn: number; readonly spacingIn: number; readonly barIn: number },
): RowCount {
  const fitting = wiresOver(spreadIn, spacingIn);
  if (fitting.count * spacingIn >= widthIn - 1e-6) return fitting;
  const pitchIn = spreadIn / fitting.count;
  return pitchIn < barIn + Math.max(CLEAR_IN, barIn) ? fitting : { count: fitting.count + 1, pitchIn };
}

/**
 * Lines of a set evenly about the middle of what the cover leaves, or of the field that the layer is drawn in, each cut
 * off at the cover beside an opening. Cover is to the surface of the steel (ACI 318-19 2.3), so bars keep half their
 * diameter more beside them. Mesh is cut by its spacing and covered to the middle of its outer wires. Axes: u along
 * the set, v across, turned by its angle about the origin of the drawing.
 */
export function steelRows(
  piece: Piece,
  region: Region,
  layer: Extract<Reinforcement, { kind: 'mesh' | 'bars' }>,
  set: SteelSet,
): SteelRows {
  const turnRad = (-set.angleDeg * Math.PI) / 180;
  const into = (point: Point) => turned(point, turnRad);
  const field = layer.kind === 'bars' && layer.corners !== null ? layer.corners.map(into) : null;
  const besideIn = layer.kind === 'bars' ? set.diameterIn / 2 : 0;
  const within = (coverIn: number) =>
    coveredRegions(piece, region, coverIn)
      .map((part) => mapped(part, into))
      .flatMap((part) => withinField(part, field));
  const lines = within(layer.edgeCoverIn + besideIn);
  if (lines.length === 0) return { pitchIn: set.spacingIn, rows: [] };
  const ends = besideIn === 0 ? lines : within(layer.edgeCoverIn);
  const box = boundingBox(lines.flatMap(({ outer }) => outer));
  const slab = boundingBox(withinField(mapped(region, into), field).flatMap(({ outer }) => outer));
  const spreadIn = box.maxYIn - box.minYIn;
  const { count, pitchIn } =
    layer.kind === 'bars'
      ? barsOver(spreadIn, {
          widthIn: slab.maxYIn - slab.minYIn,
          spacingIn: set.spacingIn,
          barIn: set.diameterIn,
        })
      : wiresOver(spreadIn, set.spacingIn);
  const firstIn = (box.minYIn + box.maxYIn - (count - 1) * pitchIn) / 2;
  const rows = Array.from({ length: count }, (_, k): SteelRow => {
    const acrossIn = firstIn + k * pitchIn;
    const clip = (fromIn: number, toIn: number, parts: readonly Region[]) => {
      const line = { a: { xIn: fromIn, yIn: acrossIn }, b: { xIn: toIn, yIn: acrossIn } };
      return parts
        .flatMap((part) => clipSegmentToRegion(line, part))
        .map(({ a, b }) => ({ fromIn: a.xIn, toIn: b.xIn }));
    };
    const clear = clip(box.minXIn, box.maxXIn, lines);
    // an end has its cover before it, not beside it, and so runs on by what was kept for the sides
    const stretches = clear.flatMap(({ fromIn, toIn }) => clip(fromIn - besideIn, toIn + besideIn, ends));
    return { acrossIn, stretches };
  });
  return { pitchIn, rows };
}

function mapped({ outer, holes }: Region, move: (point: Point) => Point): Region {
  return { outer: outer.map(move), holes: holes.map((hole) => hole.map(move)) };
}
