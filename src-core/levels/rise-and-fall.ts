/** Booking a line of levels by rise and fall, as any surveying text has it: each reading against the one before. */
import { formula, type Line } from '../workings';
import type { Symbols } from './symbols';

/** One place on the staff. A change point has a foresight (from the old stand) and a backsight (from the new one). */
export interface BookedPoint {
  readonly name: string;
  /** First reading from a stand of the instrument. */
  readonly backsightIn: number | null;
  readonly intermediateIn: number | null;
  /** Last reading from a stand of the instrument. */
  readonly foresightIn: number | null;
}

export interface ReducedPoint {
  readonly name: string;
  readonly levelIn: number;
  /** From the reading before: positive up, negative down; 0 at the first. */
  readonly riseIn: number;
  readonly line: Line | null;
}

export interface ReducedLevels {
  readonly ok: true;
  readonly points: readonly ReducedPoint[];
  readonly backsightsIn: number;
  readonly foresightsIn: number;
  readonly risesIn: number;
  readonly fallsIn: number;
  /** Last level less the first. */
  readonly gainIn: number;
  /** Largest difference between the three ways to the gain: rounding, unless the arithmetic is wrong. */
  readonly checkIn: number;
}

export interface BookingProblem {
  /** Place in the list of points, such as `points[2]`. */
  readonly path: string;
  readonly sentence: string;
}

export interface BookingProblems {
  readonly ok: false;
  readonly problems: readonly BookingProblem[];
}

/** Rise from one reading to the next, in. r1: reading before, r2: this reading, in. Any surveying text. */
export const rise = formula<Symbols<'r1' | 'r2'>>({
  symbol: 'rise',
  label: 'rise from the reading before',
  formula: 'r1 - r2',
  units: { r1: 'in', r2: 'in' },
  unit: 'in',
  source: 'rise and fall, any surveying text',
  compute: ({ r1, r2 }) => r1 - r2,
});

/**
 * Levels of a booked line by rise and fall, in, from the known level of its first point. The line begins with a backsight and ends
 * with a foresight. Any unit will do as long as it is the same throughout; the names say inches.
 */
export function reduceLevels(
  firstLevelIn: number,
  points: readonly BookedPoint[],
): ReducedLevels | BookingProblems {
  const problems = points.flatMap((point, i) => bookingProblem(point, i, points.length));
  if (points.length < 2) {
    problems.push({ path: 'points', sentence: 'A line of levels needs at least two points.' });
  }
  if (problems.length > 0) return { ok: false, problems };

  const reduced: ReducedPoint[] = [];
  let levelIn = firstLevelIn;
  let before: number | null = null;
  for (const point of points) {
    const reading = point.foresightIn ?? point.intermediateIn;
    const worked = before === null || reading === null ? null : rise({ r1: before, r2: reading });
    levelIn += worked?.value ?? 0;
    reduced.push({ name: point.name, levelIn, riseIn: worked?.value ?? 0, line: worked?.line ?? null });
    before = point.backsightIn ?? reading;
  }
  return checked(firstLevelIn, points, reduced);
}

function checked(
  firstLevelIn: number,
  points: readonly BookedPoint[],
  reduced: readonly ReducedPoint[],
): ReducedLevels {
  const backsightsIn = sum(points.map((point) => point.backsightIn ?? 0));
  const foresightsIn = sum(points.map((point) => point.foresightIn ?? 0));
  const risesIn = sum(reduced.map(({ riseIn }) => Math.max(0, riseIn)));
  const fallsIn = sum(reduced.map(({ riseIn }) => Math.max(0, -riseIn)));
  const gainIn = reduced.at(-1)!.levelIn - firstLevelIn;
  const ways = [backsightsIn - foresightsIn, risesIn - fallsIn, gainIn];
  return {
    ok: true,
    points: reduced,
    backsightsIn,
    foresightsIn,
    risesIn,
    fallsIn,
    gainIn,
    checkIn: Math.max(...ways) - Math.min(...ways),
  };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function bookingProblem(point: BookedPoint, i: number, count: number): BookingProblem[] {
  const { backsightIn, intermediateIn, foresightIn, name } = point;
  const path = `points[${i}]`;
  const found = (sentence: string) => [{ path, sentence }];
  if (i === 0) {
    const isBacksight = backsightIn !== null && intermediateIn === null && foresightIn === null;
    return isBacksight ? [] : found(`The line begins at ${name} with a backsight and nothing else.`);
  }
  if (i === count - 1) {
    const isForesight = foresightIn !== null && intermediateIn === null && backsightIn === null;
    return isForesight ? [] : found(`The line ends at ${name} with a foresight and nothing else.`);
  }
  const isBetween = intermediateIn !== null && backsightIn === null && foresightIn === null;
  const isChange = intermediateIn === null && backsightIn !== null && foresightIn !== null;
  return isBetween || isChange
    ? []
    : found(`${name} needs one intermediate reading, or a foresight and a backsight at a change point.`);
}
