/** What one section of falsework gives to a later one, and the words for it. */
import type { Trace } from '../trace';
import type { BillLine, BillPanel } from './bill';

/** One end of a reuse: a section, and the day on which it comes out or is built. */
export interface ReuseEnd {
  readonly sectionId: string;
  readonly name: string;
  readonly pieceId: string;
  readonly pieceName: string;
  /** Which copy of the piece, from 1. */
  readonly copy: number;
  readonly day: number;
}

/** Sticks used again as what they are now; cut down where they were longer. */
export interface ReusedStick extends BillLine {
  readonly fromLengthIn: number;
}

/** Panels used again, cut down where they were larger. */
export interface ReusedPanel extends BillPanel {
  readonly fromLengthIn: number;
  readonly fromWidthIn: number;
  readonly count: number;
}

/** What one section gives to one later section. */
export interface SectionReuse {
  readonly id: string;
  readonly from: ReuseEnd;
  readonly to: ReuseEnd;
  /** Whether its deck and frame go on as they came out. What is loose is told part by part all the same. */
  readonly isWhole: boolean;
  readonly sticks: readonly ReusedStick[];
  readonly panels: readonly ReusedPanel[];
  /** The later section. */
  readonly trace: Trace;
  readonly words: string;
}

/** Parts that are set one by one: deck and frame stay together without them. */
export const LOOSE_PARTS: readonly string[] = ['leg', 'sole', 'brace', 'ledger'];
/** Lengths that differ by less are one, and no cut, in. */
export const CUT_DOWN_IN = 1 / 64;

/** 'Used again from "Counter, under b1", out on day 10: deck and frame as they come out, 4 legs (1 cut down) and 4 soles.' */
export function reuseWords({
  from,
  isWhole,
  sticks,
  panels,
}: Pick<SectionReuse, 'from' | 'isWhole' | 'sticks' | 'panels'>): string {
  const copy = from.copy > 1 ? ` (copy ${from.copy})` : '';
  const told = isWhole ? sticks.filter(({ what }) => LOOSE_PARTS.includes(what)) : [...sticks, ...panels];
  const parts = [...(isWhole ? ['deck and frame as they come out'] : []), ...counted(told)];
  return `Used again from "${from.name}"${copy}, out on day ${from.day}: ${listed(parts)}.`;
}

function counted(parts: readonly (ReusedStick | ReusedPanel)[]): string[] {
  const kinds = [...new Set(parts.map(({ what }) => what))];
  return kinds.map((kind) => {
    const own = parts.filter(({ what }) => what === kind);
    const all = sum(own);
    const cut = sum(own.filter(isCutDown));
    const name = all === 1 ? kind : `${kind}s`;
    return `${all} ${name}${cut === 0 ? '' : cut === all ? ' (cut down)' : ` (${cut} cut down)`}`;
  });
}

function sum(parts: readonly { readonly count: number }[]): number {
  return parts.reduce((total, { count }) => total + count, 0);
}

/** Whether a part was longer or wider than it is now. */
function isCutDown(part: ReusedStick | ReusedPanel): boolean {
  if (part.fromLengthIn > part.lengthIn + CUT_DOWN_IN) return true;
  return 'fromWidthIn' in part && part.fromWidthIn > part.widthIn + CUT_DOWN_IN;
}

function listed(parts: readonly string[]): string {
  return parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}
