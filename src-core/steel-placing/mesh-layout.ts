/** Strips of mesh that cover a part of the slab: cut from sheets, lapped, in the layer's frame. */
import type { Point, Region } from '../outline';
import { intersectRegions } from '../outline';
import type { Arm } from './arms';
import { divisions } from './arms';
import type { Axis, Box, Stretch } from './frame';
import { boxOf, sizeIn, withinBox } from './frame';
import type { LapPlace, LapPlaces } from './lap-places';
import { lapPlaces } from './lap-places';
import type { PeakSources } from './peaks';
import { peaksAlong, peaksFrom } from './peaks';
import { STRIP_COUNTS_IN2 } from './practice';

export interface MeshToLay {
  /** Of the sheet. */
  readonly lengthIn: number;
  readonly widthIn: number;
  /** Alike both ways, so that a sheet may be laid either way round. */
  readonly isSquare: boolean;
  readonly lapIn: Readonly<Record<Axis, number>>;
  /** A strip narrower than this would hold no wire and is left out. */
  readonly narrowestIn: number;
  readonly peaks: PeakSources;
  readonly insideCorners: readonly Point[];
}

/** A strip in the layer's frame. */
export interface LaidStrip {
  readonly shape: Region;
  readonly box: Box;
  readonly isTurned: boolean;
}

/** A lap by the numbers of its strips. */
export interface LaidLap {
  readonly joins: readonly [number, number];
  readonly overlapIn: number;
  readonly zones: readonly (readonly Point[])[];
  readonly place: Omit<LapPlace, 'atIn'>;
}

export interface MeshLayout {
  readonly strips: readonly LaidStrip[];
  readonly laps: readonly LaidLap[];
  /** A line of the slab is longer than a sheet, and the sheet too short to lap. */
  readonly isTooLong: boolean;
  readonly slivers: number;
}

/** A strip with where it lies in its arm, and the laps that its arm has. */
interface Cell extends LaidStrip {
  readonly arm: number;
  readonly column: number;
  readonly row: number;
}

interface ArmLayout {
  readonly cells: readonly Cell[];
  readonly columns: LapPlaces;
  readonly rows: LapPlaces;
  readonly slivers: number;
}

/** The strips of one connected part: of the ways to divide it the one that cuts least mesh, a strip counting as some. */
export function layMesh(region: Region, mesh: MeshToLay): MeshLayout {
  const mostIn = mesh.isSquare
    ? Math.max(mesh.lengthIn, mesh.widthIn)
    : Math.min(mesh.lengthIn, mesh.widthIn);
  const [first, ...others] = divisions(region, mesh.insideCorners, { lapIn: mesh.lapIn, mostIn }).map(
    (arms) => ({
      arms,
      layouts: arms.map((arm, k) => layArm(arm, k, mesh)),
    }),
  );
  const best = others.reduce(
    (least, next) => (cost(next.layouts) < cost(least.layouts) ? next : least),
    first!,
  );
  const cells = best.layouts.flatMap((layout) => layout.cells);
  return {
    strips: cells.map(({ shape, box, isTurned }) => ({ shape, box, isTurned })),
    laps: cells.flatMap((one, i) =>
      cells.slice(i + 1).flatMap((other, k) => lapBetween(one, other, [i, i + 1 + k], best, mesh)),
    ),
    isTooLong: best.layouts.some(({ columns, rows }) => columns.isTooLong || rows.isTooLong),
    slivers: best.layouts.reduce((sum, layout) => sum + layout.slivers, 0),
  };
}

function cost(layouts: readonly ArmLayout[]): number {
  const cells = layouts.flatMap((layout) => layout.cells);
  return cells.reduce((sum, { box }) => sum + sizeIn(box.u) * sizeIn(box.v) + STRIP_COUNTS_IN2, 0);
}

/** An arm in rows and columns, with the sheet the way round that takes fewer strips. */
function layArm(arm: Arm, number: number, mesh: MeshToLay): ArmLayout {
  const straight = armLaid(arm, number, mesh, false);
  if (!mesh.isSquare) return straight;
  const turned = armLaid(arm, number, mesh, true);
  return cost([turned]) < cost([straight]) - 1e-6 ? turned : straight;
}

function armLaid(arm: Arm, number: number, mesh: MeshToLay, isTurned: boolean): ArmLayout {
  const [alongIn, acrossIn] = isTurned ? [mesh.widthIn, mesh.lengthIn] : [mesh.lengthIn, mesh.widthIn];
  const columns = placesAlong('u', arm, alongIn, mesh);
  const rows = placesAlong('v', arm, acrossIn, mesh);
  const parts = rows.lengths.flatMap((v, row) =>
    columns.lengths.flatMap((u, column) => {
      const cell = { u: onto(arm.box.u, u), v: onto(arm.box.v, v) };
      return withinBox(arm.shape, cell).map((shape): Cell => {
        const box = boxOf(shape.outer);
        return { shape, box, isTurned, arm: number, column, row };
      });
    }),
  );
  const cells = parts.filter(({ box }) => Math.min(sizeIn(box.u), sizeIn(box.v)) >= mesh.narrowestIn);
  return { cells, columns, rows, slivers: parts.length - cells.length };
}

function placesAlong(axis: Axis, { box }: Arm, mostIn: number, { lapIn, peaks }: MeshToLay): LapPlaces {
  return lapPlaces({
    spanIn: sizeIn(box[axis]),
    mostIn,
    lapIn: lapIn[axis],
    peaks: peaksFrom(peaksAlong(axis, box, peaks), box[axis]),
    fullFrom: 'start',
  });
}

function onto({ fromIn: startIn }: Stretch, { fromIn, toIn }: Stretch): Stretch {
  return { fromIn: startIn + fromIn, toIn: startIn + toIn };
}

/** The lap of two strips: neighbours in a row or column of an arm, or of two arms where they lie double far enough. */
function lapBetween(
  one: Cell,
  other: Cell,
  joins: readonly [number, number],
  { arms, layouts }: { readonly arms: readonly Arm[]; readonly layouts: readonly ArmLayout[] },
  { lapIn }: MeshToLay,
): LaidLap[] {
  const steps = { u: other.column - one.column, v: other.row - one.row };
  const isSameArm = one.arm === other.arm;
  if (isSameArm && Math.abs(steps.u) + Math.abs(steps.v) !== 1) return [];
  const zones = intersectRegions(one.shape, other.shape);
  if (zones.length === 0) return [];
  if (isSameArm) {
    const axis: Axis = steps.u === 0 ? 'v' : 'u';
    const { columns, rows } = layouts[one.arm]!;
    const places = axis === 'u' ? columns.laps : rows.laps;
    const { clearIn, nearestPeak } =
      places[axis === 'u' ? Math.min(one.column, other.column) : Math.min(one.row, other.row)]!;
    return [{ joins, overlapIn: lapIn[axis], zones, place: { clearIn, nearestPeak } }];
  }
  const axis = arms[one.arm]!.cutAlong ?? 'u';
  const overlapIn = sizeIn(boxOf(zones.flat())[axis]);
  if (overlapIn < lapIn[axis] - 1e-6) return [];
  return [{ joins, overlapIn, zones, place: { clearIn: null, nearestPeak: '' } }];
}
