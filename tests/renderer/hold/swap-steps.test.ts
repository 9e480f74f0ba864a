import { describe, expect, test } from 'vitest';
import type { Check } from '../../../src-core/checks';
import type { Job, SwapStep } from '../../../src-core/job';
import type { CheckedMoment, SwapResult } from '../../../src-core/sequence';
import { standingOn } from '../../../src-core/sequence';
import { offerWords, orderWords, stepRows, wholeFindings } from '../../../src-renderer/hold/step-rows';
import { useSwapOrder as swapOrder } from '../../../src-renderer/hold/use-swap-order';
import { EXAMPLE_JOBS } from '../forms/example-jobs';

const galley = EXAMPLE_JOBS.find(({ id }) => id === 'boathouse-galley')!;
const counter = galley.pieces.find(({ id }) => id === 'serving-counter')!;

const open: CheckedMoment = {
  stepId: 'step-1',
  phase: 'out',
  day: 40,
  standing: [],
  sections: [],
  level: 'holds',
  ratio: 0.82,
  checkId: 'bending-plain',
  words: 'Uncracked on paper.',
  cracking: { ratio: 0.82, face: 'bottom', at: { xIn: 1, yIn: 2 }, words: 'underneath, 46 in from the left' },
  concrete: null,
  sagIn: null,
  checks: [],
  cautions: ['The longest overhang is 24 in.'],
};

function swapOf(worst: CheckedMoment): SwapResult {
  return {
    pieceId: counter.id,
    name: counter.name,
    from: 'job',
    proposal: null,
    offer: null,
    check: { pieceId: counter.id, steps: [], moments: [], worst: null, level: worst.level },
    steps: [
      {
        step: {
          id: 'step-1',
          isDrawn: true,
          day: 40,
          sectionsOut: ['fw-r1'],
          supportsOut: ['leg-r1', 'leg-r2'],
          supportsIn: ['cab-r1'],
          note: '',
        },
        moments: [worst, { ...worst, phase: 'in' }],
        worst,
        heights: [],
      },
    ],
    findings: [
      {
        id: 'sink-passage',
        pieceId: counter.id,
        stepId: 'step-1',
        aboutId: 'cab-r1',
        level: 'change',
        title: 'Bowl',
        words: 'A panel comes off.',
        source: '',
      },
      {
        id: 'protection',
        pieceId: counter.id,
        stepId: null,
        aboutId: null,
        level: 'holds',
        title: 'The new surface',
        words: 'Cover it.',
        source: '',
      },
    ],
    earliest: [],
    level: worst.level,
    needsAttention: false,
  };
}

describe('a step of the swap as a row', () => {
  test('it names what goes and comes, its day and its worst moment', () => {
    const [row] = stepRows(galley, counter, swapOf(open));
    expect(row).toMatchObject({
      title: 'Step 1: day 40, Sat 5 Jun',
      out: 'falsework section Return, outer, return leg 1, return leg 2',
      comesIn: 'R1',
      ratioWords: '0.82, holds',
      where: 'With the bay open it bends most underneath, 46 in from the left; 0.82 of what cracks it.',
    });
  });

  test('a ratio that is not the cracking one says which check it belongs to', () => {
    const sagging: CheckedMoment = {
      ...open,
      ratio: 0.71,
      checkId: 'deflection',
      cracking: { ...open.cracking!, ratio: 0.38 },
      checks: [{ id: 'deflection', title: 'Sag and drop of the edge' } as Check],
    };
    const [row] = stepRows(galley, counter, swapOf(sagging));
    expect(row).toMatchObject({ ratioWords: '0.71, holds', governing: 'Sag and drop of the edge' });
    expect(row!.where).toContain('0.38 of what cracks it');
  });

  test('a moment that does not stand says what fails in place of where it bends', () => {
    const cracked: CheckedMoment = { ...open, level: 'change', ratio: 2.56, words: 'It cracks underneath.' };
    expect(stepRows(galley, counter, swapOf(cracked))[0]).toMatchObject({
      ratioWords: '2.56, needs a change',
      where: 'With the bay open: It cracks underneath.',
    });
  });

  test('a caution of two moments stands once, and a finding that needs attention apart from the rest', () => {
    const [row] = stepRows(galley, counter, swapOf(open));
    expect(row!.cautions).toEqual(['The longest overhang is 24 in.']);
    expect(row!.attention.map(({ id }) => id)).toEqual(['sink-passage']);
    expect(row!.fine).toEqual([]);
    expect(wholeFindings(swapOf(open)).map(({ id }) => id)).toEqual(['protection']);
  });

  test('a proposal says how it was found', () => {
    const proposal = {
      order: [],
      steps: [],
      props: [],
      worstCrackingRatio: 0.8,
      isExact: true,
      tried: 65,
      isBlocked: false,
    };
    expect(orderWords({ ...swapOf(open), from: 'proposal', proposal })).toBe(
      'A proposed order: no order has a milder worst moment (65 steps weighed).',
    );
    expect(orderWords(swapOf(open))).toBe("The job's own order, each step checked.");
    const cracked = { ...proposal, worstCrackingRatio: 1.06 };
    expect(orderWords({ ...swapOf(open), from: 'proposal', proposal: cracked })).toContain(
      'no place for a prop clear of the cabinets',
    );
  });
});

