import { describe, expect, test } from 'vitest';
import type { Bill, BuiltFalsework, Section } from '../../../src-core/falsework';
import { designFalsework, designJob, reuseFalsework } from '../../../src-core/falsework';
import { pricesOf } from '../../../src-core/falsework/prices';
import type { Job } from '../../../src-core/job';
import { dayLine } from '../../../src-core/sequence';
import { seededRandom } from '../../support/seeded-random';
import { cabinet, formJob, sink } from './form-jobs';

/** The counter poured on day 2, its cabinet on day 12, and one just like it beside it that is poured on another day. */
function pair(pourDay: number, more: Record<string, unknown> = {}): Job {
  const job = formJob(36, 25.5, { supports: [cabinet('b1', 0, 36, 12)], ...more });
  const [counter] = job.pieces as [Job['pieces'][number]];
  const away = { xIn: 200, yIn: 0 };
  const bench = {
    ...counter,
    id: 'bench',
    name: 'Bench',
    pourDay,
    corners: counter.corners.map((corner) => ({ ...corner, xIn: corner.xIn + away.xIn })),
    supports: counter.supports.map((support) =>
      support.kind === 'cabinet'
        ? { ...support, id: 'b2', corner: { xIn: away.xIn, yIn: 1.5 }, firstDay: pourDay + 10 }
        : support,
    ),
  };
  return { ...job, pieces: [counter, bench] };
}

const countOf = ({ sticks, panels }: Bill) =>
  sticks.reduce((sum, { count }) => sum + count, 0) + panels.length;

describe('two equal slabs', () => {
  test('poured 14 days apart, after the first is swapped, need one set of falsework', () => {
    const { reuse, designs } = designJob(pair(16));
    const [counter, bench] = designs as [(typeof designs)[number], (typeof designs)[number]];
    expect(countOf(reuse.asked)).toBe(2 * countOf(reuse.bought));
    expect(reuse.boughtPrice).toBeCloseTo(reuse.askedPrice / 2, 9);
    expect(reuse.bought.panels).toEqual(counter.sections[0]!.bill.panels);
    expect(bench.reuse.stock.bought).toEqual({ sticks: [], panels: [] });
    const [use] = bench.reuse.from;
    expect(use).toMatchObject({
      isWhole: true,
      from: { sectionId: 'counter-fw-1', day: 12 },
      to: { sectionId: 'bench-fw-1', day: 15 },
      trace: { pieceId: 'bench', part: { kind: 'section', id: 'bench-fw-1' } },
    });
    expect(use!.words).toMatch(
      /^Used again from "Counter, under b1", out on day 12: deck and frame as they come out, 4 braces, 4 legs and 4 soles\.$/,
    );
    expect(counter.reuse.to).toEqual(bench.reuse.from);
    expect(bench.cautions.join(' ')).toContain('Look every part over');
  });

  test('poured on the same day need two', () => {
    const { reuse } = designJob(pair(2));
    expect(reuse.uses).toEqual([]);
    expect(reuse.bought).toEqual(reuse.asked);
  });

  test('poured 10 days apart, so that the second is built the day before the first comes out, need two', () => {
    expect(designJob(pair(12)).reuse.uses).toEqual([]);
    expect(designJob(pair(13)).reuse.uses).toHaveLength(1);
  });

  test('of which the first is cast three times over leave two sets over', () => {
    const job = pair(16);
    const [counter, bench] = job.pieces as [Job['pieces'][number], Job['pieces'][number]];
    const { reuse } = designJob({ ...job, pieces: [{ ...counter, copies: 3 }, bench] });
    expect(countOf(reuse.asked) / 4).toBe(countOf(reuse.bought) / 3);
  });

  test('give the same whether one piece or the whole job is asked for', () => {
    const job = pair(16);
    expect(designFalsework(job, 'bench').reuse).toEqual(designJob(job).designs[1]!.reuse);
  });

  test('are told on the day on which the second is built', () => {
    const job = pair(16);
    const { events } = dayLine(job, designJob(job).reuse.uses);
    const built = events.find(({ kind, pieceId }) => kind === 'build' && pieceId === 'bench');
    expect(built).toMatchObject({
      day: 15,
      words: 'Build the falsework of Bench, parts used again from Counter (out on day 12)',
    });
    expect(dayLine(job).events.some(({ kind }) => kind === 'build')).toBe(false);
  });

  test('with a sink in the first and none in the second share the sticks but not the bored deck', () => {
    const job = pair(16, { cutouts: [sink(18, 12)] });
    const [counter, bench] = job.pieces as [Job['pieces'][number], Job['pieces'][number]];
    const { reuse } = designJob({ ...job, pieces: [counter, { ...bench, cutouts: [] }] });
    expect(reuse.uses[0]).toMatchObject({ isWhole: false, panels: [] });
    expect(reuse.bought.panels).toHaveLength(2);
  });
});

function section(id: string, firstDay: number, lastDay: number, openings: Section['openings'] = []): Section {
  return {
    id,
    name: id,
    pieceId: id,
    frame: { origin: { xIn: 0, yIn: 0 }, along: { x: 1, y: 0 }, widthIn: 36, depthIn: 24 },
    cabinetId: null,
    openings,
    wallSides: [],
    firstDay,
    lastDay,
  };
}

