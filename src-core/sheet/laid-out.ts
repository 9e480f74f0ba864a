/** The book on its pages: what a host prints, block by block, with every reference resolved and every height known. */
import type { Level } from '../checks';
import type { Figure, Paper } from '../figure';
import type { NoticeLevel, TableColumn } from './block';

/** A stretch of text of one make. */
export interface TextRun {
  readonly text: string;
  readonly isStrong: boolean;
  /** A line must not end within it. */
  readonly isWhole: boolean;
  /** Id that it links to; null for none. */
  readonly to: string | null;
}

export type Text = readonly TextRun[];

export interface PlacedColumn extends TableColumn {
  /** Whole percents; those of a table add up to 100. */
  readonly widthPercent: number;
}

/** One line of workings as it is set. */
export interface PlacedWorking {
  readonly label: Text;
  readonly source: Text;
  /** "Mcr = fr * h^2 / 6 = 530.3 * 1.5^2 / 6 = 198.9 lbf-in/in"; the number alone where no formula gives it. */
  readonly equation: Text;
}

export type PlacedContent =
  /** Heading of the first page. */
  | { readonly kind: 'title'; readonly words: Text }
  | { readonly kind: 'chapter'; readonly id: string; readonly words: Text }
  | { readonly kind: 'heading'; readonly level: 1 | 2; readonly id: string; readonly words: Text }
  /** `continues`: the beginning stands on the page before. */
  | { readonly kind: 'paragraph'; readonly words: Text; readonly continues: boolean }
  | {
      readonly kind: 'list';
      readonly isNumbered: boolean;
      /** Number of the first item here. */
      readonly start: number;
      readonly items: readonly Text[];
    }
  | {
      readonly kind: 'table';
      readonly id: string;
      readonly caption: Text;
      readonly columns: readonly PlacedColumn[];
      readonly heads: readonly Text[];
      readonly rows: readonly { readonly cells: readonly Text[]; readonly isTotal: boolean }[];
      readonly isForPen: boolean;
      readonly continues: boolean;
    }
  | {
      readonly kind: 'figure';
      readonly id: string;
      /** null where it is larger than the paper; the caption says so. */
      readonly figure: Figure | null;
      readonly caption: Text;
    }
  | { readonly kind: 'workings'; readonly lines: readonly PlacedWorking[] }
  | { readonly kind: 'facts'; readonly facts: readonly { readonly label: Text; readonly value: Text }[] }
  | { readonly kind: 'notice'; readonly level: NoticeLevel; readonly paragraphs: readonly Text[] }
  | {
      readonly kind: 'verdicts';
      readonly rows: readonly {
        readonly level: Level;
        readonly name: Text;
        readonly words: Text;
        readonly why: Text;
      }[];
    }
  | { readonly kind: 'checkboxes'; readonly items: readonly Text[] }
  | { readonly kind: 'contents'; readonly entries: readonly PlacedEntry[] };

export interface PlacedEntry {
  readonly level: 0 | 1;
  readonly id: string;
  readonly words: Text;
  readonly page: number;
}

export interface PlacedBlock {
  /** White above it; 0 for the first of a page. */
  readonly gapPt: number;
  readonly heightPt: number;
  readonly content: PlacedContent;
}

/** What stands on one page of one chapter. */
export interface PagePart {
  readonly chapterId: string;
  /** Set in the smaller size. */
  readonly isSmall: boolean;
  readonly blocks: readonly PlacedBlock[];
}

export interface Page {
  /** From 1. */
  readonly number: number;
  /** Running line: the job and the first chapter of the page, cut to what fits. */
  readonly jobName: string;
  readonly chapterTitle: string;
  readonly parts: readonly PagePart[];
  /** Sum of gaps and heights. */
  readonly usedPt: number;
}

export interface ContentsEntry {
  readonly id: string;
  readonly words: string;
  /** 0 for a chapter, 1 for a heading within it. */
  readonly level: 0 | 1;
  readonly page: number;
}

/** What keeps the book from being right. A book without any can be printed. */
export interface BookProblem {
  readonly code:
    | 'unresolved-reference'
    | 'id-twice'
    | 'figure-too-large'
    | 'chapter-over-one-page'
    | 'block-too-tall'
    | 'heading-parted'
    | 'words-too-wide'
    | 'notice-too-long';
  /** null for the book as a whole. */
  readonly chapterId: string | null;
  /** Id of what it is about, or the kind of block. */
  readonly about: string;
  readonly sentence: string;
}

export interface LaidOutBook {
  readonly title: string;
  readonly notice: string;
  readonly paper: Paper;
  /** Height of the page between its running lines. */
  readonly roomPt: number;
  readonly pages: readonly Page[];
  readonly contents: readonly ContentsEntry[];
  readonly problems: readonly BookProblem[];
}