test('an order that holds where the job does not is told by its cabinets and its worst moment', () => {
  const order = {
    order: ['cab-r2', 'cab-r1'],
    steps: [],
    props: [],
    worstCrackingRatio: 0.62,
    isExact: true,
    tried: 65,
    isBlocked: false,
  };
  expect(offerWords(counter, order)).toBe(
    'Another order holds: R2; R1. Its worst moment comes to 0.62 of what cracks the slab.',
  );
});

describe('using an order', () => {
  const step: SwapStep = {
    id: 'new-1',
    day: 44,
    sectionsOut: ['fw-r1'],
    supportsOut: ['leg-r1', 'leg-r2'],
    supportsIn: ['cab-r1'],
    note: '',
  };
  const edited = swapOrder.perform(galley, { pieceId: counter.id, steps: [step], props: [] });
  const standing = (job: Job, day: number) =>
    standingOn(job, day).find(({ pieceId }) => pieceId === counter.id)!;

  test('steps, supports and sections change in one command, so that day 44 stands as the step says', () => {
    if (!edited.ok) throw new Error(edited.problems[0]?.sentence);
    expect(edited.title).toBe('Use the swap order');
    expect(edited.job.swap.steps).toEqual([step]);
    expect(standing(edited.job, 43).supports).toContain('leg-r1');
    expect(standing(edited.job, 43).supports).not.toContain('cab-r1');
    expect(standing(edited.job, 44).supports).toContain('cab-r1');
    expect(standing(edited.job, 45).supports).not.toContain('leg-r1');
    expect(standing(edited.job, 45).sections).not.toContain('fw-r1');
  });

  test('a prop that the order needs comes into the job with it and stands from its step to the one that takes it out', () => {
    const leg = counter.supports.find(({ kind }) => kind === 'leg')!;
    const set = { ...step, id: 'new-0', day: 43, sectionsOut: [], supportsOut: [], supportsIn: ['prop-1'] };
    const last = { ...step, supportsOut: [...step.supportsOut, 'prop-1'] };
    const propped = swapOrder.perform(galley, {
      pieceId: counter.id,
      steps: [set, last],
      props: [{ ...leg, id: 'prop-1', name: 'prop' }],
    });
    if (!propped.ok) throw new Error(propped.problems[0]?.sentence);
    expect([42, 43, 44, 45].map((day) => standing(propped.job, day).supports.includes('prop-1'))).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });

  test('a step that names no support of the job is refused', () => {
    const wrong = swapOrder.perform(galley, {
      pieceId: counter.id,
      steps: [{ ...step, supportsIn: ['nobody'] }],
      props: [],
    });
    expect(wrong.ok).toBe(false);
  });
});
