/**
 * Thin-plate triangle with three freedoms a node: the discrete Kirchhoff triangle (DKT).
 * Source: Batoz, Bathe & Ho, "A study of three-node triangular plate bending elements", Int. J. Numer. Methods
 * Eng. 15 (1980) 1771-1812. Shear strain is zero at corners and along sides, so a constant curvature and a
 * constant twist come out exact on any mesh.
 *
 * Glossary (every plate file uses these signs)
 *
 *   x, y     plan, inch, triangles run counter-clockwise
 *   w        deflection, inch, positive DOWN, as loads are
 *   gx, gy   slopes dw/dx and dw/dy at a node (no minus sign, no swap). The load on a slope freedom is a
 *            couple in lbf-in that does work on that slope.
 *   freedom  3 * node + 0 for w, + 1 for gx, + 2 for gy
 *   k        curvatures (kxx, kyy, 2 kxy) = (d2w/dx2, d2w/dy2, 2 d2w/dxdy), 1/in
 *   Db       bending matrix, 3 x 3, symmetric, row by row, lbf-in
 *   M        moments (Mx, My, Mxy) = -Db k, lbf-in per inch of width. Mx bends the span along x, its steel runs
 *            along x. Sagging is positive: tension in the bottom face. Hogging is negative.
 *   L        area coordinates of a point in the triangle: 1 at the own corner, 0 on the far side, sum 1
 *   b, c     dL/dx and dL/dy of each corner, constant in the triangle
 *
 *            2
 *           / \        The slope field is linear between the corners plus one bubble 4 Li Lj a side, directed
 *          /   \       along the side (i, j), so that the slope along the side is that of the cubic through both
 *         0-----1      ends and the slope across it stays linear.
 */

/** The part of a mesh that the element needs. */
export interface TriangleMesh {
  readonly xIn: Float64Array;
  readonly yIn: Float64Array;
  /** Counter-clockwise node triples. */
  readonly triangles: Uint32Array;
}

/** Freedoms a node has: w, dw/dx, dw/dy. A count. */
export const FREEDOMS_PER_NODE = 3;

/** Entries of one curvature matrix: three curvatures by nine freedoms. A count. */
export const CURVATURE_ENTRIES = 27;

/** Plan geometry of one triangle: slopes of the area coordinates, sides and area. */
export interface TriangleGeometry {
  readonly areaIn2: number;
  /** dL/dx of each corner, 1/in. */
  readonly bPerIn: readonly [number, number, number];
  /** dL/dy of each corner, 1/in. */
  readonly cPerIn: readonly [number, number, number];
  /** Corner coordinates x0 y0 x1 y1 x2 y2. */
  readonly cornersIn: readonly [number, number, number, number, number, number];
}

/**
 * Geometry of triangle `triangle`. Throws if it has no area or runs clockwise, which a mesh must never hold.
 * Plane geometry, no source.
 */
export function triangleGeometry(mesh: TriangleMesh, triangle: number): TriangleGeometry {
  const n0 = mesh.triangles[3 * triangle]!;
  const n1 = mesh.triangles[3 * triangle + 1]!;
  const n2 = mesh.triangles[3 * triangle + 2]!;
  const x0 = mesh.xIn[n0]!;
  const y0 = mesh.yIn[n0]!;
  const x1 = mesh.xIn[n1]!;
  const y1 = mesh.yIn[n1]!;
  const x2 = mesh.xIn[n2]!;
  const y2 = mesh.yIn[n2]!;
  const twiceArea = (x1 - x0) * (y2 - y0) - (x2 - x0) * (y1 - y0);
  if (!(twiceArea > 0)) throw new Error(`triangle ${triangle} has twice the area ${twiceArea} in2`);
  return {
    areaIn2: twiceArea / 2,
    bPerIn: [(y1 - y2) / twiceArea, (y2 - y0) / twiceArea, (y0 - y1) / twiceArea],
    cPerIn: [(x2 - x1) / twiceArea, (x0 - x2) / twiceArea, (x1 - x0) / twiceArea],
    cornersIn: [x0, y0, x1, y1, x2, y2],
  };
}

/**
 * Curvature matrix B (3 x 9, row by row, written from `into[0]`) at area coordinates `l0`, `l1`, `l2`: k = B u with
 * u the nine freedoms of the corners in turn. Linear over the triangle.
 * Source: Batoz, Bathe & Ho 1980, written with hierarchic side bubbles.
 */
