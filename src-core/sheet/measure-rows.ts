/** Blocks in rows that are no tables: facts, verdicts, workings, contents. */

import type { Line } from '../workings';
import type { ContentsBlock, FactsBlock, VerdictsBlock, WorkingsBlock } from './block';
import type { Measured } from './measured';
import { HAIR_RECKONED_PT, measured } from './measured';
import { CONTENTS_PT, FACTS_PT, GAPS_PT, STYLES, VERDICT_PT, WORKINGS_PT } from './practice';
import type { SetText, Setting } from './set-text';
import { setText } from './set-text';
import type { Run } from './words';

export function measureFacts({ facts }: FactsBlock, setting: Setting): Measured {
  const labelPt = (setting.widthPt * FACTS_PT.labelPercent) / 100;
  const rows = facts.map(({ label, value }) => ({
    label: setText(label, STYLES.body, labelPt - FACTS_PT.side, setting),
    value: setText(value, STYLES.body, setting.widthPt - labelPt, setting),
  }));
  return measured({
    kind: 'facts',
    gapPt: GAPS_PT.facts,
    unitsPt: rows.map((row) => FACTS_PT.above + tallest(row) + FACTS_PT.below + HAIR_RECKONED_PT),
    problems: problemsOf(rows),
    place: (pageOf, from, to) => ({
      kind: 'facts',
      facts: rows
        .slice(from, to)
        .map(({ label, value }) => ({ label: label.text(pageOf), value: value.text(pageOf) })),
    }),
  });
}

export function measureVerdicts({ rows: verdicts }: VerdictsBlock, setting: Setting): Measured {
  const { mark, namePercent, wordsPercent, side, above, below } = VERDICT_PT;
  const restPt = setting.widthPt - mark;
  const namePt = (restPt * namePercent) / 100;
  const wordsPt = (restPt * wordsPercent) / 100;
  const rows = verdicts.map(({ name, words, why }) => ({
    name: setText(name, STYLES.body, namePt - side, setting),
    words: setText([{ kind: 'strong', words }], STYLES.body, wordsPt - side, setting),
    why: setText(why, STYLES.body, restPt - namePt - wordsPt, setting),
  }));
  return measured({
    kind: 'verdicts',
    gapPt: GAPS_PT.verdicts,
    unitsPt: rows.map((row) => above + tallest(row) + below + HAIR_RECKONED_PT),
    problems: problemsOf(rows),
    place: (pageOf, from, to) => ({
      kind: 'verdicts',
      rows: rows.slice(from, to).map(({ name, words, why }, k) => ({
        level: verdicts[from + k]!.level,
        name: name.text(pageOf),
        words: words.text(pageOf),
        why: why.text(pageOf),
      })),
    }),
  });
}

/** Label and source on one line, formula with the numbers put in and the result below: a line of workings is never parted. */
export function measureWorkings({ lines }: WorkingsBlock, setting: Setting): Measured {
  const widthPt = setting.widthPt - WORKINGS_PT.indent;
  const rows = lines.map((line) => {
    const source = sourceWords(line);
    return {
      label: setText(line.label, STYLES.cellStrong, setting.widthPt, setting),
      source: setText(source, STYLES.cell, setting.widthPt, setting),
      head: setText(
        [{ kind: 'strong', words: line.label }, ` ${source}`],
        STYLES.cell,
        setting.widthPt,
        setting,
      ),
      equation: setText(workingWords(line), STYLES.cell, widthPt, setting),
    };
  });
  return measured({
    kind: 'workings',
    gapPt: GAPS_PT.workings,
    unitsPt: rows.map(
      (row, index) => (index > 0 ? WORKINGS_PT.between : 0) + row.head.heightPt + row.equation.heightPt,
    ),
    leastTogether: 1,
    problems: problemsOf(rows.map(({ head, equation }) => ({ head, equation }))),
    place: (pageOf, from, to) => ({
      kind: 'workings',
      lines: rows.slice(from, to).map(({ label, source, equation }) => ({
        label: label.text(pageOf),
        source: source.text(pageOf),
        equation: equation.text(pageOf),
      })),
    }),
  });
}

/** A step that only repeats the one before it, or the result, is left out. */
function workingWords({ symbol, formula, substituted, result, unit }: Line): Run[] {
  const answer = { kind: 'strong', words: `${result} ${unit}`.trimEnd() } as const;
  if (formula === '') return [`${symbol} = `, answer];
  const isNews = substituted !== '' && substituted !== formula && substituted !== result;
  return [`${symbol} = ${formula} = ${isNews ? `${substituted} = ` : ''}`, answer];
}

function sourceWords({ source, fromMemory }: Line): string {
  return fromMemory && !source.includes('from memory') ? `${source}; from memory, verify` : source;
}

/** The list of chapters, and of their headings; the numbers of pages come with the pages. */
export function measureContents({ shows }: ContentsBlock, setting: Setting): Measured {
  const entries = setting.index.entries
    .filter(({ level }) => level === 0 || shows === 'headings')
    .map((entry) => ({
      ...entry,
      set: setText(
        entry.words,
        entry.level === 0 ? STYLES.cellStrong : STYLES.cell,
        setting.widthPt - CONTENTS_PT.folio - CONTENTS_PT.leader - entry.level * CONTENTS_PT.indent,
        setting,
      ),
    }));
  return measured({
    kind: 'contents',
    gapPt: GAPS_PT.contents,
    unitsPt: entries.map(({ set }) => set.heightPt + CONTENTS_PT.between),
    problems: entries.flatMap(({ set }) => set.problems),
    place: (pageOf, from, to) => ({
      kind: 'contents',
      entries: entries.slice(from, to).map(({ level, id, set }) => ({
        level,
        id,
        words: set.text(pageOf),
        page: pageOf(id)!,
      })),
    }),
  });
}

type Row = { readonly [cell: string]: SetText };

function tallest(row: Row): number {
  return Math.max(...Object.values(row).map(({ heightPt }) => heightPt));
}

function problemsOf(rows: readonly Row[]) {
  return rows.flatMap((row) => Object.values(row).flatMap(({ problems }) => problems));
}
