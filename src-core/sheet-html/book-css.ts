/** The style sheet of the book. Its lengths are those that the layout reckons with, so that what was measured is what is printed. */
import { PAPER_SIZES } from '../figure';
import type { FontFace, TextStyle } from '../sheet';
import {
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
} from '../sheet';

/** Ink on white: every grey that carries words keeps 7 to 1 (WCAG 2.2 AAA 1.4.6), so that a poor copy can still be read. */
const INK = '#1c1f23';
const SOFT = '#4a4d50';
const RULE = '#b9b9b6';
const RULE_STRONG = '#6f7275';
const WASH = '#f1f1ef';
/** Chalk-line blue: 7 to 1 on white. */
const CHALK = '#1b4f9c';
/** White at both ends of the dots between a title and its page. */
const LEADER_GAP_PT = 4;
const DESK = '#8d8e8c';

const FONTS: { readonly [F in FontFace]: string } = {
  text: 'font-family: Barlow, system-ui, sans-serif; font-weight: 400;',
  strong: 'font-family: Barlow, system-ui, sans-serif; font-weight: 600;',
  narrow: "font-family: 'Barlow Condensed', Barlow, system-ui, sans-serif; font-weight: 600;",
};

/** A length that goes with the size of the chapter. */
function pt(length: number): string {
  return `calc(${length}pt * var(--scale))`;
}

function type({ face, sizePt, linePt }: TextStyle): string {
  return `${FONTS[face]} font-size: ${pt(sizePt)}; line-height: ${pt(linePt)};`;
}

const HAIR = `${HAIR_PT}pt solid`;

const PAGES = `
.book { --scale: 1; background: ${DESK}; color: ${INK}; padding: 16pt; font-variant-numeric: tabular-nums;
  overflow-wrap: break-word; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
.book *, .book *::before { box-sizing: border-box; }
.book .page { position: relative; margin: 0 auto 16pt; padding: ${MARGIN_IN}in; background: #fff; overflow: hidden;
  box-shadow: 0 1pt 6pt rgb(0 0 0 / 35%); break-after: page; break-inside: avoid; }
.book .page:last-child { margin-bottom: 0; break-after: auto; }
${Object.entries(PAPER_SIZES)
  .map(
    ([name, { widthIn, heightIn }]) => `.book.${name} .page { width: ${widthIn}in; height: ${heightIn}in; }`,
  )
  .join('\n')}
.book .running { ${type(STYLES.cell)} color: ${SOFT}; position: absolute; left: ${MARGIN_IN}in; right: ${MARGIN_IN}in;
  display: flex; justify-content: space-between; white-space: nowrap; }
.book header.running { top: ${MARGIN_IN}in; border-bottom: ${HAIR} ${RULE}; padding-bottom: 2pt; }
.book footer.running { bottom: ${MARGIN_IN}in; border-top: ${HAIR} ${RULE}; padding-top: 2pt; }
.book .text { padding-top: ${RUNNING_PT.header}pt; }
.book .small { --scale: ${SMALL_SCALE}; }
.book .block { margin: 0; padding: 0; }
.book .part:first-child > .block:first-child { margin-top: 0; }
@media print {
  .book { background: none; padding: 0; }
  .book .page { margin: 0; box-shadow: none; }
}`;

const TEXT = `
.book .title { ${type(STYLES.title)} margin-top: ${pt(GAPS_PT.title)}; }
.book .chapter { ${type(STYLES.chapter)} margin-top: ${pt(GAPS_PT.chapter)}; }
.book .heading1 { ${type(STYLES.heading1)} margin-top: ${pt(GAPS_PT.heading[1])}; }
.book .heading2 { ${type(STYLES.heading2)} margin-top: ${pt(GAPS_PT.heading[2])}; }
.book .paragraph { ${type(STYLES.body)} margin-top: ${pt(GAPS_PT.paragraph)}; }
.book .list { ${type(STYLES.body)} margin-top: ${pt(GAPS_PT.list)}; padding-left: ${pt(LIST_PT.indent)}; }
.book .list > li + li { margin-top: ${pt(LIST_PT.between)}; }
.book .checkboxes { ${type(STYLES.body)} margin-top: ${pt(GAPS_PT.checkboxes)}; list-style: none; }
.book .checkboxes > li { position: relative; padding-left: ${pt(CHECKBOX_PT.indent)}; }
.book .checkboxes > li + li { margin-top: ${pt(CHECKBOX_PT.between)}; }
.book .box { position: absolute; left: 0; top: ${pt(2)}; width: ${pt(11)}; height: ${pt(11)}; border: 1pt solid ${INK}; }
.book strong { font-weight: 600; }
.book .whole { white-space: nowrap; }
.book a { color: ${CHALK}; text-decoration: underline; text-underline-offset: 0.15em; text-decoration-thickness: 0.5pt; }`;

