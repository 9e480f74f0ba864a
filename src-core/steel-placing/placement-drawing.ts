/** The placing of steel as a drawing: shapes in the drawing's own coordinates with the words that stand by them. */
import type { Job } from '../job';
import type { BoundingBox, Point, Region } from '../outline';
import { boundingBox } from '../outline';
import { printLength } from '../units';
import type { BarPlacing, MeshPlacing, PlacedItem, PlacedJoint, PlacedStandoff, Trimmer } from './types';

/** A filled shape: a strip of mesh, or what lies double at a lap. Its label stands at `labelAt`. */
export interface DrawnShape extends PlacedItem {
  readonly layerId: string;
  readonly shape: Region;
  readonly label: string;
  readonly labelAt: Point;
}

/** A line: a bar, a trimmer or a joint. */
export interface DrawnLine extends PlacedItem {
  readonly from: Point;
  readonly to: Point;
  readonly label: string;
}

export interface DrawnBar extends DrawnLine {
  readonly layerId: string;
  readonly isHookedAtFrom: boolean;
  readonly isHookedAtTo: boolean;
}

export interface DrawnStandoff extends PlacedItem {
  readonly at: Point;
  readonly heightIn: number;
}

export interface DrawnJoint extends DrawnLine {
  readonly kind: PlacedJoint['kind'];
}

/** Enough to draw the placing: outline and openings below, then strips, laps, bars, trimmers, standoffs, joints. */
export interface PlacementDrawing {
  readonly bounds: BoundingBox;
  readonly outline: Region;
  readonly strips: readonly DrawnShape[];
  readonly laps: readonly DrawnShape[];
  readonly bars: readonly DrawnBar[];
  readonly trimmers: readonly DrawnLine[];
  readonly standoffs: readonly DrawnStandoff[];
  readonly joints: readonly DrawnJoint[];
}

export interface ToDraw {
  readonly region: Region;
  readonly meshes: readonly MeshPlacing[];
  readonly bars: readonly BarPlacing[];
  readonly trimmers: readonly Trimmer[];
  readonly standoffs: readonly PlacedStandoff[];
  readonly joints: readonly PlacedJoint[];
}

export function placementDrawing(job: Job, placed: ToDraw): PlacementDrawing {
  const length = (valueIn: number) => printLength(valueIn, { system: job.shownIn });
  const { region } = placed;
  return {
    bounds: boundingBox(region.outer),
    outline: { outer: region.outer, holes: region.holes },
    strips: placed.meshes.flatMap(({ strips }) =>
      strips.map(({ id, trace, layerId, shape, label, lengthIn, widthIn }): DrawnShape => {
        const words = `${label}: ${length(lengthIn)} x ${length(widthIn)}`;
        return { id, trace, layerId, shape, label: words, labelAt: middleOf(shape.outer) };
      }),
    ),
    laps: placed.meshes.flatMap(({ laps }) =>
      laps.flatMap(({ id, trace, layerId, zones, overlapIn }) =>
        zones.map((outer, k): DrawnShape => {
          const label = `${length(overlapIn)} lap`;
          const zone = zones.length > 1 ? `${id}-${k + 1}` : id;
          return { id: zone, trace, layerId, shape: { outer, holes: [] }, label, labelAt: middleOf(outer) };
        }),
      ),
    ),
    bars: placed.bars.flatMap(({ bars }) =>
      bars.map(({ id, trace, layerId, mark, from, to, isHookedAtFrom, isHookedAtTo }): DrawnBar => {
        return { id, trace, layerId, label: mark, from, to, isHookedAtFrom, isHookedAtTo };
      }),
    ),
    trimmers: placed.trimmers.flatMap(({ id, trace, label, barId, lengthIn, from, to }): DrawnLine[] =>
      from === null || to === null
        ? []
        : [{ id, trace, from, to, label: `${label}: ${barId} x ${length(lengthIn)}` }],
    ),
    standoffs: placed.standoffs.map(({ id, trace, at, heightIn }) => ({ id, trace, at, heightIn })),
    joints: placed.joints.flatMap(({ id, trace, kind, lines, lengthIn }) =>
      lines.map(([from, to], k): DrawnJoint => {
        const part = lines.length > 1 ? `${id}-${k + 1}` : id;
        return { id: part, trace, kind, from, to, label: `${JOINT_WORDS[kind]}, ${length(lengthIn)}` };
      }),
    ),
  };
}

const JOINT_WORDS = {
  control: 'Control joint',
  isolation: 'Isolation strip',
  construction: 'Construction joint',
} as const;

function middleOf(points: readonly Point[]): Point {
  const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(points);
  return { xIn: (minXIn + maxXIn) / 2, yIn: (minYIn + maxYIn) / 2 };
}
