/** Headings, paragraphs, lists, boxes to tick: blocks that are nothing but text. */
import type { CheckboxesBlock, HeadingBlock, ListBlock, NoticeBlock, ParagraphBlock } from './block';
import type { Measured } from './measured';
import { HAIR_RECKONED_PT, measured } from './measured';
import type { TextStyle } from './practice';
import { CHECKBOX_PT, GAPS_PT, LIST_PT, NOTICE_PT, STYLES } from './practice';
import type { Setting } from './set-text';
import { setText } from './set-text';
import type { Words } from './words';

/** Heading of the book or of a chapter. */
export function measureTitle(kind: 'title' | 'chapter', words: string, setting: Setting): Measured {
  const set = setText(words, STYLES[kind], setting.widthPt, setting);
  const { chapterId } = setting;
  return measured({
    kind,
    id: kind === 'chapter' ? chapterId : null,
    gapPt: GAPS_PT[kind],
    unitsPt: [set.heightPt],
    keepsNext: true,
    problems: set.problems,
    place: (pageOf) =>
      kind === 'chapter'
        ? { kind, id: chapterId, words: set.text(pageOf) }
        : { kind, words: set.text(pageOf) },
  });
}

export function measureHeading({ level, id, words }: HeadingBlock, setting: Setting): Measured {
  const set = setText(words, STYLES[`heading${level}`], setting.widthPt, setting);
  return measured({
    kind: 'heading',
    id,
    gapPt: GAPS_PT.heading[level],
    unitsPt: [set.heightPt],
    keepsNext: true,
    problems: set.problems,
    place: (pageOf) => ({ kind: 'heading', level, id, words: set.text(pageOf) }),
  });
}

export function measureParagraph({ words }: ParagraphBlock, setting: Setting): Measured {
  const set = setText(words, STYLES.body, setting.widthPt, setting);
  return measured({
    kind: 'paragraph',
    gapPt: GAPS_PT.paragraph,
    unitsPt: Array.from({ length: set.lineCount }, () => STYLES.body.linePt),
    problems: set.problems,
    place: (pageOf, from, to) => ({
      kind: 'paragraph',
      words: set.text(pageOf, from, to),
      continues: from > 0,
    }),
  });
}

export function measureList({ isNumbered, items }: ListBlock, setting: Setting): Measured {
  const set = setItems(items, LIST_PT, setting);
  return measured({
    kind: 'list',
    gapPt: GAPS_PT.list,
    ...set,
    place: (pageOf, from, to) => ({
      kind: 'list',
      isNumbered,
      start: from + 1,
      items: set.texts.slice(from, to).map(({ text }) => text(pageOf)),
    }),
  });
}

export function measureCheckboxes({ items }: CheckboxesBlock, setting: Setting): Measured {
  const set = setItems(items, CHECKBOX_PT, setting);
  return measured({
    kind: 'checkboxes',
    gapPt: GAPS_PT.checkboxes,
    ...set,
    place: (pageOf, from, to) => ({
      kind: 'checkboxes',
      items: set.texts.slice(from, to).map(({ text }) => text(pageOf)),
    }),
  });
}

function setItems(
  items: readonly Words[],
  { indent, between }: { readonly indent: number; readonly between: number },
  setting: Setting,
) {
  const texts = items.map((words) => setText(words, STYLES.body, setting.widthPt - indent, setting));
  return {
    texts,
    unitsPt: texts.map(({ heightPt }, index) => heightPt + (index > 0 ? between : 0)),
    problems: texts.flatMap(({ problems }) => problems),
  };
}

/** A frame that is never parted. */
export function measureNotice({ level, paragraphs }: NoticeBlock, setting: Setting): Measured {
  const frame = NOTICE_PT.frame[level] + HAIR_RECKONED_PT;
  const widthPt = setting.widthPt - 2 * (frame + NOTICE_PT.side);
  const style: TextStyle = STYLES.body;
  const texts = paragraphs.map((words) => setText(words, style, widthPt, setting));
  const textPt = texts.reduce((sum, { heightPt }) => sum + heightPt + NOTICE_PT.between, 0);
  return measured({
    kind: 'notice',
    gapPt: GAPS_PT.notice,
    unitsPt: [2 * frame + NOTICE_PT.above + STYLES.signal.linePt + textPt + NOTICE_PT.below],
    problems: texts.flatMap(({ problems }) => problems),
    place: (pageOf) => ({ kind: 'notice', level, paragraphs: texts.map(({ text }) => text(pageOf)) }),
  });
}
