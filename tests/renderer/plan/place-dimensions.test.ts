import { describe, expect, test } from 'vitest';
import type { Dimension } from '../../../src-core/drawing';
import { edgeDimensions } from '../../../src-core/drawing';
import type { Frame } from '../../../src-renderer/plan/frame';
import { placeDimensions } from '../../../src-renderer/plan/place-dimensions';
import { placeNames } from '../../../src-renderer/plan/place-names';
import { jobOf, pieceOf, rectangle } from '../../core/drawing/pieces';

const frame: Frame = { centre: { xIn: 48, yIn: 12 }, pxPerIn: 5, widthPx: 800, heightPx: 600 };
const print = ({ lengthIn }: Dimension) => `${lengthIn} in`;

describe('dimensions on the screen', () => {
  const placed = placeDimensions(frame, edgeDimensions(pieceOf({})), print);

  test('stand outside the piece: the front one below, the back one above', () => {
    expect(placed[0]?.from.yPx).toBe(300 + 12 * 5 + 26);
    expect(placed[2]?.from.yPx).toBe(300 - 13.5 * 5 - 26);
  });

  test('read from below or from the right', () => {
    expect(placed.map(({ turnDeg }) => Math.round(turnDeg))).toEqual([0, -90, 0, -90]);
  });

  test('all have room at 5 px an inch, and their figures break their lines', () => {
    expect(placed.every(({ hasRoom }) => hasRoom)).toBe(true);
    expect(placed[0]?.at).toEqual({ xPx: 400, yPx: 386 });
  });

  test('of two in one place the first keeps its figure', () => {
    const [first] = edgeDimensions(pieceOf({}));
    const twice = placeDimensions(frame, [first!, { ...first!, key: 'again' }], print);
    expect(twice.map(({ hasRoom }) => hasRoom)).toEqual([true, false]);
  });

  test('an overhang of 1 in is too short for its figure, which stands level beside it', () => {
    const overhang: Dimension = {
      key: 'overhang-0',
      of: 'overhang',
      words: 'Overhang of edge 1',
      from: { xIn: 48, yIn: 0 },
      to: { xIn: 48, yIn: 1 },
      lengthIn: 1,
      place: { kind: 'on' },
      sets: null,
    };
    const [one] = placeDimensions(frame, [overhang], () => '1 in over');
    expect(one?.turnDeg).toBe(0);
    expect(one!.at.xPx).toBeGreaterThan(400 + 30);
  });

  test('what is shorter than 4 px is left out', () => {
    const tiny = { ...frame, pxPerIn: 0.1 };
    expect(placeDimensions(tiny, edgeDimensions(pieceOf({})), print)).toHaveLength(2);
  });
});

describe('names', () => {
  test('of two ledges one above the other stand clear of each other', () => {
    const job = jobOf(
      { name: 'Bar ledge' },
      { name: 'Foot ledge' },
      { name: 'Other', corners: rectangle(0, 60, 90, 20) },
    );
    const names = placeNames(frame, job.pieces, null);
    expect(names).toHaveLength(3);
    expect(names[1]!.at.yPx - names[0]!.at.yPx).toBeGreaterThanOrEqual(18);
  });

  test('the selected piece has none, and a piece narrower than its name has none', () => {
    const job = jobOf({ name: 'Counter' }, { name: 'Gate-pier cap', corners: rectangle(0, 60, 6, 6) });
    expect(placeNames(frame, job.pieces, 'piece-1')).toEqual([]);
  });
});
