/** Ids that one part of the job uses for another must exist: mixes, pieces, supports, falsework sections. */
import type { JobInPlan } from '../in-plan';
import type { JobProblem } from '../problem';
import { jobProblem, pieceProblem } from './problem-at';

/** Names every id that leads nowhere. */
export function references({ job, pieces }: JobInPlan): JobProblem[] {
  const mixIds = new Set(job.mixes.map(({ id }) => id));
  const pieceIds = new Set(job.pieces.map(({ id }) => id));
  const supportIds = new Set(job.pieces.flatMap(({ supports }) => supports.map(({ id }) => id)));
  const sectionIds = new Set(job.falsework.sections.map(({ id }) => id));

  const mixes = pieces
    .filter(({ piece }) => !mixIds.has(piece.mixId))
    .map((at) =>
      pieceProblem(
        at,
        'mix-unknown',
        ['mixId'],
        `"${at.piece.name}" is to be cast from the mix "${at.piece.mixId}", which the job does not have.`,
      ),
    );
  const sections = job.falsework.sections.flatMap((section, i) =>
    pieceIds.has(section.pieceId)
      ? []
      : [
          jobProblem(
            'reference-unknown',
            ['falsework', 'sections', i, 'pieceId'],
            `Falsework section "${section.id}" holds up the piece "${section.pieceId}", which the job does not have.`,
          ),
        ],
  );
  const steps = job.swap.steps.flatMap((step, i) =>
    (
      [
        ['sectionsOut', sectionIds, 'falsework section'],
        ['supportsOut', supportIds, 'support'],
        ['supportsIn', supportIds, 'support'],
      ] as const
    ).flatMap(([list, known, what]) =>
      step[list].flatMap((id, k) =>
        known.has(id)
          ? []
          : [
              jobProblem(
                'reference-unknown',
                ['swap', 'steps', i, list, k],
                `Swap step "${step.id}" names the ${what} "${id}", which the job does not have.`,
              ),
            ],
      ),
    ),
  );
  return [...mixes, ...sections, ...steps];
}
