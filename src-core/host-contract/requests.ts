/**
 * What the window may ask of its host, whichever that is: one table of names with the schema of each request and reply. The
 * preload, the dispatcher, the loopback carrier and the window's client all derive from it.
 */
import { z } from 'zod';
import { printBook, saveExport } from './leaving';

/** Longest text in characters that a host takes or gives; a job of 200 pieces is far below. */
const LONGEST_TEXT = 8_000_000;
const path = z.string().min(1).max(4096);
const fileName = z.string().min(1).max(200);
const text = z.string().max(LONGEST_TEXT);
const nothing = z.strictObject({});

const recentJob = z.strictObject({ path, name: z.string(), openedAt: z.string() });

const draft = z.strictObject({
  /** File that the draft belongs to; null for a job that was never saved. */
  path: path.nullable(),
  name: z.string(),
  keptAt: z.string(),
  text,
});

const trouble = z.strictObject({ outcome: z.literal('trouble'), sentence: z.string() });
const cancelled = z.strictObject({ outcome: z.literal('cancelled') });

export const REQUESTS = {
  /** Who serves the window and what it can do. */
  about: {
    request: nothing,
    reply: z.strictObject({
      host: z.enum(['desktop', 'browser']),
      version: z.string(),
      platform: z.enum(['mac', 'windows', 'linux']),
      /** Whether open and save without a path bring up a dialog of the system. */
      hasDialogs: z.boolean(),
      /** Folder in which a first save is offered. */
      jobFolder: z.string(),
    }),
  },
  /** The text of a job file, unread: what is wrong with it is the window's to say. A null path asks by a dialog. */
  openJob: {
    request: z.strictObject({ path: path.nullable() }),
    reply: z.discriminatedUnion('outcome', [
      z.strictObject({ outcome: z.literal('opened'), path, name: z.string(), text }),
      cancelled,
      trouble,
    ]),
  },
  /** Writes a job file whole or not at all; text that is no job is refused. A null path asks by a dialog. */
  saveJob: {
    request: z.strictObject({ path: path.nullable(), suggestedName: fileName, text }),
    reply: z.discriminatedUnion('outcome', [
      z.strictObject({ outcome: z.literal('saved'), path, name: z.string() }),
      cancelled,
      trouble,
    ]),
  },
  saveExport,
  printBook,
  /** Folders and job files in a folder; a null path is the job folder. */
  listFolder: {
    request: z.strictObject({ path: path.nullable() }),
    reply: z.discriminatedUnion('outcome', [
      z.strictObject({
        outcome: z.literal('listed'),
        path,
        parent: path.nullable(),
        entries: z.array(z.strictObject({ name: z.string(), path, kind: z.enum(['folder', 'job']) })),
      }),
      trouble,
    ]),
  },
  recentJobs: { request: nothing, reply: z.strictObject({ jobs: z.array(recentJob) }) },
  forgetRecent: { request: z.strictObject({ path }), reply: nothing },
  /** Keeps unsaved work where a crash cannot take it. One draft a window. */
  keepDraft: {
    request: z.strictObject({ path: path.nullable(), name: z.string().max(200), text }),
    reply: nothing,
  },
  /** Unsaved work of a run that did not end well; null where there is none. */
  findDraft: { request: nothing, reply: z.strictObject({ draft: draft.nullable() }) },
  dropDraft: { request: nothing, reply: nothing },
  listExamples: {
    request: nothing,
    reply: z.strictObject({ examples: z.array(z.strictObject({ id: z.string(), name: z.string() })) }),
  },
  readExample: {
    request: z.strictObject({ id: z.string().regex(/^[a-z0-9-]{1,60}$/) }),
    reply: z.discriminatedUnion('outcome', [z.strictObject({ outcome: z.literal('read'), text }), trouble]),
  },
  /** The page of the manual that explains a check or a finding, as Markdown. */
  readManual: {
    request: z.strictObject({ id: z.string().regex(/^[a-z0-9-]{1,60}$/) }),
    reply: z.discriminatedUnion('outcome', [z.strictObject({ outcome: z.literal('read'), text }), trouble]),
  },
  /** Whether unsaved changes stand in the way of closing; the desktop host asks before it lets a window go. */
  setUnsaved: {
    request: z.strictObject({ isUnsaved: z.boolean(), name: z.string().max(200) }),
    reply: nothing,
  },
} as const satisfies Record<string, { readonly request: z.ZodType; readonly reply: z.ZodType }>;

export type RequestName = keyof typeof REQUESTS;
export type RequestOf<N extends RequestName> = z.infer<(typeof REQUESTS)[N]['request']>;
export type ReplyOf<N extends RequestName> = z.infer<(typeof REQUESTS)[N]['reply']>;

/** The one host interface. Every carrier offers it; it rejects only where the host itself cannot be reached or is at fault. */
export interface HostApi {
  readonly ask: <N extends RequestName>(name: N, request: RequestOf<N>) => Promise<ReplyOf<N>>;
  /** What the host tells the window unasked; gives the way to stop listening. The loopback host tells nothing. */
  readonly listen: (onEvent: (event: HostEvent) => void) => () => void;
}

export const hostEvent = z.discriminatedUnion('kind', [
  /** A menu item of the system was chosen. */
  z.strictObject({ kind: z.literal('menu'), command: z.string().regex(/^[a-z-]{1,40}$/) }),
  /** The system asks to open a file, by a double click on it, say. */
  z.strictObject({ kind: z.literal('open-path'), path }),
]);
export type HostEvent = z.infer<typeof hostEvent>;
