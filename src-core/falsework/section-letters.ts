/** Letters by which drawings and lists name the sections of falsework, and numbers of their legs. */

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** The letter of a section by its place in the design: A to Z, then AA, AB. */
export function sectionLetter(index: number): string {
  const round = Math.floor(index / LETTERS.length);
  return `${round === 0 ? '' : sectionLetter(round - 1)}${LETTERS[index % LETTERS.length]}`;
}

/** The number of a leg by its place in its section, as it is chalked on the leg: A1. */
export function legNumber(letter: string, index: number): string {
  return `${letter}${index + 1}`;
}
