import { describe, expect, it } from 'vitest';
import type { Job } from '../../../src-core/job';
import type { Field, Thing } from '../../../src-renderer/forms/specs/field';
import { JOB_FORMS } from '../../../src-renderer/forms/specs/job-forms';
import { PIECE_FIELDS } from '../../../src-renderer/forms/specs/piece-fields';
import { isShown, offeredKinds } from '../../../src-renderer/forms/specs/shown';
import { changeEdge, edgesOf } from '../../../src-renderer/forms/starts/new-parts';
import type { Target } from '../../../src-renderer/forms/target';
import {
  below,
  edgeTarget,
  jobTarget,
  pieceTarget,
  stepsOf,
  valueAt,
} from '../../../src-renderer/forms/target';
import { bench } from './bench';
import { EXAMPLE_JOBS, examplePiece } from './example-jobs';

interface Try {
  readonly called: string;
  /** What the form would do; answers null or a sentence. */
  readonly act: () => string | null;
}

/** Everything but typing that a form can do to a thing as it stands: kinds, parts put in or out, entries added. */
function tries(fields: readonly Field[], target: Target, called: string): Try[] {
  return fields
    .filter((field) => isShown(field, target.value))
    .flatMap((field): Try[] => {
      if (field.kind === 'group') return tries(field.fields, target, called);
      if (field.kind === 'pick') {
        return field.picks.map(({ id, values }) => ({
          called: `${called} as ${id}`,
          act: () => target.set([], { ...(target.value as Thing), ...values }, 'Change'),
        }));
      }
      const steps = stepsOf(field.at);
      const here = below(target, steps);
      const place = field.at === '' ? called : `${called}.${field.at}`;
      switch (field.kind) {
        case 'choice': {
          const { follows } = field;
          // a choice that nothing follows is a field set like any other
          if (follows === undefined) return [];
          return field.choices.map(({ value }) => ({
            called: `${place} ${value}`,
            act: () => target.set([], follows(target.value as Thing, value, target.around), 'Change'),
          }));
        }
        case 'kinds': {
          const current = valueAt(here.value, [field.by]);
          const kind = field.kinds.find(({ value }) => value === current);
          return [
            ...offeredKinds(field, current, here.around).map(({ value }) => ({
              called: `${place} from ${String(current)} to ${value}`,
              act: () => here.set([], field.change(here.value, value, here.around), 'Change'),
            })),
            ...tries(kind?.fields ?? [], here, `${place}<${String(current)}>`),
          ];
        }
        case 'part':
          return here.value === null
            ? [
                {
                  called: `${place} put in`,
                  act: () => here.set([], field.start(target.value as Thing, here.around), 'Add'),
                },
              ]
            : [
                ...(field.isAlways === true
                  ? []
                  : [{ called: `${place} taken out`, act: () => here.set([], null, 'Remove') }]),
                ...tries(field.fields, here, place),
              ];
        case 'bounds':
          return [{ called: `${place} of my own`, act: () => here.set([], field.start, 'Change') }];
        case 'list': {
          const items = here.value as readonly unknown[] | null;
          const { next, none } = field;
          if (items === null) {
            const start = () => none!.start(target.value as Thing, here.around);
            return [{ called: `${place} begun`, act: () => here.set([], start(), 'Change') }];
          }
          return [
            ...(next === null
              ? []
              : [
                  {
                    called: `${place} one more`,
                    act: () => here.add([], next(items, here.around), 'Add'),
                  },
                ]),
            ...items.flatMap((_, i) => tries(field.item, below(here, [i]), `${place}[]`)),
          ];
        }
        case 'parts': {
          const items = (here.value ?? []) as readonly unknown[];
          // where a support of another kind goes depends on the piece; the rest is told by one piece
          const whose = field.part === 'support' ? ` of ${here.around.piece!.id}` : '';
          return items.flatMap((_, i) => tries(field.fields, below(here, [i]), `${place}[]${whose}`));
        }
        default:
          return [];
      }
    });
}

/** One try of a name: forty cabinets tell no more than one. */
function refusals(job: Job): string[] {
  // each try is made on the job as it was
  const fresh: ReturnType<typeof bench>['run'] = (command, args) => bench(job).run(command, args);
  const all = [
    ...job.pieces.flatMap((piece) => tries(PIECE_FIELDS, pieceTarget(job, piece, fresh), 'piece')),
    ...JOB_FORMS.flatMap(({ at, fields }) => tries(fields, below(jobTarget(job, fresh), stepsOf(at)), 'job')),
  ];
  const once = [...new Map(all.map((one) => [one.called, one])).values()];
  return once.flatMap(({ called, act }) => {
    const sentence = act();
    return sentence === null ? [] : [`${called}: ${sentence}`];
  });
}

describe('a change of kind, a part put in, an entry added', () => {
  it.each(EXAMPLE_JOBS.map((job) => [job.id, job] as const))('is taken by %s', (_, job) => {
    expect(refusals(job)).toEqual([]);
  });
});

describe('an edge', () => {
  const { job, piece } = examplePiece('boathouse-galley', 'foot-ledge');

  it('keeps its 1/4 in gap when it meets a piece rather than a wall', () => {
    const edge = changeEdge({ kind: 'wall', gapIn: 0.25 }, 'butted', { job, piece });
    expect(edge).toEqual({ kind: 'butted', gapIn: 0.25, toPieceId: 'bar-ledge' });
  });

  it('of a piece that leaves all edges free is written down with the others', () => {
    const bare = { ...piece, edges: null };
    const bareJob = { ...job, pieces: job.pieces.map((one) => (one === piece ? bare : one)) };
    const { held, run } = bench(bareJob);
    const target = edgeTarget(bareJob, bare, 2, run);
    expect(target.set(['profile', 'kind'], 'square', 'Change profile')).toBeNull();
    const kinds = edgesOf(held.job.pieces.find(({ id }) => id === bare.id)!).map(
      (edge) => edge.kind === 'free' && edge.profile.kind,
    );
    expect(kinds).toEqual(['eased', 'eased', 'square', 'eased']);
  });
});
