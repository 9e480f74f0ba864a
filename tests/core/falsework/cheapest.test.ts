import { describe, expect, test } from 'vitest';
import type { Arrangement, FormCheck } from '../../../src-core/falsework';
import {
  checksOf,
  DEFAULT_PRACTICE,
  designFalsework,
  formStack,
  joistCount,
  loadSection,
  passes,
  planSections,
  priceArrangement,
  pricesOf,
} from '../../../src-core/falsework';
import type { Job } from '../../../src-core/job';
import { formJob, sink, WALL_BEHIND } from './form-jobs';

/** Fewer than the design tries by itself, so that all can be worked. */
const CHOICES = { spacingsIn: [24, 16, 12], legsALine: [2, 3] };
type Legs = readonly ('2x4' | '4x4')[];

/** Every arrangement by plain loops of this test's own: both ways, two joist sizes, three spacings, and so on. */
function every(
  { widthIn, depthIn }: { readonly widthIn: number; readonly depthIn: number },
  walls: readonly string[],
  legs: Legs,
): Arrangement[] {
  const all: Arrangement[] = [];
  for (const joistRun of ['along', 'back'] as const)
    for (const spacingIn of [12, 16, 24])
      for (const joistSize of ['2x6', '2x4'] as const)
        for (const lineCount of [3, 2] as const)
          for (const lineEndIn of [6, 2])
            for (const legSize of legs)
              for (const ledgerSide of ['back', 'left', 'right', null] as const) {
                if (ledgerSide !== null && !walls.includes(ledgerSide)) continue;
                if (ledgerSide !== null && (joistRun === 'back') !== (ledgerSide === 'back')) continue;
                const acrossIn = joistRun === 'back' ? widthIn : depthIn;
                const base = {
                  joistRun,
                  joistSize,
                  joistCount: joistCount(acrossIn, spacingIn, DEFAULT_PRACTICE.seamIn),
                  lineCount,
                  lineEndIn,
                  legSize,
                  ledgerSide,
                };
                all.push({ ...base, beamSize: null, legsALine: 1, legEndIn: 0 });
                for (const beamSize of ['2x6', '2x4'] as const)
                  for (const legsALine of [3, 2])
                    for (const legEndIn of [6, 2]) all.push({ ...base, beamSize, legsALine, legEndIn });
              }
  return all;
}

function allPass(checks: Iterable<FormCheck>): boolean {
  for (const check of checks) if (!passes(check)) return false;
  return true;
}

/** Price of the cheapest arrangement that passes every check, all of them worked. */
function bruteForce(job: Job, legs: Legs): { price: number; passing: number } {
  const piece = job.pieces[0]!;
  const [section] = planSections(job, piece, DEFAULT_PRACTICE).sections;
  const context = { job, piece, stack: formStack(job, piece), practice: DEFAULT_PRACTICE };
  const prices = pricesOf(job);
  let price = Number.POSITIVE_INFINITY;
  let passing = 0;
  for (const arrangement of every(section!.frame, section!.wallSides, legs)) {
    const offer = priceArrangement(context, section!, arrangement, prices);
    const loaded = offer === null ? null : loadSection(context, offer.fitted);
    if (offer === null || loaded === null || !allPass(checksOf(context, loaded))) continue;
    passing++;
    price = Math.min(price, offer.price);
  }
  return { price, passing };
}

const JOBS: readonly (readonly [string, Job])[] = [
  ['a 36 x 25-1/2 in counter on a wall', formJob(36, 25.5, { edges: WALL_BEHIND })],
  ['an island 40 x 30 in', formJob(40, 30, { thicknessIn: 2.5 })],
  [
    'a counter 36 x 25-1/2 in with a sink',
    formJob(36, 25.5, { edges: WALL_BEHIND, cutouts: [sink(18, 12)] }),
  ],
  [
    'a hearth 40 x 28 in, 6 in thick, in Douglas fir on 24/16 panel',
    formJob(
      40,
      28,
      { thicknessIn: 6, topElevationIn: 24 },
      { falsework: { species: 'df-l', panel: 'span-24-16' } },
    ),
  ],
  [
    'a bar 42 x 16 in and 60 in high where a 2x6 is cheap',
    formJob(
      42,
      16,
      { topElevationIn: 60 },
      {
        stock: [
          {
            id: 'wide',
            name: 'wide',
            kind: 'lumber',
            lengthIn: 96,
            widthIn: 5.5,
            thicknessIn: 1.5,
            price: 1,
          },
        ],
      },
    ),
  ],
];

describe('the arrangement of a section', () => {
  test.each(JOBS)('is the cheapest of all that pass under %s', (_, job) => {
    // Thick legs only matter where they are long.
    const legs: Legs = job.pieces[0]!.topElevationIn > 48 ? ['4x4', '2x4'] : ['2x4'];
    const design = designFalsework(job, 'counter', { choices: { ...CHOICES, legSizes: legs } });
    const brute = bruteForce(job, legs);
    expect(design.refusals).toEqual([]);
    expect(design.sections).toHaveLength(1);
    expect(brute.passing).toBeGreaterThan(5);
    expect(design.sections[0]!.price).toBeCloseTo(brute.price, 9);
    expect(design.sections[0]!.checks.every(passes)).toBe(true);
  });

  test('is refused with the check that stops it where no panel carries the slab', () => {
    const job = formJob(
      36,
      24,
      { thicknessIn: 24, topElevationIn: 60 },
      { falsework: { panel: 'span-24-16', wetDensityPcf: 200, livePsf: 2000 } },
    );
    const { refusals, level, sections } = designFalsework(job, 'counter');
    expect(sections).toEqual([]);
    expect(refusals[0]).toMatch(/none of \d+ arrangements passes\. Most stop at "/);
    expect(level).toBe('change');
  });

  test('is refused under a slab 5 in above the floor, which leaves no room for legs', () => {
    const { refusals } = designFalsework(formJob(36, 24, { topElevationIn: 7 }), 'counter');
    expect(refusals[0]).toContain('too little height');
  });
});

describe('prices', () => {
  test('come from the job where it has the size, and else are shipped and called invented', () => {
    const job = formJob(
      36,
      24,
      {},
      {
        stock: [
          {
            id: 'stud',
            name: 'stud',
            kind: 'lumber',
            lengthIn: 96,
            widthIn: 3.5,
            thicknessIn: 1.5,
            price: 4,
          },
          {
            id: 'sheet',
            name: 'sheet',
            kind: 'sheet',
            lengthIn: 96,
            widthIn: 48,
            thicknessIn: 0.46875,
            price: 32,
          },
        ],
      },
    );
    const { boardFoot, panelFt2, areInvented } = pricesOf(job);
    // 2 x 4 x 8 ft is 5-1/3 board feet; a sheet is 32 ft2.
    expect(boardFoot['2x4']).toEqual({ price: 0.75, from: 'own', stockId: 'stud' });
    expect(panelFt2).toEqual({ price: 1, from: 'own', stockId: 'sheet' });
    expect(boardFoot['2x6'].from).toBe('invented');
    expect(areInvented).toBe(true);
  });
});
