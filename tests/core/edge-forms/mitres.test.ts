import { describe, expect, test } from 'vitest';
import { longLength, outerReach, slabFaceReach } from '../../../src-core/edge-forms';
import { rectangle } from '../../support/pieces';
import { lastDigit, recompute } from '../../support/recompute';
import {
  FREE,
  formsOf,
  L_CORNERS,
  near,
  openingFormsOf,
  outerPoint,
  regular,
  straightForms,
  twoPieces,
  WALL,
} from './form-pieces';

/** Strips are 1-1/2 in wide unless the job says otherwise. */
const FACE_IN = 1.5;
const DEG = Math.PI / 180;

describe('a rectangle with four exposed edges', () => {
  const forms = formsOf({ corners: rectangle(60, 24), thicknessIn: 2 });

  test('60 x 24 in takes strips of 63 and 27 in, long on their outer face, cut at 45 degrees', () => {
    expect(straightForms(forms).map(({ longIn }) => longIn)).toEqual([63, 27, 63, 27].map(near));
    for (const { start, end, heightIn, kind } of straightForms(forms)) {
      expect(kind).toBe('profiled');
      expect(heightIn).toBe(2);
      for (const { cutRad, slabFacePastIn, outerFacePastIn } of [start, end]) {
        expect(cutRad).toBeCloseTo(45 * DEG, 12);
        expect(slabFacePastIn).toBe(0);
        expect(outerFacePastIn).toBeCloseTo(FACE_IN, 12);
      }
    }
  });

  test('is the same drawn the other way round, edge by edge', () => {
    const drawn = rectangle(60, 24).reverse();
    const back = straightForms(formsOf({ corners: drawn, thicknessIn: 2 }));
    expect(back.map(({ longIn }) => longIn)).toEqual([63, 27, 63, 27].map(near));
    expect(back[0]!.trace).toEqual({ pieceId: 'piece', part: { kind: 'edge', index: 0 } });
    expect(Math.abs(back[0]!.from.yIn)).toBeCloseTo(24, 12);
    expect(Math.abs(back[0]!.to.yIn)).toBeCloseTo(24, 12);
  });

  test('has ids and traces that name each edge once', () => {
    const ids = forms.forms.map(({ id }) => id);
    expect(ids).toContain('piece/edge/1/form');
    expect(new Set(ids).size).toBe(4);
    expect(forms.junctions.map(({ kind }) => kind)).toEqual(Array(4).fill('outside-corner'));
  });
});

describe('mitres at any angle', () => {
  // Plane geometry: each mitre takes half the turn, so a strip is the edge and twice the face times tan(turn / 2).
  test.each([3, 5, 6, 8, 12])('a regular polygon of %i edges of 20 in', (count) => {
    const turnRad = (2 * Math.PI) / count;
    const longIn = 20 + 2 * FACE_IN * Math.tan(turnRad / 2);
    for (const form of straightForms(formsOf({ corners: regular(count, 20), thicknessIn: 1.5 }))) {
      expect(form.longIn).toBeCloseTo(longIn, 9);
      expect(form.start.cutRad).toBeCloseTo(turnRad / 2, 9);
      expect(form.end.cutRad).toBeCloseTo(turnRad / 2, 9);
    }
  });

  test('an octagon of 20 in edges takes strips of 21.2426 in, cut at 22-1/2 degrees', () => {
    // 20 + 2 x 1.5 x tan 22.5 = 20 + 3 x 0.414214
    const [form] = straightForms(formsOf({ corners: regular(8, 20), thicknessIn: 1.5 }));
    expect(form!.longIn).toBeCloseTo(21.2426, 4);
    expect(form!.start.cutRad / DEG).toBeCloseTo(22.5, 9);
  });

  test('a 2-1/4 in strip round an octagon takes 21.8640 in', () => {
    const forms = formsOf({ corners: regular(8, 20), thicknessIn: 1.5 }, { forms: { stripWidthIn: 2.25 } });
    expect(straightForms(forms)[0]!.longIn).toBeCloseTo(21.864, 4);
  });

  test('strips meet: the outer faces of neighbours end in one point', () => {
    const corners = [
      { xIn: 0, yIn: 0 },
      { xIn: 50, yIn: -8 },
      { xIn: 70, yIn: 20 },
      { xIn: 30, yIn: 12 },
      { xIn: -5, yIn: 33 },
    ];
    const forms = straightForms(formsOf({ corners, thicknessIn: 2 }));
    forms.forEach((form, k) => {
      const a = outerPoint(form, 'end');
      const b = outerPoint(forms[(k + 1) % forms.length]!, 'start');
      expect(Math.hypot(a.xIn - b.xIn, a.yIn - b.yIn)).toBeLessThan(1e-9);
    });
  });
});

