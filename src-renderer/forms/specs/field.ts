/** How a form is described: fields as data, each with its place below the thing that the form edits. */
import type { Job, Piece } from '../../../src-core/job';
import type { QuantityName } from '../fields/quantity-names';

/** What a start value or a change of kind may look at. */
export interface Surroundings {
  readonly job: Job;
  /** The piece that the form belongs to; null in the forms of the job. */
  readonly piece: Piece | null;
}

/** A thing of the job, as the form sees it. */
export type Thing = Readonly<Record<string, unknown>>;

export interface Choice {
  readonly value: string;
  readonly words: string;
}

interface Place {
  /** Place below the thing, steps parted by dots; empty for the thing itself. */
  readonly at: string;
  readonly label: string;
  readonly help?: string;
  /** Shown only while another field of the thing has one of these values. */
  readonly when?: { readonly at: string; readonly is: readonly unknown[] };
}

interface MayBeEmpty {
  /** The field may stay empty; says what that means. */
  readonly emptyWords?: string;
}

/** The whole thing after a field of it has changed, where other fields must follow; else only the field is set. */
export type Follows = (thing: Thing, value: unknown, around: Surroundings) => Thing;

export interface QuantityField extends Place, MayBeEmpty {
  readonly kind: 'quantity';
  readonly of: QuantityName;
  readonly follows?: Follows;
}

export interface ChoiceField extends Place, MayBeEmpty {
  readonly kind: 'choice';
  readonly choices: readonly Choice[];
  readonly follows?: Follows;
}

export interface YesNoField extends Place {
  readonly kind: 'yesNo';
}

export interface TextField extends Place, MayBeEmpty {
  /** `date` is a day written 2027-04-30, `note` has several lines, an optional `name` is left out where empty. */
  readonly kind: 'name' | 'note' | 'date';
}

/** The id of another thing of the job. */
export type ReferenceTo = 'mix' | 'piece' | 'other-piece' | 'support' | 'section';

export interface ReferenceField extends Place {
  readonly kind: 'reference';
  readonly to: ReferenceTo;
}

/** Several of a set. */
export interface ManyField extends Place {
  readonly kind: 'many';
  readonly choices: readonly Choice[] | ReferenceTo;
}

/** x from the left and y from the front. */
export interface PointField extends Place {
  readonly kind: 'point';
}

/** A lower and an upper stiffness. */
export interface BoundsField extends Place, MayBeEmpty {
  readonly kind: 'bounds';
  readonly of: 'lineStiffness' | 'pointStiffness' | 'bedStiffness';
  /** What to begin with where it was empty. */
  readonly start: { readonly low: number; readonly high: number };
}

/** Something that the thing has or has not, with fields of its own. */
export interface PartField extends Place {
  readonly kind: 'part';
  /** It cannot be taken away; its fields stand under its label. */
  readonly isAlways?: true;
  readonly start: (thing: Thing, around: Surroundings) => unknown;
  readonly fields: readonly Field[];
}

export interface Kind extends Choice {
  /** Offered only while there is something of the job to name. */
  readonly needs?: ReferenceTo;
  readonly fields: readonly Field[];
}

/** One of several kinds, each with fields of its own; `change` gives a complete value of the new kind. */
export interface KindsField extends Place {
  readonly kind: 'kinds';
  /** Name of the field that tells the kinds apart. */
  readonly by: string;
  readonly kinds: readonly Kind[];
  /** There may be none; says what that means. */
  readonly noneWords?: string;
  readonly change: (old: unknown, kind: string, around: Surroundings) => unknown;
}

/** A list edited in place. */
export interface ListField extends Place {
  readonly kind: 'list';
  /** One thing of the list: "corner". */
  readonly one: string;
  readonly item: readonly Field[];
  /** `table` lays an item out in one line, `blocks` one below another. */
  readonly look: 'table' | 'blocks';
  readonly least: number;
  /** What the items of a table are numbered by, and from where: "No." from 1 unless told. */
  readonly numbered?: { readonly by: string; readonly from: number };
  /** The next item; null where a person cannot add one here. */
  readonly next: ((items: readonly unknown[], around: Surroundings) => unknown) | null;
  /** The whole list may be none; says what that means, and what to begin with. */
  readonly none?: {
    readonly words: string;
    readonly start: (thing: Thing, around: Surroundings) => readonly unknown[];
  };
  readonly summary?: (item: Thing, around: Surroundings) => string;
}

/** Parts that have a form of their own and are opened by selecting them. */
export interface PartsField extends Place {
  readonly kind: 'parts';
  readonly part: 'corner' | 'edge' | 'cutout' | 'support' | 'load' | 'steel' | 'joint';
  readonly fields: readonly Field[];
}

/** Takes several values at once from a table of the trade. */
export interface PickField {
  readonly kind: 'pick';
  readonly label: string;
  readonly help?: string;
  /** What to show while no entry of the table fits. */
  readonly ownWords: string;
  readonly picks: readonly Pick[];
}

export interface Pick {
  readonly id: string;
  readonly words: string;
  readonly values: Thing;
}

/** Fields under a heading of their own. */
export interface GroupField {
  readonly kind: 'group';
  readonly label: string;
  readonly fields: readonly Field[];
}

export type Field =
  | QuantityField
  | ChoiceField
  | YesNoField
  | TextField
  | ReferenceField
  | ManyField
  | PointField
  | BoundsField
  | PartField
  | KindsField
  | ListField
  | PartsField
  | PickField
  | GroupField;
