export type {
  Block,
  CheckboxesBlock,
  ContentsBlock,
  Fact,
  FactsBlock,
  FigureBlock,
  HeadingBlock,
  ListBlock,
  NoticeBlock,
  NoticeLevel,
  ParagraphBlock,
  TableBlock,
  TableColumn,
  TableRow,
  VerdictRow,
  VerdictsBlock,
  WorkingsBlock,
} from './block';
export type { Book, Chapter } from './book';
export type { FontFace } from './font-metrics';
export type {
  BookProblem,
  ContentsEntry,
  LaidOutBook,
  Page,
  PagePart,
  PlacedBlock,
  PlacedColumn,
  PlacedContent,
  PlacedEntry,
  PlacedWorking,
  Text,
  TextRun,
} from './laid-out';
export type { TextArea } from './lay-out-book';
export { layOutBook, textArea } from './lay-out-book';
export type { TextStyle } from './practice';
export {
  CAPTION_ABOVE_PT,
  CELL_PT,
  CHECKBOX_PT,
  CONTENTS_PT,
  FACTS_PT,
  GAPS_PT,
  HAIR_PT,
  LIST_PT,
  MARGIN_IN,
  NOTICE_PT,
  RUNNING_PT,
  SMALL_SCALE,
  STYLES,
  VERDICT_PT,
  WORKINGS_PT,
} from './practice';
export { fittingText, textWidthPt } from './text-width';
export type { Reference, Run, Words } from './words';
