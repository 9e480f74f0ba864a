/** Diagonal bars across the corners from which cracks start: inside corners, and sharp corners of openings. */
import { BARS, barDevelopment, clearBarLength } from '../concrete';
import type { Cutout, Job, Piece } from '../job';
import type { Direction, Point, Region } from '../outline';
import {
  clipSegmentToRegion,
  cornerAnglesRad,
  directionBetween,
  insideCorners,
  isPointInPolygon,
  leftOf,
  moved,
  patchOutline,
} from '../outline';
import { coveredRegions } from '../solid';
import type { Trace } from '../trace';
import { printExactLength, printLength } from '../units';
import { wantedCoverIn } from './cover';
import type { HeldBar } from './drawn-trimmers';
import { drawnAcross } from './drawn-trimmers';
import { roundSteelMass } from './formulas';
import { holdOf } from './lap-lengths';
import { INSIDE_TURN_RAD, SHARP_RADIUS_IN, STEEL_LB_PER_IN3, TRIMMER } from './practice';
import type { Stacked } from './stacking';
import { cornerTrace, cutoutTrace } from './traces';
import type { Trimmer } from './types';

/** A corner of the void that opens wider than this is no corner that a crack starts from. Common practice, no source. */
const WIDEST_VOID_RAD = (3 * Math.PI) / 4;
const SAME_IN = 1e-6;

/** A corner with the void between its two sides. */
interface SharpCorner {
  readonly id: string;
  readonly trace: Trace;
  readonly at: Point;
  readonly radiusIn: number;
  /** From the void into the concrete, midway between the sides. */
  readonly inward: Direction;
  readonly voidRad: number;
  /** Along the two sides of the void, away from the corner. */
  readonly sides: readonly [Direction, Direction];
}

/**
 * A #3 bar across every sharp inside corner and corner of an opening, square to the line that halves the corner: as
 * long as it needs to take hold to either side, 24 in at least, where the slab is deep and wide enough for it. Common
 * practice, no source. Recommended beside mesh and bars over the whole slab; not where bars drawn at the corner trim it.
 */
export function placeTrimmers(
  job: Job,
  piece: Piece,
  region: Region,
  layers: readonly Stacked[],
  drawn: readonly HeldBar[],
): Trimmer[] {
  const bar = BARS.find(({ id }) => id === TRIMMER.barId);
  if (bar === undefined) throw new Error(`No bar ${TRIMMER.barId} in the table`);
  const { diameterIn: db, yieldPsi: fy } = bar;
  const { fc, lambda } = holdOf(job, piece);
  const straight = clearBarLength.compute({ fy, psit: 1, psie: 1, psig: 1, lambda, fc, db });
  const wantedIn = Math.max(TRIMMER.leastIn, 2 * barDevelopment.compute({ ld0: straight }));
  const edgeCoverIn = wantedCoverIn(piece, 'edge');
  const covered = coveredRegions(piece, region, edgeCoverIn);
  return sharpCorners(piece).map((corner, k): Trimmer => {
    const depth = depthOfBar(job, piece, layers, corner.at, db);
    const line = lineAcross(corner, covered, {
      coverIn: Math.max(TRIMMER.coverIn, edgeCoverIn),
      db,
      wantedIn,
    });
    const named = {
      id: corner.id,
      trace: corner.trace,
      label: `T${k + 1}`,
      corner: corner.at,
      barId: bar.id,
      barIn: db,
      wantedIn,
    };
    const none = (status: 'drawn' | 'no-room', words: string): Trimmer => {
      return {
        ...named,
        status,
        from: null,
        to: null,
        lengthIn: 0,
        depthIn: null,
        massLb: 0,
        words,
      };
    };
    const across = drawnAcross(corner, drawn, db);
    if (across !== null)
      return none('drawn', `${across} as drawn trims this corner; no other bar is bought.`);
    if (!depth.ok) return none('no-room', depth.words);
    if (line === null) return none('no-room', tooNarrow(job));
    const massLb = roundSteelMass.compute({ rho: STEEL_LB_PER_IN3, db, L: line.lengthIn });
    return {
      ...named,
      ...line,
      status: 'recommended',
      depthIn: depth.depthIn,
      massLb,
      words: roomWords(job, line.lengthIn, wantedIn),
    };
  });
}

/** Corners of the outline as drawn that turn inward, then those of rectangles and polygons cut out. */
function sharpCorners(piece: Piece): SharpCorner[] {
  const outline = insideCorners(piece.corners, INSIDE_TURN_RAD).map(({ corner, angleRad }) =>
    cornerAt(piece.corners, corner, piece.corners[corner]!.radiusIn, 2 * Math.PI - angleRad, {
      id: `trimmer-corner-${corner + 1}`,
      trace: cornerTrace(piece, corner),
    }),
  );
  const openings = piece.cutouts.flatMap((cutout) => {
    const drawn = cornersOf(cutout);
    return cornerAnglesRad(drawn).map((angleRad, k) =>
      cornerAt(drawn, k, drawn[k]!.radiusIn, angleRad, {
        id: `trimmer-${cutout.id}-${k + 1}`,
        trace: cutoutTrace(piece, cutout.id),
      }),
    );
  });
  return [...outline, ...openings].filter(
    ({ radiusIn, voidRad }) => radiusIn <= SHARP_RADIUS_IN && voidRad <= WIDEST_VOID_RAD,
  );
}

