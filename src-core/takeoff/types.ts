/** The shopping list as plain data. */
import type { Trace } from '../trace';

/** Length in, area in2, a count, weight lb, volume ft3, volume of water gal. */
export type ListUnit = 'in' | 'in2' | 'each' | 'lb' | 'ft3' | 'gal';

/** Where one buys it. */
export type ListGroupId = 'timber-yard' | 'builders-merchant' | 'hardware' | 'protection';

/** One item of the take-off that a line is made of. */
export interface ListSource {
  /** Of the item; alike for no two of a line. */
  readonly id: string;
  readonly trace: Trace;
  /** In the line's unit, every copy of the piece counted. */
  readonly amount: number;
  /** Where it is in the drawing and what it is, without its amount. */
  readonly words: string;
}

export interface ListLine {
  /** Alike for no two lines, and the same on every run. */
  readonly id: string;
  readonly group: ListGroupId;
  readonly name: string;
  /** What the drawing takes, exactly: the amounts of the sources together. */
  readonly needed: number;
  readonly unit: ListUnit;
  readonly neededWords: string;
  /** What is added for waste, a share of what is needed; 0 for what is cut by a list or counted. */
  readonly wasteRatio: number;
  readonly wasteWords: string;
  /** Whole sticks, sheets, bags, boxes ... and the same in words: "3 sticks of 8 ft". */
  readonly buy: number;
  readonly buyWords: string;
  /** Of one; null where none is known. */
  readonly priceEach: number | null;
  readonly priceFrom: 'own' | 'invented' | null;
  readonly cost: number | null;
  readonly sources: readonly ListSource[];
}

export interface ListGroup {
  readonly id: ListGroupId;
  readonly title: string;
  readonly lines: readonly ListLine[];
}

export interface ListTotal {
  /** Of the lines that have a price. */
  readonly cost: number;
  /** How many lines have none, and whether some prices are invented. */
  readonly unpriced: number;
  readonly hasInvented: boolean;
  readonly words: string;
}

export interface ShoppingList {
  /** In the order in which one drives round; a group without lines is left out. */
  readonly groups: readonly ListGroup[];
  readonly total: ListTotal;
  /** What the list leaves out or does not know, in sentences. */
  readonly gaps: readonly string[];
  /** What is worth knowing beside it. */
  readonly remarks: readonly string[];
}
