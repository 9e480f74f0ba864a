/** What the tests of the commands share: a job to edit, and what a command gave. */
import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import type { Edited } from '../../../src-core/edit';
import type { Job, JobProblem, Piece } from '../../../src-core/job';
import { readJob, readJobText } from '../../../src-core/job';
import { smallJob } from '../../support/small-job';

/** A 96 x 24 x 2 in counter with a sink and a tap on two piers and a leg, and a ledge on a wall with two arms. */
export function sampleJob(): Job {
  const reading = readJob(smallJob());
  if (!reading.ok) throw new Error(reading.problems[0]?.sentence);
  return reading.job;
}

/** An example job as it is shipped. */
export function exampleJob(name: string): Job {
  const file = new URL(`../../../assets/jobs/${name}.json`, import.meta.url);
  const reading = readJobText(readFileSync(file, 'utf8'));
  if (!reading.ok) throw new Error(reading.problems[0]?.sentence);
  return reading.job;
}

/** What a command that was carried out gave; its job must read as a file does, and come out of the reading as it went in. */
export function done(edited: Edited): Extract<Edited, { ok: true }> {
  if (!edited.ok) throw new Error(`refused: ${edited.problems[0]?.sentence}`);
  const reading = readJob(JSON.parse(JSON.stringify(edited.job)));
  expect(reading).toEqual({ ok: true, job: edited.job, migratedFrom: null });
  return edited;
}

/** The first reason why a command was refused. */
export function refusal(edited: Edited): JobProblem {
  if (edited.ok) throw new Error(`carried out: ${edited.title}`);
  return edited.problems[0]!;
}

/** A piece of a job by its id. */
export function pieceOf(job: Job, id: string): Piece {
  const piece = job.pieces.find((one) => one.id === id);
  if (piece === undefined) throw new Error(`no piece ${id}`);
  return piece;
}

/** Corners as plain pairs. */
export function pairs(points: readonly { readonly xIn: number; readonly yIn: number }[]): [number, number][] {
  return points.map(({ xIn, yIn }) => [xIn, yIn]);
}
