import { describe, expect, test } from 'vitest';
import type { FormCut } from '../../../src-core/edge-forms';
import { jobTakeoff } from '../../../src-core/takeoff';
import { againRows, endWords, stripRows } from '../../../src-renderer/buy/form-rows';
import { BAR_PX, cutCorners, drawnStick } from '../../../src-renderer/buy/stick-drawing';
import { jobOf, rectangle } from '../../support/pieces';
import { GALLEY, GALLEY_TAKEOFF, SLAB } from './taken-off';

const [eased] = jobTakeoff(SLAB, null).formCuts.lists;
const [first] = eased!.sticks;
const QUARTER = Math.PI / 4;

function cutWith(startRad: number, endRad: number, isTurned = false): FormCut {
  const { strip } = first!.cuts[0]!;
  return { strip: { ...strip, longIn: 24, startRad, endRad }, atIn: 10, isTurned };
}

describe('the corners of a cut of 24 in, 1-1/2 in thick, 10 in along its stick', () => {
  test('outside mitres of 45° are long at the near edge and 1-1/2 in in at either end of the far one', () => {
    // the outer face runs past the slab face: 24 in outside, 24 - 2 x 1.5 x tan 45 = 21 in against the slab
    const { nearFromIn, nearToIn, farFromIn, farToIn } = cutCorners(cutWith(QUARTER, QUARTER));
    expect([nearFromIn, nearToIn]).toEqual([10, 34]);
    expect(farFromIn).toBeCloseTo(11.5, 12);
    expect(farToIn).toBeCloseTo(32.5, 12);
  });

  test('mitres at inside corners are long at the far edge, the face against the slab', () => {
    const { nearFromIn, nearToIn, farFromIn, farToIn } = cutCorners(cutWith(-QUARTER, -QUARTER));
    expect([farFromIn, farToIn]).toEqual([10, 34]);
    expect(nearFromIn).toBeCloseTo(11.5, 12);
    expect(nearToIn).toBeCloseTo(32.5, 12);
  });

  test('half a turn brings the mitred end to the other side and its long point to the far edge', () => {
    const straight = cutCorners(cutWith(QUARTER, 0));
    expect(straight.farFromIn).toBeCloseTo(11.5, 12);
    expect(straight.farToIn).toBe(34);
    const turned = cutCorners(cutWith(QUARTER, 0, true));
    expect([turned.farFromIn, turned.farToIn, turned.nearFromIn]).toEqual([10, 34, 10]);
    expect(turned.nearToIn).toBeCloseTo(32.5, 12);
  });
});

describe('a stick as it is drawn', () => {
  const drawn = drawnStick(first!, 96, 340)!;

  test('lies within its width, its cuts to scale and one after the other', () => {
    const places = drawn.cuts.map(({ middle }) => middle.x);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
    // 336 px for 96 in: a strip of 63 in from the end has its middle at 2 + 31.5 x 3.5
    expect(places[0]).toBeCloseTo(2 + 31.5 * 3.5, 6);
    expect(drawn.heightPx).toBeGreaterThan(BAR_PX);
  });

  test('has the slab face on top where nothing is turned, shorter than the outer face by both mitres', () => {
    const { from, to } = drawn.cuts[0]!.slabFace;
    expect(from.y).toBe(to.y);
    expect(from.y).toBeLessThan(drawn.cuts[0]!.middle.y);
    expect(to.x - from.x).toBeCloseTo(60 * 3.5, 6);
  });

  test('writes a length only into a cut that has room for it, and draws nothing without a width', () => {
    expect(drawn.cuts.map(({ isWide }) => isWide)).toEqual([true, true]);
    expect(drawnStick(first!, 96, 120)!.cuts.map(({ isWide }) => isWide)).toEqual([true, false]);
    expect(drawnStick(first!, 96, 0)).toBeNull();
  });
});

describe('edge forms as they are written', () => {
  test('ends are told as they lie, and a mitre back at an inside corner is told apart', () => {
    expect(endWords(cutWith(QUARTER, QUARTER))).toBe('45° both ends');
    expect(endWords(cutWith(QUARTER, 0))).toBe('45° left, square right');
    expect(endWords(cutWith(QUARTER, 0, true))).toBe('square left, 45° right');
    expect(endWords(cutWith(-QUARTER, Math.PI / 8))).toBe('45° back left, 22.5° right');
    expect(endWords(cutWith(0, 0))).toBe('square both ends');
  });

  test('a 60 x 24 in slab is two sticks of 63 and 27 in, cut square apart and mitred after', () => {
    const [row, ...others] = stripRows(SLAB, jobTakeoff(SLAB, null).formCuts);
    expect(others).toEqual([]);
    expect(row!.words).toBe('2 sticks: fewest sticks, proved');
    expect(row!.isMitredAfter).toBe(true);
    expect(row!.sticks.map(({ cuts }) => cuts.map(({ length }) => length))).toEqual([
      ['63 in', '27 in'],
      ['63 in', '27 in'],
    ]);
    // 96 - 63 - 27 less two kerfs of 1/8 in
    expect(row!.sticks.map(({ left }) => left)).toEqual(['5-3/4 in left', '5-3/4 in left']);
    const numbers = row!.sticks.flatMap(({ cuts }) => cuts.map(({ number }) => number));
    expect(numbers).toEqual(['1', '2', '1', '2']);
    const edges = row!.sticks.flatMap(({ cuts }) => cuts.map(({ trace }) => trace.part));
    expect(new Set(edges.map((part) => (part.kind === 'edge' ? part.index : null)))).toEqual(
      new Set([0, 1, 2, 3]),
    );
  });

  test('every strip of the galley is cut once, or stands among those that no stick yields', () => {
    const rows = stripRows(GALLEY, GALLEY_TAKEOFF.formCuts);
    const written = rows.flatMap(({ sticks }) => sticks.flatMap(({ cuts }) => cuts.map(({ key }) => key)));
    const cut = GALLEY_TAKEOFF.formCuts.lists.flatMap(({ sticks }) =>
      sticks.flatMap(({ cuts }) => cuts.map(({ strip }) => strip.id)),
    );
    expect(new Set(written).size).toBe(written.length);
    expect([...written].sort()).toEqual([...cut].sort());
  });

  test('copies are told apart', () => {
    const job = jobOf({ corners: rectangle(20, 20), thicknessIn: 1.5, copies: 2 });
    const [row] = stripRows(job, jobTakeoff(job, null).formCuts);
    const places = row!.sticks.flatMap(({ cuts }) => cuts.map(({ place }) => place));
    expect(places.filter((place) => place.endsWith(', copy 2'))).toHaveLength(4);
    expect(new Set(places).size).toBe(8);
  });

  test('a strip that is used again names where it comes off and where it goes', () => {
    const one = jobOf({ corners: rectangle(20, 20), thicknessIn: 1.5 });
    const [cap] = one.pieces;
    const job = {
      ...one,
      pieces: [cap!, { ...cap!, id: 'later', name: 'Later cap', pourDay: cap!.pourDay + 30 }],
    };
    const { formCuts, pieces } = jobTakeoff(job, null);
    const forms = pieces.flatMap((piece) => (piece.forms === null ? [] : [piece.forms]));
    const rows = againRows(job, formCuts.reuses, forms);
    expect(rows).toHaveLength(4);
    expect(rows.every(({ trace }) => trace.pieceId === 'later')).toBe(true);
    expect(rows[0]!.words).toMatch(
      /^Later cap, edge \d: 23 in, off .+, edge \d on day \d+, poured against again on day \d+$/,
    );
  });
});
