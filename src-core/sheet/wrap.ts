/**
 * Breaks words into lines as a browser does that is given the same width: between words, and within a word only where it is longer
 * than a line, there after a hyphen or a slash first.
 */
import { wholeFigures } from '../units';
import type { TextStyle } from './practice';
import { WIDTH_RESERVE } from './practice';
import { textWidthPt } from './text-width';
import type { Reference, Run, Words } from './words';
import { runsOf } from './words';

/** Text of one make, within which a line may end at spaces only where it is not whole. */
export interface Part {
  readonly text: string;
  readonly isStrong: boolean;
  readonly isWhole: boolean;
  /** What the text stands for until the pages are known. */
  readonly reference: Reference | null;
}

/** Parts with nothing between them. */
type Word = readonly Part[];

export interface TextLine {
  readonly words: readonly Word[];
  /** Goes on with the word at the end of the line before. */
  readonly isJoined: boolean;
}

export interface Wrapped {
  readonly lines: readonly TextLine[];
  /** A figure with its unit, or a reference, that is longer than a line and is not broken; null where all fits. */
  readonly tooWide: string | null;
}

/** How a reference reads: its words, or words at least as long while its page is not known. */
export type ReferenceWords = (reference: Reference) => string;

/** Lines of a text within a width; one empty line for no words. */
export function wrapWords(
  words: Words,
  style: TextStyle,
  widthPt: number,
  referenceWords: ReferenceWords,
): Wrapped {
  const roomPt = widthPt / (1 + WIDTH_RESERVE);
  const spacePt = textWidthPt(' ', style);
  const lines: TextLine[] = [];
  let tooWide: string | null = null;
  let line: Word[] = [];
  let usedPt = 0;
  let isJoined = false;
  const endLine = (nextIsJoined: boolean) => {
    lines.push({ words: line, isJoined });
    line = [];
    usedPt = 0;
    isJoined = nextIsJoined;
  };
  for (const word of splitWords(words, referenceWords)) {
    const longPt = wordWidthPt(word, style);
    if (line.length > 0 && usedPt + spacePt + longPt > roomPt) endLine(false);
    if (longPt <= roomPt) {
      usedPt += (line.length > 0 ? spacePt : 0) + longPt;
      line.push(word);
      continue;
    }
    const broken = breakWord(word, style, roomPt);
    tooWide ??= broken.tooWide;
    broken.stretches.forEach((stretch, index) => {
      if (index > 0) endLine(true);
      line.push(stretch);
      usedPt = wordWidthPt(stretch, style);
    });
  }
  endLine(false);
  return { lines, tooWide };
}

function splitWords(words: Words, referenceWords: ReferenceWords): Word[] {
  const found: Part[][] = [];
  let open: Part[] = [];
  const close = () => {
    if (open.length > 0) found.push(open);
    open = [];
  };
  for (const run of runsOf(words)) {
    for (const part of partsOf(run, referenceWords)) {
      if (part.isWhole) {
        open.push(part);
        continue;
      }
      part.text.split(/[ \t\r\n]+/).forEach((text, index) => {
        if (index > 0) close();
        if (text !== '') open.push({ ...part, text });
      });
    }
  }
  close();
  return found;
}

function partsOf(run: Run, referenceWords: ReferenceWords): Part[] {
  if (typeof run !== 'string' && run.kind !== 'strong') {
    return [{ text: referenceWords(run), isStrong: false, isWhole: true, reference: run }];
  }
  const isStrong = typeof run !== 'string';
  return wholeFigures(isStrong ? run.words : run).map(({ text, isWhole }) => ({
    text,
    isWhole,
    isStrong,
    reference: null,
  }));
}

function partWidthPt({ text, isStrong }: Part, style: TextStyle): number {
  return textWidthPt(text, isStrong && style.face === 'text' ? { ...style, face: 'strong' } : style);
}

function wordWidthPt(word: Word, style: TextStyle): number {
  return word.reduce((sum, part) => sum + partWidthPt(part, style), 0);
}

/** A word longer than a line, in stretches of at most a line. */
function breakWord(word: Word, style: TextStyle, roomPt: number) {
  const stretches: Part[][] = [[]];
  let tooWide: string | null = null;
  let usedPt = 0;
  const add = (part: Part, longPt: number) => {
    if (usedPt > 0 && usedPt + longPt > roomPt) {
      stretches.push([]);
      usedPt = 0;
    }
    stretches.at(-1)!.push(part);
    usedPt += longPt;
  };
  for (const part of word) {
    if (part.isWhole) {
      const longPt = partWidthPt(part, style);
      if (longPt > roomPt) tooWide ??= part.text;
      add(part, longPt);
      continue;
    }
    for (const text of part.text.split(/(?<=[-/–—])/)) {
      const piece = { ...part, text };
      const longPt = partWidthPt(piece, style);
      if (longPt <= roomPt) add(piece, longPt);
      else
        for (const letter of text)
          add({ ...part, text: letter }, partWidthPt({ ...part, text: letter }, style));
    }
  }
  return { stretches, tooWide };
}
