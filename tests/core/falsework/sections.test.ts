import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  bearingOnEachOther,
  designFalsework,
  type Fastening,
  fasteningRefusals,
  sectionCorners,
} from '../../../src-core/falsework';
import { readJobText } from '../../../src-core/job';
import { intersectRegions, loopsAreaIn2 } from '../../../src-core/outline';
import { cabinet, formJob, sink, WALL_BEHIND } from './form-jobs';

function galley() {
  const url = new URL('../../../assets/jobs/boathouse-galley.json', import.meta.url);
  const reading = readJobText(readFileSync(url, 'utf8'));
  if (!reading.ok) throw new Error('the example job is broken');
  return reading.job;
}

const TWO = [cabinet('b1', 0, 36, 30), cabinet('b2', 36, 36, 33)];

describe('sections', () => {
  test('lie one under each cabinet to come, and go on its day', () => {
    const { sections } = designFalsework(formJob(74, 25.5, { edges: WALL_BEHIND, supports: TWO }), 'counter');
    expect(sections.map(({ section }) => [section.cabinetId, section.firstDay, section.lastDay])).toEqual([
      ['b1', 1, 30],
      ['b2', 1, 33],
    ]);
    expect(sections.map(({ section }) => section.frame.widthIn)).toEqual([36, 38]);
  });

  test('are at most 42 in wide where no cabinet comes, and stay for seven days', () => {
    const { sections } = designFalsework(formJob(100, 24), 'counter');
    expect(sections).toHaveLength(3);
    for (const { section } of sections) {
      expect(section.frame.widthIn).toBeLessThanOrEqual(42);
      expect(section.lastDay).toBe(9);
    }
  });

  test('are lighter than two people carry, and smaller where less is allowed', () => {
    const job = formJob(80, 24);
    const wide = designFalsework(job, 'counter');
    const small = designFalsework(job, 'counter', { practice: { mostWidthIn: 20 } });
    expect(small.sections).toHaveLength(4);
    for (const { worked } of wide.sections) expect(worked.carried.handlingLb).toBeLessThan(75);
    const never = designFalsework(job, 'counter', {
      practice: { mostWeightLb: 10 },
      choices: { spacingsIn: [24], legSizes: ['2x4'] },
    });
    expect(never.refusals[0]).toContain('Weight that comes out in one go');
  });

  test('keep their lines off an opening', () => {
    // Even thirds of 96 in would cut at 32, through the sink from 24 to 44.
    const { sections, refusals } = designFalsework(formJob(96, 25.5, { cutouts: [sink(34, 12)] }), 'counter');
    expect(refusals).toEqual([]);
    const lefts = sections.map(({ section }) => section.frame.origin.xIn);
    expect(lefts[1]).toBe(21);
  });

  test('of an L with six cabinets cover it once, each on legs of its own', () => {
    const job = galley();
    const design = designFalsework(job, 'serving-counter');
    const plans = design.sections.map(({ section }) => sectionCorners(section.frame));
    const slab = { outer: job.pieces[0]!.corners, holes: [] };
    const covered = plans.reduce(
      (sum, outer) => sum + loopsAreaIn2(intersectRegions({ outer, holes: [] }, slab)),
      0,
    );
    // 25.5 x 60 and 121.5 x 25.5 in.
    expect(covered).toBeCloseTo(25.5 * 60 + 121.5 * 25.5, 3);
    expect(bearingOnEachOther(design.sections)).toEqual([]);
    expect(design.refusals).toEqual([]);
  });

  test('that bear on each other are found out', () => {
    const { sections } = designFalsework(formJob(74, 25.5, { supports: TWO }), 'counter');
    const [first, second] = sections;
    const leaning = { ...first!, legs: [...first!.legs, second!.legs[1]!] };
    expect(bearingOnEachOther([leaning, second!])).toEqual([
      expect.stringMatching(/^A leg of "Counter, under b1" stands under "Counter, under b2"/),
    ]);
    const over = { ...second!, section: { ...second!.section, frame: first!.section.frame }, legs: [] };
    expect(bearingOnEachOther([first!, over])[0]).toContain('lie over the same floor');
  });

  test('leave out what a wall carries: 11 in beside a stud wall, and nothing behind it', () => {
    const { sections } = designFalsework(galley(), 'bar-ledge');
    expect(sections).toHaveLength(3);
    for (const { section } of sections) {
      expect(section.frame.depthIn).toBeCloseTo(11, 9);
      expect(section.wallSides).toContain('back');
    }
    expect(designFalsework(galley(), 'gate-cap').sections).toEqual([]);
  });
});

