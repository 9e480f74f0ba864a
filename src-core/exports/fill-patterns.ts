/** Fills of drawings as SVG patterns, told apart in black and white. */
import type { Fill } from '../figure';

interface Pattern {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly turnDeg: number;
  readonly marks: string;
}

type PatternFill = Exclude<Fill, 'none' | 'paper' | 'ink'>;

const line = (d: string) => `<path d="${d}" fill="none" stroke="#000" stroke-width="0.13"/>`;
const dot = (x: number, y: number) => `<circle cx="${x}" cy="${y}" r="0.18" fill="#000"/>`;

/**
 * Hatch lines in the thinnest pen. At 45 degrees for cut material: ISO 128-50, from memory; which material takes which hatch is
 * common practice, no source.
 */
const PATTERNS: { readonly [K in PatternFill]: Pattern } = {
  concrete: {
    widthMm: 7,
    heightMm: 7,
    turnDeg: 0,
    marks: `${line('M1 1.4L2.2 1.1L1.8 2.2ZM4.6 4.8L5.9 4.5L5.4 5.8Z')}${dot(4.2, 1.6)}${dot(2.4, 3.6)}${dot(6.2, 2.9)}${dot(0.9, 5.3)}${dot(3.1, 6.1)}`,
  },
  timber: {
    widthMm: 9,
    heightMm: 2,
    turnDeg: 0,
    marks: line('M0 1C1.5 0.3 3 0.3 4.5 1S7.5 1.7 9 1'),
  },
  masonry: { widthMm: 3, heightMm: 3, turnDeg: 45, marks: line('M1.5 0V3') },
  steel: { widthMm: 2, heightMm: 2, turnDeg: 45, marks: line('M0.5 0V2M1.1 0V2') },
  board: { widthMm: 2, heightMm: 1.2, turnDeg: 0, marks: line('M0 0.6H2') },
  light: { widthMm: 2, heightMm: 2, turnDeg: 45, marks: dot(1, 1) },
  dark: { widthMm: 0.9, heightMm: 0.9, turnDeg: 45, marks: line('M0.45 0V0.9M0 0.45H0.9') },
};

/** The fill as a presentation attribute; a pattern is looked for under the figure's id. */
export function fillAttribute(fill: Fill, figureId: string): string {
  switch (fill) {
    case 'none':
      return 'fill="none"';
    case 'paper':
      return 'fill="#fff"';
    case 'ink':
      return 'fill="#000"';
    default:
      return `fill="url(#${patternId(figureId, fill)})"`;
  }
}

/** Definitions of the patterns among `fills`, each once, in millimetres of paper. */
export function patternDefinitions(fills: Iterable<Fill>, figureId: string): string {
  return [...new Set(fills)]
    .filter(isPattern)
    .map((fill) => definition(fill, figureId))
    .join('');
}

function isPattern(fill: Fill): fill is PatternFill {
  return fill in PATTERNS;
}

function definition(fill: PatternFill, figureId: string): string {
  const { widthMm, heightMm, turnDeg, marks } = PATTERNS[fill];
  const turn = turnDeg === 0 ? '' : ` patternTransform="rotate(${turnDeg})"`;
  return `<pattern id="${patternId(figureId, fill)}" width="${widthMm}" height="${heightMm}" patternUnits="userSpaceOnUse"${turn}>${marks}</pattern>`;
}

function patternId(figureId: string, fill: Fill): string {
  return `${figureId}-${fill}`;
}
