/** The order in which the forms of a pour are filled. */
import type { BatchTime } from './batch-clock';
import type { Casting } from './cold-joints';
import { batchJoints, batchSlackMinutes, leastSlackMinutes } from './cold-joints';
import { MOST_WEIGHED_PIECES } from './practice';

/** A slack is better only by more than this, minutes. */
const BETTER_MINUTES = 1e-6;

/**
 * The order that keeps the least time to spare largest, every order of up to seven pieces weighed. Among equals, and
 * for more pieces, the piece with most concrete in one form comes first, while the crew is fresh; copies of a piece
 * follow one another. Times of the batches do not depend on the order, only which joints fall within a form.
 */
export function pourOrder(
  castings: readonly Casting[],
  placedFt3: readonly number[],
  times: readonly BatchTime[],
  workingMinutes: number,
): readonly Casting[] {
  const pieces = [...new Set(castings.map(({ pieceId }) => pieceId))]
    .map((pieceId) => castings.filter((casting) => casting.pieceId === pieceId))
    .sort((one, other) => other[0]!.volumeFt3 - one[0]!.volumeFt3);
  const first = pieces.flat();
  if (pieces.length > MOST_WEIGHED_PIECES) return first;
  const mostMinutes = batchSlackMinutes(times, workingMinutes);
  let best = first;
  let bestMinutes = Number.NEGATIVE_INFINITY;
  for (const order of ordersOf(pieces)) {
    const flat = order.flat();
    const joints = batchJoints(flat, placedFt3, times, workingMinutes);
    const slackMinutes = leastSlackMinutes(joints, times, workingMinutes);
    if (slackMinutes <= bestMinutes + BETTER_MINUTES) continue;
    best = flat;
    bestMinutes = slackMinutes;
    if (bestMinutes >= mostMinutes) break;
  }
  return best;
}

/** Every order of a list, that of the list itself first. */
function* ordersOf<Item>(items: readonly Item[]): Generator<readonly Item[]> {
  if (items.length <= 1) {
    yield items;
    return;
  }
  for (let i = 0; i < items.length; i++) {
    for (const rest of ordersOf([...items.slice(0, i), ...items.slice(i + 1)])) yield [items[i]!, ...rest];
  }
}
