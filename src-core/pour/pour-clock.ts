/** The clock of a pour: its order, batches, buckets and joints, and whether the crew is fast enough. */
import type { Job, Piece } from '../job';
import type { Trace } from '../trace';
import type { Line } from '../workings';
import type { BatchTime, Pace } from './batch-clock';
import { batchTimes, paceOf } from './batch-clock';
import type { BatchAmounts } from './batches';
import type { BatchJoint, Casting } from './cold-joints';
import { batchJoints, batchSlackMinutes, leastSlackMinutes } from './cold-joints';
import { fillPath } from './fill-path';
import type { FindingDraft } from './finding';
import type { FinishStep } from './finish';
import { finishSteps } from './finish';
import type { LeastCrew } from './least-crew';
import { leastCrew } from './least-crew';
import { bucketVolume } from './mix-formulas';
import type { PouredPiece } from './pour-amounts';
import { castingsOf } from './pour-amounts';
import type { PourGroup } from './pour-groups';
import { pourOrder } from './pour-order';
import { LEAST_SLACK_MINUTES } from './practice';
import { settingRate, workingTime } from './setting-time';
import type { Bucket } from './timeline';
import { bucketTimeline } from './timeline';

export interface PourClock {
  /** Working time that counts: the bag's, less in heat. */
  readonly workingMinutes: number;
  readonly pace: Pace;
  readonly order: readonly Casting[];
  /** One a batch. */
  readonly times: readonly BatchTime[];
  readonly joints: readonly BatchJoint[];
  readonly buckets: readonly Bucket[];
  readonly bucketFt3: number;
  /** Least time to spare at any joint and in any batch; negative where one is cold. */
  readonly leastSlackMinutes: number;
  /** Smallest crew with ten minutes to spare in this order; null where none of ten people with four mixers is enough. */
  readonly leastCrew: LeastCrew | null;
  readonly finish: readonly FinishStep[];
  readonly lines: readonly Line[];
  readonly findings: readonly FindingDraft[];
}

/** The clock of a pour whose batches are known. Pieces must be drawn. */
export function pourClock(
  job: Job,
  { id, mix, pieces }: PourGroup,
  poured: readonly PouredPiece[],
  batches: readonly BatchAmounts[],
): PourClock {
  const paths = pathsOf(pieces);
  const castings = castingsOf(poured, paths, job.forms.overfillRatio);
  const pace = paceOf(job.crew);
  const rate = settingRate(job.site.weather.concreteC);
  const working = workingTime({ tb: mix.workingMinutes, k: rate.value });
  const placedFt3 = batches.map((batch) => batch.placedFt3);
  const times = batchTimes(placedFt3, pace);
  const order = pourOrder(castings, placedFt3, times, working.value);
  const joints = batchJoints(order, placedFt3, times, working.value);
  const bucket = bucketVolume({ G: job.crew.bucketGal, f: job.crew.bucketFill });
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const buckets = bucketTimeline({
    pourId: id,
    castings: order,
    placedFt3,
    times,
    pace,
    bucketFt3: bucket.value,
    wetDensityPcf: job.falsework.wetDensityPcf,
    paths,
  });
  const finish = finishSteps({
    pourId: id,
    castings: order,
    pieces: byId,
    buckets,
    times,
    workingMinutes: mix.workingMinutes,
    settingRate: rate.value,
  });
  const crew = leastCrew(order, placedFt3, pace, working.value);
  return {
    workingMinutes: working.value,
    pace,
    order,
    times,
    joints,
    buckets,
    bucketFt3: bucket.value,
    leastSlackMinutes: leastSlackMinutes(joints, times, working.value),
    leastCrew: crew,
    finish: finish.steps,
    lines: [rate.line, working.line, bucket.line, ...finish.lines],
    findings: [
      ...jointFindings(joints, byId, crew),
      ...stiffFinding(times, working.value, crew),
      ...idleFinding(job, pace),
      ...finishFinding(finish.steps, buckets, byId),
    ],
  };
}

function pathsOf(pieces: readonly Piece[]) {
  return new Map(
    pieces.flatMap((piece) => {
      const path = fillPath(piece);
      return path === null ? [] : [[piece.id, path] as const];
    }),
  );
}

