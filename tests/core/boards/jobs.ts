/** Jobs of one piece on boards of 60 x 36 in unless told. */
import { readFileSync } from 'node:fs';
import type { BackingBoards } from '../../../src-core/boards';
import { backingBoards } from '../../../src-core/boards';
import type { Job, JobDraft } from '../../../src-core/job';
import { pieceRegion, readJobText } from '../../../src-core/job';
import type { Region } from '../../../src-core/outline';
import { jobOf } from '../../support/pieces';

type PieceDraft = JobDraft['pieces'][number];

/** A job of one piece with these corners, 2 in thick, sawn without loss unless told. */
export function slabOf(
  pairs: readonly (readonly [number, number, number?])[],
  more: Partial<PieceDraft> = {},
  jobMore: Partial<JobDraft> = {},
): Job {
  const corners = pairs.map(([xIn, yIn, radiusIn = 0]) => ({ xIn, yIn, radiusIn }));
  return jobOf({ corners, thicknessIn: 2, ...more }, { forms: { kerfIn: 0 }, ...jobMore });
}

/** The boards of the job's first piece. */
export function boardsOf(job: Job): BackingBoards {
  const boards = backingBoards(job, job.pieces[0]!);
  if (boards === null) throw new Error('no boards');
  return boards;
}

/** The first piece in plan. */
export function regionOf(job: Job): Region {
  const region = pieceRegion(job.pieces[0]!);
  if (!region.ok) throw new Error('no region');
  return region;
}

/** One of the example jobs. */
export function exampleJob(name: string): Job {
  const reading = readJobText(
    readFileSync(new URL(`../../../assets/jobs/${name}.json`, import.meta.url), 'utf8'),
  );
  if (!reading.ok) throw new Error(`${name} does not read`);
  return reading.job;
}

export const COUNTER = [
  [0, 0],
  [96, 0],
  [96, 25.5],
  [0, 25.5],
] as const;

/** An L of 121.5 in along the back and 85.5 in along the left, both legs 25.5 in deep. */
export const ELL = [
  [0, -60],
  [25.5, -60],
  [25.5, 0],
  [121.5, 0],
  [121.5, 25.5],
  [0, 25.5],
] as const;
