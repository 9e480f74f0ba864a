/** What a window begins with: its host, a job to show, and whether unsaved work waits. */
import type { HostApi, ReplyOf } from '../../src-core/host-contract';
import { readJobText } from '../../src-core/job';
import { starterJob } from '../../src-core/starters';
import type { FileActions } from './file-actions';
import { fileActions, fileNameFor } from './file-actions';
import type { Theme, WindowStore } from './window-store';
import { createWindowStore } from './window-store';

export interface BegunWindow {
  readonly host: HostApi;
  readonly about: ReplyOf<'about'>;
  readonly store: WindowStore;
  readonly files: FileActions;
}

/** The job that a first window shows behind its quick check. */
const FIRST_EXAMPLE = 'boathouse-galley';
const THEME_KEY = 'ledgewright-theme';

/** Asks the host what there is and makes the store. Rejects where the host cannot be reached. */
export async function beginWindow(host: HostApi): Promise<BegunWindow> {
  const [about, example, recent, found] = await Promise.all([
    host.ask('about', {}),
    host.ask('readExample', { id: FIRST_EXAMPLE }),
    host.ask('recentJobs', {}),
    host.ask('findDraft', {}),
  ]);
  const reading = example.outcome === 'read' ? readJobText(example.text) : null;
  const job = reading?.ok === true ? reading.job : starterJob('bar-ledge');
  const store = createWindowStore(job, firstTheme());
  store.getState().openJob(job, { path: null, name: fileNameFor(job), savedJob: null, isRecovered: false });
  if (found.draft !== null) store.getState().openSheet({ kind: 'recover' });
  else if (recent.jobs.length === 0) store.getState().openSheet({ kind: 'quick-check' });
  store.subscribe(({ theme }, before) => {
    if (theme !== before.theme) localStorage.setItem(THEME_KEY, theme);
  });
  return { host, about, store, files: fileActions(store, host, about.hasDialogs) };
}

/** As chosen before, else as the system is set. */
function firstTheme(): Theme {
  const chosen = localStorage.getItem(THEME_KEY);
  if (chosen === 'light' || chosen === 'dark') return chosen;
  return window.matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light';
}
