/** A drawing on paper as SVG. Presentation attributes alone, so that a page whose policy forbids inline styles may hold it. */
import type { Figure, Fill, Mark, PaperPoint } from '../figure';
import { MM_PER_IN } from '../units';
import { fillAttribute, patternDefinitions } from './fill-patterns';
import { strokeAttributes } from './pens';
import { xmlNumber, xmlText } from './xml-text';

/** Millimetres in a point of type, 1/72 in. */
const MM_PER_PT = MM_PER_IN / 72;
/** Width of the paper cleared round words that have a ground, as a share of their size. Common practice, no source. */
const GROUND_RATIO = 0.35;

/**
 * The drawing as one SVG element at its size on paper: millimetres, pens and hatches in black. Its title and its words are read out
 * by those who cannot see it. Ids inside begin with the figure's own, so that several may stand in one page. Source: SVG 1.1, and
 * for words on a ground paint-order of SVG 2.
 */
export function figureMarkup(figure: Figure): string {
  const { widthIn, heightIn, marks } = figure;
  const id = xmlText(figure.id);
  const [width, height] = [mm(widthIn), mm(heightIn)];
  const patterns = patternDefinitions(marks.flatMap(fillOf), id);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"`,
    ` role="img" aria-labelledby="${id}-title ${id}-words" font-family="sans-serif" fill="none">`,
    `<title id="${id}-title">${xmlText(figure.title)}</title><desc id="${id}-words">${xmlText(figure.words)}</desc>`,
    patterns === '' ? '' : `<defs>${patterns}</defs>`,
    ...marks.map((mark) => markMarkup(mark, id)),
    '</svg>',
  ].join('');
}

/** The drawing as a file of its own. */
export function figureSvg(figure: Figure): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${figureMarkup(figure)}\n`;
}

function fillOf(mark: Mark): Fill[] {
  return mark.kind === 'area' || mark.kind === 'circle' ? [mark.fill] : [];
}

function markMarkup(mark: Mark, figureId: string): string {
  switch (mark.kind) {
    case 'line':
      return `<path d="${pathOf([mark.from, mark.to], false)}" ${strokeAttributes(mark.pen, 1)}/>`;
    case 'run':
      return `<path d="${pathOf(mark.points, mark.isClosed)}" ${strokeAttributes(mark.pen, 1)} stroke-linejoin="round"/>`;
    case 'area': {
      const d = mark.loops.map((loop) => pathOf(loop, true)).join('');
      return `<path d="${d}" fill-rule="evenodd" ${lookOf(mark, figureId)}/>`;
    }
    case 'circle': {
      const { centre, radius } = mark;
      return `<circle cx="${mm(centre.x)}" cy="${mm(centre.y)}" r="${mm(radius)}" ${lookOf(mark, figureId)}/>`;
    }
    case 'text':
      return textMarkup(mark);
  }
}

function lookOf({ fill, pen }: Extract<Mark, { kind: 'area' | 'circle' }>, figureId: string): string {
  const paint = fillAttribute(fill, figureId);
  return pen === null ? paint : `${paint} ${strokeAttributes(pen, 1)}`;
}

function textMarkup(mark: Extract<Mark, { kind: 'text' }>): string {
  const { at, sizePt, anchor, turnDeg, isBold, hasGround, words } = mark;
  const [x, y] = [mm(at.x), mm(at.y)];
  const sizeMm = sizePt * MM_PER_PT;
  const attributes = [
    `x="${x}" y="${y}" font-size="${xmlNumber(sizeMm)}" fill="#000"`,
    anchor === 'start' ? '' : ` text-anchor="${anchor}"`,
    isBold ? ' font-weight="bold"' : '',
    turnDeg === 0 ? '' : ` transform="rotate(${xmlNumber(turnDeg)} ${x} ${y})"`,
    hasGround
      ? ` paint-order="stroke" stroke="#fff" stroke-width="${xmlNumber(sizeMm * GROUND_RATIO)}" stroke-linejoin="round"`
      : '',
  ].join('');
  return `<text ${attributes}>${xmlText(words)}</text>`;
}

function pathOf(points: readonly PaperPoint[], isClosed: boolean): string {
  const way = points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${mm(x)} ${mm(y)}`).join('');
  return isClosed ? `${way}Z` : way;
}

function mm(valueIn: number): string {
  return xmlNumber(valueIn * MM_PER_IN);
}
