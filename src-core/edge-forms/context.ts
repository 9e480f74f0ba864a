/** What every form of a piece is made with. */
import type { Job, Piece } from '../job';
import type { Point, Segment } from '../outline';
import type { Trace } from '../trace';
import { traceWord } from '../trace';
import { SHIPPED_STRIP_IN, SHORTEST_STOCK_IN } from './practice';

export interface FormContext {
  /** Of the strips, and of the concrete against them. */
  readonly heightIn: number;
  readonly concreteIn: number;
  /** Whether screws reach the strips from below. */
  readonly isScrewed: boolean;
  /** Longest strip in stock. */
  readonly stockIn: number;
  /** Corners of cutouts, and seams and joints of the piece, which joints of a form keep off. */
  readonly cutoutCorners: readonly Point[];
  readonly seams: readonly Segment[];
  readonly cautions: string[];
}

/** An item's id and the part of the drawing that it belongs to. */
export interface Label {
  readonly id: string;
  readonly trace: Trace;
}

export function labelOf(trace: Trace, ...words: readonly (string | number)[]): Label {
  return { id: [traceWord(trace), ...words].join('/'), trace };
}

/** Lengths in which form strips are bought, in, rising: the job's own, else the shipped one. */
export function stripStockIn(job: Job): readonly number[] {
  const own = job.stock.flatMap(({ kind, lengthIn }) =>
    kind === 'form-strip' && lengthIn !== null && lengthIn >= SHORTEST_STOCK_IN ? [lengthIn] : [],
  );
  const lengths = own.length > 0 ? own : [SHIPPED_STRIP_IN];
  return [...new Set(lengths)].sort((a, b) => a - b);
}

/** How a piece is named in a sentence. */
export function called({ name }: Piece): string {
  return `"${name}"`;
}
