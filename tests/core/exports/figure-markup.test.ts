import { describe, expect, test } from 'vitest';
import { figureMarkup, figureSvg, PENS } from '../../../src-core/exports';
import type { Figure, Fill, Mark, Pen } from '../../../src-core/figure';
import { readSvg } from './svg-reader';

const at = (x: number, y: number) => ({ x, y });
const PEN_NAMES = [
  'cut',
  'visible',
  'thin',
  'hidden',
  'centre',
  'dimension',
  'grid',
] as const satisfies Pen[];
const FILLS = [
  'none',
  'paper',
  'concrete',
  'timber',
  'masonry',
  'steel',
  'board',
  'light',
  'dark',
  'ink',
] as const satisfies Fill[];

const figureOf = (...marks: Mark[]): Figure => ({
  id: 'counter-plan',
  title: 'Counter & sink',
  scaleWords: null,
  widthIn: 8.5,
  heightIn: 11,
  marks,
  words: 'A counter <with> a sink',
});

const text = (words: string, more: Partial<Extract<Mark, { kind: 'text' }>> = {}): Mark => ({
  kind: 'text',
  words,
  at: at(1, 2),
  sizePt: 9,
  anchor: 'start',
  turnDeg: 0,
  isBold: false,
  hasGround: false,
  ...more,
});

const square = [at(0, 0), at(1, 0), at(1, 1), at(0, 1)];
const everything = figureOf(
  ...PEN_NAMES.map((pen): Mark => ({ kind: 'line', from: at(0, 0), to: at(1, 1), pen })),
  ...FILLS.map((fill): Mark => ({ kind: 'area', loops: [square], fill, pen: null })),
  { kind: 'circle', centre: at(4, 4), radius: 1, fill: 'concrete', pen: 'cut' },
  text('Words', { hasGround: true, isBold: true, turnDeg: -90 }),
);

describe('a drawing as SVG', () => {
  test('a letter sheet is 215.9 x 279.4 mm, and one unit of it is a millimetre', () => {
    const { attributes } = readSvg(figureSvg(figureOf()))[0]!;
    expect(attributes.get('width')).toBe('215.9mm');
    expect(attributes.get('height')).toBe('279.4mm');
    expect(attributes.get('viewBox')).toBe('0 0 215.9 279.4');
  });

  test('a line of an inch is 25.4 mm long', () => {
    const tags = readSvg(figureSvg(figureOf({ kind: 'line', from: at(1, 1), to: at(2, 1), pen: 'cut' })));
    expect(tags.find(({ name }) => name === 'path')!.attributes.get('d')).toBe('M25.4 25.4L50.8 25.4');
  });

  test('it says what it shows to those who cannot see it', () => {
    const tags = readSvg(figureSvg(figureOf()));
    const labels = tags[0]!.attributes.get('aria-labelledby')!.split(' ');
    const read = labels.map((id) => tags.find(({ attributes }) => attributes.get('id') === id)!.text);
    expect(read).toEqual(['Counter & sink', 'A counter <with> a sink']);
  });

  test('words read back as they were, and what XML forbids becomes a blank', () => {
    const words = ['<b>&amp;"\'</b>', '1\' 2-1/2"', 'a\u0000b\ud800c'];
    const tags = readSvg(figureSvg(figureOf(...words.map((one) => text(one)))));
    const read = tags.filter(({ name }) => name === 'text').map((tag) => tag.text);
    expect(read).toEqual([words[0], words[1], 'a b c']);
  });

  test('a point of type is 1/72 in: 9 pt are 3.175 mm', () => {
    const tags = readSvg(figureSvg(figureOf(text('Words', { turnDeg: 30 }))));
    const { attributes } = tags.find(({ name }) => name === 'text')!;
    expect(attributes.get('font-size')).toBe('3.175');
    expect(attributes.get('transform')).toBe('rotate(30 25.4 50.8)');
  });

  test('presentation attributes alone, black and white alone', () => {
    const markup = figureSvg(everything);
    expect(markup).not.toMatch(/<style|style=|class=|<script|\bon\w+=|href/);
    expect(new Set(markup.match(/#[0-9a-f]{3,6}\b/g))).toEqual(new Set(['#000', '#fff']));
  });

  test('each hatch is defined once under the id of the figure, and each that is asked for is defined', () => {
    const tags = readSvg(figureSvg(everything));
    const defined = tags
      .filter(({ name }) => name === 'pattern')
      .map(({ attributes }) => attributes.get('id')!);
    expect(new Set(defined).size).toBe(defined.length);
    const wanted = tags.flatMap(
      ({ attributes }) => /^url\(#(.+)\)$/.exec(attributes.get('fill') ?? '')?.[1] ?? [],
    );
    expect([...new Set(wanted)].sort()).toEqual([...defined].sort());
    expect(defined).toHaveLength(7);
    for (const id of defined) expect(id).toMatch(/^counter-plan-/);
  });

  test('no two hatches are alike', () => {
    const markup = figureMarkup(everything);
    const looks = [...markup.matchAll(/<pattern id="[^"]+"(.*?)<\/pattern>/g)].map(([, look]) => look);
    expect(new Set(looks).size).toBe(7);
  });

  test('an opening in an area is left open', () => {
    const hole = square.map(({ x, y }) => at(0.25 + x / 2, 0.25 + y / 2));
    const tags = readSvg(
      figureSvg(figureOf({ kind: 'area', loops: [square, hole], fill: 'concrete', pen: 'cut' })),
    );
    const area = tags.filter(({ name, within }) => name === 'path' && within.length === 0).at(-1)!;
    expect(area.attributes.get('fill-rule')).toBe('evenodd');
    expect(area.attributes.get('d')!.match(/Z/g)).toHaveLength(2);
  });

  test('the element for a page is the file without its first line', () => {
    expect(figureSvg(everything)).toBe(
      `<?xml version="1.0" encoding="UTF-8"?>\n${figureMarkup(everything)}\n`,
    );
  });
});

describe('pens', () => {
  /** ISO 128-20: line widths in steps of the square root of two, rounded; from memory. */
  const SERIES_MM = [0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2];

  test.each(PEN_NAMES)('%s takes a width of the ISO series', (pen) => {
    expect(SERIES_MM).toContain(PENS[pen].widthMm);
  });

  test('wide is about twice narrow, and extra-wide twice wide (ISO 128-23, from memory)', () => {
    expect(PENS.visible.widthMm / PENS.thin.widthMm).toBeCloseTo(2, 0);
    expect(PENS.cut.widthMm / PENS.visible.widthMm).toBeCloseTo(2, 9);
  });

  test('an axis is 24 widths of dash, a gap of 3, a dot of half, a gap of 3 (ISO 128-20, from memory)', () => {
    const { widthMm, dashesMm } = PENS.centre;
    const inWidths = dashesMm!.map((mm) => mm / widthMm);
    [24, 3, 0.5, 3].forEach((wanted, i) => {
      expect(inWidths[i]).toBeCloseTo(wanted, 9);
    });
  });

  test('no two kinds of line that a drawing must tell apart look alike', () => {
    const looks = (['cut', 'visible', 'thin', 'hidden', 'centre', 'grid'] as const).map((pen) =>
      JSON.stringify(PENS[pen]),
    );
    expect(new Set(looks).size).toBe(looks.length);
  });
});
