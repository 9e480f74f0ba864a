/**
 * Bars drawn at a corner count as its trimmer where they cross its crack and are held to either side. ACI 318-19 11.7.5.1
 * (from memory) asks bars round an opening that develop at its corners; development of a #3 by 25.4.2.3.
 */
import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src-core/job';
import { jobTakeoff } from '../../../src-core/takeoff';
import type { PieceDraft } from './cases';
import { BARS, box, caseOf, L_SHAPE, LIGHT_MESH, placed, sink } from './cases';

type Layer = NonNullable<PieceDraft['reinforcement']>[number];

const MESH = { ...LIGHT_MESH, depthIn: 2 };

/** One #3 bar between two places: a layer in a field an inch to either side of it. */
function oneBar(
  id: string,
  a: readonly [number, number],
  b: readonly [number, number],
  more: object = {},
): Layer {
  const lengthIn = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [x, y] = [(b[0] - a[0]) / lengthIn, (b[1] - a[1]) / lengthIn];
  const corner = ([px, py]: readonly [number, number], side: number) => ({
    xIn: px - side * y,
    yIn: py + side * x,
  });
  return {
    ...BARS,
    id,
    depthIn: 1.25,
    angleDeg: (Math.atan2(y, x) * 180) / Math.PI,
    corners: [corner(a, -1), corner(b, -1), corner(b, 1), corner(a, 1)],
    ...more,
  };
}

/** Across the inside corner of the L at (25-1/2, 0), `outIn` from it, so far to either side. */
function acrossL(outIn: number, sideIn: number, more: object = {}): Layer {
  const s = Math.SQRT1_2;
  const [xIn, yIn] = [25.5 - outIn * s, outIn * s];
  return oneBar('across', [xIn - sideIn * s, yIn - sideIn * s], [xIn + sideIn * s, yIn + sideIn * s], more);
}

const ell = (...layers: readonly Layer[]): Job =>
  caseOf(L_SHAPE, { thicknessIn: 3, reinforcement: [MESH, ...layers] });

const trimmerOf = (job: Job) => placed(job).trimmers[0]!;

/** Trimmers bought, by the cut list. */
const bought = (job: Job) =>
  jobTakeoff(job, null)
    .barCuts.flatMap(({ pieces }) => pieces)
    .filter(({ isTrimmer }) => isTrimmer).length;

describe('a bar drawn across an inside corner', () => {
  test('that crosses 2 in from it and runs 14 in to either side is its trimmer, and none is bought', () => {
    const job = ell(acrossL(2, 14));
    expect(trimmerOf(job)).toMatchObject({ status: 'drawn', from: null, to: null, lengthIn: 0, massLb: 0 });
    expect(trimmerOf(job).words).toContain('"across" as drawn trims this corner');
    expect(bought(job)).toBe(0);
    expect(placed(job).totals.some(({ kind }) => kind === 'trimmers')).toBe(false);
    // the bar itself is cut once
    const cut = jobTakeoff(job, null).barCuts.flatMap(({ pieces }) => pieces);
    expect(cut).toHaveLength(1);
    expect(cut[0]!.lengthIn).toBeCloseTo(28, 6);
  });

  test('without it one is bought', () => {
    expect(trimmerOf(ell()).status).toBe('recommended');
    expect(bought(ell())).toBe(1);
  });

  test('12-3/4 in to either side hold a #3 at 5000 psi, 12-1/2 in do not', () => {
    // 60000 / (25 sqrt 5000) x .375 = 12.73 in
    expect(trimmerOf(ell(acrossL(2, 12.75))).status).toBe('drawn');
    expect(trimmerOf(ell(acrossL(2, 12.5))).status).toBe('recommended');
  });

  test('2.9 in from the corner it trims it, 3.1 in off it does not', () => {
    expect(trimmerOf(ell(acrossL(2.9, 14))).status).toBe('drawn');
    expect(trimmerOf(ell(acrossL(3.1, 14))).status).toBe('recommended');
  });

  test('a thinner bar does not', () => {
    expect(trimmerOf(ell(acrossL(2, 14, { barIn: 0.25, areaIn2: 0.05 }))).status).toBe('recommended');
  });

  test('a bar along the line that halves the corner does not', () => {
    const s = Math.SQRT1_2;
    const along = oneBar('along', [25.5 - 1.5 * s, 1.5 * s], [25.5 - 30 * s, 30 * s]);
    expect(trimmerOf(ell(along)).status).toBe('recommended');
  });

  test('the drawing walked the other way round gives the same', () => {
    const reversed = [...L_SHAPE].reverse();
    const job = caseOf(reversed, { thicknessIn: 3, reinforcement: [MESH, acrossL(2, 14)] });
    expect(trimmerOf(job).status).toBe('drawn');
  });
});

describe('bars drawn beside an opening', () => {
  // a sink of 30 x 18 in in the middle of 120 x 60 in: from 45 to 75 in and from 21 to 39 in
  const along = (id: string, yIn: number, fromIn = 30, toIn = 90) =>
    oneBar(id, [fromIn, yIn], [toIn, yIn], { depthIn: 1.25 });
  const back = (id: string, xIn: number, fromIn = 6, toIn = 54) =>
    oneBar(id, [xIn, fromIn], [xIn, toIn], { depthIn: 0.875 });
  const around = (...layers: readonly Layer[]) =>
    caseOf(box(120, 60), {
      thicknessIn: 3,
      reinforcement: [MESH, ...layers],
      cutouts: [sink(60, 30, 30, 18, 1)],
    });
  const statuses = (job: Job) => placed(job).trimmers.map(({ status }) => status);

  test('along all four sides, 2 in off and 15 in past the corners, trim all four', () => {
    const job = around(along('front', 19), along('rear', 41), back('left', 43), back('right', 77));
    expect(statuses(job)).toEqual(['drawn', 'drawn', 'drawn', 'drawn']);
    expect(bought(job)).toBe(0);
    expect(placed(job).trimmers[0]!.words).toMatch(/^"\w+" and "\w+" as drawn/);
  });

  test('front and left alone trim the corner between them, and three are bought', () => {
    const job = around(along('front', 19), back('left', 43));
    expect(statuses(job).filter((status) => status === 'drawn')).toHaveLength(1);
    expect(placed(job).trimmers.find(({ status }) => status === 'drawn')!.corner).toMatchObject({
      xIn: expect.closeTo(45, 6),
      yIn: expect.closeTo(21, 6),
    });
    expect(bought(job)).toBe(3);
  });

  test('one way alone they trim none', () => {
    expect(statuses(around(along('front', 19), along('rear', 41)))).not.toContain('drawn');
  });

  test('3-1/2 in off, or 10 in past the corners, they trim none', () => {
    const far = [along('front', 17.5), along('rear', 42.5), back('left', 41.5), back('right', 78.5)];
    expect(statuses(around(...far))).not.toContain('drawn');
    const short = [along('front', 19, 35, 85), along('rear', 41, 35, 85), back('left', 43, 11, 49)];
    expect(statuses(around(...short, back('right', 77, 11, 49)))).not.toContain('drawn');
  });

  test('bars over the whole slab are its steel and trim none, wherever they fall', () => {
    const job = around(
      { ...BARS, spacingIn: 2, depthIn: 1.25 },
      { ...BARS, id: 'b', spacingIn: 2, angleDeg: 90, depthIn: 0.875 },
    );
    expect(statuses(job)).not.toContain('drawn');
  });
});
