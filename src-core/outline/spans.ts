/** Measured free spans: how far the slab reaches from bearing to bearing. */
import type { Bearing, LineReading } from './bearings';
import { bearingAhead, bearingBehind, readLine } from './bearings';
import { pieceDirection } from './edges';
import type { Direction, Point, Region } from './point';
import { leftOf, moved, TOUCH_IN } from './point';
import { alongIn } from './segments';

export interface SpanInput {
  readonly region: Region;
  readonly bearings: readonly Bearing[];
  /** Greatest step between sample points, both ways. */
  readonly sampleIn: number;
}

export interface MeasuredSpan {
  readonly spanIn: number;
  /** The sample point, and the span's direction there. */
  readonly at: Point;
  readonly direction: Direction;
  /** Where the span ends on bearings. */
  readonly from: Point;
  readonly to: Point;
}

/** Spans closer than this are one span, in. */
const SAME_SPAN_IN = 1e-6;

interface Axis {
  readonly direction: Direction;
  readonly placesIn: readonly number[];
}

/** Stretch from bearing to bearing round a point, by distance along its axis. */
interface Bridge {
  readonly fromIn: number;
  readonly toIn: number;
}

/**
 * The largest free span of a slab (in), or null where no point has a bearing both ways. Points over the slab are
 * read along the direction of its longest edge and across it. A direction counts where a bearing is met both ways
 * before the slab or a cutout ends; a point's span is the smaller of those that count, for the slab leans that way.
 * A point on a bearing spans nothing. Of points with the same span the one nearest the middle of the piece is named.
 * Plane geometry; the choice of the smaller direction is common practice, no source.
 */
export function measureSpans(input: SpanInput): MeasuredSpan | null {
  if (!(input.sampleIn > 0)) throw new Error(`Sample step ${input.sampleIn} in is not positive`);
  const direction = pieceDirection(input.region.outer);
  const along = axisOf(direction, input);
  const across = axisOf(leftOf(direction), input);
  const origin = { xIn: 0, yIn: 0 };
  const rows = across.placesIn.map((vIn) => lineAt(moved(origin, across.direction, vIn), along, input));
  const columns = along.placesIn.map((uIn) => lineAt(moved(origin, along.direction, uIn), across, input));
  let worst: { span: MeasuredSpan; offMiddleIn: number } | null = null;
  let largestIn = 0;
  for (let u = 0; u < along.placesIn.length; u++) {
    for (let v = 0; v < across.placesIn.length; v++) {
      const uIn = along.placesIn[u]!;
      const vIn = across.placesIn[v]!;
      const at = moved(moved(origin, along.direction, uIn), across.direction, vIn);
      const span = smallerSpan(at, [
        { axis: along, atIn: uIn, bridge: bridgeAt(rows[v]!, uIn) },
        { axis: across, atIn: vIn, bridge: bridgeAt(columns[u]!, vIn) },
      ]);
      if (span === null) continue;
      const offMiddleIn = Math.hypot(uIn - middleIn(along), vIn - middleIn(across));
      const gainIn = worst === null ? Number.POSITIVE_INFINITY : span.spanIn - worst.span.spanIn;
      const isTied = span.spanIn > largestIn - SAME_SPAN_IN;
      const isNearer = worst !== null && offMiddleIn < worst.offMiddleIn - SAME_SPAN_IN;
      if (gainIn > SAME_SPAN_IN || (isTied && isNearer)) worst = { span, offMiddleIn };
      largestIn = Math.max(largestIn, span.spanIn);
    }
  }
  return worst?.span ?? null;
}

/** Even steps over the piece from side to side, with the middle among them. */
function axisOf(direction: Direction, input: SpanInput): Axis {
  const reachIn = input.region.outer.map((p) => alongIn({ xIn: 0, yIn: 0 }, direction, p));
  const startIn = Math.min(...reachIn);
  const sizeIn = Math.max(...reachIn) - startIn;
  const steps = 2 * Math.max(1, Math.ceil(sizeIn / input.sampleIn / 2 - 1e-9));
  return {
    direction,
    placesIn: Array.from({ length: steps + 1 }, (_, k) => startIn + (sizeIn * k) / steps),
  };
}

function middleIn(axis: Axis): number {
  return (axis.placesIn[0]! + axis.placesIn.at(-1)!) / 2;
}

function lineAt(origin: Point, axis: Axis, input: SpanInput): LineReading {
  return readLine(origin, axis.direction, input.region, input.bearings);
}

function bridgeAt(reading: LineReading, atIn: number): Bridge | null {
  const slab = reading.slab.find(({ fromIn, toIn }) => fromIn <= atIn + TOUCH_IN && toIn >= atIn - TOUCH_IN);
  if (slab === undefined) return null;
  const ahead = bearingAhead(reading, atIn, slab.toIn);
  const behind = bearingBehind(reading, atIn, slab.fromIn);
  if (ahead === null || behind === null) return null;
  return { fromIn: atIn - behind.distanceIn, toIn: atIn + ahead.distanceIn };
}

function smallerSpan(
  at: Point,
  ways: readonly { readonly axis: Axis; readonly atIn: number; readonly bridge: Bridge | null }[],
): MeasuredSpan | null {
  let smaller: MeasuredSpan | null = null;
  for (const { axis, atIn, bridge } of ways) {
    if (bridge === null) continue;
    const spanIn = bridge.toIn - bridge.fromIn;
    if (smaller !== null && spanIn >= smaller.spanIn) continue;
    smaller = {
      spanIn,
      at,
      direction: axis.direction,
      from: moved(at, axis.direction, bridge.fromIn - atIn),
      to: moved(at, axis.direction, bridge.toIn - atIn),
    };
  }
  return smaller;
}
