/** The host behind every carrier: one dispatcher that takes nothing on trust, over one handler a request. */
import type { ReplyOf, RequestName, RequestOf } from '../../src-core/host-contract';
import { REQUESTS } from '../../src-core/host-contract';
import { drafts } from './drafts';
import { saveExport } from './export-files';
import { listFolder } from './folder-list';
import { openJob, saveJob } from './job-files';
import type { Place } from './place';
import { bookPrinter } from './print-book';
import { recentJobs } from './recent-jobs';
import { listExamples, readExample, readManual } from './shelf';

export type Answer =
  | { readonly ok: true; readonly reply: unknown }
  | { readonly ok: false; readonly fault: 'unknown-name' | 'bad-request'; readonly sentence: string };

export type Unsaved = RequestOf<'setUnsaved'>;

export interface Host {
  /** Answers what came over a wire. Rejects only where the host itself is at fault. */
  readonly answer: (name: unknown, request: unknown) => Promise<Answer>;
  /** What the window last said of its unsaved changes. */
  readonly unsaved: () => Unsaved;
  /** Ends the run: drops its draft unless unsaved work stands, which the next run will offer. */
  readonly endRun: () => Promise<void>;
  /** Drops unsaved work because the person said so. */
  readonly discard: () => Promise<void>;
}

type Handlers = { readonly [N in RequestName]: (request: RequestOf<N>) => Promise<ReplyOf<N>> };

/** The host at a place. */
export function createHost(place: Place): Host {
  const kept = drafts(place.userFolder);
  const recent = recentJobs(place.userFolder);
  let unsaved: Unsaved = { isUnsaved: false, name: '' };

  /** A list of recent jobs that cannot be kept is a lost comfort and must not cost the job that was opened or saved. */
  async function noteUse(path: string): Promise<void> {
    await recent.add(path, place.clock()).catch(() => undefined);
  }

  const handlers: Handlers = {
    about: async () => ({
      host: place.host,
      version: place.version,
      platform: place.platform,
      hasDialogs: place.dialogs !== null,
      jobFolder: place.jobFolder,
    }),
    openJob: async (request) => {
      const reply = await openJob(place, request);
      if (reply.outcome === 'opened') await noteUse(reply.path);
      return reply;
    },
    saveJob: async (request) => {
      const reply = await saveJob(place, request);
      if (reply.outcome === 'saved') {
        await noteUse(reply.path);
        await kept.dropOwn();
      }
      return reply;
    },
    saveExport: (request) => saveExport(place, request),
    printBook: bookPrinter(place),
    listFolder: (request) => listFolder(place.jobFolder, request),
    recentJobs: () => recent.list(),
    forgetRecent: ({ path }) => recent.forget(path).then(nothing),
    keepDraft: (work) => kept.keep(work, place.clock()).then(nothing),
    findDraft: async () => ({ draft: await kept.find() }),
    dropDraft: () => kept.drop().then(nothing),
    listExamples: () => listExamples(place.exampleFolder),
    readExample: ({ id }) => readExample(place.exampleFolder, id),
    readManual: ({ id }) => readManual(place.manualFolder, id),
    setUnsaved: async (said) => {
      unsaved = said;
      return {};
    },
  };

  return {
    answer: async (name, request) => {
      if (!isRequestName(name)) {
        return { ok: false, fault: 'unknown-name', sentence: 'The host knows no such request.' };
      }
      return answerKnown(handlers, name, request);
    },
    unsaved: () => unsaved,
    endRun: async () => {
      if (!unsaved.isUnsaved) await kept.dropOwn();
    },
    discard: () => kept.dropOwn(),
  };
}

async function answerKnown<N extends RequestName>(
  handlers: Handlers,
  name: N,
  request: unknown,
): Promise<Answer> {
  const asked = REQUESTS[name].request.safeParse(request);
  if (!asked.success) {
    const { path, message } = asked.error.issues[0]!;
    const where = path.length === 0 ? name : `${name}: ${path.join('.')}`;
    return { ok: false, fault: 'bad-request', sentence: `${where}: ${message}.` };
  }
  const reply = REQUESTS[name].reply.safeParse(await handlers[name](asked.data as RequestOf<N>));
  if (!reply.success)
    throw new Error(`The host's reply to ${name} breaks the contract: ${reply.error.message}`);
  return { ok: true, reply: reply.data };
}

/** An own key of the table, so that a name every object has, such as "constructor", is unknown. */
function isRequestName(name: unknown): name is RequestName {
  return typeof name === 'string' && Object.hasOwn(REQUESTS, name);
}

function nothing(): Record<string, never> {
  return {};
}
