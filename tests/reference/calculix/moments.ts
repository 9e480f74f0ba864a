import type { PointMoments } from './plate';
import type { Moments, PlateInput } from './plate-input';

/**
 * Moments as the tests want them, from those at the integration points, which are the most accurate the program
 * gives: on a mesh no coarser than the slab is thick, the mean of a triangle's three points is within about 0.2 % of
 * the largest moment in the plate away from its edges, and a node's value within about 0.5 %; next to an edge, 1 to 2 %.
 */

const zero: Moments = { mxLbfInPerIn: 0, myLbfInPerIn: 0, mxyLbfInPerIn: 0 };

/** Moments at the middle of each triangle: the mean of its three points. */
export function triangleMoments(points: readonly PointMoments[]): Moments[] {
  return Array.from({ length: points.length / 3 }, (_, triangle) => {
    const three = points.slice(3 * triangle, 3 * triangle + 3);
    return three.reduce((sum, point) => add(sum, point, 1 / 3), zero);
  });
}

/** Moments at the nodes: carried linearly to each triangle's corners, then averaged over the triangles there. */
export function nodeMoments(input: PlateInput, points: readonly PointMoments[]): Moments[] {
  const means = triangleMoments(points);
  const sums = input.nodes.map(() => zero);
  const counts = input.nodes.map(() => 0);
  input.triangles.forEach((nodes, triangle) => {
    nodes.forEach((node, corner) => {
      // A linear field with value m at (2/3, 1/6, 1/6) and mean c is 2 m - c at the corner (1, 0, 0).
      const carried = add(add(zero, points[3 * triangle + corner]!, 2), means[triangle]!, -1);
      sums[node] = add(sums[node]!, carried, 1);
      counts[node]! += 1;
    });
  });
  return sums.map((sum, node) => add(zero, sum, 1 / counts[node]!));
}

/** Mean moments over part of the plan, by area; throws when no integration point lies in it. */
export function meanMoments(
  points: readonly PointMoments[],
  isInside: (point: PointMoments) => boolean,
): Moments {
  const inside = points.filter(isInside);
  if (inside.length === 0) throw new Error('no integration point lies in the part asked for');
  const areaIn2 = inside.reduce((sum, point) => sum + point.areaIn2, 0);
  return inside.reduce((sum, point) => add(sum, point, point.areaIn2 / areaIn2), zero);
}

function add(sum: Moments, more: Moments, share: number): Moments {
  return {
    mxLbfInPerIn: sum.mxLbfInPerIn + share * more.mxLbfInPerIn,
    myLbfInPerIn: sum.myLbfInPerIn + share * more.myLbfInPerIn,
    mxyLbfInPerIn: sum.mxyLbfInPerIn + share * more.mxyLbfInPerIn,
  };
}
