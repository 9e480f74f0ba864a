import type { PieceAnalysis } from '../../src-core/analysis';
import { analysePiece } from '../../src-core/analysis';
import type { Job, JobDraft } from '../../src-core/job';
import { jobSchema } from '../../src-core/job';

type PieceDraft = JobDraft['pieces'][number];
type SupportDraft = NonNullable<PieceDraft['supports']>[number];

/** Corners of a rectangle with its front left corner at the origin. */
export function rectangle(widthIn: number, depthIn: number): { xIn: number; yIn: number }[] {
  return [
    { xIn: 0, yIn: 0 },
    { xIn: widthIn, yIn: 0 },
    { xIn: widthIn, yIn: depthIn },
    { xIn: 0, yIn: depthIn },
  ];
}

/** A job of one piece with f'c 5000 psi, 145 pcf. */
export function jobOf(
  piece: Partial<PieceDraft> & Pick<PieceDraft, 'corners' | 'thicknessIn'>,
  more: Partial<JobDraft> = {},
): Job {
  return jobSchema.parse({
    format: 'ledgewright-job',
    version: 1,
    id: 'test',
    name: 'Test job',
    mixes: [{ id: 'mix', name: 'Bagged countertop mix', strengthPsi: 5000, strengthFrom: 'bag' }],
    ...more,
    pieces: [{ id: 'piece', name: 'Piece', use: 'counter', mixId: 'mix', ...piece }],
  });
}

/** Analyses the first piece, or throws with the sentence why not. */
export function analyse(
  job: Job,
  options: { day?: number | null; meshSizeIn?: number | null } = {},
): PieceAnalysis {
  const result = analysePiece(job, job.pieces[0]!, {
    day: options.day ?? null,
    meshSizeIn: options.meshSizeIn ?? null,
  });
  if (!result.ok) throw new Error(result.cannot.sentence);
  return result.analysis;
}

/** A wall strip along x. */
export function wallAlongX(
  id: string,
  fromXIn: number,
  toXIn: number,
  centreYIn: number,
  widthIn: number,
  more: Record<string, unknown> = {},
): SupportDraft {
  return {
    kind: 'wall',
    build: 'stud',
    id,
    from: { xIn: fromXIn, yIn: centreYIn },
    to: { xIn: toXIn, yIn: centreYIn },
    widthIn,
    ...more,
  } as SupportDraft;
}

/** E1: ledge 96 x 17.5 x 1.5 loose on a 5.5 in stud wall, 11 in out, 1 in behind. */
export const LEDGE_E1 = (): Job =>
  jobOf({
    use: 'bar-ledge',
    corners: rectangle(96, 17.5),
    thicknessIn: 1.5,
    supports: [wallAlongX('wall', 0, 96, 13.75, 5.5)],
  });

/** E2: counter 96 x 25.5 x 1.5, panel lines every 24 in from 1.5 in behind the front edge, no rails, leaning. */
export const COUNTER_E2 = (): Job =>
  jobOf({
    use: 'counter',
    corners: rectangle(96, 25.5),
    thicknessIn: 1.5,
    supports: [0, 24, 48, 72, 96].map(
      (xIn) =>
        ({
          kind: 'wall',
          build: 'stud',
          id: `panel-${xIn}`,
          from: { xIn: Math.min(95.625, Math.max(0.375, xIn)), yIn: 1.5 },
          to: { xIn: Math.min(95.625, Math.max(0.375, xIn)), yIn: 25.5 },
          widthIn: 0.75,
          stiffness: { low: 1_000, high: 20_000 },
        }) as SupportDraft,
    ),
  });

/** E3: hearth 46 x 20 x 2 on two 8 in piers, sitting. */
export const HEARTH_E3 = (): Job =>
  jobOf({
    use: 'hearth',
    corners: rectangle(46, 20),
    thicknessIn: 2,
    supports: [4, 42].map((xIn, i) => ({
      kind: 'pier',
      build: 'block',
      id: `pier-${i + 1}`,
      footprint: { kind: 'rectangle', centre: { xIn, yIn: 10 }, widthIn: 8, depthIn: 20 },
    })),
  });

/** E4: cap 20 x 20 x 1.5 bedded on a 16 x 16 pier, leaning. */
export const CAP_E4 = (): Job =>
  jobOf({
    use: 'cap',
    corners: rectangle(20, 20),
    thicknessIn: 1.5,
    supports: [
      {
        kind: 'pier',
        build: 'block',
        id: 'pier',
        footprint: { kind: 'rectangle', centre: { xIn: 10, yIn: 10 }, widthIn: 16, depthIn: 16 },
      },
    ],
  });
