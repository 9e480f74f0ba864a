import type { PieceAnalysis } from '../../../src-core/analysis';
import { printersOf } from '../../../src-core/analysis';
import { DEFAULT_LIMITS } from '../../../src-core/checks';
import type { Job } from '../../../src-core/job';
import { pieceRegion } from '../../../src-core/job';
import type { LadderContext, Step } from '../../../src-core/remedies/step';
import { analyse } from '../../support/pieces';

/** What a ladder of the job's first piece is built from, analysed on a coarse mesh. */
export function contextOf(job: Job): LadderContext & { readonly analysis: PieceAnalysis } {
  const piece = job.pieces[0]!;
  const plan = pieceRegion(piece);
  if (!plan.ok) throw new Error(plan.problems[0]!.sentence);
  return {
    job,
    piece,
    region: { outer: plan.outer, holes: plan.holes },
    analysis: analyse(job, { meshSizeIn: 3 }),
    limits: DEFAULT_LIMITS,
    print: printersOf(job),
  };
}

export function titlesOf(run: readonly Step[]): string[] {
  return run.map(({ shortTitle }) => shortTitle);
}
