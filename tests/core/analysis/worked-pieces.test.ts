import { describe, expect, test } from 'vitest';
import type { Bound } from '../../../src-core/analysis';
import { caseField, preparePiece } from '../../../src-core/analysis';
import { averageAt } from '../../../src-core/analysis/governing';
import type { Job } from '../../../src-core/job';
import { analyse, CAP_E4, COUNTER_E2, HEARTH_E3, LEDGE_E1 } from '../../support/pieces';

/** Governing moment of a piece averaged over 2h, as the independent plate solution gives it. */
function averagedOver2h(job: Job, bound: Bound, sense: 'sagging' | 'hogging'): number {
  const governing = analyse(job).elastic[bound][sense];
  const result = preparePiece(job, job.pieces[0]!, { day: null, meshSizeIn: null });
  if (!result.ok) throw new Error(result.cannot.sentence);
  const { prepared } = result;
  const index = prepared.labels.findIndex(({ id }) => id === governing.caseId);
  const field = caseField(prepared, bound, index);
  const widthIn = 2 * job.pieces[0]!.thicknessIn;
  const average = averageAt(prepared, field.moments, governing.node, governing.bendingRad, widthIn);
  return Math.abs(average!.momentLbfInPerIn);
}

describe('pieces with moments from an independent plate solution, averaged over 2h (basis, E rows)', () => {
  test.each([
    {
      says: 'E2 counter on panel lines at 24 in sags 102 / 93',
      job: COUNTER_E2,
      sense: 'sagging',
      low: 102,
      high: 93,
    },
    { says: 'E3 hearth on two piers sags 137 / 128', job: HEARTH_E3, sense: 'sagging', low: 137, high: 128 },
    { says: 'E4 cap on a pier hogs 40 / 36', job: CAP_E4, sense: 'hogging', low: 40, high: 36 },
  ] as const)('$says lbf-in/in at low / high stiffness, within a twentieth', ({ job, sense, low, high }) => {
    expect(Math.abs(averagedOver2h(job(), 'low', sense) / low - 1)).toBeLessThan(0.05);
    expect(Math.abs(averagedOver2h(job(), 'high', sense) / high - 1)).toBeLessThan(0.05);
  });

  test('E1: a loose ledge 11 in out on a 5-1/2 in wall turns over under its own weight', () => {
    const analysis = analyse(LEDGE_E1(), { meshSizeIn: 2 });
    expect(analysis.stability.kind).toBe('tips-alone');
    // centre of gravity 8.75 in from the front edge, outer face of the wall at 11 in: 2.25 in beyond it
    expect(analysis.stability.weightArmIn).toBeCloseTo(-2.25, 6);
    // 96 x 17.5 x 1.5 in3 at 145 pcf
    expect(analysis.weight.slabLb).toBeCloseTo((96 * 17.5 * 1.5 * 145) / 1728, 6);
    expect(analysis.elastic.low.cases[0]?.asIfHeld).toBe(true);
  });
});

describe('equilibrium of every load case', () => {
  test.each([
    { id: 'E1', job: LEDGE_E1 },
    { id: 'E2', job: COUNTER_E2 },
    { id: 'E3', job: HEARTH_E3 },
    { id: 'E4', job: CAP_E4 },
  ])('$id: reactions sum to weight plus load to 1e-6', ({ job }) => {
    const { elastic } = analyse(job(), { meshSizeIn: 2 });
    for (const state of [elastic.low, elastic.high])
      for (const one of state.cases) {
        expect(one.imbalance).toBeLessThan(1e-6);
        const pushed = one.reactions.reduce((sum, { pushLbf, tieLbf }) => sum + pushLbf - tieLbf, 0);
        expect(Math.abs(pushed / one.totalLbf - 1)).toBeLessThan(1e-6);
      }
  });
});
