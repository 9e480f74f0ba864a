/** What a job has that a moving point may be drawn to: corners, edges and centre lines of its pieces, and its supports. */
import { cutoutCentre } from '../edit';
import type { Job, Piece, Support } from '../job';
import { cutoutInPlan } from '../job';
import type { Point } from '../outline';
import {
  between,
  boundingBox,
  directionAt,
  directionBetween,
  distanceIn,
  leftOf,
  moved,
  outlineEdges,
  pieceDirection,
  TOUCH_IN,
  turned,
} from '../outline';
import type { SnapTarget } from './snap';

/**
 * Every target of a job. `except` leaves some out by key, such as what is being moved: `counter/corner-2` one thing,
 * `counter/` all of a piece.
 */
export function snapTargets(job: Job, except: readonly string[]): SnapTarget[] {
  const isLeftOut = (key: string) =>
    except.some((one) => key === one || (one.endsWith('/') && key.startsWith(one)));
  return job.pieces.flatMap(pieceTargets).filter(({ key }) => !isLeftOut(key));
}

function pieceTargets(piece: Piece): SnapTarget[] {
  const key = (part: string) => `${piece.id}/${part}`;
  const corners = piece.corners.map((at, i) =>
    pointTarget(key(`corner-${i}`), `corner of ${piece.name}`, at),
  );
  const edges = outlineEdges(piece.corners).flatMap(({ edge, a, b }) => [
    pointTarget(key(`edge-${edge}`), `middle of an edge of ${piece.name}`, between(a, b, 0.5)),
    lineTarget(key(`edge-${edge}`), `edge of ${piece.name}`, a, b),
  ]);
  const cutouts = piece.cutouts.flatMap((cutout, index) => {
    const name = cutout.name ?? cutout.purpose;
    const outline = cutoutInPlan(piece, index);
    if (!outline.ok) return [];
    return [pointTarget(key(`cutout-${cutout.id}`), `centre of ${name}`, cutoutCentre(cutout.shape))];
  });
  const supports = piece.supports.flatMap((support) => supportTargets(key(`support-${support.id}`), support));
  return [...corners, ...edges, ...centreLines(piece, key('centre-line')), ...cutouts, ...supports];
}

/** Both centre lines of the piece's extent, along its own direction and across it. */
function centreLines(piece: Piece, key: string): SnapTarget[] {
  const direction = pieceDirection(piece.corners);
  const angleRad = Math.atan2(direction.y, direction.x);
  const box = boundingBox(piece.corners.map((corner) => turned(corner, -angleRad)));
  const midXIn = (box.minXIn + box.maxXIn) / 2;
  const midYIn = (box.minYIn + box.maxYIn) / 2;
  const line = (a: Point, b: Point) =>
    lineTarget(key, `centre line of ${piece.name}`, turned(a, angleRad), turned(b, angleRad));
  return [
    line({ xIn: box.minXIn, yIn: midYIn }, { xIn: box.maxXIn, yIn: midYIn }),
    line({ xIn: midXIn, yIn: box.minYIn }, { xIn: midXIn, yIn: box.maxYIn }),
  ];
}

function supportTargets(key: string, support: Support): SnapTarget[] {
  const name = support.name ?? `${support.kind} ${support.id}`;
  switch (support.kind) {
    case 'cabinet': {
      const along = directionAt((support.angleDeg * Math.PI) / 180);
      const back = leftOf(along);
      const right = moved(support.corner, along, support.widthIn);
      const backRight = moved(right, back, support.depthIn);
      const backLeft = moved(support.corner, back, support.depthIn);
      return ring(key, name, [support.corner, right, backRight, backLeft]);
    }
    case 'wall':
    case 'ledger': {
      const { from, to } = support;
      if (distanceIn(from, to) <= TOUCH_IN) return [];
      const across = leftOf(directionBetween(from, to));
      const side = (byIn: number) =>
        lineTarget(key, `face of ${name}`, moved(from, across, byIn), moved(to, across, byIn));
      return [
        pointTarget(key, `end of ${name}`, from),
        pointTarget(key, `end of ${name}`, to),
        lineTarget(key, `centre line of ${name}`, from, to),
        side(support.widthIn / 2),
        side(-support.widthIn / 2),
      ];
    }
    case 'pier':
      return [pointTarget(key, `centre of ${name}`, support.footprint.centre)];
    case 'leg':
      return [pointTarget(key, `centre of ${name}`, support.centre)];
    case 'bracket':
      return support.roots.map((root) => pointTarget(key, `root of ${name}`, root));
    case 'full-bed':
      return support.corners === null ? [] : ring(key, name, support.corners);
  }
}

function ring(key: string, name: string, points: readonly Point[]): SnapTarget[] {
  return points.flatMap((a, i) => [
    pointTarget(key, `corner of ${name}`, a),
    lineTarget(key, `side of ${name}`, a, points[(i + 1) % points.length]!),
  ]);
}

function pointTarget(key: string, words: string, { xIn, yIn }: Point): SnapTarget {
  return { kind: 'point', key, words, at: { xIn, yIn } };
}

function lineTarget(key: string, words: string, a: Point, b: Point): SnapTarget {
  const plain = ({ xIn, yIn }: Point) => ({ xIn, yIn });
  return { kind: 'line', key, words, a: plain(a), b: plain(b) };
}
