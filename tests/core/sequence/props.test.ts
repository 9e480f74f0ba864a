import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src-core/job';
import { readJob } from '../../../src-core/job';
import { checkSwap, proposeSwap, swapResult, swapStates, withSwapSteps } from '../../../src-core/sequence';
import { propPlaces } from '../../../src-core/sequence/prop-places';
import { rectangle } from '../../support/pieces';
import { counterJob, lateCabinet, prop, SWAP_DAY, sectionUnder, wallLedger } from './swap-jobs';

const COARSE_IN = 3;
const BAY_IN = 36;

/** A counter 1-1/2 in thick on two cabinets, with so much slab beyond them at either end. */
function endBays(endIn: number): Job {
  const lengthIn = 2 * BAY_IN + 2 * endIn;
  const bays = [endIn, endIn + BAY_IN];
  return counterJob(
    {
      corners: rectangle(lengthIn, 25.5),
      thicknessIn: 1.5,
      supports: [
        ...bays.map((xIn, i) => lateCabinet(`cab-${i + 1}`, { xIn, yIn: 1.5 }, BAY_IN)),
        ...bays.flatMap((xIn, i) => [prop(`leg-${i + 1}a`, xIn + 5, 4), prop(`leg-${i + 1}b`, xIn + 31, 4)]),
        wallLedger('ledger', [0, 24.75], [lengthIn, 24.75]),
      ],
    },
    { falsework: { sections: [sectionUnder('deck-1', [0, 0, endIn + BAY_IN, 25.5])] } },
  );
}

describe('a counter whose end bays crack in every order', () => {
  const job = endBays(1.5);
  const found = proposeSwap(job, 'counter', { meshSizeIn: COARSE_IN });
  if (!found.ok) throw new Error(found.sentence);

  test('has a prop proposed in the 1-1/2 in beyond the cabinets at each end, and is then whole throughout', () => {
    expect(found.props).toHaveLength(2);
    const centres = found.props.map(({ support }) => support.kind === 'leg' && support.centre.xIn);
    expect([...centres].sort()).toEqual([0.75, 74.25]);
    expect(found.worstCrackingRatio).toBeLessThanOrEqual(1);
    expect(found.check.level).toBe('holds');
    expect(found.props[0]!.words).toMatch(/Without it the mildest order comes to 1\.\d\d of what cracks/);
  });

  test('sets them first, a step of its own, and takes them out last with the ledger', () => {
    const ids = found.props.map(({ id }) => id);
    expect(ids).toEqual(['prop-1', 'prop-2']);
    expect(found.steps[0]).toMatchObject({ supportsIn: ids, supportsOut: [], sectionsOut: [] });
    expect(found.steps.at(-1)!.supportsOut).toEqual(['ledger', ...ids]);
    const [before, set, open] = found.check.moments;
    expect(before!.standing).not.toContain('prop-1');
    expect(set).toMatchObject({ phase: 'in', standing: expect.arrayContaining(ids) });
    expect(open).toMatchObject({ phase: 'out', standing: expect.arrayContaining(ids) });
  });

  const propped = withSwapSteps(
    job,
    'counter',
    found.steps,
    found.props.map(({ support }) => support),
  );

  test('put into the job they are legs with their days, and its own steps give the same moments and ratios', () => {
    expect(readJob(JSON.parse(JSON.stringify(propped))).ok).toBe(true);
    const legs = propped.pieces[0]!.supports.filter(({ id }) => id.startsWith('prop-'));
    expect(legs).toEqual(found.props.map(({ support }) => support));
    expect(legs.map(({ firstDay, lastDay }) => [firstDay, lastDay])).toEqual([
      [SWAP_DAY, SWAP_DAY],
      [SWAP_DAY, SWAP_DAY],
    ]);
    expect(swapStates(propped, 'counter').map(({ standing }) => standing)).toEqual(
      found.check.moments.map(({ standing }) => standing),
    );
    const { moments } = checkSwap(propped, 'counter', { meshSizeIn: COARSE_IN });
    moments.forEach(({ cracking }, i) => {
      expect(Math.abs(cracking!.ratio / found.check.moments[i]!.cracking!.ratio - 1)).toBeLessThan(1e-9);
    });
  });

  test('used twice, no prop comes in twice', () => {
    const again = withSwapSteps(
      propped,
      'counter',
      found.steps,
      found.props.map(({ support }) => support),
    );
    expect(again).toEqual(propped);
  });

  test('where the section over a prop goes, says that the deck is notched round it', () => {
    const result = swapResult(job, job.pieces[0]!, { meshSizeIn: COARSE_IN });
    if ('sentence' in result) throw new Error(result.sentence);
    const left = result.findings.filter(({ id }) => id === 'prop-left-behind');
    expect(left[0]!.words).toContain('the deck notched round it');
    expect(result.findings.filter(({ id }) => id === 'way-in').every(({ level }) => level === 'holds')).toBe(
      true,
    );
    expect(result.steps[0]!.heights.map(({ supportId }) => supportId)).toEqual(['prop-1', 'prop-2']);
  });

  test('with steps of its own that crack it, is offered the order and props that do not', () => {
    const steps = found.steps
      .slice(1)
      .map((step) => ({ ...step, supportsOut: step.supportsOut.filter((id) => !id.startsWith('prop-')) }));
    const drawn = withSwapSteps(job, 'counter', steps);
    const result = swapResult(drawn, drawn.pieces[0]!, { meshSizeIn: COARSE_IN });
    if ('sentence' in result) throw new Error(result.sentence);
    expect(result).toMatchObject({ from: 'job', level: 'change', proposal: null });
    expect(result.offer!.props.map(({ id }) => id)).toEqual(['prop-1', 'prop-2']);
    expect(result.offer!.worstCrackingRatio).toBeLessThanOrEqual(1);
    const whole = swapResult(propped, propped.pieces[0]!, { meshSizeIn: COARSE_IN });
    expect(whole).toMatchObject({ from: 'job', offer: null, check: { level: 'holds' } });
  });
});

test('with its cabinets flush with its ends there is no room for a prop, and none is proposed', () => {
  const job = endBays(0);
  expect(propPlaces(job.pieces[0]!, [{ xIn: 0, yIn: 0 }])).toEqual([]);
  const found = proposeSwap(job, 'counter', { meshSizeIn: COARSE_IN });
  if (!found.ok) throw new Error(found.sentence);
  expect(found.props).toEqual([]);
  expect(found.worstCrackingRatio).toBeGreaterThan(1);
});

describe('places for a prop', () => {
  const [piece] = endBays(4).pieces as [Job['pieces'][number]];
  const places = propPlaces(piece, [{ xIn: 80, yIn: 0 }]);

  test('are flush with a free edge, whole under the slab, beside the cabinets and the floor before them', () => {
    expect(places.length).toBeGreaterThan(3);
    for (const { centre } of places) {
      const beyondIn = Math.max(4 - centre.xIn, centre.xIn - (4 + 2 * BAY_IN));
      expect(beyondIn).toBeGreaterThanOrEqual(0.75);
      expect(centre.yIn).toBeGreaterThanOrEqual(0.75);
      expect(centre.yIn).toBeLessThanOrEqual(24.75);
    }
  });

  test('come nearest first', () => {
    const away = places.map(({ centre }) => Math.hypot(centre.xIn - 80, centre.yIn));
    expect(away).toEqual([...away].sort((a, b) => a - b));
  });
});
