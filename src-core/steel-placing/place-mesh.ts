/** One layer of mesh placed: its strips, laps, area and mass. */
import type { Job, Piece } from '../job';
import type { Point, Region } from '../outline';
import { regionAreaIn2 } from '../outline';
import { coveredRegions } from '../solid';
import { printLength } from '../units';
import { cornersInside } from './arms';
import { meshMass } from './formulas';
import { frameAt, mapRegion, sizeIn } from './frame';
import type { MeshLayer } from './lap-lengths';
import { holdOf, meshLap } from './lap-lengths';
import type { LaidStrip, MeshLayout } from './mesh-layout';
import { layMesh } from './mesh-layout';
import { bearersOf } from './peaks';
import { STEEL_LB_PER_IN3 } from './practice';
import { withSquareCorners } from './square-corners';
import { runTheSameWay } from './stacking';
import { meshStock } from './stock';
import { steelTrace } from './traces';
import type { MeshPlacing, MeshStrip, SteelLap } from './types';

/** Mesh narrower than this share of its closer spacing would hold no wire. */
const NARROWEST_RATIO = 0.5;

export interface MeshPlaceOptions {
  readonly peaksAt: readonly Point[];
  /** Number of the layer's first strip: strips are numbered through all layers of a piece. */
  readonly firstNumber: number;
}

/** Strips of a mesh layer over a slab in plan. */
export function placeMesh(
  job: Job,
  piece: Piece,
  region: Region,
  layer: MeshLayer,
  { peaksAt, firstNumber }: MeshPlaceOptions,
): MeshPlacing {
  const frame = frameAt(layer.angleDeg);
  const hold = holdOf(job, piece);
  const [along, across] = [meshLap(layer, 'along', hold), meshLap(layer, 'across', hold)];
  const stock = meshStock(job);
  const insideCorners = cornersInside(piece, layer.edgeCoverIn, frame);
  const isSquare = layer.wireIn === layer.crossWireIn && layer.spacingIn === layer.crossSpacingIn;
  const covered = coveredRegions(piece, withSquareCorners(piece, region), layer.edgeCoverIn);
  const layouts = covered.map((part) =>
    layMesh(mapRegion(part, frame.into), {
      lengthIn: stock.lengthIn,
      widthIn: stock.widthIn,
      isSquare,
      lapIn: { u: along.lapIn, v: across.lapIn },
      narrowestIn: NARROWEST_RATIO * Math.min(layer.spacingIn, layer.crossSpacingIn),
      peaks: {
        bearers: bearersOf(piece, region.outer, frame),
        points: [
          ...insideCorners.map((at) => ({ at, words: 'inside corner' })),
          ...peaksAt.map((at) => ({ at: frame.into(at), words: 'peak of the load check' })),
        ],
      },
      insideCorners,
    }),
  );
  const weight = meshMass({
    rho: STEEL_LB_PER_IN3,
    d1: layer.wireIn,
    s1: layer.spacingIn,
    d2: layer.crossWireIn,
    s2: layer.crossSpacingIn,
  });
  const strips: MeshStrip[] = [];
  const laps: SteelLap[] = [];
  const trace = steelTrace(piece, layer.id);
  for (const layout of layouts) {
    const before = strips.length;
    for (const strip of layout.strips) {
      const number = strips.length + 1;
      strips.push({
        id: `${layer.id}-strip-${number}`,
        trace,
        layerId: layer.id,
        label: `M${firstNumber + number - 1}`,
        ...cutSize(strip),
        shape: mapRegion(strip.shape, frame.outOf),
        areaIn2: regionAreaIn2(strip.shape),
        massLb: weight.value * regionAreaIn2(strip.shape),
      });
    }
    for (const { joins, overlapIn, zones, place } of layout.laps) {
      laps.push({
        id: `${layer.id}-lap-${laps.length + 1}`,
        trace,
        layerId: layer.id,
        joins: [strips[before + joins[0]]!.id, strips[before + joins[1]]!.id],
        overlapIn,
        zones: zones.map((zone) => zone.map(frame.outOf)),
        ...place,
      });
    }
  }
  return {
    id: layer.id,
    trace,
    words: layer.label ?? layer.id,
    stock,
    lapAlongIn: along.lapIn,
    lapAcrossIn: across.lapIn,
    strips,
    laps,
    areaIn2: sum(strips.map(({ areaIn2 }) => areaIn2)),
    cutAreaIn2: sum(strips.map(({ cutAreaIn2 }) => cutAreaIn2)),
    massLb: sum(strips.map(({ massLb }) => massLb)),
    workings: [...along.lines, ...(isSquare ? [] : across.lines), weight.line],
    notes: notesOf(job, piece, layer, { strips, laps, layouts }),
  };
}

function cutSize({ box, isTurned }: LaidStrip) {
  const [lengthIn, widthIn] = isTurned ? [sizeIn(box.v), sizeIn(box.u)] : [sizeIn(box.u), sizeIn(box.v)];
  return { lengthIn, widthIn, isTurned, cutAreaIn2: lengthIn * widthIn };
}

/** Which way up a mesh is laid. Its two ways of wire have depths of their own, and the load check counts with them. */
function sideUp({ angleDeg }: MeshLayer): string {
  const way = runTheSameWay(angleDeg, 0)
    ? 'along the front'
    : runTheSameWay(angleDeg, 90)
      ? 'from front to back'
      : `at ${Math.round(angleDeg)} degrees`;
  return `Lay it with the wires that run ${way} uppermost: the load check counts each way of wire at its own depth.`;
}

function notesOf(
  job: Job,
  piece: Piece,
  layer: MeshLayer,
  placed: {
    readonly strips: readonly MeshStrip[];
    readonly laps: readonly SteelLap[];
    readonly layouts: readonly MeshLayout[];
  },
): string[] {
  const { strips, laps, layouts } = placed;
  const length = (valueIn: number) => printLength(valueIn, { system: job.shownIn });
  const notes: string[] = [];
  if (strips.length === 0) notes.push('The edge cover leaves no room for this mesh.');
  else notes.push(sideUp(layer));
  if (laps.length > 0) {
    notes.push(
      'Measure laps between the outermost cross wires of the two strips: cut each strip just past a cross wire, and tie the lap.',
    );
  }
  for (const { joins, clearIn, nearestPeak, overlapIn } of laps) {
    if (clearIn === null || clearIn >= 0) continue;
    const [one, other] = joins.map((id) => strips.find((strip) => strip.id === id)!.label);
    notes.push(
      `The ${length(overlapIn)} lap of ${one} and ${other} lies where bending peaks (${nearestPeak}): no place for it was found clear of all peaks.`,
    );
  }
  if (layouts.some(({ isTooLong }) => isTooLong)) {
    notes.push(
      'The sheets are too short to lap: a strip is drawn in one length, longer than a sheet. Choose larger sheets.',
    );
  }
  const slivers = layouts.reduce((count, layout) => count + layout.slivers, 0);
  if (slivers > 0) {
    const parts = slivers === 1 ? '1 part of the slab is' : `${slivers} parts of the slab are`;
    notes.push(`${parts} too narrow for this mesh and left without it.`);
  }
  if (piece.joints.some(({ kind }) => kind === 'isolation')) {
    notes.push('The mesh stops at isolation joints, which part the slab for its whole thickness.');
  }
  return notes;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
