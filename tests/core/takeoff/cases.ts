/** Jobs and readers for tests of the take-off. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Job, JobDraft } from '../../../src-core/job';
import { readJobText } from '../../../src-core/job';
import type { JobTakeoff, ListLine } from '../../../src-core/takeoff';
import { linesOf } from '../../../src-core/takeoff';
import type { Trace } from '../../../src-core/trace';
import { jobOf, rectangle } from '../../support/pieces';

export type PieceDraft = JobDraft['pieces'][number];

export const SQUARE = { kind: 'free', profile: { kind: 'square' } } as const;

/** 60 x 24 x 2 in with square edges, a sink of 20 x 12 in dropped in, mesh and pigment; a strip, a tube, a roll and a box have prices. */
export function sinkJob(more: Partial<JobDraft> = {}, piece: Partial<PieceDraft> = {}): Job {
  return jobOf(
    {
      corners: rectangle(60, 24),
      thicknessIn: 2,
      edges: [SQUARE, SQUARE, SQUARE, SQUARE],
      colour: { pigment: 'Slate grey', pigmentRatio: 0.05 },
      cutouts: [
        {
          id: 'sink',
          purpose: 'sink',
          shape: { kind: 'rectangle', centre: { xIn: 25, yIn: 12 }, widthIn: 20, depthIn: 12 },
          sink: { mounting: 'dropped-in' },
        },
      ],
      reinforcement: [
        {
          kind: 'mesh',
          id: 'mesh',
          wireIn: 0.08,
          spacingIn: 2,
          crossWireIn: 0.08,
          crossSpacingIn: 2,
          depthIn: 1,
        },
      ],
      ...piece,
    },
    {
      mixes: [
        {
          id: 'mix',
          name: 'Countertop mix',
          bag: { weightLb: 80, yieldFt3: 0.6, cementLb: 20, waterLeastLb: 6, waterMostLb: 7.5 },
        },
      ],
      stock: [
        { id: 'strip', name: 'Strip', kind: 'form-strip', lengthIn: 96, price: 10 },
        { id: 'sealant', name: 'Sealant', kind: 'sealant', price: 6.5 },
        { id: 'tape', name: 'Tape', kind: 'tape', price: 8 },
        { id: 'screws', name: 'Screws', kind: 'screws', price: 11, priceFrom: 'invented' },
      ],
      ...more,
    },
  );
}

/** An example job of the project. */
export function exampleJob(name: string): Job {
  const path = fileURLToPath(new URL(`../../../assets/jobs/${name}.json`, import.meta.url));
  const read = readJobText(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(read.problems.map(({ sentence }) => sentence).join(' '));
  return read.job;
}

export const EXAMPLES = ['bar-ledge', 'boathouse-galley', 'gate-pier-cap', 'hearth', 'straight-counter'];

/** The one line whose id begins so; throws where there is none, or more than one. */
export function lineOf({ list }: JobTakeoff, id: string): ListLine {
  const found = linesOf(list).filter((line) => line.id.startsWith(id));
  if (found.length !== 1) throw new Error(`${found.length} lines begin with ${id}`);
  return found[0]!;
}

/** Whether a trace names a part that the job has. */
export function isInJob(job: Job, { pieceId, part }: Trace): boolean {
  const piece = job.pieces.find(({ id }) => id === pieceId);
  if (piece === undefined) return false;
  const has = (things: readonly { readonly id: string }[]) =>
    'id' in part && things.some(({ id }) => id === part.id);
  switch (part.kind) {
    case 'piece':
      return true;
    case 'corner':
    case 'edge':
      return part.index >= 0 && part.index < piece.corners.length;
    case 'cutout':
      return has(piece.cutouts);
    case 'support':
      return has(piece.supports);
    case 'steel':
      return has(piece.reinforcement);
    case 'joint':
      return has(piece.joints);
    case 'section':
      return has(job.falsework.sections);
  }
}