export function dktCurvatureMatrix(
  geometry: TriangleGeometry,
  at: readonly [number, number, number],
  into: Float64Array,
): Float64Array {
  const { bPerIn: b, cPerIn: c, cornersIn: p } = geometry;
  into.fill(0, 0, CURVATURE_ENTRIES);
  for (let i = 0; i < 3; i++) {
    into[3 * i + 1] = b[i]!;
    into[9 + 3 * i + 2] = c[i]!;
    into[18 + 3 * i + 1] = c[i]!;
    into[18 + 3 * i + 2] = b[i]!;
  }
  for (let i = 0; i < 3; i++) {
    const j = i === 2 ? 0 : i + 1;
    const ex = p[2 * j]! - p[2 * i]!;
    const ey = p[2 * j + 1]! - p[2 * i + 1]!;
    const perLength2 = 1 / (ex * ex + ey * ey);
    // Slopes of the bubble 4 Li Lj.
    const bubbleX = 4 * (at[i]! * b[j]! + at[j]! * b[i]!);
    const bubbleY = 4 * (at[i]! * c[j]! + at[j]! * c[i]!);
    // The bubble carries the side vector times 3/2 of the chord slope less 3/4 of the slopes at both ends.
    for (let row = 0; row < 3; row++) {
      const bubble = row === 0 ? bubbleX * ex : row === 1 ? bubbleY * ey : bubbleY * ex + bubbleX * ey;
      const chord = 1.5 * perLength2 * bubble;
      const end = -0.75 * perLength2 * bubble;
      const own = 9 * row + 3 * i;
      const next = 9 * row + 3 * j;
      into[own] = into[own]! - chord;
      into[own + 1] = into[own + 1]! + end * ex;
      into[own + 2] = into[own + 2]! + end * ey;
      into[next] = into[next]! + chord;
      into[next + 1] = into[next + 1]! + end * ex;
      into[next + 2] = into[next + 2]! + end * ey;
    }
  }
  return into;
}

const SIDE_MIDDLES: readonly (readonly [number, number, number])[] = [
  [0.5, 0.5, 0],
  [0, 0.5, 0.5],
  [0.5, 0, 0.5],
];

/** Room to make element stiffnesses in, one after another. */
export interface DktRoom {
  /** The stiffness, 9 x 9 row by row. */
  readonly stiffness: Float64Array;
  readonly b: Float64Array;
  readonly db: Float64Array;
}

/** Room for `dktStiffness`. */
export function createDktRoom(): DktRoom {
  return {
    stiffness: new Float64Array(81),
    b: new Float64Array(CURVATURE_ENTRIES),
    db: new Float64Array(CURVATURE_ENTRIES),
  };
}

/**
 * Element stiffness, 9 x 9 row by row, written to `room.stiffness`, for the bending matrix that starts at
 * `bending[offset]`. B is linear, so the three side middles integrate it exactly.
 * Source: Batoz, Bathe & Ho 1980.
 */
export function dktStiffness(
  geometry: TriangleGeometry,
  bending: Float64Array,
  offset: number,
  room: DktRoom,
): Float64Array {
  const into = room.stiffness.fill(0);
  const { db } = room;
  const weight = geometry.areaIn2 / 3;
  for (const at of SIDE_MIDDLES) {
    const b = dktCurvatureMatrix(geometry, at, room.b);
    multiplyBending(bending, offset, b, db);
    for (let i = 0; i < 9; i++) {
      const b0 = weight * b[i]!;
      const b1 = weight * b[9 + i]!;
      const b2 = weight * b[18 + i]!;
      for (let j = 0; j <= i; j++) {
        const sum = b0 * db[j]! + b1 * db[9 + j]! + b2 * db[18 + j]!;
        into[9 * i + j] = into[9 * i + j]! + sum;
      }
    }
  }
  for (let i = 0; i < 9; i++) {
    for (let j = 0; j < i; j++) into[9 * j + i] = into[9 * i + j]!;
  }
  return into;
}

/** Db B, 3 x 9 row by row, for the bending matrix that starts at `bending[offset]`. */
export function multiplyBending(
  bending: Float64Array,
  offset: number,
  b: Float64Array,
  into: Float64Array,
): Float64Array {
  for (let row = 0; row < 3; row++) {
    const d0 = bending[offset + 3 * row]!;
    const d1 = bending[offset + 3 * row + 1]!;
    const d2 = bending[offset + 3 * row + 2]!;
    for (let i = 0; i < 9; i++) into[9 * row + i] = d0 * b[i]! + d1 * b[9 + i]! + d2 * b[18 + i]!;
  }
  return into;
}

/**
 * Curvatures (kxx, kyy, 2 kxy), 1/in, at area coordinates `at` of triangle `triangle` under the displacements `u`
 * (three a node, in mesh order). Source: Batoz, Bathe & Ho 1980.
 */
export function dktCurvature(
  mesh: TriangleMesh,
  triangle: number,
  at: readonly [number, number, number],
  u: Float64Array,
): [number, number, number] {
  const b = dktCurvatureMatrix(triangleGeometry(mesh, triangle), at, new Float64Array(CURVATURE_ENTRIES));
  const k: [number, number, number] = [0, 0, 0];
  for (let corner = 0; corner < 3; corner++) {
    const node = mesh.triangles[3 * triangle + corner]!;
    for (let f = 0; f < FREEDOMS_PER_NODE; f++) {
      const value = u[FREEDOMS_PER_NODE * node + f]!;
      const column = 3 * corner + f;
      k[0] += b[column]! * value;
      k[1] += b[9 + column]! * value;
      k[2] += b[18 + column]! * value;
    }
  }
  return k;
}