describe('refused', () => {
  test('is a section over a cabinet that stands already', () => {
    const { refusals, needsAttention } = designFalsework(
      formJob(72, 25.5, { supports: [cabinet('b1', 0, 36, 0), cabinet('b2', 36, 36, 30)] }),
      'counter',
    );
    expect(refusals[0]).toMatch(/^b1 stands under "Counter" before the pour/);
    expect(needsAttention).toBe(true);
  });

  test('is a section that cannot pass a cabinet in place, by front or side', () => {
    // A U: the middle bay of the back, with cabinets in front of it and at both sides that come before.
    const supports = [
      cabinet('left', 0, 24, 20),
      cabinet('middle', 24, 30, 40),
      cabinet('right', 54, 24, 20),
      { ...cabinet('island', 24, 30, 20), corner: { xIn: 24, yIn: -30 } },
    ];
    const open = formJob(78, 25.5, { edges: WALL_BEHIND, supports: supports.slice(0, 3) });
    expect(designFalsework(open, 'counter').refusals).toEqual([]);
    const corners = [
      { xIn: 0, yIn: -30 },
      { xIn: 78, yIn: -30 },
      { xIn: 78, yIn: 25.5 },
      { xIn: 0, yIn: 25.5 },
    ];
    const shut = formJob(78, 25.5, { corners, supports });
    const { refusals } = designFalsework(shut, 'counter');
    expect(refusals.join(' ')).toMatch(/"Counter, under middle" cannot come out past island/);
  });

  const good: Fastening = {
    id: 'own',
    sectionId: 'any',
    from: 'joists',
    into: 'stringers',
    count: 4,
    screw: 'screws',
    reachedFrom: 'below',
    mustComeOut: true,
    throughWhatStays: false,
    intoConcreteIn: 0,
  };

  test.each([
    [{ reachedFrom: 'above' as const }, /heads would be under the concrete/],
    [{ throughWhatStays: true }, /go through the board that stays/],
    [
      { reachedFrom: 'above' as const, mustComeOut: false, throughWhatStays: true },
      /driven down through what stays/,
    ],
    [{ intoConcreteIn: 0.25 }, /would be cast in/],
  ])('is a screw with %j', (change, words) => {
    expect(fasteningRefusals([good])).toEqual([]);
    expect(fasteningRefusals([{ ...good, ...change }])[0]).toMatch(words);
    const job = formJob(36, 24);
    const design = designFalsework(job, 'counter', { ownFastenings: [{ ...good, ...change }] });
    expect(design.refusals[0]).toMatch(words);
    expect(designFalsework(job, 'counter', { ownFastenings: [good] }).refusals).toEqual([]);
  });

  test('is a board of half an inch on which a 3/4 in screw from below would reach the concrete', () => {
    const job = formJob(36, 24, {}, { falsework: { backingBoardIn: 0.125 } });
    expect(designFalsework(job, 'counter').refusals[0]).toMatch(/backing board reach into the concrete/);
  });
});

describe('layers', () => {
  const layersWith = (more: Record<string, unknown>) =>
    designFalsework(formJob(36, 25.5, { supports: [cabinet('b1', 0, 36, 30, more)] }), 'counter');

  test('come to the soffit at 34 in: the cabinet alone, or with the board that stays', () => {
    expect(layersWith({ heightIn: 34 }).sections[0]!.layers).toMatchObject({ isMet: true });
    const { layers } = layersWith({ heightIn: 33.5, backingBoardIn: 0.5 }).sections[0]!;
    expect(layers.isMet).toBe(true);
    expect(layers.layers.map(({ what, stays }) => [what, stays])).toEqual([
      ['backing board', true],
      ['deck panel', false],
    ]);
  });

  test('are refused where they miss it by 1/2 in, unless feet take that up', () => {
    expect(layersWith({ heightIn: 33.5 }).refusals[0]).toMatch(/come 1\/2 in short of the soffit/);
    expect(layersWith({ heightIn: 34.5 }).refusals[0]).toMatch(/1\/2 in above the soffit/);
    const feet = { count: 4, shortestIn: 3, longestIn: 5, ratingLb: 300 };
    expect(layersWith({ heightIn: 33.5, feet }).refusals).toEqual([]);
    expect(layersWith({ heightIn: 33.75, backingBoardIn: 0.25 }).refusals[0]).toMatch(/Use one thickness/);
  });
});
