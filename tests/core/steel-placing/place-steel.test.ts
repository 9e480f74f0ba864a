import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src-core/job';
import { readJob, readJobText } from '../../../src-core/job';
import type { SteelPlacing } from '../../../src-core/steel-placing';
import { traceWord } from '../../../src-core/trace';
import { randomJob } from '../../support/random-job';
import { seededRandom } from '../../support/seeded-random';
import { BARS, box, caseOf, isIn, L_SHAPE, LIGHT_MESH, placed, regionOf } from './cases';

const read = readJobText(
  readFileSync(new URL('../../../assets/jobs/boathouse-galley.json', import.meta.url), 'utf8'),
);
if (!read.ok) throw new Error('the example job does not read');
const GALLEY: Job = read.job;

function itemsOf(placing: SteelPlacing) {
  return [
    ...placing.meshes.flatMap(({ strips, laps }) => [...strips, ...laps]),
    ...placing.bars.flatMap(({ bars, marks, laps }) => [...bars, ...marks, ...laps]),
    ...placing.trimmers,
    ...placing.standoffs,
    ...placing.standoffSets,
    ...placing.others,
    ...placing.sags,
    ...placing.covers,
    ...placing.joints,
    ...placing.totals,
  ];
}

function expectSound(job: Job, index: number): SteelPlacing {
  const piece = job.pieces[index]!;
  const placing = placed(job, {}, index);
  const items = itemsOf(placing);
  expect(new Set(items.map(({ id }) => id)).size).toBe(items.length);
  for (const { trace } of items) expect(traceWord(trace).startsWith(piece.id)).toBe(true);
  expect(JSON.parse(JSON.stringify(placing))).toEqual(placing);
  return placing;
}

describe('the galley', () => {
  test.each(GALLEY.pieces.map(({ id }, index) => ({ id, index })))(
    '$id is placed with an id and a trace to every item',
    ({ index }) => {
      const placing = expectSound(GALLEY, index);
      expect(placing.standoffs.length > 0).toBe(GALLEY.pieces[index]!.reinforcement.length > 0);
      expect(placing.pieceId).toBe(GALLEY.pieces[index]!.id);
    },
  );

  test('the serving counter has its joint, two wall strips, a trimmer at its corner and mesh round its sink and tap', () => {
    const placing = placed(GALLEY);
    expect(placing.joints.map(({ id }) => id)).toEqual([
      'joint-joint-1',
      'isolation-edge-5',
      'isolation-edge-6',
    ]);
    expect(placing.trimmers[0]).toMatchObject({ id: 'trimmer-corner-3', status: 'recommended' });
    expect(placing.trimmers.filter(({ id }) => id.startsWith('trimmer-sink'))).toHaveLength(4);
    const [mesh] = placing.meshes;
    expect(mesh!.stock.stockId).toBe('mesh');
    expect(mesh!.strips.some(({ shape }) => isIn(shape, 54, 11.5) || isIn(shape, 54, 21.5))).toBe(false);
    for (const { clearIn } of mesh!.laps) if (clearIn !== null) expect(clearIn).toBeGreaterThan(0);
  });

  test('the cap is counted once, with three copies beside it', () => {
    const index = GALLEY.pieces.findIndex(({ id }) => id === 'gate-cap');
    expect(placed(GALLEY, {}, index).copies).toBe(GALLEY.pieces[index]!.copies);
  });
});

