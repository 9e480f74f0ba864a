/** The load check of a whole job: the one entry that the command line, the window and the build book call. */
import type { Bound, PieceAnalysis, QuickLook } from '../analysis';
import type { Check, Level, Limits, Need } from '../checks';
import { checkPiece, DEFAULT_LIMITS, stands, worse, worstLevel } from '../checks';
import type { Job, Piece } from '../job';
import type { Change, ChangeSearch } from '../remedies';
import { searchChanges } from '../remedies';
import { siteFindings } from '../site';
import { judge } from './ladder';
import { worstOnTheWay } from './on-the-way';
import type { Governing, JobResult, MeshFacts, PieceResult, SupportReaction } from './results';

export interface CheckProgress {
  readonly done: number;
  readonly total: number;
  readonly words: string;
}

export interface CheckJobOptions {
  /** Day of the job; null or left out: the finished state, and beside it the worst moment on the way. */
  readonly day?: number | null;
  /** Only this piece. */
  readonly pieceId?: string | null;
  /** Mesh size for every piece; null takes each piece's own. */
  readonly meshSizeIn?: number | null;
  /** What is spared for a quick look; left out, nothing. */
  readonly quick?: QuickLook | undefined;
  /** How many passing changes to look for where a piece does not stand: none, the first (for its words), or one of each kind. */
  readonly changes?: 'none' | 'first' | 'all';
  /** Whether the moments between pour and hand-over are looked at too, where no day is asked for; true where left out. */
  readonly looksOnTheWay?: boolean;
  readonly limits?: Limits;
  readonly onProgress?: (progress: CheckProgress) => void;
  /** Called with each change of a piece as soon as it has passed, in the order in which they are found. */
  readonly onChange?: (change: Change) => void;
  /** Asked between the engine's runs; once it is true the rest of the search for changes is left out. */
  readonly isCancelled?: () => boolean;
}

/** A piece that was checked, with the analysis behind it; null where it cannot be analysed. */
export interface CheckedOne {
  readonly result: PieceResult;
  readonly analysis: PieceAnalysis | null;
}

/**
 * Checks every piece (or one), the way there, and the site. Pure: no clock, no files. An unknown piece gives an empty
 * list of pieces; callers refuse it before.
 */
export function checkJob(job: Job, options: CheckJobOptions = {}): JobResult {
  const wanted = job.pieces.filter(
    ({ id }) => options.pieceId === undefined || options.pieceId === null || id === options.pieceId,
  );
  const total = wanted.length + 1;
  const checked = wanted.map((piece, index) => {
    options.onProgress?.({ done: index, total, words: piece.name });
    return checkOnePiece(job, piece, options);
  });
  options.onProgress?.({ done: wanted.length, total, words: 'the site' });
  const result = jobResult(job, options.day ?? null, checked);
  options.onProgress?.({ done: total, total, words: 'done' });
  return result;
}

/** The verdict of the job from its checked pieces, and the site's findings beside them. */
export function jobResult(job: Job, day: number | null, checked: readonly CheckedOne[]): JobResult {
  const pieces = checked.map(({ result }) => result);
  const site = siteFindings(
    job,
    checked.flatMap(({ analysis }) => analysis ?? []),
  );
  const siteLevel = worstLevel(site);
  const pieceLevel = pieces.reduce<Level>((level, { verdict }) => worse(level, verdict.level), 'holds');
  const wayLevel = pieces.reduce<Level>(
    (level, { worstOnTheWay: way }) => worse(level, way?.level ?? 'holds'),
    'holds',
  );
  const level = worse(worse(pieceLevel, wayLevel), siteLevel);
  return {
    jobId: job.id,
    name: job.name,
    day,
    verdict: { level, words: jobWords(pieces, stands(wayLevel), stands(siteLevel)) },
    pieces,
    site,
    needsAttention: !stands(level),
  };
}

/** Checks one piece of a job, looks at its way there, and for changes where it fails. */
export function checkOnePiece(job: Job, piece: Piece, options: CheckJobOptions = {}): CheckedOne {
  return seekChanges(job, piece, lookAtPiece(job, piece, options), options);
}

/** The checks of one piece and its verdict, before any change is looked for. */
export function lookAtPiece(job: Job, piece: Piece, options: CheckJobOptions = {}): CheckedOne {
  const limits = options.limits ?? DEFAULT_LIMITS;
  const { day = null, meshSizeIn = null, quick } = options;
  const { analysis, checks } = checkPiece(job, piece, { day, meshSizeIn, quick }, limits);
  const result: PieceResult = {
    id: piece.id,
    name: piece.name,
    copies: piece.copies,
    areaFt2: (analysis?.weight.areaIn2 ?? 0) / 144,
    weightLb: analysis?.weight.slabLb ?? 0,
    centroid: analysis?.weight.centre ?? { xIn: 0, yIn: 0 },
    thicknessIn: piece.thicknessIn,
    verdict: judge(checks, limits, analysis === null ? checks[0]?.needs : undefined),
    checks,
    reactions: analysis === null ? [] : reactionsOf(analysis),
    governing: analysis === null ? null : governingOf(analysis),
    mesh: analysis === null ? null : meshFacts(analysis),
    worstOnTheWay: null,
    changes: [],
    triedInVain: [],
    remarks: analysis?.remarks ?? [],
  };
  return { result, analysis };
}