const TABLES = `
.book .table { ${type(STYLES.cell)} margin-top: ${pt(GAPS_PT.table)}; width: 100%; table-layout: fixed;
  border-collapse: separate; border-spacing: 0; }
.book caption { ${type(STYLES.cellStrong)} text-align: left; padding: 0 0 ${pt(CELL_PT.captionBelow)}; }
.book .table th, .book .table td { padding: ${pt(CELL_PT.above)} ${pt(CELL_PT.side)} ${pt(CELL_PT.below)};
  border-bottom: ${HAIR} ${RULE}; text-align: left; vertical-align: top; }
.book .table th { ${FONTS.strong} }
.book thead th, .book thead td { border-top: ${HAIR} ${RULE_STRONG}; border-bottom-color: ${RULE_STRONG}; background: ${WASH}; }
.book .table .end { text-align: right; }
.book .table .middle { text-align: center; }
.book .total td, .book .total th { ${FONTS.strong} border-top: ${HAIR} ${RULE_STRONG}; }
.book .for-pen td, .book .for-pen th { border-left: ${HAIR} ${RULE_STRONG}; border-bottom-color: ${RULE_STRONG}; }
.book .for-pen tr > :last-child { border-right: ${HAIR} ${RULE_STRONG}; }
.book .for-pen tbody tr { height: ${pt(CELL_PT.penRow)}; }
${Array.from({ length: 100 }, (_, k) => `.book .w${k + 1} { width: ${k + 1}%; }`).join('\n')}`;

const BLOCKS = `
.book .figure { margin-top: ${pt(GAPS_PT.figure)}; }
.book .figure svg { display: block; }
.book .figure svg text { ${FONTS.text} }
.book .figure svg [font-weight='bold'] { font-weight: 600; }
.book figcaption { ${type(STYLES.cell)} padding-top: ${pt(CAPTION_ABOVE_PT)}; }
.book .workings { ${type(STYLES.cell)} margin-top: ${pt(GAPS_PT.workings)}; }
.book .workings > div + div { margin-top: ${pt(WORKINGS_PT.between)}; }
.book .workings dd { margin: 0; padding-left: ${pt(WORKINGS_PT.indent)}; }
.book .workings .source { color: ${SOFT}; }
.book .facts { ${type(STYLES.body)} margin-top: ${pt(GAPS_PT.facts)}; }
.book .facts > div { display: flex; padding: ${pt(FACTS_PT.above)} 0 ${pt(FACTS_PT.below)}; border-bottom: ${HAIR} ${RULE}; }
.book .facts dt { flex: none; width: ${FACTS_PT.labelPercent}%; padding-right: ${pt(FACTS_PT.side)}; color: ${SOFT}; }
.book .facts dd { flex: 1; min-width: 0; margin: 0; }
.book .notice { ${type(STYLES.body)} margin-top: ${pt(GAPS_PT.notice)};
  padding: ${pt(NOTICE_PT.above)} ${pt(NOTICE_PT.side)} ${pt(NOTICE_PT.below)}; border: 0 solid ${INK}; }
${Object.entries(NOTICE_PT.frame)
  .map(([level, framePt]) => `.book .signal-${level} { border-width: ${framePt}pt; }`)
  .join('\n')}
.book .notice p { margin: ${pt(NOTICE_PT.between)} 0 0; }
.book .notice .signal { ${type(STYLES.signal)} margin: 0; text-transform: uppercase; letter-spacing: 0.04em; display: flex;
  align-items: center; }
.book .warning-sign { width: ${pt(13)}; height: ${pt(13)}; margin-right: ${pt(5)}; flex: none; }
.book .verdicts { ${type(STYLES.body)} margin-top: ${pt(GAPS_PT.verdicts)}; list-style: none; }
.book .verdicts > li { position: relative; display: flex; border-bottom: ${HAIR} ${RULE};
  padding: ${pt(VERDICT_PT.above)} 0 ${pt(VERDICT_PT.below)} ${pt(VERDICT_PT.mark)}; }
.book .verdict-mark { position: absolute; left: 0; top: ${pt(VERDICT_PT.above + 1.5)}; width: ${pt(12)}; height: ${pt(12)};
  fill: ${INK}; }
.book .verdicts .name { flex: none; width: ${VERDICT_PT.namePercent}%; padding-right: ${pt(VERDICT_PT.side)}; }
.book .verdicts .words { flex: none; width: ${VERDICT_PT.wordsPercent}%; padding-right: ${pt(VERDICT_PT.side)}; }
.book .verdicts .why { flex: 1; min-width: 0; }
.book .contents { margin-top: ${pt(GAPS_PT.contents)}; }
.book .contents ul { margin: 0; padding: 0; list-style: none; }
.book .contents li { padding-bottom: ${pt(CONTENTS_PT.between)}; }
.book .contents .entry0 { ${type(STYLES.cellStrong)} }
.book .contents .entry1 { ${type(STYLES.cell)} padding-left: ${pt(CONTENTS_PT.indent)}; }
.book .contents a { display: flex; color: inherit; text-decoration: none; }
.book .contents .entry { flex: 0 1 auto; min-width: 0; }
.book .contents .leader { flex: 1 0 ${pt(CONTENTS_PT.leader - 2 * LEADER_GAP_PT)}; align-self: flex-end; margin: 0 ${pt(LEADER_GAP_PT)} ${pt(3.5)};
  border-bottom: 0.75pt dotted ${RULE_STRONG}; }
.book .contents .folio { flex: none; width: ${pt(CONTENTS_PT.folio)}; text-align: right; }`;

/** For screen and print, letter and A4; every rule lies within `.book`. */
export const BOOK_CSS = [PAGES, TEXT, TABLES, BLOCKS].join('\n').trim();
