/** Forms: any field of the job set to what a person entered, and entries added to its lists or taken out. */
import type { Job } from '../job';
import { replaced } from './at-piece';
import type { Command, Edited } from './command';
import { refuse, settle } from './settle';

/** Steps from the job down to a field: `['pieces', 0, 'thicknessIn']`. */
export type JobPath = readonly (string | number)[];

type Container = Readonly<Record<string, unknown>> | readonly unknown[];

/** Sets one field; undefined takes an optional one away. A value equal to the old gives the same job. */
export const setField: Command<{ path: JobPath; value: unknown; title: string }> = {
  id: 'set-field',
  perform: (job, { path, value, title }) => setAt(job, path, title, () => ({ ok: true, value })),
};

/** Adds an entry at the end of a list; what the draft leaves out takes its default. */
export const addItem: Command<{ path: JobPath; value: unknown; title: string }> = {
  id: 'add-item',
  perform: (job, { path, value, title }) => {
    const edited = setAt(job, path, title, (list) =>
      Array.isArray(list) ? { ok: true, value: [...list, value] } : noList(path),
    );
    const id = edited.ok ? idOf(value) : null;
    return edited.ok && id !== null ? { ...edited, madeId: id } : edited;
  },
};

/** Takes one entry out of a list. */
export const removeItem: Command<{ path: JobPath; index: number; title: string }> = {
  id: 'remove-item',
  perform: (job, { path, index, title }) =>
    setAt(job, path, title, (list) => {
      if (!Array.isArray(list)) return noList(path);
      if (!(index in list)) return refused(path, `The list has no entry ${index + 1}.`);
      return { ok: true, value: list.filter((_, i) => i !== index) };
    }),
};

type NewValue = { readonly ok: true; readonly value: unknown } | Extract<Edited, { ok: false }>;

function setAt(job: Job, path: JobPath, title: string, change: (old: unknown) => NewValue): Edited {
  if (path.length === 0) return refused(path, 'A field needs a name.');
  const draft = replaceBelow(job, path, path, change);
  return draft.ok ? settle(job, draft.value, title) : draft;
}

function replaceBelow(
  holder: unknown,
  left: JobPath,
  path: JobPath,
  change: (old: unknown) => NewValue,
): NewValue {
  const [step, ...rest] = left;
  if (step === undefined) return change(holder);
  if (!isContainer(holder)) return noField(path);
  if (Array.isArray(holder)) {
    if (typeof step !== 'number' || !Object.hasOwn(holder, step)) return noField(path);
    const below = replaceBelow(holder[step], rest, path, change);
    return below.ok ? { ok: true, value: replaced(holder, step, below.value) } : below;
  }
  const isThere = Object.hasOwn(holder, step);
  if (!isThere && rest.length > 0) return noField(path);
  const below = replaceBelow(isThere ? Reflect.get(holder, step) : undefined, rest, path, change);
  if (!below.ok) return below;
  if (below.value !== undefined) return { ok: true, value: { ...holder, [step]: below.value } };
  return {
    ok: true,
    value: Object.fromEntries(Object.entries(holder).filter(([key]) => key !== String(step))),
  };
}

function isContainer(value: unknown): value is Container {
  return typeof value === 'object' && value !== null;
}

function idOf(value: unknown): string | null {
  const id = isContainer(value) ? (Reflect.get(value, 'id') as unknown) : null;
  return typeof id === 'string' ? id : null;
}

function noField(path: JobPath): Extract<Edited, { ok: false }> {
  return refused(path, `There is no field "${path.join(' ')}" in the job.`);
}

function noList(path: JobPath): Extract<Edited, { ok: false }> {
  return refused(path, `The field "${path.join(' ')}" is no list.`);
}

function refused(path: JobPath, sentence: string): Extract<Edited, { ok: false }> {
  return refuse('unknown-field', path.join('.'), sentence) as Extract<Edited, { ok: false }>;
}
