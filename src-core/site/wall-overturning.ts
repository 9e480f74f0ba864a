/** What brackets and ties ask of the wall that they hold to. */
import type { PieceAnalysis } from '../analysis';
import type { StudStrength } from '../bracket';
import { studStrength, wallOverturning } from '../bracket';
import type { Level } from '../checks';
import type { Job } from '../job';
import { printCouple, printMoment } from '../units';
import type { Worked } from '../workings';
import { readingLine } from '../workings';
import type { SiteFinding } from './finding';
import type { LoadedWall, WallBuild, WallMoment } from './wall-moments';
import { wallMoments } from './wall-moments';

/** Moment that any wall may be asked for without a second thought, lbf-in/in, which is lb-ft a foot. Common practice, no source. */
export const SMALL_MOMENT_LBF_IN_PER_IN = 20;
/** A stud wall that nobody has drawn is taken as one of 2x4. */
const UNDRAWN_STUD_WALL_IN = 3.5;

interface Judged {
  readonly moment: WallMoment;
  readonly perIn: Worked;
  /** What a stud takes; null where the wall has none. */
  readonly stud: StudStrength | null;
  /** That, on an inch of wall; null where nothing is worked. */
  readonly limit: Worked | null;
  readonly level: Level;
}

/**
 * Concerns a job with brackets or ties on a wall. Studs that bend within their limit hold, with a caution, for the job does
 * not say what braces the wall; studs beyond it, and masonry beyond a small moment, are for local code or an engineer.
 */
export function wallOverturningFinding(job: Job, analyses: readonly PieceAnalysis[]): SiteFinding | null {
  const walls = analyses.flatMap(wallMoments).map(judge);
  const [first] = walls;
  if (first === undefined) return null;
  const worst = walls.reduce((a, b) => (isWorse(b, a) ? b : a), first);
  const { moment, perIn, stud, limit, level } = worst;
  return {
    id: 'wall-overturning',
    title: 'What the wall must resist',
    level,
    words: wordsOf(job, worst),
    demand: { value: perIn.value, unit: 'lbf-in/in' },
    capacity: {
      value: limit?.value ?? SMALL_MOMENT_LBF_IN_PER_IN,
      unit: 'lbf-in/in',
    },
    workings: [
      reading('M', `Moment on ${SHARE_WORDS(moment.wall)}, under ${moment.caseWords}`, moment.shareLbfIn),
      reading('MD', 'Of it under self weight', moment.deadLbfIn),
      perIn.line,
      ...(stud?.lines ?? []),
      ...(limit === null ? [] : [{ ...limit.line, label: 'The same of what the studs may take' }]),
    ],
    source:
      'statics; bending of studs NDS 2018 3.3, from memory; what is small: common practice, no source; the wall itself: local code',
    cautions: cautionsOf(job, worst, walls.length),
  };
}

function judge(moment: WallMoment): Judged {
  const { wall, shareLbfIn, isOutdoors } = moment;
  const perIn = wallOverturning({ M: shareLbfIn, s: wall.shareIn });
  const isSmall = perIn.value <= SMALL_MOMENT_LBF_IN_PER_IN;
  if (wall.build !== 'stud') {
    return { moment, perIn, stud: null, limit: null, level: isSmall ? 'holds' : 'engineer' };
  }
  const stud = studStrength(wall.widthIn ?? UNDRAWN_STUD_WALL_IN, isOutdoors);
  const limit = wallOverturning({ M: stud.momentLbfIn, s: wall.shareIn });
  return { moment, perIn, stud, limit, level: perIn.value <= limit.value ? 'holds' : 'engineer' };
}

function isWorse(a: Judged, b: Judged): boolean {
  if (a.level !== b.level) return a.level === 'engineer';
  return usedRatio(a) > usedRatio(b);
}

function usedRatio({ perIn, limit }: Judged): number {
  return perIn.value / (limit?.value ?? SMALL_MOMENT_LBF_IN_PER_IN);
}

function reading(symbol: string, label: string, value: number) {
  return readingLine({
    symbol,
    label,
    value,
    unit: 'lbf in',
    from: 'plate engine, about the middle of the wall',
  });
}

const SHARE_WORDS = ({ build, shareIn }: LoadedWall): string =>
  build === 'stud' ? `one stud and its ${shareIn} in of wall` : `${shareIn} in of wall`;

const BUILD_WORDS: { readonly [B in WallBuild]: string } = {
  stud: 'stud wall',
  block: 'block wall',
  brick: 'brick wall',
  concrete: 'concrete wall',
  post: 'steel post',
  veneer: 'brick veneer',
  unknown: 'wall of unknown make',
};

function wordsOf(job: Job, { moment, perIn, stud, limit, level }: Judged): string {
  const how = { system: job.shownIn, digits: 3 } as const;
  const { wall, pieceName, shareLbfIn, caseWords } = moment;
  const kind = BUILD_WORDS[wall.build];
  const named = wall.name.includes('wall') ? wall.name : `${kind} ${wall.name}`;
  const load = `"${pieceName}" turns the ${named} with ${printMoment(perIn.value, how)} under ${caseWords}`;
  if (stud !== null && limit !== null) {
    const one = `${printCouple(shareLbfIn, how)} on one stud`;
    const most = printCouple(stud.momentLbfIn, how);
    return level === 'holds'
      ? `${load}: ${one}, of the ${most} that a ${stud.words} may bend with.`
      : `${load}: ${one}, more than the ${most} that a ${stud.words} may bend with; the wall is for local code or an engineer.`;
  }
  return level === 'holds'
    ? `${load}, which is little.`
    : `${load}; whether it stands up to that is for local code or an engineer.`;
}

function cautionsOf(job: Job, { perIn, moment, level }: Judged, count: number): string[] {
  const isSmall = perIn.value <= SMALL_MOMENT_LBF_IN_PER_IN;
  return [
    ...(job.shownIn === 'imperial' ? ['1 lbf-in on an inch of wall is 1 lb-ft on a foot.'] : []),
    ...(moment.wall.build === 'stud' && level === 'holds' && !isSmall
      ? [
          'This is the bending of the studs alone, taken as spruce No. 2; studs stamped Stud take little more than half. A wall that stands free is held only at its foot, and a toe-nailed plate holds no moment: it needs studs that run down into the floor frame, posts or returns at its ends, or another wall to brace it. Push it by hand before anything is poured; if it gives, ask.',
        ]
      : []),
    ...(count > 1 ? [`${count} walls carry brackets or ties; this is the one nearest to its limit.`] : []),
  ];
}
