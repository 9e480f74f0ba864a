import { describe, expect, test } from 'vitest';
import type { LaySite } from '../../../src-core/boards';
import { bestWay, boardStock, layBoards, layCandidates, laySeams, seamRules } from '../../../src-core/boards';
import type { Job } from '../../../src-core/job';
import { wallAlongX } from '../../support/pieces';
import { boardsOf, COUNTER, ELL, regionOf, slabOf } from './jobs';

function siteOf(job: Job): LaySite {
  const region = regionOf(job);
  return {
    region,
    rules: seamRules(job.pieces[0]!, region),
    board: boardStock(job),
    kerfIn: job.forms.kerfIn,
  };
}

const TABLE = [
  [0, 0],
  [90, 0],
  [90, 70],
  [0, 70],
] as const;
const SINK = {
  id: 'sink',
  purpose: 'sink',
  shape: { kind: 'rectangle', centre: { xIn: 60, yIn: 12 }, widthIn: 30, depthIn: 16, radiusIn: 2 },
} as const;

describe('the best way of laying', () => {
  test.each([
    ['a counter', slabOf(COUNTER)],
    ['a counter round a sink', slabOf(COUNTER, { cutouts: [SINK] })],
    ['an L', slabOf(ELL, {}, { forms: { kerfIn: 0.125 } })],
    ['a table', slabOf(TABLE)],
    [
      'a counter out of square',
      slabOf([
        [0, 0],
        [80, 60],
        [65, 80],
        [-15, 20],
      ]),
    ],
  ])(
    'is the one with the fewest boards and then the shortest seams when every candidate is worked: %s',
    (_, job) => {
      const site = siteOf(job);
      const candidates = layCandidates(site.region, site.rules, site.board);
      const all = candidates.map((candidate) => layBoards(laySeams(candidate, site), site));
      const leastFaults = Math.min(...all.map(({ faults }) => faults));
      const sound = all.filter(({ faults }) => faults === leastFaults);
      const leastBoards = Math.min(...sound.map(({ cutting }) => cutting.boards.length));
      const fewest = sound.filter(({ cutting }) => cutting.boards.length === leastBoards);
      const shortestIn = Math.min(...fewest.map(({ seamIn }) => seamIn));
      const shortest = fewest.filter(({ seamIn }) => seamIn < shortestIn + 1e-6);
      const best = bestWay(candidates, site);
      expect(best.faults).toBe(leastFaults);
      expect(best.cutting.boards.length).toBe(leastBoards);
      expect(best.seamIn).toBeCloseTo(shortestIn, 6);
      expect(best.cutIn).toBeCloseTo(Math.min(...shortest.map(({ cutIn }) => cutIn)), 6);
    },
  );

  test('is a piece of two ways where one board holds it all', () => {
    const site = siteOf(
      slabOf([
        [0, 0],
        [30, 0],
        [30, 20],
        [0, 20],
      ]),
    );
    expect(layCandidates(site.region, site.rules, site.board)).toHaveLength(2);
    expect(
      boardsOf(
        slabOf([
          [0, 0],
          [30, 0],
          [30, 20],
          [0, 20],
        ]),
      ).seams,
    ).toEqual([]);
  });
});

describe('seams out of place', () => {
  test('a ledge 40 in deep that overhangs its wall by 30 in has no seam along it in those 30 in', () => {
    const ledge = [
      [0, 0],
      [60, 0],
      [60, 40],
      [0, 40],
    ] as const;
    const wall = wallAlongX('wall', 0, 60, 33, 6);
    const job = slabOf(ledge, { use: 'bar-ledge', supports: [wall] });
    const rules = seamRules(job.pieces[0]!, regionOf(job));
    expect(rules.strips[0]).toMatchObject({ why: 'overhang', depthIn: 30 });
    // The back overhangs by 4 in.
    expect(rules.strips[2]).toMatchObject({ why: 'overhang', depthIn: 4 });
    const boards = boardsOf(job);
    expect(boards.findings.every(({ level }) => level === 'ok')).toBe(true);
    for (const { a, b } of boards.seams) {
      const isAlong = Math.abs(a.yIn - b.yIn) < 1e-9;
      if (isAlong) expect(a.yIn).toBeGreaterThanOrEqual(30 - 1e-6);
    }
  });

  test('support that is taken out again counts for no overhang', () => {
    const job = slabOf(COUNTER, { supports: [{ ...wallAlongX('wall', 0, 96, 12, 6), lastDay: 20 }] });
    const rules = seamRules(job.pieces[0]!, regionOf(job));
    expect(rules.strips.every(({ why, depthIn }) => why === 'edge' && depthIn === 3)).toBe(true);
  });

  test('are said where no way of laying avoids them: openings every 5 in and boards of 12 x 12 in', () => {
    const cutouts = Array.from({ length: 9 }, (_, i) => ({
      id: `slot-${i}`,
      purpose: 'other' as const,
      shape: {
        kind: 'rectangle' as const,
        centre: { xIn: 4 + 5 * i, yIn: 6 },
        widthIn: 3,
        depthIn: 9,
      },
    }));
    const small = { id: 'small', name: 'Small board', kind: 'board', lengthIn: 12, widthIn: 12 } as const;
    const boards = boardsOf(
      slabOf(
        [
          [0, 0],
          [48, 0],
          [48, 12],
          [0, 12],
        ],
        { cutouts },
        { stock: [small] },
      ),
    );
    const corner = boards.findings.find(({ about }) => about === 'corner')!;
    expect(corner.level).toBe('attention');
    expect(boards.seams.some(({ faults }) => faults.includes('corner'))).toBe(true);
  });
});