describe('an L with an inside corner', () => {
  const forms = formsOf({ corners: L_CORNERS, thicknessIn: 2 });
  const [, inner, front] = straightForms(forms);

  test('the strips at the inside corner are long on the slab face', () => {
    // 48 + 1.5 at the outside corner only; 70.5 + 1.5 at the far end
    expect(inner!.longIn).toBeCloseTo(49.5, 12);
    expect(front!.longIn).toBeCloseTo(72, 12);
    for (const end of [inner!.end, front!.start]) {
      expect(end.kind).toBe('mitre');
      expect(end.slabFacePastIn).toBe(0);
      expect(end.outerFacePastIn).toBeCloseTo(-FACE_IN, 12);
      expect(end.cutRad / DEG).toBeCloseTo(-45, 9);
    }
  });

  test('has five outside corners and one inside', () => {
    const kinds = forms.junctions.filter(({ kind }) => kind !== 'joint').map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind === 'outside-corner')).toHaveLength(5);
    expect(kinds.filter((kind) => kind === 'inside-corner')).toHaveLength(1);
  });

  test('a notch of 2 in has no room for mitred strips of 1-1/2 in, and says so', () => {
    const corners = [
      { xIn: 0, yIn: 0 },
      { xIn: 60, yIn: 0 },
      { xIn: 60, yIn: 24 },
      { xIn: 31, yIn: 24 },
      { xIn: 31, yIn: 14 },
      { xIn: 29, yIn: 14 },
      { xIn: 29, yIn: 24 },
      { xIn: 0, yIn: 24 },
    ];
    const { cautions } = formsOf({ corners, thicknessIn: 2 });
    expect(cautions).toHaveLength(1);
    expect(cautions[0]).toContain('edge 5');
  });
});

describe('walls', () => {
  const foot = {
    corners: rectangle(96, 9.375),
    thicknessIn: 2,
    edges: [FREE, FREE, { ...WALL, gapIn: 0.25 }, FREE],
  };

  test('a ledge returns to its wall: each return butts it square, 1/4 in past the slab', () => {
    const [front, right, back, left] = straightForms(formsOf(foot));
    expect([front!.role, right!.role, back!.role, left!.role]).toEqual(['face', 'return', 'back', 'return']);
    expect(right!.pastSlabIn).toBeCloseTo(0.25, 12);
    expect(left!.pastSlabIn).toBeCloseTo(0.25, 12);
    expect(front!.pastSlabIn).toBeNull();
    expect(right!.end).toMatchObject({ kind: 'to-wall', cutRad: 0 });
    // 9.375 + 1/4 to the wall + 1-1/2 to the mitre
    expect(right!.longIn).toBeCloseTo(11.125, 12);
    expect(left!.longIn).toBeCloseTo(11.125, 12);
  });

  test('the back form of a ledge is the isolation strip in the gap: 1/4 in thick, 96 in long', () => {
    const forms = formsOf(foot);
    const back = straightForms(forms)[2]!;
    expect(back).toMatchObject({ kind: 'flat', material: 'isolation-strip', faceIn: 0.25 });
    expect(back.longIn).toBeCloseTo(96, 12);
    expect(back.parts.flatMap(({ screwsAtIn }) => screwsAtIn)).toEqual([]);
    expect(forms.isolation).toEqual([
      {
        id: 'piece/edge/3/form/isolation',
        trace: { pieceId: 'piece', part: { kind: 'edge', index: 2 } },
        thicknessIn: 0.25,
        heightIn: 2,
        lengthIn: 96,
      },
    ]);
  });

  test('a return that meets its wall at 60 degrees is cut along it', () => {
    // Inside angle 60 at the wall: the slab's edge turns 120. Slab face past it by g / sin 120, outer face by (g - w cos 120) / sin 120.
    const corners = [
      { xIn: 0, yIn: 0 },
      { xIn: 40, yIn: 0 },
      { xIn: 40 + 20 / Math.tan(60 * DEG), yIn: 20 },
      { xIn: 0, yIn: 20 },
    ];
    const edges = [FREE, FREE, { ...WALL, gapIn: 0.5 }, FREE];
    const end = straightForms(formsOf({ corners, thicknessIn: 2, edges }))[1]!.end;
    expect(end.slabFacePastIn).toBeCloseTo(0.5 / Math.sin(120 * DEG), 9);
    expect(end.outerFacePastIn).toBeCloseTo((0.5 + 0.75) / Math.sin(120 * DEG), 9);
    expect(end.cutRad / DEG).toBeCloseTo(30, 9);
  });

  test('an edge between two walls is no return', () => {
    const edges = [FREE, WALL, WALL, WALL];
    expect(straightForms(formsOf({ corners: rectangle(60, 20), thicknessIn: 2, edges }))[0]!.role).toBe(
      'face',
    );
  });

  test('no gap is no strip, and a caution', () => {
    const edges = [FREE, FREE, { ...WALL, gapIn: 0 }, FREE];
    const forms = formsOf({ corners: rectangle(60, 20), thicknessIn: 2, edges });
    expect(forms.isolation).toEqual([]);
    expect(straightForms(forms)).toHaveLength(3);
    expect(forms.cautions[0]).toContain('Edge 3');
  });
});

