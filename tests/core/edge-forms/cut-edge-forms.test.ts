import { describe, expect, test } from 'vitest';
import { cutEdgeForms, edgeForms, reusable } from '../../../src-core/edge-forms';
import type { JobDraft } from '../../../src-core/job';
import { jobOf, rectangle } from '../../support/pieces';
import { FREE, type PieceDraft, WALL } from './form-pieces';

const SQUARE = { ...FREE, profile: { kind: 'square' as const } };

function cutOf(piece: PieceDraft, more: Partial<JobDraft> = {}) {
  const job = jobOf(piece, more);
  const all = job.pieces.map((each) => {
    const result = edgeForms(job, each);
    if (!result.ok) throw new Error('cannot be drawn');
    return result.forms;
  });
  return { job, all, list: cutEdgeForms(job, all) };
}

describe('the cut list', () => {
  test('of a 60 x 24 in slab with eased edges is two sticks: 63 and 27, twice', () => {
    // 63 + 27 + 1/8 = 90.125 in of 96; three will not fit, and the sum, 180, needs two
    const { list } = cutOf({ corners: rectangle(60, 24), thicknessIn: 2 });
    expect(list.lists).toHaveLength(1);
    const [eased] = list.lists;
    expect(eased!.sticks.map(({ cuts }) => cuts.map(({ strip }) => Math.round(strip.longIn)))).toEqual([
      [63, 27],
      [63, 27],
    ]);
    expect(eased!.proof.isProved).toBe(true);
  });

  test('nests plain strips, which may be turned: four of 24 in with 45 degree ends come from one 96 in stick', () => {
    // A 21 x 21 slab takes 24 in strips: cut apart 4 x 24 + 3/8 = 96.375; nested 4 x 22.5 + 3 x 0.1768 + 1.5 = 92.03
    const edges = [SQUARE, SQUARE, SQUARE, SQUARE];
    const { list } = cutOf({ corners: rectangle(21, 21), thicknessIn: 2, edges });
    expect(list.lists[0]!.sticks).toHaveLength(1);
    expect(list.lists[0]!.sticks[0]!.cuts.filter(({ isTurned }) => isTurned)).toHaveLength(2);
    expect(list.lists[0]!.sticks[0]!.saws.length).toBeGreaterThan(0);
  });

  test('does not turn a strip with a profile: the same four take two sticks', () => {
    const { list } = cutOf({ corners: rectangle(21, 21), thicknessIn: 2 });
    expect(list.lists[0]!.sticks).toHaveLength(2);
    expect(list.lists[0]!.sticks.flatMap(({ cuts }) => cuts).every(({ isTurned }) => !isTurned)).toBe(true);
  });

  test('keeps profiles, flat strips and sink strips apart', () => {
    const { list } = cutOf({
      corners: rectangle(60, 24),
      thicknessIn: 2,
      edges: [{ ...FREE, profile: { kind: 'bullnose' } }, FREE, WALL, FREE],
      cutouts: [
        {
          id: 'sink',
          purpose: 'sink',
          shape: { kind: 'rectangle', centre: { xIn: 30, yIn: 12 }, widthIn: 20, depthIn: 12, radiusIn: 1 },
        },
      ],
    });
    expect(list.lists.map(({ id }) => id).sort()).toEqual([
      'flat/isolation-strip/2/0.125',
      'profiled/bullnose/1/2/1.5',
      'profiled/eased/0.125/2/1.5',
      // from the deck through 1/2 in of board
      'sink/form-strip/2.5/1.5',
    ]);
    expect(list.blocks).toHaveLength(4);
  });

  test('multiplies by copies: strips, screws, tape and bead', () => {
    const cap = { corners: rectangle(20, 20), thicknessIn: 1.5 };
    const [one, three] = [cutOf(cap).list, cutOf({ ...cap, copies: 3 }).list];
    const count = ({ lists }: typeof one) =>
      lists.flatMap(({ sticks }) => sticks).flatMap(({ cuts }) => cuts).length;
    expect([count(one), count(three)]).toEqual([4, 12]);
    expect(three.screws).toBe(3 * one.screws);
    expect(three.cornerTapeIn).toBe(18);
    expect(three.sealant.beadIn).toBeCloseTo(3 * (80 + 6), 9);
  });

  test('takes the stock of the job: two 48 in sticks for a strip of 63 in', () => {
    const stock = [{ id: 'short', name: 'Strip', kind: 'form-strip' as const, lengthIn: 48, price: 8 }];
    const { list } = cutOf({ corners: rectangle(60, 24), thicknessIn: 2 }, { stock });
    const sticks = list.lists[0]!.sticks;
    expect(new Set(sticks.map(({ stockId, price }) => `${stockId} ${price}`))).toEqual(new Set(['short 8']));
    // 63 = 48 + 15, 27 + 15 + 1/8 = 42.125: two of 48, two of 27 and 15
    expect(sticks).toHaveLength(4);
  });

  test('every strip lies on one stick, within it and a kerf from the next', () => {
    const { job, list, all } = cutOf({
      corners: rectangle(144, 25.5),
      thicknessIn: 1.5,
      edges: [FREE, FREE, WALL, FREE],
      copies: 2,
    });
    const cuts = list.lists.flatMap(({ sticks }) => sticks.flatMap((stick) => stick.cuts));
    const wanted = all.flatMap(({ copies, forms }) =>
      Array(copies).fill(forms.flatMap(({ parts }) => parts.map(({ longIn }) => longIn))),
    );
    expect(cuts.map(({ strip }) => strip.longIn).sort()).toEqual(wanted.flat().sort());
    for (const { sticks, of } of list.lists) {
      if (of.profile.kind === 'square') continue;
      for (const stick of sticks) {
        stick.cuts.forEach(({ atIn, strip }, k) => {
          const next = stick.cuts[k + 1];
          const endIn = atIn + strip.longIn;
          expect(endIn).toBeLessThanOrEqual(
            next === undefined ? stick.stockLengthIn : next.atIn - job.forms.kerfIn + 1e-9,
          );
        });
      }
    }
  });

  test('leaves out a strip that comes free from an earlier pour', () => {
    const draft = jobOf({ corners: rectangle(60, 24), thicknessIn: 2, pourDay: 1 });
    const job = { ...draft, pieces: [draft.pieces[0]!, { ...draft.pieces[0]!, id: 'later', pourDay: 6 }] };
    const all = job.pieces.map((piece) => {
      const result = edgeForms(job, piece);
      if (!result.ok) throw new Error('cannot be drawn');
      return result.forms;
    });
    const reuses = reusable(all, (id) => (id === 'later' ? 8 : 3));
    expect(reuses).toHaveLength(4);
    const count = (list: ReturnType<typeof cutEdgeForms>) =>
      list.lists.flatMap(({ sticks }) => sticks).length;
    expect(count(cutEdgeForms(job, all))).toBe(4);
    expect(count(cutEdgeForms(job, all, reuses))).toBe(2);
  });
});
