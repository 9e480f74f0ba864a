import { describe, expect, test } from 'vitest';
import type { Dimension } from '../../../src-core/drawing';
import { edgeDimensions } from '../../../src-core/drawing';
import { declutter } from '../../../src-renderer/plan/declutter';
import type { Frame } from '../../../src-renderer/plan/frame';
import { draftDimensions, figureLabels, settleDimensions } from '../../../src-renderer/plan/place-dimensions';
import type { Part } from '../../../src-renderer/state/selection';
import { pieceOf } from '../../core/drawing/pieces';

const frame: Frame = { centre: { xIn: 48, yIn: 12 }, pxPerIn: 5, widthPx: 800, heightPx: 600 };
const print = ({ lengthIn }: Dimension) => `${lengthIn} in`;

const whole: Part = { kind: 'piece' };

function placeDimensions(
  frame: Frame,
  dimensions: readonly Dimension[],
  print: (dimension: Dimension) => string,
  part = whole,
) {
  const drafts = draftDimensions(frame, dimensions, print, part);
  return settleDimensions(drafts, declutter(figureLabels(drafts), []));
}

/** A link of a chain along the front, or a cutout's distance, from 48 in to the right. */
function inner(of: 'support' | 'cutout', key: string, lengthIn: number): Dimension {
  return {
    key,
    of,
    words: key,
    from: { xIn: 48, yIn: 0 },
    to: { xIn: 48 + lengthIn, yIn: 0 },
    lengthIn,
    place: of === 'support' ? { kind: 'beside', outward: { x: 0, y: -1 }, row: 0 } : { kind: 'on' },
    sets: { kind: 'support-place', id: 'leg', along: { x: 1, y: 0 } },
  };
}

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
    const [other] = settleDimensions(
      draftDimensions(frame, [overhang], () => '1 in over', whole),
      new Map([['overhang-0', 1]]),
    );
    expect(other!.at.xPx).toBeLessThan(400 - 30);
  });

  test('of a chain with one link that is long enough the short link keeps its line; with none the chain is left out', () => {
    const [short, long] = [inner('support', 'short', 4), inner('support', 'long', 30)];
    expect(placeDimensions(frame, [short, long], print).map(({ hasRoom }) => hasRoom)).toEqual([false, true]);
    expect(placeDimensions(frame, [short], print)).toEqual([]);
  });

  test('a cutout 4 in from an edge is told of at 30 px an inch, not at 5', () => {
    const from = inner('cutout', 'sink', 4);
    expect(placeDimensions({ ...frame, pxPerIn: 30 }, [from], print)).toHaveLength(1);
    expect(placeDimensions(frame, [from], print)).toEqual([]);
  });

  test('a selected part keeps its figures at any scale', () => {
    const short = inner('support', 'short', 4);
    const [kept] = placeDimensions(frame, [short], print, { kind: 'support', id: 'leg' });
    expect(kept).toMatchObject({ hasRoom: true, isOwn: true });
  });

  test('what is shorter than 4 px is left out', () => {
    const tiny = { ...frame, pxPerIn: 0.1 };
    expect(placeDimensions(tiny, edgeDimensions(pieceOf({})), print)).toHaveLength(2);
  });
});
