/**
 * Loads on the nodes of a plate, mesh order, lbf down positive. Each function adds to an array it is handed. Loads go to
 * deflections alone, by linear area coordinates, which keeps force and first moment.
 */

import { FREEDOMS_PER_NODE, type TriangleMesh, triangleGeometry } from './dkt';

/**
 * Finds the triangle that holds a point and writes its area coordinates to `into[0..2]`; -1 where the point is off the slab.
 */
export type Locate = (xIn: number, yIn: number, into: Float64Array) => number;

/** A uniform pressure `psi` on the whole plate, a third of each triangle to each corner. Common practice, no source. */
export function addPressure(mesh: TriangleMesh, psi: number, into: Float64Array): void {
  for (let t = 0; 3 * t < mesh.triangles.length; t++) {
    const third = (psi * triangleGeometry(mesh, t).areaIn2) / 3;
    for (let corner = 0; corner < 3; corner++) {
      const at = FREEDOMS_PER_NODE * mesh.triangles[3 * t + corner]!;
      into[at] = into[at]! + third;
    }
  }
}

export interface PointLoad {
  readonly xIn: number;
  readonly yIn: number;
  readonly loadLbf: number;
}

/** A point load. Gives the lbf that landed on the slab: all, or 0 where the point is off it. */
export function addPointLoad(
  mesh: TriangleMesh,
  locate: Locate,
  load: PointLoad,
  into: Float64Array,
): number {
  const share = new Float64Array(3);
  const triangle = locate(load.xIn, load.yIn, share);
  if (triangle < 0) return 0;
  for (let corner = 0; corner < 3; corner++) {
    const at = FREEDOMS_PER_NODE * mesh.triangles[3 * triangle + corner]!;
    into[at] = into[at]! + share[corner]! * load.loadLbf;
  }
  return load.loadLbf;
}

/** A load spread evenly on a rectangle, `lengthIn` along `angleRad` (from x towards y) and `widthIn` across it. */
export interface PatchLoad extends PointLoad {
  readonly lengthIn: number;
  readonly widthIn: number;
  readonly angleRad: number;
}

/**
 * An evenly spread rectangle of load, as `samplesPerSide` squared equal point loads at the centres of its cells. Gives the
 * lbf that landed on the slab: less than `loadLbf` where the rectangle hangs over an edge. Two samples a mesh size are
 * plenty. Common practice, no source.
 */
export function addPatchLoad(
  mesh: TriangleMesh,
  locate: Locate,
  load: PatchLoad,
  into: Float64Array,
  samplesPerSide = 8,
): number {
  const c = Math.cos(load.angleRad);
  const s = Math.sin(load.angleRad);
  const loadLbf = load.loadLbf / samplesPerSide ** 2;
  let landedLbf = 0;
  for (let i = 0; i < samplesPerSide; i++) {
    const along = load.lengthIn * ((i + 0.5) / samplesPerSide - 0.5);
    for (let j = 0; j < samplesPerSide; j++) {
      const across = load.widthIn * ((j + 0.5) / samplesPerSide - 0.5);
      const xIn = load.xIn + c * along - s * across;
      const yIn = load.yIn + s * along + c * across;
      landedLbf += addPointLoad(mesh, locate, { xIn, yIn, loadLbf }, into);
    }
  }
  return landedLbf;
}