function cornersOf({ shape }: Cutout): readonly (Point & { readonly radiusIn: number })[] {
  switch (shape.kind) {
    case 'circle':
      return [];
    case 'polygon':
      return shape.corners;
    case 'rectangle': {
      const { centre, widthIn, depthIn, angleDeg, radiusIn } = shape;
      const corners = patchOutline(centre, widthIn, depthIn, (angleDeg * Math.PI) / 180);
      return corners.map((corner) => ({ ...corner, radiusIn }));
    }
  }
}

function cornerAt(
  corners: readonly Point[],
  index: number,
  radiusIn: number,
  voidRad: number,
  named: { readonly id: string; readonly trace: Trace },
): SharpCorner {
  const n = corners.length;
  const { xIn, yIn } = corners[index]!;
  const at = { xIn, yIn };
  const back = directionBetween(at, corners[(index + n - 1) % n]!);
  const on = directionBetween(at, corners[(index + 1) % n]!);
  // A flat corner has no middle line; it is not sharp either and is dropped with its void of half a turn.
  const [x, y] = [-(back.x + on.x), -(back.y + on.y)];
  const size = Math.hypot(x, y);
  const sides = [back, on] as const;
  return {
    ...named,
    at,
    radiusIn,
    voidRad,
    sides,
    inward: size > 0 ? { x: x / size, y: y / size } : leftOf(on),
  };
}

interface BarLine {
  readonly from: Point;
  readonly to: Point;
  readonly lengthIn: number;
}

/** The bar's line, clear of the rounded corner by the cover, as far as wanted or as the slab reaches; null where that is too short. */
function lineAcross(
  { at, inward, radiusIn, voidRad }: SharpCorner,
  covered: readonly Region[],
  { coverIn, db, wantedIn }: { readonly coverIn: number; readonly db: number; readonly wantedIn: number },
): BarLine | null {
  // A rounding fills the void's corner with concrete, so the bar may move out after it.
  const filledIn = radiusIn * (1 / Math.sin(voidRad / 2) - 1);
  const middle = moved(at, inward, coverIn + db / 2 - filledIn);
  const along = leftOf(inward);
  const whole = { a: moved(middle, along, -wantedIn / 2), b: moved(middle, along, wantedIn / 2) };
  const offIn = (p: Point) => (p.xIn - middle.xIn) * along.x + (p.yIn - middle.yIn) * along.y;
  for (const { a, b } of covered.flatMap((part) => clipSegmentToRegion(whole, part))) {
    const [backIn, onIn] = [-offIn(a), offIn(b)];
    if (backIn < -SAME_IN || onIn < -SAME_IN) continue;
    if (Math.min(backIn, onIn) < TRIMMER.leastSideIn) return null;
    return { from: a, to: b, lengthIn: backIn + onIn };
  }
  return null;
}

type BarDepth =
  | { readonly ok: true; readonly depthIn: number }
  | { readonly ok: false; readonly words: string };

/** A depth at which the bar lies over, between or under the layers at the corner with cover above and below it. */
function depthOfBar(job: Job, piece: Piece, layers: readonly Stacked[], at: Point, db: number): BarDepth {
  const { thicknessIn } = piece;
  const there = layers.filter(
    ({ layer }) => layer.kind === 'mesh' || layer.corners === null || isPointInPolygon(at, layer.corners),
  );
  const lowIn = wantedCoverIn(piece, 'bottom');
  const highIn = thicknessIn - wantedCoverIn(piece, 'top');
  const places =
    there.length === 0
      ? [thicknessIn / 2]
      : [
          ...there.map(({ topIn }) => topIn + db / 2).reverse(),
          Math.min(...there.map(({ undersideIn }) => undersideIn)) - db / 2,
        ];
  const fits = (upIn: number) =>
    upIn - db / 2 >= lowIn - SAME_IN &&
    upIn + db / 2 <= highIn + SAME_IN &&
    there.every(
      ({ undersideIn, topIn }) => upIn - db / 2 >= topIn - SAME_IN || upIn + db / 2 <= undersideIn + SAME_IN,
    );
  const upIn = places.find(fits);
  if (upIn !== undefined) return { ok: true, depthIn: thicknessIn - upIn };
  const cover = printExactLength(wantedCoverIn(piece, 'top'), { system: job.shownIn });
  const thick = printExactLength(thicknessIn, { system: job.shownIn });
  const beside = there.length === 0 ? '' : ' over or under the steel that is drawn';
  return {
    ok: false,
    words: `A trimmer would help here, but ${thick} of slab has no room for a ${TRIMMER.barId} bar${beside} with ${cover} of cover.`,
  };
}

function tooNarrow(job: Job): string {
  const side = printLength(TRIMMER.leastSideIn, { system: job.shownIn });
  return `A trimmer would help here, but the slab is too narrow beside the corner: under ${side} would lie to one side of it.`;
}

function roomWords(job: Job, lengthIn: number, wantedIn: number): string {
  const length = (valueIn: number) => printLength(valueIn, { system: job.shownIn });
  if (lengthIn >= wantedIn - SAME_IN) {
    return 'Recommended across this corner, from which cracks start; tie it to the steel that is drawn.';
  }
  return `Recommended across this corner, but only ${length(lengthIn)} of the ${length(wantedIn)} that it needs to take hold will fit: it holds a crack narrow, no more.`;
}
