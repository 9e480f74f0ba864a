/** The load check of a whole job: the one entry that the command line, the window and the build book call. */
import type { Bound, BoundState, PieceAnalysis } from '../analysis';
import type { Check, Level, Limits, Need } from '../checks';
import { checkPiece, DEFAULT_LIMITS, stands, worse, worstLevel } from '../checks';
import type { Job, Piece } from '../job';
import type { ChangeSearch } from '../remedies';
import { searchChanges } from '../remedies';
import { siteFindings } from '../site';
import { judge } from './ladder';
import { worstOnTheWay } from './on-the-way';
import type { JobResult, MeshFacts, PieceResult, SupportReaction } from './results';

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
  /** How many passing changes to look for where a piece does not stand: none, the first (for its words), or one of each kind. */
  readonly changes?: 'none' | 'first' | 'all';
  readonly limits?: Limits;
  readonly onProgress?: (progress: CheckProgress) => void;
}

/**
 * Checks every piece (or one), the way there, and the site. Pure: no clock, no files. An unknown piece gives an empty
 * list of pieces; callers refuse it before.
 */
export function checkJob(job: Job, options: CheckJobOptions = {}): JobResult {
  const day = options.day ?? null;
  const limits = options.limits ?? DEFAULT_LIMITS;
  const wanted = job.pieces.filter(
    ({ id }) => options.pieceId === undefined || options.pieceId === null || id === options.pieceId,
  );
  const total = wanted.length + 1;
  const analyses: PieceAnalysis[] = [];
  const pieces = wanted.map((piece, index) => {
    options.onProgress?.({ done: index, total, words: piece.name });
    const { result, analysis } = checkOne(job, piece, day, limits, options);
    if (analysis !== null) analyses.push(analysis);
    return result;
  });
  options.onProgress?.({ done: wanted.length, total, words: 'the site' });
  const site = siteFindings(job, analyses);
  options.onProgress?.({ done: total, total, words: 'done' });

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

function checkOne(
  job: Job,
  piece: Piece,
  day: number | null,
  limits: Limits,
  options: CheckJobOptions,
): { readonly result: PieceResult; readonly analysis: PieceAnalysis | null } {
  const meshSizeIn = options.meshSizeIn ?? null;
  const { analysis, checks } = checkPiece(job, piece, { day, meshSizeIn }, limits);
  const failing = checks.filter(({ level }) => !stands(level));
  const search = lookForChanges(job, piece, failing, day, limits, options);
  const verdict = judge(checks, limits, passingNeeds(search));
  const result: PieceResult = {
    id: piece.id,
    name: piece.name,
    copies: piece.copies,
    areaFt2: (analysis?.weight.areaIn2 ?? 0) / 144,
    weightLb: analysis?.weight.slabLb ?? 0,
    centroid: analysis?.weight.centre ?? { xIn: 0, yIn: 0 },
    thicknessIn: piece.thicknessIn,
    verdict,
    checks,
    reactions: analysis === null ? [] : reactionsOf(analysis),
    governing:
      analysis === null
        ? null
        : { sagging: worstOf(analysis, 'sagging').at, hogging: worstOf(analysis, 'hogging').at },
    mesh: analysis === null ? null : meshFacts(analysis),
    worstOnTheWay: day === null ? worstOnTheWay(job, piece, limits) : null,
    changes: search?.changes ?? [],
    triedInVain: search?.failed.map(({ words }) => words) ?? [],
    remarks: analysis?.remarks ?? [],
  };
  return { result, analysis };
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

function worstOf(analysis: PieceAnalysis, sense: 'sagging' | 'hogging'): BoundState['sagging'] {
  const { low, high } = analysis.elastic;
  return low[sense].momentLbfInPerIn >= high[sense].momentLbfInPerIn ? low[sense] : high[sense];
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
    parts.push(`${pieces.length - failing.length} of ${pieces.length} pieces hold`);
    for (const { name, verdict } of failing) {
      parts.push(`${name} ${verdict.words.charAt(0).toLowerCase()}${verdict.words.slice(1)}`);
    }
  }
  if (!wayStands) parts.push('a moment on the way needs attention');
  if (!siteStands) parts.push('the site needs attention');
  return `${parts.join('; ')}.`;
}
