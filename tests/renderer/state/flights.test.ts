import { expect, test } from 'vitest';
import { starterJob } from '../../../src-core/starters';
import { createWindowStore } from '../../../src-renderer/state/window-store';

const ledge = starterJob('bar-ledge');
const [piece] = ledge.pieces;
const flown = { key: 'tipping', pieceId: piece!.id, at: { xIn: 5, yIn: 1 } };

function windowThatFlew() {
  const store = createWindowStore(ledge, 'light');
  store.getState().lookAtCheck(flown);
  return store;
}

test('a view that is shown later still goes to the point of the check that was looked at', () => {
  const store = windowThatFlew();
  store.getState().select({ pieceId: piece!.id, part: { kind: 'edge', index: 0 } });
  expect(store.getState().flyTo).toMatchObject({ pieceId: piece!.id, at: flown.at });
});

test('once another piece is picked no view goes back to it', () => {
  const store = windowThatFlew();
  store.getState().select({ pieceId: 'another', part: { kind: 'piece' } });
  expect(store.getState().flyTo).toBeNull();
});

test('nor once another job is open', () => {
  const store = windowThatFlew();
  const other = starterJob('straight-counter');
  store.getState().openJob(other, { path: null, name: other.name, savedJob: null, isRecovered: false });
  expect(store.getState().flyTo).toBeNull();
});
