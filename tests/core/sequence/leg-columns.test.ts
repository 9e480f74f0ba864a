import { expect, test } from 'vitest';
import type { JobDraft } from '../../../src-core/job';
import { checkSwap } from '../../../src-core/sequence';
import { legColumns } from '../../../src-core/sequence/leg-columns';
import { rectangle } from '../../support/pieces';
import { counterJob, lateCabinet, prop, wallLedger } from './swap-jobs';

/** The front legs of one bay, 2x4 with the wide side along the edge, under a counter 2 in thick whose top is `topElevationIn` high. */
function oneBay(topElevationIn: number, more: Partial<JobDraft> = {}) {
  const job = counterJob(
    {
      corners: rectangle(36, 25.5),
      topElevationIn,
      supports: [
        lateCabinet('cab', { xIn: 0, yIn: 1.5 }, 36),
        prop('left', 4, 4, { widthIn: 3.5, depthIn: 1.5 }),
        prop('right', 32, 4, { widthIn: 3.5, depthIn: 1.5 }),
        wallLedger('ledger', [0, 24.75], [36, 24.75]),
      ],
    },
    more,
  );
  const check = checkSwap(job, 'counter', { meshSizeIn: 3 });
  return { check, findings: legColumns(job, job.pieces[0]!, check) };
}

/** Capacity of a pinned 2x4 of No. 2 spruce-pine-fir, wet, loaded for two months, by hand. NDS 2018 3.7.1, Supplement Table 4A (from memory). */
function byHandLbf(lengthIn: number): number {
  const crushing = 1150 * 1.15 * 1.15 * 0.8;
  const buckling = (0.822 * 510_000 * 0.9) / (lengthIn / 1.5) ** 2;
  const a = (1 + buckling / crushing) / 1.6;
  return 1.5 * 3.5 * crushing * (a - Math.sqrt(a ** 2 - buckling / crushing / 0.8));
}

test('a 2x4 leg 110 in long uses of its column capacity what the load of the worst moment asks', () => {
  const { check, findings } = oneBay(112);
  const pushes = check.moments.flatMap(({ checks }) =>
    checks.flatMap(({ id, where, demand }) =>
      id === 'support-load' && where.kind === 'support' && ['left', 'right'].includes(where.supportId)
        ? [demand.value]
        : [],
    ),
  );
  const share = Math.max(...pushes) / byHandLbf(110);
  expect(findings).toHaveLength(1);
  expect(findings[0]).toMatchObject({ level: 'holds' });
  expect(findings[0]!.words).toContain(`${share.toFixed(2)} of what a 2x4 110 in long may carry`);
});

test('a 2x4 leg longer than 75 times its thickness is too slender (NDS 2018 3.7.1.4), and asks for a brace', () => {
  expect(oneBay(112).findings[0]).toMatchObject({ level: 'holds' });
  const [slender] = oneBay(115).findings;
  expect(slender).toMatchObject({ level: 'change' });
  expect(slender!.words).toMatch(/too slender for a column: brace it/);
});

test('a leg of no size of lumber, and one that stays, are not taken for timber', () => {
  const job = counterJob({
    corners: rectangle(36, 25.5),
    supports: [
      lateCabinet('cab', { xIn: 0, yIn: 1.5 }, 36),
      prop('tube', 4, 4, { widthIn: 2, depthIn: 2 }),
      prop('post', 32, 4, { widthIn: 3.5, depthIn: 3.5, lastDay: null }),
      wallLedger('ledger', [0, 24.75], [36, 24.75]),
    ],
  });
  expect(legColumns(job, job.pieces[0]!, checkSwap(job, 'counter', { meshSizeIn: 3 }))).toEqual([]);
});