describe('a slab that butts against another', () => {
  const butted = { kind: 'butted', toPieceId: 'other', gapIn: 0.125 } as const;
  const edges = [FREE, butted, FREE, FREE];
  const other = (pourDay: number) => ({
    id: 'other',
    name: 'Other',
    use: 'counter' as const,
    mixId: 'mix',
    corners: rectangle(30, 24).map(({ xIn, yIn }) => ({ xIn: xIn + 60.125, yIn })),
    edges: [FREE, FREE, FREE, { ...butted, toPieceId: 'piece' }],
    thicknessIn: 2,
    pourDay,
  });
  const own = { corners: rectangle(60, 24), thicknessIn: 2, edges };
  const flat = (pourDay: number, otherDay: number) =>
    straightForms(twoPieces({ ...own, pourDay }, other(otherDay)).first)[1]!;

  test('that is there already takes an isolation strip of the gap', () => {
    expect(flat(5, 1)).toMatchObject({ kind: 'flat', material: 'isolation-strip', faceIn: 0.125 });
  });

  test('that is poured later takes a flat form in the open, mitred at both ends', () => {
    const form = flat(1, 5);
    expect(form).toMatchObject({ kind: 'flat', material: 'form-strip', faceIn: FACE_IN });
    expect(form.longIn).toBeCloseTo(24 + 2 * FACE_IN, 12);
  });

  test('on the same day has one strip between the two', () => {
    const { first, second } = twoPieces({ ...own, pourDay: 1 }, other(1));
    expect(first.isolation).toHaveLength(1);
    expect(second.isolation).toHaveLength(0);
  });
});

describe('a rectangular opening', () => {
  const shape = { kind: 'rectangle', centre: { xIn: 48, yIn: 12 }, widthIn: 30, depthIn: 16 } as const;
  const forms = formsOf({
    corners: rectangle(96, 25.5),
    thicknessIn: 2,
    cutouts: [{ id: 'sink', purpose: 'sink', shape: { ...shape, angleDeg: 20 } }],
  });

  test('of 30 x 16 in is formed by strips within it, long on the slab face', () => {
    const sides = openingFormsOf(forms, 'sink');
    expect(sides.map(({ slabFaceIn }) => slabFaceIn).sort((a, b) => a - b)).toEqual(
      [16, 16, 30, 30].map(near),
    );
    for (const side of sides) {
      expect(side.kind).toBe('sink');
      const part = side.parts[0]!;
      expect(part.longIn).toBeCloseTo(side.slabFaceIn, 9);
      expect(part.start.outerFacePastIn).toBeCloseTo(-FACE_IN, 9);
      expect(part.end.cutRad / DEG).toBeCloseTo(-45, 9);
    }
  });
});

test('the workings of a mitre, a butt and a length come out of the printed numbers', () => {
  const lines = [
    outerReach({ w: 1.5, v: 1.5, t: 0.7853982 }).line,
    slabFaceReach({ g: 0.25, t: 1.2 }).line,
    longLength({ L: 60, a: 1.5, b: 0.25 }).line,
  ];
  for (const line of lines) {
    expect(Math.abs(recompute(line) - Number(line.result))).toBeLessThanOrEqual(lastDigit(line.result));
  }
});
