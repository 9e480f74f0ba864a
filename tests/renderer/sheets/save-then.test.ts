import { describe, expect, it } from 'vitest';
import { readJob } from '../../../src-core/job';
import { saveThen } from '../../../src-renderer/sheets/save-then';
import { createWindowStore } from '../../../src-renderer/state/window-store';
import { smallJob } from '../../support/small-job';

/** A window with one change that is in no file, asking what becomes of it. */
function windowAsking(goOn: () => void) {
  const reading = readJob(smallJob());
  if (!reading.ok) throw new Error('the small job is sound');
  const store = createWindowStore(reading.job, 'light');
  const rename = {
    id: 'rename',
    perform: (job: typeof reading.job, name: string) =>
      ({ ok: true, job: { ...job, name }, title: 'Rename', mergeKey: null }) as const,
  };
  store.getState().run(rename, 'Landing stage');
  store.getState().openSheet({ kind: 'unsaved', goOn });
  return store;
}

function markSaved(store: ReturnType<typeof windowAsking>) {
  store.getState().markSaved('/jobs/a.json', 'a.json', store.getState().history.job);
}

describe('saveThen', () => {
  it('goes on at once where the job has a file', async () => {
    let wentOn = 0;
    const store = windowAsking(() => wentOn++);
    const save = async () => {
      markSaved(store);
      return true;
    };
    await saveThen(store, { save }, () => wentOn++);
    expect(wentOn).toBe(1);
    expect(store.getState().sheet).toBeNull();
  });

  it('waits for the sheet that asks for a name, and goes on once the job is saved there', async () => {
    let wentOn = 0;
    const store = windowAsking(() => undefined);
    const save = async () => {
      store.getState().openSheet({ kind: 'save-file' });
      return false;
    };
    await saveThen(store, { save }, () => wentOn++);
    expect(wentOn).toBe(0);
    markSaved(store);
    expect(wentOn).toBe(0);
    store.getState().openSheet(null);
    expect(wentOn).toBe(1);
    store.getState().openSheet({ kind: 'keys' });
    store.getState().openSheet(null);
    expect(wentOn).toBe(1);
  });

  it('ends where that sheet is left without saving', async () => {
    let wentOn = 0;
    const store = windowAsking(() => undefined);
    const save = async () => {
      store.getState().openSheet({ kind: 'save-file' });
      return false;
    };
    await saveThen(store, { save }, () => wentOn++);
    store.getState().openSheet(null);
    markSaved(store);
    store.getState().openSheet(null);
    expect(wentOn).toBe(0);
  });

  it('stays with the question where saving fails', async () => {
    let wentOn = 0;
    const store = windowAsking(() => undefined);
    await saveThen(store, { save: async () => false }, () => wentOn++);
    expect(wentOn).toBe(0);
    expect(store.getState().sheet?.kind).toBe('unsaved');
  });
});
