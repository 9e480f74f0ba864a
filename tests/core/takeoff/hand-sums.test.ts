import { describe, expect, test } from 'vitest';
import { jobTakeoff, linesOf, listCsv } from '../../../src-core/takeoff';
import { rectangle } from '../../support/pieces';
import { readCsv } from '../../support/read-csv';
import { lineOf, SQUARE, sinkJob } from './cases';

/** Worked by hand; sizes of rolls, boxes and tubes are common sizes. */
describe('a slab of 60 x 24 x 2 in with a sink of 20 x 12 in', () => {
  const job = sinkJob();
  const takeoff = jobTakeoff(job, null);
  const line = (id: string) => lineOf(takeoff, id);

  test('takes edge forms of 63 and 27 in from two sticks of 8 ft', () => {
    // Mitres at outside corners: 60 + 2 x 1.5 = 63, 24 + 2 x 1.5 = 27; 2 x (63 + 27) = 180 in = 15 ft. 63 + 27 + 1/8 fit 96.
    const strips = line('strip/profiled/square/2/1.5');
    expect(strips.needed).toBeCloseTo(180, 9);
    expect(strips.neededWords).toBe(`15' 0"`);
    expect(strips.buy).toBe(2);
    expect(strips.buyWords).toBe('2 sticks of 8 ft');
    expect(strips.cost).toBe(20);
    expect(strips.priceFrom).toBe('own');
    expect(strips.wasteRatio).toBe(0);
    expect(strips.wasteWords).toContain('nothing added for waste');
    expect(strips.sources.map(({ words }) => words).sort()).toEqual(
      [1, 2, 3, 4].map((edge) => `Piece, edge ${edge}`),
    );
  });

  test('takes strips of 20 and 12 in for the sink, 2-1/2 in high through 1/2 in of board, from one stick', () => {
    // 2 x (20 + 12) = 64 in; each corner of the opening is an inside corner, so the slab face is the longer
    const strips = line('strip/sink/form-strip/2.5/1.5');
    expect(strips.needed).toBeCloseTo(64, 9);
    expect(strips.buy).toBe(1);
    expect(strips.sources.every(({ trace }) => trace.part.kind === 'cutout')).toBe(true);
  });

  test('takes 1200 sq in of backing board, one board of 60 x 36 in', () => {
    // 60 x 24 - 20 x 12
    const board = line('board/');
    expect(board.needed).toBeCloseTo(1200, 6);
    expect(board.buy).toBe(1);
    expect(board.buyWords).toBe('1 board of 60 in x 36 in');
    expect(board.priceEach).toBeNull();
    expect(board.cost).toBeNull();
  });

  test('takes 16 in of tape, one roll', () => {
    // Four outside corners and four of the sink, each 2 in high; one board has no seam
    const tape = line('tape');
    expect(tape.needed).toBeCloseTo(16, 9);
    expect(tape.buy).toBe(1);
    expect(tape.cost).toBe(8);
  });

  test('takes 248 in of sealant, one tube', () => {
    // Feet 2 x (60 + 24) + 2 x (20 + 12) = 232, corners 8 x 2 = 16. Quarter round of 1/4 in: pi / 64 x 248 x 1.1 = 13.39 in3 < 18.23
    const sealant = line('sealant');
    expect(sealant.needed).toBeCloseTo(248, 9);
    expect(sealant.buy).toBe(1);
    expect(sealant.cost).toBe(6.5);
  });

  test('takes 42 screws from below, one box, and 16 washers for those of the sink', () => {
    // Two near each end and the rest at most 12 in apart between: 60 in 8 screws, 24 in 5, 20 in 4, 12 in 4.
    // Edges 2 x (8 + 5) = 26, sink 2 x (4 + 4) = 16, more than uplift asks, so none is counted on top
    const screws = line('screws/forms');
    expect(screws.needed).toBe(42);
    expect(screws.buyWords).toBe('1 box of 100');
    expect(screws.cost).toBe(11);
    expect(screws.priceFrom).toBe('invented');
    expect(line('washers').needed).toBe(16);
  });

  test('takes one brace across the sink', () => {
    // At most 12 in apart: 20 in leans on one brace on each side, 12 in on none; one brace joins the two
    expect(line('braces/openings').needed).toBe(1);
  });

  test('takes mesh of 58 x 22 in, one sheet', () => {
    // 1 in of cover on every edge; 58 x 22 = 1276 sq in, with a tenth 1404 of the 4608 in a sheet of 96 x 48 in
    const mesh = line('mesh/');
    expect(mesh.needed).toBeCloseTo(1276, 6);
    expect(mesh.buy).toBe(1);
    expect(mesh.wasteRatio).toBe(0.1);
  });

  test('takes 1.389 cu ft, four bags of which one is in hand', () => {
    // (60 x 24 - 20 x 12) x 2 / 1728 = 1.38889; x 1.02 x 1.1 = 1.55833; + a tenth of two bags, 0.12, = 1.67833; / 0.6 = 2.8, so 3
    const mix = linesOf(takeoff.list).find(({ id }) => id === 'mix/mix')!;
    expect(mix.needed).toBeCloseTo(2400 / 1728, 9);
    expect(mix.neededWords).toBe('1.39 cu ft');
    expect(mix.buy).toBe(4);
    expect(mix.buyWords).toBe('4 bags of 80 lb');
    expect(mix.wasteWords).toContain('2 % overfill, 10 % waste');
  });

  test('takes a pound of pigment and 6.75 lb of water a bag', () => {
    // 20 lb of cement x 5 % x 3 bags = 3 lb
    const pigment = line('mix/mix/pigment/Slate grey');
    expect(pigment.needed).toBeCloseTo(3, 9);
    expect(pigment.buyWords).toBe('3 lb');
    // 3 x 6.75 lb = 20.25 lb, at 8.345 lb a gallon 2.43 gal
    const water = line('water');
    expect(water.needed).toBeCloseTo(20.25 / 8.345, 2);
    expect(water.buy).toBe(3);
  });

  test('costs 55.50 in all, without the lines that have no price', () => {
    // 20 + 10 strips, 6.50 sealant, 8 tape, 11 screws
    const { total } = takeoff.list;
    expect(total.cost).toBeCloseTo(55.5, 9);
    expect(total.unpriced).toBe(linesOf(takeoff.list).length - 5);
    expect(total.hasInvented).toBe(true);
    expect(total.words).toBe(
      `55.50 in all, at prices of which some are invented, without ${total.unpriced} lines that have no price`,
    );
  });

  test('says that its falsework is left out', () => {
    expect(takeoff.falseworkCuts).toBeNull();
    expect(takeoff.list.gaps).toEqual([expect.stringContaining('falsework is left out')]);
  });

  test('is written as a table that reads back cell by cell', () => {
    const [head, ...rows] = readCsv(listCsv(takeoff.list));
    const lines = linesOf(takeoff.list);
    expect(rows).toHaveLength(lines.length);
    expect(rows.every((row) => row.length === head!.length)).toBe(true);
    const cell = (row: readonly string[], column: string) => row[head!.indexOf(column)];
    lines.forEach((each, k) => {
      expect(cell(rows[k]!, 'id')).toBe(each.id);
      expect(Number(cell(rows[k]!, 'needed'))).toBe(each.needed);
      expect(cell(rows[k]!, 'buy in words')).toBe(each.buyWords);
      expect(cell(rows[k]!, 'cost')).toBe(each.cost === null ? '' : String(each.cost));
    });
  });
});

