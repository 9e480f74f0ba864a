/** Open, save and recover: what the window does with files, through whichever host serves it. */
import type { HostApi, ReplyOf } from '../../src-core/host-contract';
import type { Job } from '../../src-core/job';
import { readJobText } from '../../src-core/job';
import type { WindowStore } from './window-store';
import { isUnsaved } from './window-store';

export type Draft = NonNullable<ReplyOf<'findDraft'>['draft']>;

export interface FileActions {
  /** Opens the quick check, from which a new job starts. Whatever replaces a job asks about its unsaved changes, once. */
  readonly newJob: () => void;
  /** A null path asks: by a dialog of the system, or the window's own sheet where the host has none. */
  readonly openPath: (path: string | null) => Promise<void>;
  /** A dropped file, say. One that is broken keeps the job that is open and says what is wrong. */
  readonly openText: (text: string, name: string) => void;
  readonly openExample: (id: string) => Promise<void>;
  /** A job that stands in no file yet. */
  readonly openFresh: (job: Job) => void;
  /** To its own file, or like `saveAs`. True where it was saved. */
  readonly save: () => Promise<boolean>;
  readonly saveAs: () => Promise<boolean>;
  readonly saveTo: (path: string) => Promise<boolean>;
  readonly recover: (draft: Draft) => void;
  readonly discardDraft: () => Promise<void>;
}

/** A job as the text of its file. */
export function textOfJob(job: Job): string {
  return `${JSON.stringify(job, null, 2)}\n`;
}

/** File name that a first save offers. */
export function fileNameFor(job: Job): string {
  const stem = job.name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return `${stem === '' ? 'job' : stem}.json`;
}

/** The file actions of one window. `hasDialogs` says whether the host can ask for a path itself. */
export function fileActions(store: WindowStore, host: HostApi, hasDialogs: boolean): FileActions {
  const state = () => store.getState();
  const tell = (sentence: string, details: readonly string[] = []) =>
    state().say({ tone: 'trouble', sentence, details });
  const afterAsking = (goOn: () => void) => {
    if (isUnsaved(state())) state().openSheet({ kind: 'unsaved', goOn });
    else goOn();
  };
  const take = (text: string, name: string, path: string | null): boolean => {
    const reading = readJobText(text);
    if (!reading.ok) {
      state().openSheet(null);
      const isNewer = reading.problems.some(({ code }) => code === 'newer-version');
      tell(
        isNewer
          ? `${name} was written by a newer Ledgewright, so it was not opened. Nothing was changed, in that file or in the job before you.`
          : `${name} was not opened; the job before you is as it was.`,
        reading.problems.map(({ path: place, sentence }) =>
          place === '' ? sentence : `${place}: ${sentence}`,
        ),
      );
      return false;
    }
    const { job, migratedFrom } = reading;
    state().openJob(job, { path, name, savedJob: path === null ? null : job, isRecovered: false });
    if (migratedFrom !== null) {
      state().say({
        tone: 'plain',
        sentence: `${name} was written by an older version and has been brought up to date; saving keeps it so.`,
      });
    }
    return true;
  };
  /** What goes wrong on the way to the host is told; nothing that was asked for has happened then. */
  const reaching = async <T>(work: () => Promise<T>, otherwise: T): Promise<T> => {
    try {
      return await work();
    } catch {
      tell('The host of this window does not answer. Start it again; unsaved work is kept and offered then.');
      return otherwise;
    }
  };
  const writeNow = async (path: string | null): Promise<boolean> => {
    const { job } = state().history;
    const reply = await host.ask('saveJob', {
      path,
      suggestedName: fileNameFor(job),
      text: textOfJob(job),
    });
    if (reply.outcome === 'trouble') tell(reply.sentence);
    if (reply.outcome !== 'saved') return false;
    state().markSaved(reply.path, reply.name, job);
    await host.ask('dropDraft', {});
    return true;
  };
  const write = (path: string | null) => reaching(() => writeNow(path), false);
  const saveAs = async (): Promise<boolean> => {
    if (hasDialogs) return write(null);
    state().openSheet({ kind: 'save-file' });
    return false;
  };
  return {
    newJob: () => state().openSheet({ kind: 'quick-check' }),
    openPath: async (path) => {
      if (path === null && !hasDialogs) {
        state().openSheet({ kind: 'open-file' });
        return;
      }
      const reply = await reaching(() => host.ask('openJob', { path }), null);
      if (reply?.outcome === 'trouble') tell(reply.sentence);
      if (reply?.outcome === 'opened') {
        const { text, name, path: found } = reply;
        afterAsking(() => void take(text, name, found));
      }
    },
    openText: (text, name) => afterAsking(() => void take(text, name, null)),
    openExample: async (id) => {
      const reply = await reaching(() => host.ask('readExample', { id }), null);
      if (reply?.outcome === 'trouble') tell(reply.sentence);
      if (reply?.outcome === 'read') {
        const { text } = reply;
        afterAsking(() => void take(text, `${id}.json`, null));
      }
    },
    openFresh: (job) =>
      afterAsking(() =>
        state().openJob(job, { path: null, name: fileNameFor(job), savedJob: null, isRecovered: false }),
      ),
    save: () => {
      const { path } = state().file;
      return path === null ? saveAs() : write(path);
    },
    saveAs,
    saveTo: write,
    recover: (draft) => {
      if (take(draft.text, draft.name, null)) {
        const { job } = state().history;
        // the file on disk is older than the draft, so the job counts as unsaved beside it
        state().openJob(job, { path: draft.path, name: draft.name, savedJob: null, isRecovered: true });
        state().say({ tone: 'plain', sentence: `${draft.name} is back as it was. Save it to keep it.` });
      }
    },
    discardDraft: async () => {
      await host.ask('dropDraft', {});
    },
  };
}
