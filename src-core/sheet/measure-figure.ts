/** Drawings. They have a scale and are never scaled to fit. */
import type { FigureBlock } from './block';
import type { BookProblem } from './laid-out';
import type { Measured } from './measured';
import { measured } from './measured';
import { CAPTION_ABOVE_PT, GAPS_PT, PT_PER_IN, STYLES } from './practice';
import type { Setting } from './set-text';
import { referenceText, setText } from './set-text';
import type { Run } from './words';
import { runsOf } from './words';

/** A drawing larger than the page is left out: a problem says so, and so does its caption. */
export function measureFigure({ id, figure, caption }: FigureBlock, setting: Setting): Measured {
  const { widthPt, roomPt, scale, chapterId, index } = setting;
  const ptPerIn = PT_PER_IN / scale;
  const figurePt = figure.heightIn * ptPerIn;
  const number = index.figureNumbers.get(id) ?? '?';
  const name = referenceText({ kind: 'figure' }, number);
  const full = setText(
    [captionStart(name, figure.scaleWords), ...runsOf(caption)],
    STYLES.cell,
    widthPt,
    setting,
  );
  const isTooLarge =
    figure.widthIn * ptPerIn > widthPt || figurePt + CAPTION_ABOVE_PT + full.heightPt > roomPt;
  const set = isTooLarge
    ? setText([captionStart(name, null), tooLargeWords(figure.title)], STYLES.cell, widthPt, setting)
    : full;
  const problem: BookProblem = {
    code: 'figure-too-large',
    chapterId,
    about: id,
    sentence: `"${figure.title}" is ${sizeWords(figure.widthIn, figure.heightIn)}; the page has room for ${sizeWords(
      widthPt / ptPerIn,
      (roomPt - CAPTION_ABOVE_PT - full.heightPt) / ptPerIn,
    )}.`,
  };
  return measured({
    kind: 'figure',
    id,
    gapPt: GAPS_PT.figure,
    unitsPt: [(isTooLarge ? 0 : figurePt) + CAPTION_ABOVE_PT + set.heightPt],
    problems: [...set.problems, ...(isTooLarge ? [problem] : [])],
    place: (pageOf) => ({
      kind: 'figure',
      id,
      figure: isTooLarge ? null : figure,
      caption: set.text(pageOf),
    }),
  });
}

/** "Figure 3, scale 1 : 16." */
function captionStart(name: string, scaleWords: string | null): Run {
  const scale = scaleWords === null ? '' : `, scale ${scaleWords.replaceAll(' ', '\u00a0')}`;
  return { kind: 'strong', words: `${name}${scale}. ` };
}

function tooLargeWords(title: string): string {
  return `${title}: larger than this paper at its scale, and left out.`;
}

function sizeWords(widthIn: number, heightIn: number): string {
  return `${widthIn.toFixed(2)} by ${heightIn.toFixed(2)} in`;
}
