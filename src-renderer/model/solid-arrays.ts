/** Solids made ready to draw: several as one, and with places in the grain's tile. */
import type { Solid } from '../../src-core/solid';
import { TILE_IN } from './grain';

/** Several solids as one. */
export function mergedSolid(solids: readonly Solid[]): Solid {
  const starts: number[] = [];
  let vertices = 0;
  for (const { positions } of solids) {
    starts.push(vertices);
    vertices += positions.length / 3;
  }
  const joined = (arrays: readonly Float32Array[]) => {
    const all = new Float32Array(arrays.reduce((sum, { length }) => sum + length, 0));
    let at = 0;
    for (const array of arrays) {
      all.set(array, at);
      at += array.length;
    }
    return all;
  };
  return {
    positions: joined(solids.map(({ positions }) => positions)),
    normals: joined(solids.map(({ normals }) => normals)),
    triangles: Uint32Array.from(
      solids.flatMap(({ triangles }, k) => Array.from(triangles, (v) => v + starts[k]!)),
    ),
    inkLines: joined(solids.map(({ inkLines }) => inkLines)),
  };
}

/**
 * Place of each vertex in the grain's tile: the drawing's own inches, seen along the axis that its normal is nearest to. The
 * second runs along the solid's longest side, as timber's grain does.
 */
export function grainPlaces({ positions, normals }: Solid): Float32Array {
  const longest = longestAxis(positions);
  const places = new Float32Array((positions.length / 3) * 2);
  for (let v = 0; v < positions.length / 3; v++) {
    const facing = steepestAxis(normals, v * 3);
    const [first, second] = [0, 1, 2].filter((axis) => axis !== facing) as [number, number];
    const [across, along] = first === longest ? [second, first] : [first, second];
    places[v * 2] = positions[v * 3 + across]! / TILE_IN;
    places[v * 2 + 1] = positions[v * 3 + along]! / TILE_IN;
  }
  return places;
}

function longestAxis(positions: Float32Array): number {
  const least = [Infinity, Infinity, Infinity];
  const most = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < positions.length; i++) {
    least[i % 3] = Math.min(least[i % 3]!, positions[i]!);
    most[i % 3] = Math.max(most[i % 3]!, positions[i]!);
  }
  const sizes = most.map((value, axis) => value - least[axis]!);
  return sizes.indexOf(Math.max(...sizes));
}

function steepestAxis(normals: Float32Array, from: number): number {
  const sizes = [0, 1, 2].map((axis) => Math.abs(normals[from + axis]!));
  return sizes.indexOf(Math.max(...sizes));
}
