/** Quick lists to start a search from: longest piece first, into the first or the fullest stick with room for it. */
import { costOf, type Fill, filledTicks, type StickProblem } from './stick-problem';

interface OpenStick {
  left: number;
  readonly counts: Map<number, number>;
}

/** The cheapest of the quick lists, each stick changed for the cheapest stock that holds it. */
export function greedySticks(problem: StickProblem): Fill[] {
  const [longest = 0] = problem.sizes;
  const lists = problem.stocks.flatMap(({ capacity }, stock) =>
    capacity < longest
      ? []
      : [firstOf, fullestOf].map((choose) =>
          longestFirst(problem, stock, choose).map((fill) => cheapestStock(problem, fill)),
        ),
  );
  return lists.reduce((best, list) => (costOf(problem, list) < costOf(problem, best) ? list : best));
}

/** A fill on the cheapest stock that holds it. */
export function cheapestStock(problem: StickProblem, fill: Fill): Fill {
  const filled = filledTicks(problem, fill);
  const stock = problem.stocks.reduce(
    (best, { capacity, cost }, i) => (capacity >= filled && cost < problem.stocks[best]!.cost ? i : best),
    fill.stock,
  );
  return { ...fill, stock };
}

function longestFirst(
  { sizes, counts, stocks }: StickProblem,
  stock: number,
  choose: (sticks: readonly OpenStick[], size: number) => OpenStick | undefined,
): Fill[] {
  const sticks: OpenStick[] = [];
  for (const [i, size] of sizes.entries()) {
    for (let n = 0; n < counts[i]!; n++) {
      let stick = choose(sticks, size);
      if (stick === undefined) {
        stick = { left: stocks[stock]!.capacity, counts: new Map() };
        sticks.push(stick);
      }
      stick.left -= size;
      stick.counts.set(i, (stick.counts.get(i) ?? 0) + 1);
    }
  }
  return sticks.map((stick) => ({
    stock,
    parts: [...stick.counts].map(([size, count]) => ({ size, count })),
  }));
}

function firstOf(sticks: readonly OpenStick[], size: number): OpenStick | undefined {
  return sticks.find(({ left }) => size <= left);
}

function fullestOf(sticks: readonly OpenStick[], size: number): OpenStick | undefined {
  return sticks.reduce<OpenStick | undefined>(
    (best, stick) => (size <= stick.left && (best === undefined || stick.left < best.left) ? stick : best),
    undefined,
  );
}
