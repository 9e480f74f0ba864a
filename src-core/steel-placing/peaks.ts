/** Where bending peaks along a line of steel: over supports, midway between them, at inside corners, where told. */
import type { Piece } from '../job';
import { bearingPatches } from '../job';
import type { Point } from '../outline';
import type { Axis, Box, Frame, Stretch } from './frame';
import { boxOf, sharedIn, sizeIn } from './frame';
import type { Peak } from './lap-places';
import { LINE_SUPPORT_IN, SHORT_SPAN_IN } from './practice';

/** A bearing in a layer's frame. */
export interface Bearer {
  readonly box: Box;
  readonly words: string;
}

/** A place where bending peaks, in a layer's frame. */
export interface PeakPoint {
  readonly at: Point;
  readonly words: string;
}

export interface PeakSources {
  readonly bearers: readonly Bearer[];
  readonly points: readonly PeakPoint[];
}

/** Bearings of the supports that stay; of all supports where none does. */
export function bearersOf(piece: Piece, outline: readonly Point[], frame: Frame): Bearer[] {
  const staying = piece.supports.filter(({ lastDay }) => lastDay === null);
  const supports = staying.length > 0 ? staying : piece.supports;
  return supports.flatMap((support) =>
    bearingPatches(support, outline).map(({ corners }) => ({
      box: boxOf(corners.map(frame.into)),
      words: `over ${support.name ?? support.id}`,
    })),
  );
}

/**
 * Peaks along one axis of a box: a support across it is one, a wide one peaks at both its edges, and midway between
 * two lies another. A support that runs along the axis, such as a wall below the whole length, is none. Common
 * practice, no source: the load check's own moments may be given as points instead.
 */
export function peaksAlong(axis: Axis, box: Box, { bearers, points }: PeakSources): Peak[] {
  const other: Axis = axis === 'u' ? 'v' : 'u';
  const across = bearers.filter((bearer) => {
    const longIn = sizeIn(bearer.box[axis]);
    const runsAlong = longIn > LINE_SUPPORT_IN && longIn > 2 * sizeIn(bearer.box[other]);
    return (
      !runsAlong && sharedIn(bearer.box[other], box[other]) > 0 && sharedIn(bearer.box[axis], box[axis]) > 0
    );
  });
  const supports = merged(across.map((bearer) => ({ ...bearer.box[axis], words: bearer.words })));
  const spans = supports.slice(1).flatMap((next, k): Peak[] => {
    const { toIn } = supports[k]!;
    const middleIn = (toIn + next.fromIn) / 2;
    return next.fromIn - toIn > SHORT_SPAN_IN ? [{ fromIn: middleIn, toIn: middleIn, words: 'midspan' }] : [];
  });
  const given = points.flatMap(({ at, words }): Peak[] => {
    const [alongIn, acrossIn] = axis === 'u' ? [at.xIn, at.yIn] : [at.yIn, at.xIn];
    const isBeside = acrossIn < box[other].fromIn - 1e-6 || acrossIn > box[other].toIn + 1e-6;
    return isBeside ? [] : [{ fromIn: alongIn, toIn: alongIn, words }];
  });
  return [...supports.flatMap(edgesOfWide), ...spans, ...given];
}

/** Peaks by distance from the start of a stretch. */
export function peaksFrom(peaks: readonly Peak[], { fromIn: startIn }: Stretch): Peak[] {
  return peaks.map(({ fromIn, toIn, words }) => ({ fromIn: fromIn - startIn, toIn: toIn - startIn, words }));
}

/** Supports that touch or overlap are one: two cabinets side by side. */
function merged(peaks: readonly Peak[]): Peak[] {
  const done: Peak[] = [];
  for (const peak of [...peaks].sort((a, b) => a.fromIn - b.fromIn)) {
    const last = done.at(-1);
    if (last === undefined || peak.fromIn > last.toIn + 1e-6) done.push(peak);
    else done[done.length - 1] = { ...last, toIn: Math.max(last.toIn, peak.toIn) };
  }
  return done;
}

function edgesOfWide(support: Peak): Peak[] {
  const { fromIn, toIn, words } = support;
  if (toIn - fromIn <= LINE_SUPPORT_IN) return [support];
  const at = (edgeIn: number): Peak => ({
    fromIn: edgeIn,
    toIn: edgeIn,
    words: words.replace('over', 'edge of'),
  });
  return [at(fromIn), at(toIn)];
}
