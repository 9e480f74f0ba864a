/** How a rung is marked in a text: by shape and word, and by colour where there is one. */
import type { Level } from '../../../src-core/checks';

const SHAPES: { readonly [L in Level]: string } = {
  holds: '●',
  steel: '◆',
  change: '▲',
  engineer: '⬣',
};

/** Rungs in words, where no piece's own verdict is at hand. */
const WORDS: { readonly [L in Level]: string } = {
  holds: 'Holds',
  steel: 'Holds with steel',
  change: 'Needs a change',
  engineer: 'Needs an engineer',
};

const COLOURS: { readonly [L in Level]: number } = { holds: 32, steel: 36, change: 33, engineer: 31 };

/** The rung's shape: a round, a diamond, a triangle or a hexagon. */
export function shapeOf(level: Level): string {
  return SHAPES[level];
}

/** "▲ Needs a change". */
export function markOf(level: Level, words: string = WORDS[level]): string {
  return `${SHAPES[level]} ${words}`;
}

/** Puts the rung's colour round a text. */
export function paint(text: string, level: Level, colour: boolean): string {
  return colour ? `\u001b[${COLOURS[level]}m${text}\u001b[39m` : text;
}

/** Puts the rung's colour on its shape, the first character of the line. */
export function paintShape(line: string, level: Level, colour: boolean): string {
  const shape = SHAPES[level];
  return colour && line.startsWith(shape) ? paint(shape, level, true) + line.slice(shape.length) : line;
}