describe('totals and drawing', () => {
  const job = caseOf(L_SHAPE, {
    thicknessIn: 3,
    reinforcement: [
      { ...LIGHT_MESH, depthIn: 2.2 },
      { ...BARS, depthIn: 0.75, hooked: true },
      { kind: 'fibre', id: 'fibre', material: 'polymer', dosePcy: 1.5 },
      { kind: 'fabric', id: 'fabric', material: 'glass' },
    ],
  });
  const placing = expectSound(job, 0);

  test('every total is the sum of its list', () => {
    const total = (kind: string) => placing.totals.find((row) => row.kind === kind)!;
    const [mesh] = placing.meshes;
    const [bars] = placing.bars;
    expect(total('mesh').count).toBe(mesh!.strips.length);
    expect(total('mesh').massLb).toBeCloseTo(
      mesh!.strips.reduce((sum, { massLb }) => sum + massLb, 0),
      9,
    );
    expect(total('bars').lengthIn).toBeCloseTo(
      bars!.bars.reduce((sum, { cutLengthIn }) => sum + cutLengthIn, 0),
      6,
    );
    const rows = placing.totals.filter(({ kind }) => kind === 'standoffs');
    expect(rows.reduce((sum, { count }) => sum + count, 0)).toBe(placing.standoffs.length);
  });

  test('1.5 lb of fibre to the cubic yard of a 4546 in2 L 3 in thick is .44 lb; fabric is its plan area', () => {
    const areaIn2 = 25.5 * 85.5 + 96 * 25.5;
    const [fibre, fabric] = placing.others;
    // the eased top arris takes a little off
    expect(fibre!.massLb).toBeCloseTo((1.5 * areaIn2 * 3) / 46_656, 2);
    expect(fabric!.areaIn2).toBeCloseTo(areaIn2, 6);
  });

  test('the drawing shows every strip, lap, bar, trimmer and standoff once, with words', () => {
    const { drawing } = placing;
    expect(drawing.strips.map(({ id }) => id)).toEqual(placing.meshes[0]!.strips.map(({ id }) => id));
    expect(drawing.strips[0]!.label).toMatch(/^M1: \S+ in x \S+ in$/);
    expect(drawing.laps.length).toBeGreaterThanOrEqual(placing.meshes[0]!.laps.length);
    expect(drawing.bars).toHaveLength(placing.bars[0]!.bars.length);
    expect(drawing.bars[0]!.label).toMatch(/^A\d$/);
    expect(drawing.trimmers.map(({ id }) => id)).toEqual(['trimmer-corner-3']);
    expect(drawing.standoffs).toHaveLength(placing.standoffs.length);
    const { bounds } = drawing;
    expect([bounds.minXIn, bounds.minYIn, bounds.maxXIn, bounds.maxYIn]).toEqual([0, -60, 121.5, 25.5]);
  });

  test('a metric job speaks in millimetres', () => {
    const metric = placed({ ...caseOf(box(96, 25.5)), shownIn: 'metric' });
    expect(metric.drawing.strips[0]!.label).toBe('M1: 2388 mm x 597 mm');
    expect(metric.sags[0]!.words).toContain('mm');
  });
});

describe('pieces of every kind', () => {
  test('25 random jobs are placed whole: strips on the slab, within their sheets, every number finite', () => {
    let seen = 0;
    for (let seed = 1; seed <= 25; seed++) {
      const reading = readJob(randomJob(seededRandom(seed)));
      if (!reading.ok) continue;
      reading.job.pieces.forEach((piece, index) => {
        const { meshes } = expectSound(reading.job, index);
        const { outer } = regionOf(piece);
        const xs = outer.map(({ xIn }) => xIn);
        for (const { strips, stock } of meshes) {
          for (const { shape, lengthIn, widthIn, areaIn2, cutAreaIn2 } of strips) {
            expect(lengthIn).toBeLessThanOrEqual(stock.lengthIn + 1e-6);
            expect(widthIn).toBeLessThanOrEqual(stock.widthIn + 1e-6);
            expect(areaIn2).toBeLessThanOrEqual(cutAreaIn2 + 1e-6);
            for (const { xIn } of shape.outer)
              expect(xIn >= Math.min(...xs) && xIn <= Math.max(...xs)).toBe(true);
          }
        }
      });
      seen++;
    }
    expect(seen).toBeGreaterThan(15);
  });
});