function built(
  id: string,
  [firstDay, lastDay]: readonly [number, number],
  lengthsIn: readonly number[],
  panels: readonly (readonly [number, number])[] = [],
  openings: Section['openings'] = [],
): BuiltFalsework {
  const sticks = lengthsIn.map((lengthIn) => ({ what: 'joist', size: '2x4' as const, lengthIn, count: 1 }));
  return {
    pieceId: id,
    pieceName: id,
    sections: [
      {
        section: section(id, firstDay, lastDay, openings),
        bill: {
          sticks,
          panels: panels.map(([lengthIn, widthIn]) => ({ what: 'deck panel', lengthIn, widthIn })),
        },
      },
    ],
  };
}

const job = formJob(36, 24);
const reuseOf = (...all: readonly BuiltFalsework[]) => reuseFalsework(job, all, pricesOf(job));
const lengths = ({ sticks }: Bill) =>
  sticks
    .flatMap(({ lengthIn, count }) => Array.from({ length: count }, () => lengthIn))
    .sort((a, b) => a - b);

describe('parts', () => {
  test('three joists of 40 in serve two of 30 in, cut down; one of 45 in is bought', () => {
    const { bought, uses } = reuseOf(built('a', [0, 10], [40, 40, 40]), built('b', [10, 20], [30, 30, 45]));
    expect(lengths(bought)).toEqual([40, 40, 40, 45]);
    expect(uses[0]!.words).toBe('Used again from "a", out on day 10: 2 joists (cut down).');
    expect(uses[0]!.sticks).toEqual([
      { what: 'joist', size: '2x4', lengthIn: 30, count: 2, fromLengthIn: 40 },
    ]);
  });

  test('the shortest that is long enough is taken: 30 in from 32, 40 in from 48', () => {
    const { uses } = reuseOf(built('a', [0, 10], [48, 32]), built('b', [10, 20], [30, 40]));
    expect(uses[0]!.sticks.map(({ lengthIn, fromLengthIn }) => [lengthIn, fromLengthIn])).toEqual([
      [40, 48],
      [30, 32],
    ]);
  });

  test('once cut down to 30 in a stick no longer serves for 40 in', () => {
    const { bought } = reuseOf(
      built('a', [0, 10], [40]),
      built('b', [10, 20], [30]),
      built('c', [20, 30], [40]),
    );
    expect(lengths(bought)).toEqual([40, 40]);
  });

  test('are free from the day on which their section comes out, and not a day before', () => {
    expect(reuseOf(built('a', [0, 10], [40]), built('b', [10, 20], [40])).uses).toHaveLength(1);
    expect(reuseOf(built('a', [0, 10], [40]), built('b', [9, 20], [40])).uses).toEqual([]);
  });

  test('a panel is cut down but not turned: 36 by 24 in serves for 30 by 20 in, not for 24 by 36 in', () => {
    const from = built('a', [0, 10], [], [[36, 24]]);
    expect(reuseOf(from, built('b', [10, 20], [], [[30, 20]])).bought.panels).toHaveLength(1);
    expect(reuseOf(from, built('b', [10, 20], [], [[24, 36]])).bought.panels).toHaveLength(2);
  });

  test('a bored panel serves again where the same hole is wanted at the same place', () => {
    const hole = (p0: number): Section['openings'] => [
      {
        id: 'tap',
        words: 'Tap',
        patch: { p0, p1: p0 + 1.5, q0: 20, q1: 21.5 },
        isFramed: false,
        weightLb: 0,
        areaIn2: 2,
      },
    ];
    const from = built('a', [0, 10], [], [[36, 24]], hole(17));
    expect(reuseOf(from, built('b', [10, 20], [], [[36, 24]], hole(17))).bought.panels).toHaveLength(1);
    expect(reuseOf(from, built('b', [10, 20], [], [[36, 24]], hole(9))).bought.panels).toHaveLength(2);
  });

  // A sweep over the days counts what stands at once: by the greedy colouring of intervals no more is needed, and no less can do.
  test('alike throughout, of 40 random programmes as many are bought as stand at once on the fullest day', () => {
    const random = seededRandom(11);
    for (let round = 0; round < 40; round++) {
      const programme = Array.from({ length: 6 }, (_, i) => {
        const firstDay = Math.floor(30 * random());
        const days = [firstDay, firstDay + 1 + Math.floor(14 * random())] as const;
        return { id: `s${i}`, days, count: 1 + Math.floor(4 * random()) };
      });
      const { bought, asked } = reuseOf(
        ...programme.map(({ id, days, count }) =>
          built(
            id,
            days,
            Array.from({ length: count }, () => 40),
          ),
        ),
      );
      const standing = Array.from({ length: 45 }, (_, day) =>
        programme.reduce((sum, { days, count }) => sum + (days[0] <= day && day < days[1] ? count : 0), 0),
      );
      expect(countOf(bought)).toBe(Math.max(...standing));
      expect(countOf(asked)).toBe(programme.reduce((sum, { count }) => sum + count, 0));
    }
  });
});

test('the force that feet are held against is told in the units of the job', () => {
  const told = (shownIn: 'imperial' | 'metric') =>
    designFalsework(formJob(36, 24, {}, { shownIn }), 'counter').cautions.find((words) =>
      words.includes('hold every foot down'),
    );
  expect(told('imperial')).toMatch(/against \d+0 lbf, or tie/);
  expect(told('metric')).toMatch(/against \d+[05]0 N, or tie/);
});
