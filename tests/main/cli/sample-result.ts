import type { Check } from '../../../src-core/checks';
import type { JobResult, PieceResult } from '../../../src-core/verdict';
import { formula } from '../../../src-core/workings';

const area = formula<{ b: number; d: number }>({
  symbol: 'A',
  label: 'area of the top',
  formula: 'b * d',
  units: { b: 'in', d: 'in' },
  unit: 'in2',
  source: 'plane geometry',
  fromMemory: true,
  compute: ({ b, d }) => b * d,
});

export function sampleCheck(change: Partial<Check> = {}): Check {
  return {
    id: 'bending-plain',
    title: 'Bending, on concrete alone',
    pieceId: 'counter',
    where: { kind: 'point', at: { xIn: 12.5, yIn: 4 } },
    demand: { value: 106.1, unit: 'lbf-in/in' },
    capacity: { value: 132.6, unit: 'lbf-in/in' },
    ratio: 0.8,
    level: 'holds',
    words: 'It bends most underneath.',
    needs: [],
    workings: [area({ b: 96, d: 25.5 }).line],
    cautions: ['Put steel in all the same.'],
    ...change,
  };
}

export function samplePiece(change: Partial<PieceResult> = {}): PieceResult {
  return {
    id: 'counter',
    name: 'Straight counter',
    copies: 1,
    areaFt2: 17,
    weightLb: 308.125,
    centroid: { xIn: 48, yIn: 12.75 },
    thicknessIn: 1.5,
    verdict: { level: 'holds', words: 'Holds', why: 'It bends most underneath.', flags: [] },
    checks: [sampleCheck()],
    reactions: [
      {
        supportId: 'b1',
        words: 'left side',
        bound: 'low',
        deadLbf: 77.2,
        mostLbf: 204.4,
        leastLbf: 60.1,
        tieLbf: 0,
      },
    ],
    governing: {
      sagging: { xIn: 12.5, yIn: 4 },
      hogging: { xIn: 24, yIn: 4 },
      loadAt: { xIn: 12.5, yIn: 4 },
    },
    mesh: {
      nodes: 2900,
      triangles: 5600,
      sizeIn: 1,
      contacts: 96,
      loadCases: 100,
      factorisations: 1,
      imbalance: 2e-12,
    },
    worstOnTheWay: { day: 9, level: 'holds', ratio: 0.5, words: 'It bends most underneath.' },
    changes: [],
    triedInVain: [],
    remarks: [],
    ...change,
  };
}

/** One piece on each rung, a site finding, and a day on the way that fails. */
export function sampleResult(change: Partial<JobResult> = {}): JobResult {
  return {
    jobId: 'sample',
    name: 'Sample job',
    day: null,
    verdict: { level: 'engineer', words: '2 of 4 pieces hold; Hearth needs an engineer.' },
    pieces: [
      samplePiece(),
      samplePiece({
        id: 'bench',
        name: 'Fish bench',
        copies: 2,
        verdict: {
          level: 'steel',
          words: 'Holds with steel',
          why: 'It will want to crack.',
          flags: ['near-limit'],
        },
        checks: [sampleCheck({ level: 'steel', ratio: 1.004 })],
        worstOnTheWay: { day: 21, level: 'change', ratio: 1.31, words: 'It cracks on its props.' },
      }),
      samplePiece({
        id: 'ledge',
        name: 'Bar ledge',
        verdict: { level: 'change', words: 'Needs a tie', why: 'It turns over.', flags: ['tips'] },
        checks: [
          sampleCheck({ id: 'tipping', title: 'Tipping', level: 'change', ratio: 4.2, needs: ['tie'] }),
        ],
        changes: [sampleChange('tie', 'Tie it: 4 ties at 24 in'), sampleChange('corbel', 'Add 3 brackets')],
      }),
      samplePiece({
        id: 'hearth',
        name: 'Hearth',
        verdict: { level: 'engineer', words: 'Needs an engineer', why: 'Its span is over 8 ft.', flags: [] },
        checks: [sampleCheck({ level: 'engineer', ratio: 1.2, cautions: ['It is heavy: three people.'] })],
        worstOnTheWay: null,
      }),
    ],
    site: [
      {
        id: 'deck',
        title: 'Deck load',
        level: 'change',
        words: 'The deck carries more than it may.',
        demand: { value: 61, unit: 'psf' },
        capacity: { value: 50, unit: 'psf' },
        workings: [],
        source: 'local code',
        cautions: ['Ask for the drawings.'],
      },
    ],
    needsAttention: true,
    ...change,
  };
}

function sampleChange(need: 'tie' | 'corbel', title: string): PieceResult['changes'][number] {
  return {
    id: `ledge-${need}`,
    pieceId: 'ledge',
    kinds: [need],
    needs: [need],
    title,
    patch: [],
    cost: { weightLb: 6, concreteIn3: 0, parts: 4, partsWords: [title] },
    worstRatio: 0.71,
    worstCheckId: 'bending-plain',
    level: 'holds',
  };
}
