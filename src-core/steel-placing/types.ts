/** What the placing of steel gives: every item with a stable id and the part of the drawing it comes from. */
import type { Point, Region } from '../outline';
import type { Trace } from '../trace';
import type { Line } from '../workings';

/** An item of the list. The id is stable for an unchanged drawing and alike for no two items of a piece. */
export interface PlacedItem {
  readonly id: string;
  readonly trace: Trace;
}

/** Where the stock of a layer comes from: an item of the job's stock, or the common size. */
export interface StockUsed {
  readonly stockId: string | null;
  readonly lengthIn: number;
  /** 0 for bars. */
  readonly widthIn: number;
}

/** One piece of mesh as it is cut and laid. */
export interface MeshStrip extends PlacedItem {
  readonly layerId: string;
  /** "M1". */
  readonly label: string;
  /** The mesh itself, with what is cut out round openings; in the drawing's coordinates. */
  readonly shape: Region;
  /** Rectangle to cut from the sheet, along the sheet and across it, in. */
  readonly lengthIn: number;
  readonly widthIn: number;
  /** Laid with the length of the sheet across the layer's direction. Only mesh alike both ways is. */
  readonly isTurned: boolean;
  /** Of the rectangle, and of the mesh left of it. */
  readonly cutAreaIn2: number;
  readonly areaIn2: number;
  readonly massLb: number;
}

/** Two strips, or two lengths of a bar, one over the other. */
export interface SteelLap extends PlacedItem {
  readonly layerId: string;
  readonly joins: readonly [string, string];
  /** How far they lie over each other, in; never less than the lap that the code asks. */
  readonly overlapIn: number;
  /** Corner points of what lies double; of a bar the two ends of the lap. */
  readonly zones: readonly (readonly Point[])[];
  /** From the lap to the nearest bending peak, in; below 0 where it lies over one; null where none is known. */
  readonly clearIn: number | null;
  /** "midspan"; empty where no peak is known. */
  readonly nearestPeak: string;
}

/** Mesh of one layer. */
export interface MeshPlacing extends PlacedItem {
  readonly words: string;
  readonly stock: StockUsed;
  /** Lap of the wires along the layer's direction, and of its cross wires, in. */
  readonly lapAlongIn: number;
  readonly lapAcrossIn: number;
  readonly strips: readonly MeshStrip[];
  readonly laps: readonly SteelLap[];
  readonly areaIn2: number;
  readonly cutAreaIn2: number;
  readonly massLb: number;
  readonly workings: readonly Line[];
  readonly notes: readonly string[];
}

export type BarShape = 'straight' | 'one-hook' | 'two-hooks';

/** One bar as it lies. */
export interface PlacedBar extends PlacedItem {
  readonly layerId: string;
  readonly mark: string;
  readonly shape: BarShape;
  readonly from: Point;
  readonly to: Point;
  readonly isHookedAtFrom: boolean;
  readonly isHookedAtTo: boolean;
  /** Straight length to cut before any bending, in. */
  readonly cutLengthIn: number;
}

/** Bars that are cut and bent alike. */
export interface BarMark extends PlacedItem {
  /** "A1". */
  readonly mark: string;
  readonly layerId: string;
  readonly shape: BarShape;
  readonly barIn: number;
  readonly cutLengthIn: number;
  readonly count: number;
  readonly massLb: number;
}

/** Bars of one layer. */
export interface BarPlacing extends PlacedItem {
  readonly words: string;
  readonly stock: StockUsed;
  readonly barIn: number;
  /** From bar to bar: the spacing drawn, or a little less, so that the width has as much steel as is counted. */
  readonly pitchIn: number;
  readonly lapIn: number;
  readonly bars: readonly PlacedBar[];
  readonly marks: readonly BarMark[];
  readonly laps: readonly SteelLap[];
  readonly lengthIn: number;
  readonly massLb: number;
  readonly workings: readonly Line[];
  readonly notes: readonly string[];
}

