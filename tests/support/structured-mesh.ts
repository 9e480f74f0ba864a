/** Triangulated rectangles for plate tests: lines of any spacing, three ways to split a cell, and skewing. */

export interface StructuredMesh {
  readonly xIn: Float64Array;
  readonly yIn: Float64Array;
  readonly triangles: Uint32Array;
  readonly sizeIn: number;
}

/** `forward` and `backward` cut each cell by one diagonal; `union-jack` turns the diagonal from cell to cell. */
export type CellSplit = 'forward' | 'backward' | 'union-jack';

/** Even grid lines from `from` to `to`. */
export function evenLines(from: number, to: number, cells: number): number[] {
  return Array.from({ length: cells + 1 }, (_, i) => from + ((to - from) * i) / cells);
}

/** Grid lines from `from` to `to` whose cells grow by `ratio` from each to the next. */
export function gradedLines(from: number, to: number, cells: number, ratio: number): number[] {
  const total = ratio === 1 ? cells : (ratio ** cells - 1) / (ratio - 1);
  return Array.from(
    { length: cells + 1 },
    (_, i) => from + ((to - from) * (ratio === 1 ? i : (ratio ** i - 1) / (ratio - 1))) / total,
  );
}

/** Joins runs of grid lines that share their ends. */
export function joinLines(...runs: readonly (readonly number[])[]): number[] {
  return runs.flatMap((run, i) => (i === 0 ? run : run.slice(1)));
}

/** Mesh on the lines `xs` by `ys`; node of line i, j is `i * ys.length + j`. */
export function gridMesh(
  xs: readonly number[],
  ys: readonly number[],
  split: CellSplit = 'union-jack',
): StructuredMesh {
  const rows = ys.length;
  const xIn = new Float64Array(xs.length * rows);
  const yIn = new Float64Array(xs.length * rows);
  const triangles: number[] = [];
  for (let i = 0; i < xs.length; i++) {
    for (let j = 0; j < rows; j++) {
      xIn[i * rows + j] = xs[i] ?? 0;
      yIn[i * rows + j] = ys[j] ?? 0;
      if (i + 1 === xs.length || j + 1 === rows) continue;
      const a = i * rows + j;
      const b = a + rows;
      const forward = split === 'union-jack' ? (i + j) % 2 === 0 : split === 'forward';
      if (forward) triangles.push(a, b, b + 1, a, b + 1, a + 1);
      else triangles.push(a, b, a + 1, b, b + 1, a + 1);
    }
  }
  return { xIn, yIn, triangles: Uint32Array.from(triangles), sizeIn: (xs[1] ?? 0) - (xs[0] ?? 0) };
}

/** The mesh with each point moved by `place`; the map must keep triangles counter-clockwise. */
export function movedMesh(
  mesh: StructuredMesh,
  place: (x: number, y: number) => readonly [number, number],
): StructuredMesh {
  const points = Array.from(mesh.xIn, (x, i) => place(x, mesh.yIn[i] ?? 0));
  return {
    ...mesh,
    xIn: Float64Array.from(points, ([x]) => x),
    yIn: Float64Array.from(points, ([, y]) => y),
  };
}

/** Moves inner nodes of a rectangle about by up to `share` of `sizeIn`, the same way each time. */
export function shakenMesh(mesh: StructuredMesh, share: number): StructuredMesh {
  const left = Math.min(...mesh.xIn);
  const right = Math.max(...mesh.xIn);
  const bottom = Math.min(...mesh.yIn);
  const top = Math.max(...mesh.yIn);
  let state = 12345;
  const next = (): number => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return (state / 2147483648 - 0.5) * 2 * share * mesh.sizeIn;
  };
  return movedMesh(mesh, (x, y) =>
    x === left || x === right || y === bottom || y === top ? [x, y] : [x + next(), y + next()],
  );
}

/** Indices of nodes that satisfy `test`. */
export function nodesWhere(mesh: StructuredMesh, test: (x: number, y: number) => boolean): number[] {
  return Array.from(mesh.xIn.keys()).filter((i) => test(mesh.xIn[i] ?? 0, mesh.yIn[i] ?? 0));
}

/** The node nearest to a point. */
export function nearestNode(mesh: StructuredMesh, x: number, y: number): number {
  let best = 0;
  let distance = Number.POSITIVE_INFINITY;
  for (let i = 0; i < mesh.xIn.length; i++) {
    const d = Math.hypot((mesh.xIn[i] ?? 0) - x, (mesh.yIn[i] ?? 0) - y);
    if (d < distance) {
      best = i;
      distance = d;
    }
  }
  return best;
}

/** Finds the triangle under a point by trying those of the nearest cells; -1 off the mesh. Writes area coordinates. */
export function meshLocator(mesh: StructuredMesh): (x: number, y: number, into: Float64Array) => number {
  const { xIn, yIn, triangles } = mesh;
  const cell = mesh.sizeIn;
  const key = (i: number, j: number): number => i * 100_003 + j;
  const bins = new Map<number, number[]>();
  for (let t = 0; 3 * t < triangles.length; t++) {
    const corners = [0, 1, 2].map((c) => triangles[3 * t + c] ?? 0);
    const xs = corners.map((node) => xIn[node] ?? 0);
    const ys = corners.map((node) => yIn[node] ?? 0);
    for (let i = Math.floor(Math.min(...xs) / cell); i <= Math.floor(Math.max(...xs) / cell); i++) {
      for (let j = Math.floor(Math.min(...ys) / cell); j <= Math.floor(Math.max(...ys) / cell); j++) {
        const bin = bins.get(key(i, j));
        if (bin === undefined) bins.set(key(i, j), [t]);
        else bin.push(t);
      }
    }
  }
  return (x, y, into) => {
    for (const t of bins.get(key(Math.floor(x / cell), Math.floor(y / cell))) ?? []) {
      const [a, b, c] = [0, 1, 2].map((corner) => triangles[3 * t + corner] ?? 0) as [number, number, number];
      const ax = xIn[a] ?? 0;
      const ay = yIn[a] ?? 0;
      const bx = (xIn[b] ?? 0) - ax;
      const by = (yIn[b] ?? 0) - ay;
      const cx = (xIn[c] ?? 0) - ax;
      const cy = (yIn[c] ?? 0) - ay;
      const twiceArea = bx * cy - cx * by;
      const l1 = ((x - ax) * cy - (y - ay) * cx) / twiceArea;
      const l2 = ((y - ay) * bx - (x - ax) * by) / twiceArea;
      if (l1 < -1e-9 || l2 < -1e-9 || l1 + l2 > 1 + 1e-9) continue;
      into[0] = 1 - l1 - l2;
      into[1] = l1;
      into[2] = l2;
      return t;
    }
    return -1;
  };
}
