import { describe, expect, test } from 'vitest';
import { checkPiece, stands, worstLevel } from '../../../src-core/checks';
import type { ChartBasis, ChartCase, ChartEntry } from '../../../src-core/overhang-chart';
import { DEFAULT_CHART_BASIS } from '../../../src-core/overhang-chart';
import { chartEntry } from '../../../src-core/overhang-chart/entry';
import { ledgeJob } from '../../../src-core/overhang-chart/ledge';
import { chartSteel } from '../../../src-core/overhang-chart/steel';

/** The default ledge, both searched and settled on meshes that are quick. */
const QUICK: ChartBasis = { ...DEFAULT_CHART_BASIS, coarseMeshIn: 3, fineMeshIn: 2.5, strengthPsi: 4000 };
const SHORT: ChartBasis = { ...QUICK, lengthIn: 48 };
const BLOCK: ChartBasis = { ...SHORT, root: { ...SHORT.root, build: 'block' } };
/** The search rests within 1 % of the limit, and a ratio near its limit may change slowly. */
const SLACK_IN = 0.25;

function entryOf(
  basis: ChartBasis,
  asked: Partial<ChartCase> & { readonly thicknessIn: number },
  plain: ChartEntry | null = null,
): ChartEntry {
  const entry = chartEntry(basis, { withSteel: false, spacingIn: null, ...asked }, plain, {});
  if (entry === null) throw new Error('not cancelled, yet no entry');
  return entry;
}

/** The whole load check of the ledge of an entry, on the mesh of the answer. */
function levelAt(basis: ChartBasis, asked: ChartEntry, overhangIn: number) {
  const { thicknessIn, spacingIn, withSteel } = asked;
  const steel = withSteel ? chartSteel(basis.steel, thicknessIn, basis.limits.coverUnderTopIn) : null;
  const layers = steel?.ok === true ? steel.layers : [];
  const job = ledgeJob(basis, { thicknessIn, spacingIn, overhangIn, steel: layers });
  const options = { day: null, meshSizeIn: basis.fineMeshIn };
  return worstLevel(checkPiece(job, job.pieces[0]!, options, basis.limits).checks);
}

describe('an entry of the overhang chart', () => {
  test('is a ledge that the load check passes, and the one named beside it fails', () => {
    const entry = entryOf(BLOCK, { thicknessIn: 1.5 });
    expect(entry.kind).toBe('longest');
    expect(levelAt(BLOCK, entry, entry.overhangIn!)).toBe('holds');
    expect(entry.governs!.ratio).toBeGreaterThan(0.9);
    expect(entry.governs!.ratio).toBeLessThanOrEqual(1);
    if (entry.failsAtIn !== null) {
      expect(entry.failsAtIn).toBeGreaterThan(entry.overhangIn!);
      expect(stands(levelAt(BLOCK, entry, entry.failsAtIn))).toBe(false);
    }
    expect(levelAt(BLOCK, entry, entry.overhangIn! + 1)).toBe('change');
  });

  test('lies on an eighth of an inch, and tells what its ties must be rated for', () => {
    const { overhangIn, tieLbf } = entryOf(BLOCK, { thicknessIn: 1 });
    expect((overhangIn! * 8) % 1).toBe(0);
    expect(tieLbf).toBeGreaterThan(0);
  });

  test('ends at 16 in without brackets and at 24 in with them, where an engineer takes over', () => {
    const bare = entryOf(SHORT, { thicknessIn: 4 });
    expect([bare.kind, bare.overhangIn]).toEqual(['capped', 16]);
    const bracketed = entryOf(SHORT, { thicknessIn: 2, spacingIn: 12 });
    expect([bracketed.kind, bracketed.overhangIn]).toEqual(['capped', 24]);
    expect(bare.words).toContain('engineer');
  });

  test('is none where even the shortest fails: 1 in thick over arms 32 in apart', () => {
    const entry = entryOf(QUICK, { thicknessIn: 1, spacingIn: 32 });
    expect([entry.kind, entry.overhangIn, entry.governs?.checkId]).toEqual(['none', null, 'bending-plain']);
    expect(entry.governs!.ratio).toBeGreaterThan(1);
  });

  test('finds no room for a mesh of two wires and its cover in 1 in', () => {
    expect(entryOf(SHORT, { thicknessIn: 1, withSteel: true }).kind).toBe('no-room');
  });

  test('leaves brackets on a block wall to an engineer, unless their maker rates them', () => {
    const asked = { thicknessIn: 2, spacingIn: 16 };
    const unrated = entryOf(BLOCK, asked);
    expect(unrated.kind).toBe('engineer');
    expect(unrated.words).toContain('rated load');
    const rated = entryOf({ ...BLOCK, bracket: { ...BLOCK.bracket, ratedAtTipLbf: 2000 } }, asked);
    expect(rated.overhangIn).toBeGreaterThan(16);
  });

  test('is nothing where it is cancelled, at once', () => {
    let runs = 0;
    const asked = { thicknessIn: 1.5, withSteel: false, spacingIn: null };
    const hooks = { onRun: () => void runs++, isCancelled: () => runs === 1 };
    expect(chartEntry(SHORT, asked, null, hooks)).toBeNull();
    expect(runs).toBe(1);
  });

  test('is the same each time', () => {
    const asked = { thicknessIn: 1 };
    expect(entryOf(SHORT, asked)).toEqual(entryOf(SHORT, asked));
  });
});

