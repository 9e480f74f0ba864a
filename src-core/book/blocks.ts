/** Blocks of the book in short: what every chapter is written with. */

import type { Figure } from '../figure';
import type {
  Block,
  FigureBlock,
  HeadingBlock,
  ListBlock,
  NoticeBlock,
  NoticeLevel,
  ParagraphBlock,
  Reference,
  Run,
  TableBlock,
  TableColumn,
  TableRow,
  Words,
} from '../sheet';

export function paragraph(words: Words): ParagraphBlock {
  return { kind: 'paragraph', words };
}

/** A heading that stands in the contents. */
export function heading(id: string, words: string): HeadingBlock {
  return { kind: 'heading', level: 1, id, words };
}

export function subheading(id: string, words: string): HeadingBlock {
  return { kind: 'heading', level: 2, id, words };
}

/** Points without an order; nothing where there are none. */
export function list(items: readonly Words[]): ListBlock[] {
  return items.length === 0 ? [] : [{ kind: 'list', isNumbered: false, items }];
}

export function numbered(items: readonly Words[]): ListBlock[] {
  return items.length === 0 ? [] : [{ kind: 'list', isNumbered: true, items }];
}

/** "Head" and its share of the width; the first column names the rows. `end` sets figures to the right. */
export function columns(
  ...heads: readonly (readonly [head: string, share: number, align?: 'end'])[]
): TableColumn[] {
  return heads.map(([head, share, align], k) => ({
    head,
    share,
    align: align ?? 'start',
    ...(k === 0 ? { namesRow: true } : {}),
  }));
}

/** A table; nothing where it has no rows. */
export function table(
  id: string,
  caption: Words,
  cols: readonly TableColumn[],
  rows: readonly (readonly Words[])[],
  others: Pick<TableBlock, 'isForPen'> = {},
): TableBlock[] {
  if (rows.length === 0) return [];
  return [
    {
      kind: 'table',
      id,
      caption,
      columns: cols,
      rows: rows.map((cells): TableRow => ({ cells })),
      ...others,
    },
  ];
}

/** A drawing under an id of its place; nothing where there is none to show. */
export function drawing(id: string, figure: Figure | null, caption: Words): FigureBlock[] {
  return figure === null ? [] : [{ kind: 'figure', id, figure, caption }];
}

/** Label and value; facts without a value are left out. */
export function facts(rows: readonly (readonly [label: string, value: Words | null])[]): Block[] {
  const told = rows.flatMap(([label, value]) => (value === null ? [] : [{ label, value }]));
  return told.length === 0 ? [] : [{ kind: 'facts', facts: told }];
}

/** A frame is never parted by the end of a page, so that many paragraphs stand in several. */
const PARAGRAPHS_A_FRAME = 5;

/** Words in frames under their signal word; nothing where there are none. */
export function notice(level: NoticeLevel, paragraphs: readonly Words[]): NoticeBlock[] {
  const frames = Math.ceil(paragraphs.length / PARAGRAPHS_A_FRAME);
  return Array.from({ length: frames }, (_, k) => ({
    kind: 'notice',
    level,
    paragraphs: paragraphs.slice(k * PARAGRAPHS_A_FRAME, (k + 1) * PARAGRAPHS_A_FRAME),
  }));
}

export function strong(words: string): Run {
  return { kind: 'strong', words };
}

export function pageOf(to: string): Reference {
  return { kind: 'page', to };
}

export function figureOf(to: string): Reference {
  return { kind: 'figure', to };
}
