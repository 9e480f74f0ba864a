import { describe, expect, test } from 'vitest';
import { designFalsework, legNumber, sectionLetter } from '../../../src-core/falsework';
import type { PaperPoint } from '../../../src-core/figure';
import { falseworkPlan, steelPlan } from '../../../src-core/paper';
import { placeSteel } from '../../../src-core/steel-placing';
import { printLength } from '../../../src-core/units';
import { corners } from './faults';
import { exampleJob, pieceOfJob, ROOM, wordsOf } from './jobs';

function middle(points: readonly PaperPoint[]): PaperPoint {
  const sum = points.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}

describe.each(['imperial', 'metric'] as const)('the falsework of the counter in %s units', (system) => {
  const job = exampleJob('boathouse-galley', system);
  const counter = pieceOfJob(job, 'serving-counter');
  const design = designFalsework(job, counter.id);
  const plan = falseworkPlan(job, counter, design, ROOM)!;

  test('has each leg with the length that it is cut to', () => {
    const words = wordsOf(plan);
    const legs = design.sections.flatMap(({ legs: each }, i) =>
      each.map(({ leg }, k) => {
        const length = printLength(leg.cutIn, { system }).replace(/ (in|mm)$/, '');
        return `${legNumber(sectionLetter(i), k)}: ${length}`;
      }),
    );
    expect(legs.length).toBeGreaterThanOrEqual(8);
    expect(words).toEqual(expect.arrayContaining(legs));
    const squares = plan.marks.filter(
      (mark) =>
        mark.kind === 'area' && mark.fill === 'ink' && mark.pen === 'thin' && mark.loops[0]!.length === 4,
    );
    // and the two black fields of the scale bar
    expect(squares).toHaveLength(legs.length + 2);
  });

  test('words stand nearest to their own leg, or point at it: no leg is cut by another’s length', () => {
    const places = plan.marks.flatMap((mark) =>
      mark.kind === 'area' && mark.fill === 'ink' && mark.pen === 'thin' && mark.loops[0]!.length === 4
        ? [middle(mark.loops[0]!)]
        : [],
    );
    const dots = plan.marks.flatMap((mark) => (mark.kind === 'circle' ? [mark.centre] : []));
    const numbers = design.sections.flatMap(({ legs }, i) =>
      legs.map((_, k) => `${legNumber(sectionLetter(i), k)}:`),
    );
    numbers.forEach((number, i) => {
      const text = plan.marks.find((mark) => mark.kind === 'text' && mark.words.startsWith(number));
      if (text?.kind !== 'text') throw new Error(number);
      const box = corners(text);
      const away = ({ x, y }: PaperPoint) =>
        Math.hypot(Math.max(0, box[0]!.x - x, x - box[1]!.x), Math.max(0, box[0]!.y - y, y - box[2]!.y));
      const own = places[i]!;
      const nearest = places
        .slice(0, numbers.length)
        .reduce((best, next) => (away(next) < away(best) ? next : best));
      const isPointedAt = dots.some(({ x, y }) => Math.hypot(x - own.x, y - own.y) < 1e-6);
      expect(nearest === own || isPointedAt, number).toBe(true);
    });
  });

  test('says in which order the sections come out: no day before an earlier turn', () => {
    const turns = wordsOf(plan).flatMap((words) => {
      const found = /^out (\d+), day (\d+)$/.exec(words);
      return found === null ? [] : [{ turn: Number(found[1]), day: Number(found[2]) }];
    });
    expect(turns).toHaveLength(design.sections.length);
    const days = turns.sort((a, b) => a.turn - b.turn).map(({ day }) => day);
    expect(turns.map(({ turn }) => turn)).toEqual(design.sections.map((_, i) => i + 1));
    expect(days).toEqual([...days].sort((a, b) => a - b));
  });

  test('is none where nothing is held up', () => {
    expect(falseworkPlan(job, counter, { ...design, sections: [] }, ROOM)).toBeNull();
  });
});

test('sections are lettered A to Z, then AA', () => {
  expect([0, 25, 26, 27].map(sectionLetter)).toEqual(['A', 'Z', 'AA', 'AB']);
});

describe('the plan of the steel', () => {
  const job = exampleJob('boathouse-galley', 'imperial');
  const placed = (id: string) => {
    const piece = pieceOfJob(job, id);
    const steel = placeSteel(job, piece);
    if (!steel.ok) throw new Error(id);
    return { piece, placing: steel.placing };
  };

  test('has a dot for every standoff of the counter, and every strip and lap', () => {
    const { piece, placing } = placed('serving-counter');
    const plan = steelPlan(job, piece, placing, ROOM)!;
    const radii = plan.marks.flatMap((mark) =>
      mark.kind === 'circle' && mark.fill === 'ink' ? [mark.radius] : [],
    );
    const largest = Math.max(...radii);
    expect(radii.filter((radius) => radius === largest)).toHaveLength(placing.standoffs.length);
    const laps = plan.marks.filter((mark) => mark.kind === 'area' && mark.fill === 'light');
    expect(laps).toHaveLength(placing.drawing.laps.length);
    const words = wordsOf(plan);
    for (const { label } of placing.drawing.strips) expect(words).toContain(label);
    expect(words.join(' ')).toContain(`${placing.standoffs.length} standoffs`);
  });

  test('has a line for every bar of the fish bench, named once a mark with count and spacing', () => {
    const { piece, placing } = placed('fish-bench');
    const plan = steelPlan(job, piece, placing, ROOM)!;
    const words = wordsOf(plan);
    for (const { marks } of placing.bars) {
      for (const { mark, count } of marks) {
        expect(words.filter((each) => each.startsWith(`${mark}: ${count}`))).toHaveLength(1);
      }
    }
    const bars = plan.marks.filter((mark) => mark.kind === 'line' && mark.pen === 'visible');
    expect(bars.length).toBeGreaterThanOrEqual(placing.drawing.bars.length);
  });

  test('is none for a slab without steel', () => {
    const { piece, placing } = placed('gate-cap');
    expect(steelPlan(job, piece, placing, ROOM)).toBeNull();
  });
});
