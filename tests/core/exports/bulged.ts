/** Plane geometry of closed outlines with arcs, worked from circle segments. */

export interface Bulged {
  readonly x: number;
  readonly y: number;
  readonly bulge?: number;
}

/** Signed area: the polygon of the corners, and the segment of a circle on every chord, positive counter-clockwise. */
export function areaOf(vertices: readonly Bulged[]): number {
  return ways(vertices).reduce((sum, { a, b, sweepRad, radius }) => {
    const segment = sweepRad === 0 ? 0 : (radius ** 2 * (sweepRad - Math.sin(sweepRad))) / 2;
    return sum + (a.x * b.y - b.x * a.y) / 2 + segment;
  }, 0);
}

/** Length of the boundary, arcs along the arc. */
export function perimeterOf(vertices: readonly Bulged[]): number {
  return ways(vertices).reduce(
    (sum, { chord, sweepRad, radius }) => sum + (sweepRad === 0 ? chord : radius * Math.abs(sweepRad)),
    0,
  );
}

/** The bulge is the tangent of a quarter of the sweep. Source: DXF Reference, LWPOLYLINE, group code 42. */
function ways(vertices: readonly Bulged[]) {
  return vertices.map((a, i) => {
    const b = vertices[(i + 1) % vertices.length]!;
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    const sweepRad = 4 * Math.atan(a.bulge ?? 0);
    const radius = sweepRad === 0 ? 0 : chord / (2 * Math.sin(Math.abs(sweepRad) / 2));
    return { a, b, chord, sweepRad, radius };
  });
}
