/** Searches the changes that make a failing piece pass, alone and in bundles of up to three kinds. */
import { meshSizeFor } from '../analysis';
import type { Check, Limits } from '../checks';
import type { Job, Piece } from '../job';
import { crossCheck } from '../job';
import type { Change, ChangeSearch } from './change';
import type { Offer } from './offer';
import { smallestFirst } from './offer';
import type { Node, Search } from './search-level';
import { nothingMends, regionOf, searchLevel } from './search-level';
import type { Step } from './step';
import type { Trial } from './trial';
import { tryPiece } from './trial';

export interface SearchOptions {
  /** Checks of the piece as drawn, at change or engineer. */
  readonly failing: readonly Check[];
  /** Mesh of the verdict, on which every offer is confirmed; null is the piece's own. */
  readonly finalMeshSizeIn: number | null;
  /** Mesh of the trials. */
  readonly trialMeshSizeIn?: number;
  /** How many offers are wanted: 1 for the verdict's words; all where left out. */
  readonly most?: number;
  readonly limits: Limits;
  /** Called with each change as soon as the mesh of the verdict has confirmed it. */
  readonly onChange?: (change: Change) => void;
  readonly onProgress?: (evaluations: number, words: string) => void;
  readonly isCancelled?: () => boolean;
}

/** Meshes of the trials, coarsest first: the first is taken that sees the same failures as the verdict's own. */
const TRIAL_MESHES_IN = [3, 2];
/** Ratios of the same check on two meshes that differ by less count as the same. */
const SAME_RATIO = 1.15;
/** Beyond this ratio a check says no more than that it fails. */
const HOPELESS_RATIO = 3;
const MOST_KINDS = 3;
/** With so many offers of fewer kinds no larger bundle is looked for. */
const ENOUGH_OFFERS = 2;
/** Trials after which the search ends with what it has. */
const MOST_EVALUATIONS = 150;

/**
 * Every kind of change that may mend what fails is tried alone, smallest first; where too few pass, near misses are bundled
 * with further kinds. Each offer has passed every check of the whole piece on the mesh of the verdict.
 */
export function searchChanges(job: Job, pieceId: string, options: SearchOptions): ChangeSearch {
  const piece = job.pieces.find(({ id }) => id === pieceId);
  if (piece === undefined) throw new Error(`job ${job.id} has no piece ${pieceId}`);
  const { limits } = options;
  let evaluations = 0;
  const isOver = () => evaluations >= MOST_EVALUATIONS || options.isCancelled?.() === true;
  const tryOn = (steps: readonly Step[], meshSizeIn: number | null): Trial | null => {
    const changed = steps.at(-1)?.piece ?? piece;
    if (isOver() || !fitsAlone(job, changed)) return null;
    const rated = steps.flatMap(({ ratedSupportIds }) => ratedSupportIds);
    const trial = tryPiece(job, changed, rated, meshSizeIn, limits);
    evaluations++;
    options.onProgress?.(evaluations, steps.map(({ shortTitle }) => shortTitle).join('; '));
    return trial;
  };
  const start = startOf(piece, options, tryOn);
  if (start === null) return { changes: [], failed: [], evaluations };
  const finalMeshIn = options.finalMeshSizeIn;
  const most = options.most ?? Number.POSITIVE_INFINITY;
  const search: Search = {
    job,
    piece,
    limits,
    trialMeshIn: start.meshSizeIn,
    finalMeshIn,
    most,
    tryOn,
    isOver,
    onChange: (change) => options.onChange?.(change),
  };
  const root: Node = { steps: [], trial: start.trial, failing: options.failing };
  const hopeless = nothingMends(search, root);
  if (hopeless !== null) return { changes: [], failed: hopeless, evaluations };
  const offers: Offer[] = [];
  const failed: ChangeSearch['failed'][number][] = [];
  let nodes: readonly Node[] = [root];
  for (let level = 1; level <= MOST_KINDS && nodes.length > 0; level++) {
    const result = searchLevel(
      search,
      nodes,
      offers.map(({ change }) => change.kinds),
    );
    offers.push(...result.offers);
    failed.push(...result.failed);
    if (offers.length >= Math.min(most, ENOUGH_OFFERS)) break;
    nodes = canMove(options.failing, result.nodes) ? result.nodes : [];
  }
  const changes = offers.sort(smallestFirst).map(({ change }) => change);
  return { changes: changes.slice(0, options.most), failed, evaluations };
}

/** The piece as drawn on the coarsest mesh that sees what fails as the verdict's own mesh does. */
function startOf(
  piece: Piece,
  options: SearchOptions,
  tryOn: Search['tryOn'],
): { readonly trial: Trial; readonly meshSizeIn: number | null } | null {
  const finalIn = options.finalMeshSizeIn ?? meshSizeFor(regionOf(piece), piece.thicknessIn);
  const coarser = options.trialMeshSizeIn === undefined ? TRIAL_MESHES_IN : [options.trialMeshSizeIn];
  const meshes = coarser.filter((meshSizeIn) => meshSizeIn > finalIn);
  let start: { trial: Trial; meshSizeIn: number | null } | null = null;
  for (const meshSizeIn of meshes.length === 0 ? [options.finalMeshSizeIn] : meshes) {
    const trial = tryOn([], meshSizeIn);
    if (trial === null) break;
    start = { trial, meshSizeIn };
    if (seesTheSame(options.failing, trial.failing)) break;
  }
  return start;
}

function seesTheSame(fine: readonly Check[], coarse: readonly Check[]): boolean {
  const ids = new Set([...fine, ...coarse].map(({ id }) => id));
  return [...ids].every((id) => {
    const [a, b] = [worstOf(fine, id), worstOf(coarse, id)];
    return (a >= HOPELESS_RATIO && b >= HOPELESS_RATIO) || (a <= b * SAME_RATIO && b <= a * SAME_RATIO);
  });
}

function worstOf(checks: readonly Check[], id: string): number {
  return checks.reduce((most, check) => (check.id === id ? Math.max(most, check.ratio) : most), 0);
}

/** Whether for each thing that needs an engineer as drawn some near miss has moved it; else no bundle of them will. */
function canMove(asDrawn: readonly Check[], nodes: readonly Node[]): boolean {
  return asDrawn
    .filter(({ level }) => level === 'engineer')
    .every(({ id }) =>
      nodes.some(({ failing }) => {
        const isLeft = failing.some((check) => check.id === id && check.level === 'engineer');
        return !isLeft || worstOf(failing, id) < worstOf(asDrawn, id);
      }),
    );
}

/** Whether the changed piece fits together by itself; its neighbours are asked before it is offered. */
function fitsAlone(job: Job, piece: Piece): boolean {
  const problems = crossCheck({ ...job, pieces: [piece] });
  return problems.every(({ code, path }) => !path.startsWith('pieces[0]') || code === 'butted-to-nothing');
}
