import { describe, expect, test } from 'vitest';
import { openingRows } from '../../../src-renderer/buy/opening-rows';
import { sectionTitles } from '../../../src-renderer/buy/section-titles';
import { coverRows, steelDrawing, steelRows } from '../../../src-renderer/buy/steel-rows';
import { GALLEY, GALLEY_TAKEOFF, ofPiece } from './taken-off';

const counter = ofPiece('serving-counter');
const ledge = ofPiece('bar-ledge');
const bench = ofPiece('fish-bench');

describe('openings as they are read', () => {
  test('each cutout is a row in the order of the drawing, by its own name', () => {
    const rows = openingRows(counter.openings, 'imperial');
    const drawn = GALLEY.pieces.find(({ id }) => id === 'serving-counter')!.cutouts;
    expect(rows.map(({ title }) => title)).toEqual(drawn.map(({ name }) => name));
    expect(rows.map(({ trace }) => trace.part)).toEqual(drawn.map(({ id }) => ({ kind: 'cutout', id })));
  });

  test('the sink says what bowl fits and on how much its rim bears; the tap has none', () => {
    const [sink, tap] = openingRows(counter.openings, 'imperial');
    const { bowl, bearingIn } = counter.openings[0]!.sink!;
    const words = (row: typeof sink, term: string) => row!.facts.find((fact) => fact.term === term)?.words;
    expect(words(sink, 'Fits')).toContain(
      'a bowl of 26-1/4 in by 14-1/4 in, the slab reaching 1/8 in over it',
    );
    expect([bowl!.widthIn, bowl!.depthIn, bearingIn]).toEqual([26.25, 14.25, 0.75]);
    expect(words(sink, 'Rim')).toBe('bears on 3/4 in under the slab; 1/2 in is the least.');
    expect(tap!.facts.map(({ term }) => term)).toEqual(['Form', 'Held down']);
  });

  test('a finding that asks for attention comes first', () => {
    const [opening] = counter.openings;
    const findings = opening!.findings.map((finding, i) =>
      i === opening!.findings.length - 1 ? { ...finding, level: 'attention' as const } : finding,
    );
    const [row] = openingRows([{ ...opening!, findings }], 'imperial');
    expect(row!.findings.map(({ level }) => level)[0]).toBe('attention');
  });
});

describe('steel as it is read', () => {
  test('strips, trimmers, standoffs and joints of the counter are all drawn and all listed', () => {
    const placing = counter.steel!;
    const drawn = steelDrawing(placing, 340)!;
    expect(drawn.names.map(({ words }) => words)).toEqual(['M1', 'M2', 'M3']);
    expect(drawn.standoffs).toHaveLength(placing.standoffs.length);
    const marks = steelRows(placing, 'imperial').map(({ mark }) => mark);
    expect(marks).toEqual([
      ...['M1', 'M2', 'M3'],
      ...placing.trimmers.map(({ label }) => label),
      `${placing.standoffs.length} standoffs`,
      'Control joint',
      'Isolation strip',
      'Isolation strip',
    ]);
    expect(steelDrawing(placing, 0)).toBeNull();
  });

  test('bars are listed by their marks with how many and how long', () => {
    const rows = steelRows(bench.steel!, 'imperial').filter(({ mark }) => /^[A-S]\d/.test(mark));
    const counted = rows.reduce((sum, { words }) => sum + Number(words.split(' of ')[0]), 0);
    expect(counted).toBe(bench.steel!.bars.reduce((sum, { bars }) => sum + bars.length, 0));
  });

  test('cover that is short stands before cover that is enough, and sag that bends the mesh counts with it', () => {
    const placing = ledge.steel!;
    expect(coverRows(placing).map(({ isShort }) => isShort)).toContain(false);
    const sags = placing.sags.map((sag) => ({ ...sag, level: 'caution' as const }));
    const rows = coverRows({ ...placing, sags });
    const short = rows.filter(({ isShort }) => isShort);
    expect(rows.slice(0, short.length)).toEqual(short);
    expect(short.map(({ key }) => key).sort()).toEqual(['mesh-cover-bottom', 'mesh-cover-top', 'mesh-sag']);
  });
});

describe('what stands over a part that is folded away', () => {
  test('counts sticks, boards, openings and steel, and says how many things there are to mind', () => {
    const titles = sectionTitles(GALLEY_TAKEOFF, ledge);
    const sticks = GALLEY_TAKEOFF.formCuts.lists.flatMap((list) => list.sticks).length;
    expect(titles.forms).toBe(`Edge forms: ${sticks} sticks`);
    expect(titles.boards).toBe('Backing boards: 1 board');
    expect(titles.openings).toBe('Openings: 0');
    expect(titles.steel).toBe('Steel: 1 strip, 36 standoffs; 2 to mind');
    expect(sectionTitles(GALLEY_TAKEOFF, ofPiece('bench-seat')).steel).toBe('Steel: none drawn');
  });
});
