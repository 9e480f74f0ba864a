/** Keeps unsaved work with the host, so that a crash or a closed tab loses at most a moment of it. */
import type { HostApi } from '../../src-core/host-contract';
import { textOfJob } from './file-actions';
import type { WindowStore } from './window-store';
import { isUnsaved } from './window-store';

/** Work is kept this long after it rests, ms. */
const KEEP_AFTER_MS = 800;

/** Starts keeping; gives the way to stop. A host that cannot be reached is told of once, by `onTrouble`. */
export function startKeepingDrafts(
  store: WindowStore,
  host: HostApi,
  onTrouble: (sentence: string) => void,
): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let wasUnsaved = false;
  let hasTold = false;
  const reaching = async (work: () => Promise<unknown>) => {
    try {
      await work();
      hasTold = false;
    } catch {
      if (!hasTold) {
        onTrouble('The host of this window does not answer: nothing can be saved until it is back.');
      }
      hasTold = true;
    }
  };
  const keep = () => {
    const { file, history } = store.getState();
    const { name, path } = file;
    void reaching(() => host.ask('keepDraft', { path, name, text: textOfJob(history.job) }));
  };
  const look = () => {
    const state = store.getState();
    const unsaved = isUnsaved(state);
    clearTimeout(timer);
    if (unsaved) timer = setTimeout(keep, KEEP_AFTER_MS);
    if (unsaved === wasUnsaved) return;
    wasUnsaved = unsaved;
    // at once, so that a window closed right after the first change still asks
    void reaching(() => host.ask('setUnsaved', { isUnsaved: unsaved, name: state.file.name }));
    if (!unsaved) void reaching(() => host.ask('dropDraft', {}));
  };
  const stop = store.subscribe((state, before) => {
    if (state.history.job !== before.history.job || state.file !== before.file) look();
  });
  const ask = (event: BeforeUnloadEvent) => {
    if (isUnsaved(store.getState())) event.preventDefault();
  };
  const isDesktop = window.ledgewright !== undefined;
  // the desktop shell asks by a dialog of its own; a browser knows no other way
  if (!isDesktop) window.addEventListener('beforeunload', ask);
  return () => {
    stop();
    clearTimeout(timer);
    window.removeEventListener('beforeunload', ask);
  };
}