/** What `lookAtPiece` found, with the worst moment on the way and, where the piece fails, the changes that pass. */
export function seekChanges(
  job: Job,
  piece: Piece,
  looked: CheckedOne,
  options: CheckJobOptions = {},
): CheckedOne {
  const day = options.day ?? null;
  const limits = options.limits ?? DEFAULT_LIMITS;
  const { checks } = looked.result;
  const failing = checks.filter(({ level }) => !stands(level));
  // a piece without anything under it needs what its check names; where that stands is for the person to draw
  const search = looked.analysis === null ? null : lookForChanges(job, piece, failing, day, limits, options);
  const looksOnTheWay = day === null && options.looksOnTheWay !== false && options.isCancelled?.() !== true;
  return {
    analysis: looked.analysis,
    result: {
      ...looked.result,
      verdict: looked.analysis === null ? looked.result.verdict : judge(checks, limits, passingNeeds(search)),
      worstOnTheWay: looksOnTheWay ? worstOnTheWay(job, piece, limits) : null,
      changes: search?.changes ?? [],
      triedInVain: search?.failed.map(({ words }) => words) ?? [],
    },
  };
}

/** Looks for changes where a piece fails as drawn when finished; a check that only an engineer may answer is not searched. */
function lookForChanges(
  job: Job,
  piece: Piece,
  failing: readonly Check[],
  day: number | null,
  limits: Limits,
  options: CheckJobOptions,
): ChangeSearch | null {
  const how = options.changes ?? 'first';
  if (failing.length === 0 || how === 'none' || day !== null) return null;
  return searchChanges(job, piece.id, {
    failing,
    finalMeshSizeIn: options.meshSizeIn ?? null,
    limits,
    ...(how === 'first' ? { most: 1 } : {}),
    ...(options.onChange === undefined ? {} : { onChange: options.onChange }),
    ...(options.isCancelled === undefined ? {} : { isCancelled: options.isCancelled }),
  });
}

/** Needs of the smallest passing change; null where the search found none, undefined where there was no search. */
function passingNeeds(search: ChangeSearch | null): readonly Need[] | null | undefined {
  return search === null ? undefined : (search.changes[0]?.needs ?? null);
}

/** Reactions by support: dead, most and least over all load cases, the wider of both stiffness bounds. */
function reactionsOf(analysis: PieceAnalysis): SupportReaction[] {
  const found: SupportReaction[] = [];
  for (const bound of ['low', 'high'] as const satisfies readonly Bound[]) {
    const state = (analysis.cracked ?? analysis.elastic)[bound];
    const supports = new Map<string, string>();
    for (const { support } of analysis.bearings) supports.set(support.id, support.name ?? support.id);
    for (const [supportId, words] of supports) {
      const totals = state.cases.map(({ reactions }) =>
        reactions
          .filter(({ bearing }) => analysis.bearings[bearing]!.support.id === supportId)
          .reduce((sum, { pushLbf, tieLbf }) => ({ push: sum.push + pushLbf, tie: sum.tie + tieLbf }), {
            push: 0,
            tie: 0,
          }),
      );
      found.push({
        supportId,
        words,
        bound,
        deadLbf: totals[0]!.push - totals[0]!.tie,
        mostLbf: Math.max(...totals.map(({ push, tie }) => push - tie)),
        leastLbf: Math.min(...totals.map(({ push, tie }) => push - tie)),
        tieLbf: Math.max(...totals.map(({ tie }) => tie)),
      });
    }
  }
  return found;
}

function governingOf({ elastic: { low, high } }: PieceAnalysis): Governing {
  const worst = (sense: 'sagging' | 'hogging') =>
    [low, high]
      .map((state) => ({ state, moment: state[sense] }))
      .reduce((a, b) => (b.moment.momentLbfInPerIn > a.moment.momentLbfInPerIn ? b : a));
  const [sagging, hogging] = [worst('sagging'), worst('hogging')];
  const { state, moment } =
    sagging.moment.momentLbfInPerIn >= hogging.moment.momentLbfInPerIn ? sagging : hogging;
  const live = state.cases.find(({ id }) => id === moment.caseId)?.live;
  return {
    sagging: sagging.moment.at,
    hogging: hogging.moment.at,
    loadAt: live?.kind === 'roving' ? live.centre : null,
  };
}

function meshFacts({ mesh, contacts, elastic, cracked }: PieceAnalysis): MeshFacts {
  const states = [elastic.low, elastic.high, ...(cracked === null ? [] : [cracked.low, cracked.high])];
  return {
    nodes: mesh.xIn.length,
    triangles: mesh.triangles.length / 3,
    sizeIn: mesh.sizeIn,
    contacts: contacts.length,
    loadCases: elastic.low.cases.length,
    factorisations: cracked?.factorisations ?? 1,
    imbalance: Math.max(...states.flatMap(({ cases }) => cases.map(({ imbalance }) => imbalance))),
  };
}

function jobWords(pieces: readonly PieceResult[], wayStands: boolean, siteStands: boolean): string {
  const failing = pieces.filter(({ verdict }) => !stands(verdict.level));
  const parts: string[] = [];
  if (failing.length === 0) {
    const withSteel = pieces.some(({ verdict }) => verdict.level === 'steel');
    parts.push(withSteel ? 'Every piece holds, some with their steel' : 'Every piece holds');
  } else {
    if (pieces.length > 1) parts.push(`${pieces.length - failing.length} of ${pieces.length} pieces hold`);
    for (const { name, verdict } of failing) {
      parts.push(`${name} ${verdict.words.charAt(0).toLowerCase()}${verdict.words.slice(1)}`);
    }
  }
  if (!wayStands) parts.push('a moment on the way needs attention');
  if (!siteStands) parts.push('the site needs attention');
  return `${parts.join('; ')}.`;
}
