import { describe, expect, test } from 'vitest';
import { pieceDimensions } from '../../../src-core/drawing';
import type { Job } from '../../../src-core/job';
import type { Box } from '../../../src-renderer/plan/declutter';
import { boxAbout, declutter } from '../../../src-renderer/plan/declutter';
import type { Frame } from '../../../src-renderer/plan/frame';
import { draftNames, nameLabels, settleNames } from '../../../src-renderer/plan/place-names';
import { placeLabels } from '../../../src-renderer/plan/plan-labels';
import type { Part } from '../../../src-renderer/state/selection';
import { jobOf, rectangle } from '../../core/drawing/pieces';
import { EXAMPLE_JOBS } from '../forms/example-jobs';

const frame: Frame = { centre: { xIn: 48, yIn: 12 }, pxPerIn: 5, widthPx: 800, heightPx: 600 };

describe('labels that want the same room', () => {
  const here = boxAbout({ xPx: 0, yPx: 0 }, 40, 20);
  const there = boxAbout({ xPx: 60, yPx: 0 }, 40, 20);

  test('the second of two takes its second place, the third finds none', () => {
    const labels = ['a', 'b', 'c'].map((key) => ({ key, places: [here, there] }));
    expect([...declutter(labels, [])]).toEqual([
      ['a', 0],
      ['b', 1],
    ]);
  });

  test('none stands on a handle, but for a label that is kept', () => {
    const handle = boxAbout({ xPx: 10, yPx: 5 }, 12, 12);
    expect(declutter([{ key: 'a', places: [here] }], [handle]).size).toBe(0);
    expect(declutter([{ key: 'a', places: [here], isKept: true }], [handle]).get('a')).toBe(0);
  });

  test('a label that stands on end is as high as it is long', () => {
    const { left, right, top, bottom } = boxAbout({ xPx: 0, yPx: 0 }, 40, 20, -90);
    expect([right - left, bottom - top].map(Math.round)).toEqual([20, 40]);
  });
});

describe('names', () => {
  const place = (job: Job, selectedId: string | null) => {
    const drafts = draftNames(frame, job.pieces, selectedId);
    return settleNames(drafts, declutter(nameLabels(drafts), []));
  };

  test('of two ledges one above the other stand clear of each other', () => {
    const job = jobOf(
      { name: 'Bar ledge' },
      { name: 'Foot ledge' },
      { name: 'Other', corners: rectangle(0, 40, 90, 20) },
    );
    const names = place(job, null);
    expect(names).toHaveLength(3);
    expect(names[1]!.at.yPx - names[0]!.at.yPx).toBeGreaterThanOrEqual(18);
  });

  test('the selected piece has none, and a piece narrower than its name has none', () => {
    const job = jobOf({ name: 'Counter' }, { name: 'Gate-pier cap', corners: rectangle(0, 60, 6, 6) });
    expect(place(job, 'piece-1')).toEqual([]);
  });
});

describe('the plan of every example', () => {
  const jobs = EXAMPLE_JOBS;
  const whole: Part = { kind: 'piece' };
  const figuresAt = (job: Job, pxPerIn: number) =>
    job.pieces.map((piece) => {
      const dimensions = pieceDimensions(piece);
      const middle = { xIn: piece.corners[0]!.xIn, yIn: piece.corners[0]!.yIn };
      const at = { ...frame, centre: middle, pxPerIn };
      const { pieces } = job;
      return placeLabels({
        frame: at,
        system: 'imperial',
        pieces,
        piece,
        part: whole,
        dimensions,
        governing: null,
      });
    });

  test.each([0.8, 1.6, 4, 12])('no figure covers another or a name at %d px an inch', (pxPerIn) => {
    for (const { dimensions, names } of jobs.flatMap((job) => figuresAt(job, pxPerIn))) {
      const boxes: Box[] = [
        ...dimensions
          .filter(({ hasRoom }) => hasRoom)
          .map(({ at, text, turnDeg }) => boxAbout(at, text.length * 6.5, 16, turnDeg)),
        ...names.map(({ at, words }) => boxAbout({ xPx: at.xPx, yPx: at.yPx - 4 }, words.length * 6.5, 16)),
      ];
      for (const [i, a] of boxes.entries())
        for (const b of boxes.slice(i + 1))
          expect(a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom).toBe(false);
    }
  });

  test('at a larger scale more figures find room', () => {
    const count = (pxPerIn: number) =>
      jobs
        .flatMap((job) => figuresAt(job, pxPerIn))
        .flatMap(({ dimensions }) => dimensions.filter(({ hasRoom }) => hasRoom)).length;
    expect(count(1)).toBeLessThan(count(4));
    expect(count(4)).toBeLessThan(count(16));
  });
});

describe('the word for the front, along the foot of the plan', () => {
  const frontAt = (centre: Frame['centre']) => {
    const job = jobOf({ name: 'Counter', corners: rectangle(0, 0, 96, 24) });
    const [piece] = job.pieces;
    return placeLabels({
      frame: { ...frame, centre },
      system: 'imperial',
      pieces: job.pieces,
      piece: piece!,
      part: { kind: 'piece' },
      dimensions: pieceDimensions(piece!),
      governing: null,
    }).frontAtPx;
  };

  test('stands in the middle', () => {
    expect(frontAt({ xIn: 48, yIn: 12 })).toBe(400);
  });

  test('moves aside where the length of the front edge is written there', () => {
    // the edge lies 42 px over the foot, and its figure 26 px below it
    const at = frontAt({ xIn: 48, yIn: 51.6 });
    expect(Math.abs(at! - 400)).toBeGreaterThan(100);
  });
});
