/** The bent slab drawn much larger than it bends. */
import type { DeflectedShape, PieceMap } from '../../src-core/field-map';

/** Share of the piece's length that the largest sag is drawn with, at the most. */
const DRAWN_SHARE = 0.06;
const STEPS = [5, 2, 1];

/** How many times larger the sag is drawn: 1, 2 or 5 times a power of ten, so that it can be said in words. */
export function exaggerationFor(mostIn: number, lengthIn: number): number {
  if (mostIn <= 0) return 1;
  const wanted = Math.max(1, (DRAWN_SHARE * lengthIn) / mostIn);
  const decade = 10 ** Math.floor(Math.log10(wanted));
  return decade * STEPS.find((step) => step * decade <= wanted)!;
}

/** x, y, z of the nodes: the top of the slab, each let down by its own sag times the exaggeration. */
export function sagPositions(
  map: PieceMap,
  shape: DeflectedShape,
  topIn: number,
  exaggeration: number,
): Float32Array {
  const positions = new Float32Array(map.xIn.length * 3);
  for (let node = 0; node < map.xIn.length; node++) {
    positions[node * 3] = map.xIn[node]!;
    positions[node * 3 + 1] = map.yIn[node]!;
    positions[node * 3 + 2] = topIn - shape.wIn[node]! * exaggeration;
  }
  return positions;
}

/** Whether a shape was worked out on the very mesh of a map; an older one belongs to a piece that has changed since. */
export function isSameMesh(map: PieceMap, shape: DeflectedShape): boolean {
  return map.pieceId === shape.pieceId && map.xIn.length === shape.wIn.length;
}

/** Node pairs along the outline and the cutouts: sides that only one triangle has. */
export function outerSides(triangles: Uint32Array): Uint32Array {
  const sides = new Map<string, readonly [number, number] | null>();
  for (let t = 0; t < triangles.length; t += 3) {
    for (let k = 0; k < 3; k++) {
      const a = triangles[t + k]!;
      const b = triangles[t + ((k + 1) % 3)]!;
      const name = a < b ? `${a} ${b}` : `${b} ${a}`;
      sides.set(name, sides.has(name) ? null : [a, b]);
    }
  }
  return Uint32Array.from([...sides.values()].flatMap((side) => side ?? []));
}

/** The exaggeration that suits a shape on its piece. */
export function exaggerationOf(map: PieceMap, shape: DeflectedShape): number {
  const extent = (values: Float32Array) =>
    values.reduce((a, b) => Math.max(a, b)) - values.reduce((a, b) => Math.min(a, b));
  return exaggerationFor(shape.mostIn, Math.max(extent(map.xIn), extent(map.yIn)));
}
