/** What is found about a swap beside its checks: heights, ways in and out, sinks, feet, days, and care for the new surface. */
import { printersOf } from '../analysis';
import { worse } from '../checks';
import type { CabinetSupport, Job, Piece } from '../job';
import { cabinetHeight } from './cabinet-heights';
import type { SwapCheck } from './check-swap';
import { earliestDays } from './earliest-days';
import type { SwapFinding } from './finding';
import { legColumns } from './leg-columns';
import { sinkPassages } from './sink-passage';
import { daysThatDisagree, openSteps, propsLeftBehind, sectionWaysOut, waysIn } from './ways-in';

/** Every finding about a checked swap, in the order of its steps. None where the piece is not in the job or has no swap. */
export function swapFindings(job: Job, check: SwapCheck): SwapFinding[] {
  const piece = job.pieces.find(({ id }) => id === check.pieceId);
  if (piece === undefined || check.moments.length === 0) return [];
  const byStep = openSteps(job, piece, check.steps, check.moments).flatMap((open) => [
    ...waysIn(open),
    ...cabinetsIn(piece, open.step.supportsIn).flatMap((cabinet) => [
      cabinetHeight(job, piece, cabinet, open.step.id),
      ...sinkPassages(job, piece, cabinet, open.step.id),
      ...feetRating(job, piece, cabinet, check),
    ]),
    ...sectionWaysOut(open),
    ...propsLeftBehind(open),
    ...daysThatDisagree(open),
  ]);
  return [...byStep, ...legColumns(job, piece, check), ...tooEarly(job, piece), protection(piece)];
}

function cabinetsIn(piece: Piece, ids: readonly string[]): CabinetSupport[] {
  return piece.supports.filter(
    (support): support is CabinetSupport => support.kind === 'cabinet' && ids.includes(support.id),
  );
}

/** The most that a foot of a cabinet carries at any moment, where its rating is stated. */
function feetRating(job: Job, piece: Piece, cabinet: CabinetSupport, { moments }: SwapCheck): SwapFinding[] {
  const loads = moments.flatMap(({ checks, stepId }) =>
    checks
      .filter(
        ({ id, where, ratio }) =>
          id === 'support-load' && ratio > 0 && where.kind === 'support' && where.supportId === cabinet.id,
      )
      .map((found) => ({ found, stepId })),
  );
  const [first] = loads;
  if (first === undefined) return [];
  const { found, stepId } = loads.reduce((a, b) => (b.found.ratio > a.found.ratio ? b : a), first);
  const { force } = printersOf(job);
  const share = `A foot carries ${force(found.demand.value)} of the ${force(found.capacity.value)} it is rated for, at the worst moment.`;
  return [
    {
      id: 'feet-rating',
      pieceId: piece.id,
      stepId,
      aboutId: cabinet.id,
      level: found.level,
      title: 'Load on its feet',
      words: found.level === 'holds' ? share : found.words,
      source: "rating as the feet's maker states it in the job",
    },
  ];
}

function tooEarly(job: Job, piece: Piece): SwapFinding[] {
  return earliestDays(job, piece).flatMap(({ title, caution, source }) =>
    caution === null
      ? []
      : [
          {
            id: 'too-early',
            pieceId: piece.id,
            stepId: null,
            aboutId: null,
            level: 'holds',
            title,
            words: caution,
            source,
          },
        ],
  );
}

function protection(piece: Piece): SwapFinding {
  return {
    id: 'protection',
    pieceId: piece.id,
    stepId: null,
    aboutId: null,
    level: 'holds',
    title: 'The new surface',
    words:
      'Cover the top and its front edge with clean card and thin board before the swap, and put a soft strip on what slides past it: a slipped clamp or screw marks new concrete for good. No plastic straight on a slab that is still drying, which leaves blotches. No load on it beyond the working load, and nobody under it, while a bay is open.',
    source: 'common practice, no source',
  };
}

/** The worst rung of findings. */
export function worstFinding(findings: readonly SwapFinding[]): SwapFinding['level'] {
  return findings.reduce<SwapFinding['level']>((level, finding) => worse(level, finding.level), 'holds');
}
