import { expect, test } from 'vitest';
import { standingOn } from '../../../src-core/sequence';
import { isCarriedThere } from '../../../src-renderer/model/carried-there';
import { EXAMPLE_JOBS } from '../forms/example-jobs';

const galley = EXAMPLE_JOBS.find(({ id }) => id === 'boathouse-galley')!;

test('the bowl of the serving counter is not drawn while falsework decks its opening, hard as the slab may be', () => {
  const there = [0, 1, 38, 43, 44].map((day) =>
    isCarriedThere(standingOn(galley, day).find(({ pieceId }) => pieceId === 'serving-counter')!),
  );
  expect(there).toEqual([false, false, false, false, true]);
  expect(isCarriedThere(null)).toBe(true);
});
