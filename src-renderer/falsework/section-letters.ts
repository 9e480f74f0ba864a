/** Letters by which drawing, tables and lists name the sections of a design, and the legs by them: A1, A2, B1. */
import type { FalseworkDesign } from '../../src-core/falsework';

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** The letter of a section by its place in the design: A to Z, then AA, AB. */
export function sectionLetter(index: number): string {
  const round = Math.floor(index / LETTERS.length);
  return `${round === 0 ? '' : sectionLetter(round - 1)}${LETTERS[index % LETTERS.length]}`;
}

/** Letters of a design's sections by their ids. */
export function sectionLetters({ sections }: FalseworkDesign): ReadonlyMap<string, string> {
  return new Map(sections.map(({ section }, index) => [section.id, sectionLetter(index)]));
}

/** The number of a leg by its place in its section, as it is chalked on the leg: A1. */
export function legNumber(letter: string, index: number): string {
  return `${letter}${index + 1}`;
}
