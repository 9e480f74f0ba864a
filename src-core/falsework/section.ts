/** A section of falsework before it is framed: where it lies, what comes in its place, what opens in it. */
import type { Patch, SectionFrame } from './frame';

/** Sides of a section as seen from its front. It comes out by its front. */
export type SectionSide = 'front' | 'back' | 'left' | 'right';

/** A hole in the deck: a sink or tap, or a pier that comes up through it. */
export interface DeckOpening {
  readonly id: string;
  readonly words: string;
  readonly patch: Patch;
  /** Framed round with trimmers and headers; else the joists are moved clear and the deck is bored. */
  readonly isFramed: boolean;
  /** Weight that its rim carries while the slab is poured: bowl with its sand, or plug, lb. */
  readonly weightLb: number;
  /** Area that is not cast, in2. */
  readonly areaIn2: number;
}

export interface Section {
  readonly id: string;
  readonly name: string;
  readonly pieceId: string;
  readonly frame: SectionFrame;
  /** The cabinet that takes its place; null where none comes. */
  readonly cabinetId: string | null;
  readonly openings: readonly DeckOpening[];
  /** Sides along a wall on whose framing a ledger may be screwed. */
  readonly wallSides: readonly Exclude<SectionSide, 'front'>[];
  readonly firstDay: number;
  readonly lastDay: number;
}