function traceOf(pieceId: string): Trace {
  return { pieceId, part: { kind: 'piece' } };
}

/** For each piece its worst joint, where that is cold or has little time to spare. */
function jointFindings(
  joints: readonly BatchJoint[],
  pieces: ReadonlyMap<string, Piece>,
  crew: LeastCrew | null,
): FindingDraft[] {
  return [...new Set(joints.map(({ pieceId }) => pieceId))].flatMap((pieceId): FindingDraft[] => {
    const own = joints.filter((joint) => joint.pieceId === pieceId);
    const worst = own.reduce((least, joint) => (joint.slackMinutes < least.slackMinutes ? joint : least));
    const { name } = pieces.get(pieceId)!;
    const meeting = `batch ${worst.batch} meets concrete that is ${minutes(worst.gapMinutes)} old`;
    if (worst.slackMinutes < 0) {
      return [
        {
          kind: 'cold-joint',
          level: 'attention',
          trace: traceOf(pieceId),
          words: `${name} takes more concrete than this crew places in its working time: ${meeting}, ${minutes(-worst.slackMinutes)} too late, and the two do not knit. ${cures(crew)}`,
          source: 'the working time on the bag; common practice, no source',
        },
      ];
    }
    if (worst.slackMinutes >= LEAST_SLACK_MINUTES) return [];
    return [
      {
        kind: 'little-slack',
        level: 'note',
        trace: traceOf(pieceId),
        words: `In ${name} ${meeting}: only ${minutes(worst.slackMinutes)} to spare. ${cures(crew)}`,
        source: `common practice, no source: ${LEAST_SLACK_MINUTES} minutes to spare`,
      },
    ];
  });
}

function stiffFinding(
  times: readonly BatchTime[],
  workingMinutes: number,
  crew: LeastCrew | null,
): FindingDraft[] {
  const slackMinutes = batchSlackMinutes(times, workingMinutes);
  if (slackMinutes >= 0) return [];
  return [
    {
      kind: 'batch-stiffens',
      level: 'attention',
      trace: null,
      words: `A batch stiffens before the last of it is placed, ${minutes(-slackMinutes)} too soon. Never add water to it. Mix smaller batches, or: ${cures(crew)}`,
      source: 'the working time on the bag',
    },
  ];
}

/** What would serve where the crew is too slow. */
function cures(crew: LeastCrew | null): string {
  const others =
    'set retarder as the maker of the bag allows it, or a construction joint where an engineer puts it';
  if (crew === null)
    return `No crew of a usual size is fast enough: pour less at a time, take ${others}, or have it delivered ready mixed.`;
  const { people, mixers, slackMinutes } = crew;
  return `${people} people with ${mixers === 1 ? 'one mixer' : `${mixers} mixers`} would have ${minutes(slackMinutes)} to spare; else ${others}.`;
}

function idleFinding({ crew }: Job, { mixers }: Pace): FindingDraft[] {
  if (mixers >= crew.mixers) return [];
  return [
    {
      kind: 'mixers-idle',
      level: 'note',
      trace: null,
      words: `Of ${crew.mixers} mixers ${mixers} can run: each takes one person, and one must be left to place.`,
      source: 'common practice, no source',
    },
  ];
}

function finishFinding(
  steps: readonly FinishStep[],
  buckets: readonly Bucket[],
  pieces: ReadonlyMap<string, Piece>,
): FindingDraft[] {
  const lastMinutes = buckets.at(-1)?.toMinutes ?? 0;
  const early = steps.filter(({ kind, fromMinutes }) => kind === 'float' && fromMinutes < lastMinutes);
  if (early.length === 0) return [];
  const names = [...new Set(early.map(({ pieceId }) => pieces.get(pieceId)!.name))].join(', ');
  return [
    {
      kind: 'finish-while-placing',
      level: 'attention',
      trace: traceOf(early[0]!.pieceId),
      words: `${names} must be floated while concrete is still placed elsewhere: have somebody on the float who neither mixes nor carries.`,
      source: 'common practice, no source',
    },
  ];
}

function minutes(count: number): string {
  const whole = Math.round(count);
  return whole === 1 ? '1 minute' : `${whole} minutes`;
}
