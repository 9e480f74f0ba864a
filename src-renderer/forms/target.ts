/** What a form edits: a thing of the job, and how its fields are set by commands. */
import { addItem, removeItem, setField } from '../../src-core/edit';
import type { Job, JobProblem, Piece } from '../../src-core/job';
import type { WindowState } from '../state/window-store';
import type { Surroundings } from './specs/field';
import { edgesOf } from './starts/new-parts';

export type Step = string | number;
type Run = WindowState['run'];

/** A thing of the job. Setting answers null, or the sentence of what was refused; then all is as it was. */
export interface Target {
  readonly value: unknown;
  readonly around: Surroundings;
  readonly set: (path: readonly Step[], value: unknown, title: string) => string | null;
  readonly add: (path: readonly Step[], value: unknown, title: string) => string | null;
  readonly remove: (path: readonly Step[], index: number, title: string) => string | null;
}

/** The whole job. */
export function jobTarget(job: Job, run: Run): Target {
  return {
    value: job,
    around: { job, piece: null },
    set: (path, value, title) => firstSentence(run(setField, { path, value, title })),
    add: (path, value, title) => firstSentence(run(addItem, { path, value, title })),
    remove: (path, index, title) => firstSentence(run(removeItem, { path, index, title })),
  };
}

/** A piece of the job. */
export function pieceTarget(job: Job, piece: Piece, run: Run): Target {
  const index = job.pieces.indexOf(piece);
  return { ...below(jobTarget(job, run), ['pieces', index]), around: { job, piece } };
}

/** An edge of a piece. Where the job leaves all edges free, the first change writes every one of them down. */
export function edgeTarget(job: Job, piece: Piece, index: number, run: Run): Target {
  const ofPiece = pieceTarget(job, piece, run);
  if (piece.edges !== null) return below(ofPiece, ['edges', index]);
  const edges = edgesOf(piece);
  const edge = edges[index]!;
  const whole = (changed: unknown, title: string) =>
    ofPiece.set(['edges'], edges.with(index, changed as typeof edge), title);
  return {
    value: edge,
    around: ofPiece.around,
    set: (path, value, title) => whole(withValue(edge, path, value), title),
    add: (path, value, title) =>
      whole(withValue(edge, path, [...(valueAt(edge, path) as unknown[]), value]), title),
    remove: (path, at, title) =>
      whole(withValue(edge, path, (valueAt(edge, path) as unknown[]).toSpliced(at, 1)), title),
  };
}

/** A thing within a thing. */
export function below(target: Target, steps: readonly Step[]): Target {
  if (steps.length === 0) return target;
  return {
    value: valueAt(target.value, steps),
    around: target.around,
    set: (path, value, title) => target.set([...steps, ...path], value, title),
    add: (path, value, title) => target.add([...steps, ...path], value, title),
    remove: (path, index, title) => target.remove([...steps, ...path], index, title),
  };
}

/** Steps of a place as the field descriptions write it: `falsework.species`, or '' for the thing itself. */
export function stepsOf(at: string): readonly Step[] {
  return at === '' ? [] : at.split('.');
}

/** What stands at a place; undefined where there is nothing. */
export function valueAt(thing: unknown, steps: readonly Step[]): unknown {
  return steps.reduce<unknown>(
    (value, step) => (typeof value === 'object' && value !== null ? Reflect.get(value, step) : undefined),
    thing,
  );
}

/** The thing with another value at a place. */
export function withValue(thing: unknown, steps: readonly Step[], value: unknown): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  const inner = withValue(valueAt(thing, [step]), rest, value);
  if (Array.isArray(thing)) return thing.with(Number(step), inner);
  return { ...(thing as object), [step]: inner };
}

/** What a person is told of a refusal: the first thing that is wrong. */
export function firstSentence(problems: readonly JobProblem[]): string | null {
  return problems[0]?.sentence ?? null;
}

/** "Thickness" as the name of a step of undo: "Change thickness". */
export function changeTitle(label: string): string {
  return `Change ${label.charAt(0).toLowerCase()}${label.slice(1)}`;
}