describe('the chart grows where physics says so', () => {
  const reach = (basis: ChartBasis, asked: Parameters<typeof entryOf>[1]) =>
    entryOf(basis, asked).overhangIn ?? 0;

  test.each([
    ['stud', SHORT],
    ['block', BLOCK],
  ])('a thicker ledge reaches no less far past a %s wall: 1, 1-1/2, 2 in', (_, basis) => {
    const [thin, middle, thick] = [1, 1.5, 2].map((thicknessIn) => reach(basis, { thicknessIn }));
    expect(middle).toBeGreaterThan(thin!);
    expect(thick).toBeGreaterThanOrEqual(middle!);
  });

  test('stronger concrete reaches further where it cracks: 3000, 4000, 6000 psi, 1-1/2 in on a block wall', () => {
    const [weak, middle, strong] = [3000, 4000, 6000].map((strengthPsi) =>
      reach({ ...BLOCK, strengthPsi }, { thicknessIn: 1.5 }),
    );
    expect(middle).toBeGreaterThanOrEqual(weak! - SLACK_IN);
    expect(strong).toBeGreaterThan(weak!);
  });

  test('steel in the top takes an overhang further where concrete cracks: 1-1/2 in on a block wall', () => {
    const bare = reach(BLOCK, { thicknessIn: 1.5 });
    const steel = entryOf(BLOCK, { thicknessIn: 1.5, withSteel: true });
    expect(steel.overhangIn).toBeGreaterThan(bare + 1);
    expect(levelAt(BLOCK, steel, steel.overhangIn!)).toBe('steel');
  });

  test('steel takes nothing away where the edge drops first: 1-1/2 in on a stud wall', () => {
    const bare = entryOf(SHORT, { thicknessIn: 1.5 });
    const steel = entryOf(SHORT, { thicknessIn: 1.5, withSteel: true }, bare);
    expect(steel.overhangIn).toBeGreaterThanOrEqual(bare.overhangIn!);
  });

  test('closer brackets reach no less far: 12, 24, 48 in, 1-1/2 in thick', () => {
    const [close, middle, wide] = [12, 24, 48].map((spacingIn) =>
      reach(QUICK, { thicknessIn: 1.5, spacingIn }),
    );
    expect(close).toBeGreaterThan(middle!);
    expect(middle).toBeGreaterThanOrEqual(wide! - SLACK_IN);
  });

  test('where brackets give first, a thicker slab loads them more: 4 in reaches less far than 2 in', () => {
    const [thin, thick] = [2, 4].map((thicknessIn) => entryOf(QUICK, { thicknessIn, spacingIn: 24 }));
    expect([thin!.governs?.checkId, thick!.governs?.checkId]).toEqual(['bracket', 'bracket']);
    expect(thick!.overhangIn).toBeLessThan(thin!.overhangIn!);
  });
});
