/** The slab of a piece as a closed solid. */
import type { Piece } from '../job';
import type { Point } from '../outline';
import { isPointInPolygon, polygonAreaIn2, signedAreaIn2 } from '../outline';
import type { DripGroove } from './drip-grooves';
import { dripGrooves } from './drip-grooves';
import { faceLevels } from './face-levels';
import { triangulateFace } from './flat-face';
import { movedRing } from './moved-ring';
import { isSamePoint, slabPlan } from './slab-plan';
import type { SolidBuilder } from './solid-builder';
import { solidBuilder } from './solid-builder';
import type { Solid } from './types';

/** Chords leave a corner radius or a round opening by at most this much, so that volumes hold within a thousandth. */
const PLAN_CHORD_IN = 1 / 256;

/** A closed loop at one height, with the number of each of its points. */
interface Loop {
  readonly zIn: number;
  readonly points: readonly Point[];
  readonly ids: readonly number[];
}

/**
 * The closed solid of a slab: each edge's face swept along it, mitred at corners and carried round corner radii.
 * Where different faces meet in the run of an edge or in the middle of an arc, a plain return face ends them.
 * Cutouts are plumb holes with square lips, drip grooves are cut into the soffit. It lies level: the fall comes from
 * tilting the whole form and is left to whoever places the solid. Profiles too large for a neck of slab are drawn
 * smaller. A piece that cannot be drawn gives a solid without triangles.
 */
export function slabSolid(piece: Piece, chordToleranceIn = PLAN_CHORD_IN): Solid {
  const builder = solidBuilder();
  const plan = slabPlan(piece, chordToleranceIn);
  if (plan === null) return builder.finish();
  const topIn = piece.topElevationIn;
  const soffitIn = topIn - piece.thicknessIn;
  const rings: Loop[] = [];
  for (const { upIn, insetsIn } of faceLevels(plan.faces)) {
    const ring = movedRing(plan.lines, insetsIn);
    if (ring !== null) rings.push(addLoop(builder, ring, soffitIn + upIn, rings.at(-1)));
  }
  for (let k = 1; k < rings.length; k++) addBand(builder, rings[k - 1]!, rings[k]!);
  const [soffit, top] = [rings[0]!, rings.at(-1)!];
  for (const loop of [soffit, top]) inkLoop(builder, loop);
  const lips = plan.holes.map((hole) => {
    const [below, above] = [addLoop(builder, hole, soffitIn), addLoop(builder, hole, topIn)];
    addBand(builder, above, below);
    return { below, above };
  });
  const above = lips.map((lip) => lip.above);
  const below = lips.map((lip) => lip.below);
  addFlats(builder, [top, ...above.map(reversed)], 'up');
  const mouths = dripGrooves(plan).flatMap((groove) => addGroove(builder, groove, soffitIn));
  addFlats(builder, [soffit, ...below.map(reversed), ...mouths.map(reversed)], 'down');
  return builder.finish();
}

/**
 * Neighbours that are one point share a number, so that bands close where a ring's segments have run out; so do points
 * of two rings at one height, where one face steps back level and another stays.
 */
function addLoop(builder: SolidBuilder, points: readonly Point[], zIn: number, under?: Loop): Loop {
  const n = points.length;
  const ids: number[] = [];
  points.forEach((point, i) => {
    if (i > 0 && isSamePoint(point, points[i - 1]!)) {
      ids.push(ids[i - 1]!);
      return;
    }
    const shared = under?.zIn === zIn ? under.points.findIndex((other) => isSamePoint(point, other)) : -1;
    ids.push(shared < 0 ? builder.addPoint(point.xIn, point.yIn, zIn) : under!.ids[shared]!);
  });
  for (let i = n - 1; i > 0 && isSamePoint(points[i]!, points[0]!); i--) ids[i] = ids[0]!;
  return { zIn, points, ids };
}

/** The face between two loops of as many points; its outside is to the right of the lower one's way round. */
function addBand(builder: SolidBuilder, lower: Loop, upper: Loop): void {
  const n = lower.ids.length;
  for (let i = 0; i < n; i++) {
    const j = (i + 1) % n;
    builder.addTriangle(lower.ids[i]!, lower.ids[j]!, upper.ids[j]!);
    builder.addTriangle(lower.ids[i]!, upper.ids[j]!, upper.ids[i]!);
  }
}

function inkLoop(builder: SolidBuilder, { ids }: Loop): void {
  ids.forEach((id, i) => {
    builder.ink(id, ids[(i + 1) % ids.length]!);
  });
}

/** Walls and roof of a groove; gives the loops of its mouth in the soffit. */
function addGroove(builder: SolidBuilder, { depthIn, loops }: DripGroove, soffitIn: number): Loop[] {
  const mouth = loops.map((loop) => addLoop(builder, loop, soffitIn));
  const roof = loops.map((loop) => addLoop(builder, loop, soffitIn + depthIn));
  mouth.forEach((loop, i) => {
    addBand(builder, roof[i]!, loop);
  });
  addFlats(builder, roof, 'down');
  return mouth;
}

function reversed({ zIn, points, ids }: Loop): Loop {
  return { zIn, points: [...points].reverse(), ids: [...ids].reverse() };
}

/** Level faces within counter-clockwise loops less the clockwise ones. An outline may be an island in an opening. */
function addFlats(builder: SolidBuilder, loops: readonly Loop[], facing: 'up' | 'down'): void {
  const clean = loops.map(withoutRepeats);
  const outlines = clean.filter(({ points }) => signedAreaIn2(points) > 0);
  const openings = clean.filter((loop) => !outlines.includes(loop));
  const bySize = [...outlines].sort((p, q) => polygonAreaIn2(p.points) - polygonAreaIn2(q.points));
  const within = openings.map((opening) =>
    bySize.find(({ points }) => isPointInPolygon(opening.points[0]!, points)),
  );
  for (const outline of outlines) {
    const face = [outline, ...openings.filter((_, i) => within[i] === outline)];
    const ids = face.flatMap((loop) => loop.ids);
    const triangles = triangulateFace(face.map(({ points }) => points));
    for (let t = 0; t < triangles.length; t += 3) {
      const [a, b, c] = [ids[triangles[t]!]!, ids[triangles[t + 1]!]!, ids[triangles[t + 2]!]!];
      if (facing === 'up') builder.addTriangle(a, b, c, true);
      else builder.addTriangle(a, c, b, true);
    }
  }
}

function withoutRepeats({ zIn, points, ids }: Loop): Loop {
  const keep = ids.map((id, i) => id !== ids[(i + ids.length - 1) % ids.length]);
  return { zIn, points: points.filter((_, i) => keep[i]), ids: ids.filter((_, i) => keep[i]) };
}