/** A diagonal bar across a corner that cracks start from. */
export interface Trimmer extends PlacedItem {
  /** "T1". */
  readonly label: string;
  /** Recommended beside what is drawn; not wanted because bars drawn there do its work; or left out for want of room. */
  readonly status: 'recommended' | 'drawn' | 'no-room';
  /** The sharp corner itself. */
  readonly corner: Point;
  /** null where none is laid. */
  readonly from: Point | null;
  readonly to: Point | null;
  readonly barId: string;
  readonly barIn: number;
  readonly lengthIn: number;
  /** From the top of the slab to the centre of the bar, in; null where none is laid. */
  readonly depthIn: number | null;
  /** Wanted: development to either side, or the least length, in. */
  readonly wantedIn: number;
  readonly massLb: number;
  /** One sentence: why it is there, why it is short, or why none is laid. */
  readonly words: string;
}

export interface PlacedStandoff extends PlacedItem {
  /** The layer that stands on it. */
  readonly layerId: string;
  readonly at: Point;
  readonly heightIn: number;
}

/** Standoffs of one height under one layer. */
export interface StandoffSet extends PlacedItem {
  readonly layerId: string;
  readonly heightIn: number;
  readonly spacingIn: number;
  readonly count: number;
}

/** Fabric in the slab, or fibre in the mix. */
export interface OtherSteel extends PlacedItem {
  readonly kind: 'fabric' | 'fibre';
  readonly words: string;
  readonly material: string;
  /** Plan area of the slab for fabric, in2; 0 for fibre. */
  readonly areaIn2: number;
  /** Of fibre; null where the job states no dose. */
  readonly massLb: number | null;
}

/** How far mesh sinks between its standoffs while concrete is placed. */
export interface MeshSag extends PlacedItem {
  readonly layerId: string;
  readonly spanIn: number;
  readonly ownSagIn: number;
  readonly placingSagIn: number;
  readonly sagIn: number;
  /** Cover left below the mesh, in. */
  readonly coverLeftIn: number;
  /** The wire passes its yield under the placing load and stays bent. */
  readonly staysBent: boolean;
  /** Span over which the sag keeps to the limit and no wire gives way, in. */
  readonly spanForLimitIn: number;
  readonly level: 'enough' | 'caution';
  readonly words: string;
  readonly workings: readonly Line[];
}

export type CoverFace = 'top' | 'top-at-laps' | 'bottom' | 'edge' | 'opening';

/** Cover that is actually left on one face. */
export interface CoverLeft extends PlacedItem {
  readonly layerId: string;
  readonly face: CoverFace;
  readonly leftIn: number;
  readonly wantedIn: number;
  /** Short is under the wanted cover; out is steel at or through the face. */
  readonly level: 'enough' | 'short' | 'out';
  readonly words: string;
}

export interface PlacedJoint extends PlacedItem {
  readonly kind: 'control' | 'isolation' | 'construction';
  readonly along: 'joint' | 'wall' | 'butted';
  readonly lines: readonly (readonly [Point, Point])[];
  readonly lengthIn: number;
  readonly widthIn: number;
  /** Depth of a cut or formed groove; the whole thickness for isolation and construction joints, in. */
  readonly depthIn: number;
  readonly words: string;
  readonly caution: string | null;
}

/** One row of the totals, for one copy of the piece. */
export interface SteelTotal extends PlacedItem {
  readonly kind:
    | 'mesh'
    | 'bars'
    | 'trimmers'
    | 'standoffs'
    | 'fabric'
    | 'fibre'
    | 'isolation-strip'
    | 'control-joint'
    | 'construction-joint';
  readonly words: string;
  readonly count: number;
  /** null where length, area or mass mean nothing for the kind. */
  readonly lengthIn: number | null;
  readonly areaIn2: number | null;
  readonly massLb: number | null;
}
