/** What a chapter is made of. Every block is plain data; the layout gives it its place. */
import type { Level } from '../checks';
import type { Figure } from '../figure';
import type { Line } from '../workings';
import type { Words } from './words';

/** A heading within a chapter; 1 stands in the contents. It stays with what follows it. */
export interface HeadingBlock {
  readonly kind: 'heading';
  readonly level: 1 | 2;
  readonly id: string;
  readonly words: string;
}

export interface ParagraphBlock {
  readonly kind: 'paragraph';
  readonly words: Words;
}

export interface ListBlock {
  readonly kind: 'list';
  readonly isNumbered: boolean;
  readonly items: readonly Words[];
}

export interface TableColumn {
  readonly head: string;
  /** Width as a part of the sum of all shares. */
  readonly share: number;
  readonly align: 'start' | 'middle' | 'end';
  /** The cells of this column name their rows. */
  readonly namesRow?: boolean;
}

export interface TableRow {
  /** One for each column. */
  readonly cells: readonly Words[];
  /** A sum: strong, with a rule above it. */
  readonly isTotal?: boolean;
}

/** A table breaks between rows; caption and head come again on the next page. */
export interface TableBlock {
  readonly kind: 'table';
  readonly id: string;
  readonly caption: Words;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
  /** Rows tall enough to be written in, ruled on all sides. */
  readonly isForPen?: boolean;
}

/** A drawing at its own scale, numbered through the book. `id` is that of the place: one drawing may be shown twice. */
export interface FigureBlock {
  readonly kind: 'figure';
  readonly id: string;
  readonly figure: Figure;
  readonly caption: Words;
}

export interface WorkingsBlock {
  readonly kind: 'workings';
  readonly lines: readonly Line[];
}

export interface Fact {
  readonly label: string;
  readonly value: Words;
}

export interface FactsBlock {
  readonly kind: 'facts';
  readonly facts: readonly Fact[];
}

/** Signal words of ANSI Z535.6: death or serious injury will follow, may follow, minor injury may follow, no injury. */
export type NoticeLevel = 'danger' | 'warning' | 'caution' | 'notice';

/** Set apart in a frame, under its signal word; never parted by the end of a page. */
export interface NoticeBlock {
  readonly kind: 'notice';
  readonly level: NoticeLevel;
  readonly paragraphs: readonly Words[];
}

export interface VerdictRow {
  readonly level: Level;
  /** Of what: the piece, or a check. */
  readonly name: Words;
  /** "Needs a corbel". */
  readonly words: string;
  readonly why: Words;
}

export interface VerdictsBlock {
  readonly kind: 'verdicts';
  readonly rows: readonly VerdictRow[];
}

/** Boxes to tick with a pen. */
export interface CheckboxesBlock {
  readonly kind: 'checkboxes';
  readonly items: readonly Words[];
}

/** Titles of chapters and headings of level 1, with their pages. */
export interface ContentsBlock {
  readonly kind: 'contents';
  readonly shows: 'chapters' | 'headings';
}

export type Block =
  | HeadingBlock
  | ParagraphBlock
  | ListBlock
  | TableBlock
  | FigureBlock
  | WorkingsBlock
  | FactsBlock
  | NoticeBlock
  | VerdictsBlock
  | CheckboxesBlock
  | ContentsBlock;
