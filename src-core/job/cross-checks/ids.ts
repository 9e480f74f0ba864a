/** Every id names one thing: pieces, supports, mixes and the rest in the job, the parts of a piece in the piece. */
import type { JobInPlan } from '../in-plan';
import type { FieldPath, JobProblem } from '../problem';
import { jobProblem, pieceProblem } from './problem-at';

interface Named {
  readonly id: string;
  readonly report: (sentence: string) => JobProblem;
}

/** Names every second use of an id. */
export function ids({ job, pieces }: JobInPlan): JobProblem[] {
  const inJob = (list: readonly { readonly id: string }[], ...path: readonly string[]): Named[] =>
    list.map(({ id }, i) => ({
      id,
      report: (sentence) => jobProblem('id-repeated', [...path, i, 'id'], sentence),
    }));
  const lists: [string, readonly Named[]][] = [
    ['mix', inJob(job.mixes, 'mixes')],
    ['stock item', inJob(job.stock, 'stock')],
    ['tick', inJob(job.ticks, 'ticks')],
    ['level reading', inJob(job.site.levels.readings, 'site', 'levels', 'readings')],
    ['falsework section', inJob(job.falsework.sections, 'falsework', 'sections')],
    ['swap step', inJob(job.swap.steps, 'swap', 'steps')],
    ['piece', pieces.map((at) => named(at, at.piece.id, ['id']))],
    [
      'support',
      pieces.flatMap((at) => at.piece.supports.map(({ id }, i) => named(at, id, ['supports', i, 'id']))),
    ],
    ...pieces.map((at): [string, Named[]] => ['part of the piece', partsOf(at)]),
  ];
  return lists.flatMap(([what, list]) => repeated(what, list));
}

function partsOf(at: JobInPlan['pieces'][number]): Named[] {
  const { joints, cutouts, reinforcement, loads } = at.piece;
  return [
    ...joints.map(({ id }, i) => named(at, id, ['joints', i, 'id'])),
    ...cutouts.map(({ id }, i) => named(at, id, ['cutouts', i, 'id'])),
    ...reinforcement.map(({ id }, i) => named(at, id, ['reinforcement', i, 'id'])),
    ...loads.fixed.map(({ id }, i) => named(at, id, ['loads', 'fixed', i, 'id'])),
  ];
}

function named(at: JobInPlan['pieces'][number], id: string, path: FieldPath): Named {
  return { id, report: (sentence) => pieceProblem(at, 'id-repeated', path, sentence) };
}

function repeated(what: string, list: readonly Named[]): JobProblem[] {
  const seen = new Set<string>();
  return list.flatMap(({ id, report }) => {
    if (!seen.has(id)) {
      seen.add(id);
      return [];
    }
    return [report(`The id "${id}" is used by more than one ${what}; give each its own.`)];
  });
}
