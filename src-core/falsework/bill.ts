/** The sticks and panels of a section, and what they cost. */
import type { LumberSize } from '../timber';
import { JOIST_IN } from './arrangement';
import { BRACE_SIZE, BRACES_EACH_WAY, LEDGER_SIZE } from './check-lateral';
import type { Framing } from './framing';
import type { FalseworkPractice } from './practice';
import { SOLE } from './practice';
import type { Prices } from './prices';
import { boardFeet } from './prices';

/** Sticks of one length. */
export interface BillLine {
  readonly what: string;
  readonly size: LumberSize;
  readonly lengthIn: number;
  readonly count: number;
}

/** One panel of a deck: its length runs across the joists, with its strength axis. */
export interface BillPanel {
  readonly what: string;
  readonly lengthIn: number;
  readonly widthIn: number;
}

export interface Bill {
  readonly sticks: readonly BillLine[];
  readonly panels: readonly BillPanel[];
}

/** The sticks and panels of a framed section with legs of given lengths, in. */
export function billOf(framing: Framing, legsIn: readonly number[], practice: FalseworkPractice): Bill {
  const { arrangement, acrossIn, alongIn, joists, headers, lines } = framing;
  const { joistSize, beamSize, legSize, ledgerSide } = arrangement;
  const seams = 2 * practice.seamIn;
  const sticks: BillLine[] = [
    ...joists.map(({ kind, t0, t1 }) => ({
      what: kind,
      size: joistSize,
      // A tail ends at the face of its header, the others a seam short of either rim.
      lengthIn: kind === 'tail' ? t1 - t0 - practice.seamIn - JOIST_IN : t1 - t0 - seams,
      count: 1,
    })),
    ...headers.map(({ s0, s1 }) => ({
      what: 'header',
      size: joistSize,
      lengthIn: s1 - s0 - JOIST_IN,
      count: 1,
    })),
    ...legsIn.map((lengthIn) => ({ what: 'leg', size: legSize, lengthIn, count: 1 })),
    ...legsIn.map(() => ({ what: 'sole', size: SOLE.size, lengthIn: SOLE.lengthIn, count: 1 })),
  ];
  if (beamSize !== null) {
    const count = lines.filter(({ kind }) => kind === 'stringer').length;
    sticks.push({ what: 'stringer', size: beamSize, lengthIn: acrossIn - seams, count });
  }
  if (ledgerSide !== null) {
    sticks.push({ what: 'ledger', size: LEDGER_SIZE, lengthIn: acrossIn - seams, count: 1 });
  } else sticks.push(...bracesOf(framing, Math.max(...legsIn)));
  return {
    sticks: gathered(sticks),
    panels: [{ what: 'deck panel', lengthIn: acrossIn, widthIn: alongIn }],
  };
}

/** Legs of a framing: a leg to each place of a stringer, or to each joist on a line of its own legs. */
export function legCount({ lines, joists }: Framing): number {
  return lines.reduce((sum, { kind, t, legsAt }) => {
    if (kind === 'ledger') return sum;
    if (kind === 'stringer') return sum + legsAt.length;
    return sum + joists.filter(({ t0, t1 }) => t > t0 && t < t1).length;
  }, 0);
}

function bracesOf({ lines, joists }: Framing, legIn: number): BillLine[] {
  const ts = lines.map(({ t }) => t);
  const ss = lines.flatMap(({ kind, legsAt }) => (kind === 'legs' ? joists.map(({ s }) => s) : [...legsAt]));
  return [ts, ss].map((places) => ({
    what: 'brace',
    size: BRACE_SIZE,
    lengthIn: Math.hypot(legIn, Math.max(...places) - Math.min(...places)),
    count: BRACES_EACH_WAY,
  }));
}

function gathered(lines: readonly BillLine[]): BillLine[] {
  const byKey = new Map<string, BillLine>();
  for (const line of lines) {
    const key = `${line.what} ${line.size} ${line.lengthIn.toFixed(4)}`;
    const known = byKey.get(key);
    byKey.set(key, known === undefined ? line : { ...known, count: known.count + line.count });
  }
  return [...byKey.values()];
}

/** What the sticks and panels cost by the board foot and the square foot, offcuts and screws left out. */
export function billPrice({ sticks, panels }: Bill, prices: Prices): number {
  const lumber = sticks.reduce(
    (sum, { size, lengthIn, count }) =>
      sum + count * boardFeet(size, lengthIn) * prices.boardFoot[size].price,
    0,
  );
  const panel = panels.reduce((sum, { lengthIn, widthIn }) => sum + (lengthIn * widthIn) / 144, 0);
  return lumber + panel * prices.panelFt2.price;
}