test('a drip groove of 90 in takes two sticks of 8 ft, with a tenth for waste', () => {
  // 90 x 1.1 = 99 in, a stick is 96
  const groove = { widthIn: 0.25, depthIn: 0.25, setbackIn: 1 };
  const edges = [{ ...SQUARE, dripGroove: groove }, SQUARE, SQUARE, SQUARE];
  const job = sinkJob({}, { corners: rectangle(90, 24), edges });
  const { needed, buy, wasteRatio } = lineOf(jobTakeoff(job, null), 'groove/');
  expect(needed).toBeCloseTo(90, 9);
  expect([buy, wasteRatio]).toEqual([2, 0.1]);
});

describe('three copies of a cap of 20 x 20 x 1-1/2 in', () => {
  const cap = { corners: rectangle(20, 20), thicknessIn: 1.5, cutouts: [], reinforcement: [] };
  const takeoff = jobTakeoff(sinkJob({}, { ...cap, copies: 3 }), null);

  test('take twelve strips of 23 in from three sticks', () => {
    // 23 = 20 + 2 x 1.5; four to a stick: 4 x 23 = 92 in, which leaves 4 in for the cuts, and a fifth has no room
    const { needed, buy, sources } = lineOf(takeoff, 'strip/');
    expect(needed).toBeCloseTo(12 * 23, 9);
    expect(sources).toHaveLength(12);
    expect(buy).toBe(3);
  });

  test('take three boards, three times the mix of one and tape for each', () => {
    // 20 x 20 x 1.5 / 1728 x 3 = 1.0417 cu ft; four corners of 1-1/2 in a cap
    expect(lineOf(takeoff, 'board/').buy).toBe(3);
    expect(linesOf(takeoff.list).find(({ id }) => id === 'mix/mix')!.needed).toBeCloseTo(1800 / 1728, 9);
    expect(lineOf(takeoff, 'tape').needed).toBeCloseTo(18, 9);
  });
});

test('a metric job is told in its own units: 4572 mm of edge form, sticks of 2438 mm, 2 kg of pigment', () => {
  // 180 in x 25.4 = 4572; 96 in x 25.4 = 2438.4; 3 lb of pigment = 1.36 kg
  const takeoff = jobTakeoff(sinkJob({ shownIn: 'metric' }), null);
  const strips = lineOf(takeoff, 'strip/profiled');
  expect(strips.neededWords).toBe('4572 mm');
  expect(strips.buyWords).toBe('2 sticks of 2438 mm');
  expect(lineOf(takeoff, 'mix/mix/pigment').buyWords).toBe('2 kg');
  const inches = linesOf(takeoff.list).filter(({ neededWords }) => /\bin\b|"|\blb\b|ft/.test(neededWords));
  expect(inches).toEqual([]);
});
