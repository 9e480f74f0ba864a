import type { Ring } from './mesh-region';
import { SPACING_GROWTH, type SpacingField, spacingAtIn } from './mesh-spacing';

/**
 * Axes of the lattice: u along the longest edge of the outline, v across, origin in the middle of the outline's
 * extent. A turned job so gets its mesh turned, and a mirrored job its mesh mirrored.
 */
export interface LatticeFrame {
  readonly originXIn: number;
  readonly originYIn: number;
  readonly cosine: number;
  readonly sine: number;
}

export interface LatticePoints {
  readonly xIn: number[];
  readonly yIn: number[];
}

/** Places that lattice points keep clear of: nodes already placed. */
export type IsClear = (xIn: number, yIn: number, spacingIn: number) => boolean;

/** Edges this nearly as long as the longest count as equal to it, and the first is taken. */
const EQUAL_LENGTH_RATIO = 1e-9;
/** A finer lattice is used where the spacing wanted is less than this share of the pitch. */
const FINER_BELOW_RATIO = 0.72;
const MAX_HALVINGS = 8;

/** The lattice axes of an outline. */
export function latticeFrame(outline: Ring): LatticeFrame {
  let longestIn = 0;
  let cosine = 1;
  let sine = 0;
  for (const [i, a] of outline.entries()) {
    const b = outline[(i + 1) % outline.length]!;
    const lengthIn = Math.hypot(b.xIn - a.xIn, b.yIn - a.yIn);
    if (lengthIn <= longestIn * (1 + EQUAL_LENGTH_RATIO)) continue;
    longestIn = lengthIn;
    cosine = (b.xIn - a.xIn) / lengthIn;
    sine = (b.yIn - a.yIn) / lengthIn;
  }
  const us = outline.map((point) => cosine * point.xIn + sine * point.yIn);
  const vs = outline.map((point) => cosine * point.yIn - sine * point.xIn);
  const u = (Math.min(...us) + Math.max(...us)) / 2;
  const v = (Math.min(...vs) + Math.max(...vs)) / 2;
  return { originXIn: cosine * u - sine * v, originYIn: sine * u + cosine * v, cosine, sine };
}

/** Position along and across the lattice axes, inches. */
export function toFrame(
  frame: LatticeFrame,
  xIn: number,
  yIn: number,
): { readonly u: number; readonly v: number } {
  const dx = xIn - frame.originXIn;
  const dy = yIn - frame.originYIn;
  return { u: frame.cosine * dx + frame.sine * dy, v: frame.cosine * dy - frame.sine * dx };
}

/**
 * Points of a hexagonal lattice inside the rings, of the field's size as pitch, halved again and again where the
 * field asks for less. Only points that are clear of the nodes already placed are given.
 */
export function latticePoints(
  rings: readonly Ring[],
  frame: LatticeFrame,
  field: SpacingField,
  isClear: IsClear,
): LatticePoints {
  const turned = rings.map((ring) => ring.map((point) => toFrame(frame, point.xIn, point.yIn)));
  const sources = field.sourceXIn.map((xIn, s) => ({
    ...toFrame(frame, xIn, field.sourceYIn[s]!),
    spacingIn: field.sourceSpacingIn[s]!,
  }));
  const points: LatticePoints = { xIn: [], yIn: [] };
  const vs = turned[0]!.map((point) => point.v);
  const lowV = Math.min(...vs);
  const highV = Math.max(...vs);

  for (let level = 0; level <= MAX_HALVINGS; level++) {
    const pitchIn = field.sizeIn / 2 ** level;
    const rowIn = (pitchIn * Math.sqrt(3)) / 2;
    // Half a pitch belongs where less than this is asked for; the whole lattice everywhere.
    const belowIn = level === 0 ? Number.POSITIVE_INFINITY : 2 * pitchIn * FINER_BELOW_RATIO;
    const asking = sources.filter((source) => source.spacingIn < belowIn);
    if (level > 0 && asking.length === 0) break;
    for (let j = Math.ceil(lowV / rowIn); j * rowIn <= highV; j++) {
      const v = j * rowIn;
      const spans = insideSpans(turned, v);
      const rows = level === 0 ? spans : overlap(spans, reachSpans(asking, v, belowIn));
      for (const [from, to] of rows) {
        for (let i = Math.ceil(from / pitchIn - j / 2); (i + j / 2) * pitchIn <= to; i++) {
          if (level > 0 && i % 2 === 0 && j % 2 === 0) continue;
          const u = (i + j / 2) * pitchIn;
          const xIn = frame.originXIn + frame.cosine * u - frame.sine * v;
          const yIn = frame.originYIn + frame.sine * u + frame.cosine * v;
          const spacingIn = spacingAtIn(field, xIn, yIn);
          if (spacingIn >= belowIn || !isClear(xIn, yIn, spacingIn)) continue;
          points.xIn.push(xIn);
          points.yIn.push(yIn);
        }
      }
    }
  }
  return points;
}

/** Where the line at height v runs inside the rings, by the even-odd rule. */
function insideSpans(rings: readonly (readonly { u: number; v: number }[])[], v: number): [number, number][] {
  const crossings: number[] = [];
  for (const ring of rings) {
    let a = ring[ring.length - 1]!;
    for (const b of ring) {
      if (a.v > v !== b.v > v) crossings.push(a.u + ((v - a.v) / (b.v - a.v)) * (b.u - a.u));
      a = b;
    }
  }
  crossings.sort((s, t) => s - t);
  const spans: [number, number][] = [];
  for (let i = 0; i + 1 < crossings.length; i += 2) spans.push([crossings[i]!, crossings[i + 1]!]);
  return spans;
}

/** Where the line at height v comes within the reach of a source, joined and in order. */
function reachSpans(
  sources: readonly { readonly u: number; readonly v: number; readonly spacingIn: number }[],
  v: number,
  belowIn: number,
): [number, number][] {
  const spans: [number, number][] = [];
  for (const source of sources) {
    const reachIn = (belowIn - source.spacingIn) / SPACING_GROWTH;
    const squareIn2 = reachIn * reachIn - (source.v - v) ** 2;
    if (squareIn2 > 0) spans.push([source.u - Math.sqrt(squareIn2), source.u + Math.sqrt(squareIn2)]);
  }
  spans.sort((s, t) => s[0] - t[0]);
  const joined: [number, number][] = [];
  for (const span of spans) {
    const last = joined[joined.length - 1];
    if (last && span[0] <= last[1]) last[1] = Math.max(last[1], span[1]);
    else joined.push(span);
  }
  return joined;
}

function overlap(
  first: readonly [number, number][],
  second: readonly [number, number][],
): [number, number][] {
  const both: [number, number][] = [];
  for (const [a, b] of first) {
    for (const [c, d] of second) {
      if (Math.max(a, c) < Math.min(b, d)) both.push([Math.max(a, c), Math.min(b, d)]);
    }
  }
  return both;
}
