import { expect, test } from 'vitest';
import { setUnits } from '../../../src-core/edit';
import { starterJob } from '../../../src-core/starters';
import { createWindowStore } from '../../../src-renderer/state/window-store';

test('once a change is undone, the window no longer says that it is done', () => {
  const store = createWindowStore(starterJob('bar-ledge'), 'light');
  const { run, say, undo, redo } = store.getState();
  run(setUnits, { system: 'metric' });
  say({ tone: 'plain', sentence: 'Done: shown in millimetres. Undo brings it back.' });
  undo();
  expect(store.getState().notice).toBeNull();
  say({ tone: 'plain', sentence: 'Something about the job as it was.' });
  redo();
  expect(store.getState().notice).toBeNull();
});
