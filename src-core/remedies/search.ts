/** Searches the changes that make a failing piece pass, alone and in bundles of up to three kinds. */
import { meshSizeFor, printersOf } from '../analysis';
import type { Check, Limits } from '../checks';
import { worstLevel } from '../checks';
import type { Job, Piece } from '../job';
import { crossCheck, pieceRegion, readJob } from '../job';
import type { Region } from '../outline';
import type { Change, ChangeKind, ChangeSearch } from './change';
import type { Climb } from './climb';
import { climbLadder } from './climb';
import { costOf } from './cost';
import { KINDS, kindsWorthTrying, ladderOf, NEED_OF } from './kinds';
import { noConfirmation, nothingOfKind, nothingPasses } from './miss-words';
import { piecePatch } from './patch';
import type { Ladder, LadderContext, Step } from './step';
import type { Trial } from './trial';
import { missRatio, tryPiece, withPiece } from './trial';

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
/** Near misses of a level that are carried on into bundles. */
const MOST_NEAR_MISSES = 3;
/** With so many offers of fewer kinds no larger bundle is looked for. */
const ENOUGH_OFFERS = 2;
/** Trials after which the search ends with what it has. */
const MOST_EVALUATIONS = 150;
/** Larger steps tried when one that passes on the coarse mesh fails on the fine one. */
const MOST_CONFIRMATIONS = 3;
/** From this ratio on the fine mesh, larger steps are not confirmed either: the coarse one misjudged the kind. */
const MISJUDGED_RATIO = 1.5;

/** A near miss that a further kind of change may turn into a pass. */
interface Node {
  readonly steps: readonly Step[];
  readonly trial: Trial;
  readonly failing: readonly Check[];
}

interface Offer {
  readonly change: Change;
  readonly givesLess: boolean;
}

interface Start {
  readonly trial: Trial;
  readonly meshSizeIn: number | null;
}

interface Search {
  readonly job: Job;
  readonly piece: Piece;
  readonly options: SearchOptions;
  readonly offers: Offer[];
  readonly failed: ChangeSearch['failed'][number][];
  /** null where the steps make no valid job, or the search is over. */
  readonly tryOn: (steps: readonly Step[], meshSizeIn: number | null) => Trial | null;
  readonly isOver: () => boolean;
}

/**
 * Every kind of change that may mend what fails is tried alone, smallest first; where too few pass, near misses are bundled
 * with further kinds. Each offer has passed every check of the whole piece on the mesh of the verdict.
 */
export function searchChanges(job: Job, pieceId: string, options: SearchOptions): ChangeSearch {
  const piece = job.pieces.find(({ id }) => id === pieceId);
  if (piece === undefined) throw new Error(`job ${job.id} has no piece ${pieceId}`);
  let evaluations = 0;
  const isOver = () => evaluations >= MOST_EVALUATIONS || options.isCancelled?.() === true;
  const search: Search = {
    job,
    piece,
    options,
    offers: [],
    failed: [],
    isOver,
    tryOn: (steps, meshSizeIn) => {
      const changed = steps.at(-1)?.piece ?? piece;
      if (isOver() || !fitsAlone(job, changed)) return null;
      const rated = steps.flatMap(({ ratedSupportIds }) => ratedSupportIds);
      const trial = tryPiece(job, changed, rated, meshSizeIn, options.limits);
      evaluations++;
      options.onProgress?.(evaluations, steps.map(({ shortTitle }) => shortTitle).join('; '));
      return trial;
    },
  };
  const start = startOf(search);
  let nodes: Node[] = start === null ? [] : [{ steps: [], trial: start.trial, failing: options.failing }];
  for (let level = 1; level <= MOST_KINDS && start !== null && nodes.length > 0; level++) {
    const next = searchLevel(search, nodes, start.meshSizeIn);
    if (search.offers.length >= Math.min(options.most ?? ENOUGH_OFFERS, ENOUGH_OFFERS)) break;
    nodes = next.some(({ failing }) => !isStubborn(options.failing, failing)) ? next : [];
  }
  const changes = search.offers
    .sort(smallestFirst)
    .slice(0, options.most)
    .map(({ change }) => change);
  return { changes, failed: search.failed, evaluations };
}

/** The piece as drawn on the coarsest mesh that sees what fails as the verdict's own mesh does. */
function startOf(search: Search): Start | null {
  const { options, piece } = search;
  const finalIn = options.finalMeshSizeIn ?? meshSizeFor(regionOf(piece));
  const coarser = options.trialMeshSizeIn === undefined ? TRIAL_MESHES_IN : [options.trialMeshSizeIn];
  const meshes = coarser.filter((meshSizeIn) => meshSizeIn > finalIn);
  let start: Start | null = null;
  for (const meshSizeIn of meshes.length === 0 ? [options.finalMeshSizeIn] : meshes) {
    const trial = search.tryOn([], meshSizeIn);
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

/** Whether something that needs an engineer as drawn is quite unmoved. */
function isStubborn(asDrawn: readonly Check[], still: readonly Check[]): boolean {
  return asDrawn.some(
    ({ id, level }) =>
      level === 'engineer' && worstOf(asDrawn, id) > 0 && worstOf(still, id) >= worstOf(asDrawn, id),
  );
}

/** Tries one kind more on each node; gives the near misses from which the next level starts. */
function searchLevel(search: Search, nodes: readonly Node[], meshSizeIn: number | null): Node[] {
  const passAlone = search.offers.flatMap(({ change: { kinds } }) => (kinds.length === 1 ? kinds : []));
  const ways = nodes
    .flatMap((node) =>
      nextKinds(node, passAlone).map((kind) => ({ node, ladder: ladderFor(search, node, kind) })),
    )
    .sort(
      ({ ladder: a }, { ladder: b }) =>
        Number(a.givesLess) - Number(b.givesLess) || a.leastParts - b.leastParts,
    );
  const next: Node[] = [];
  for (const { node, ladder } of ways) {
    if (search.isOver() || isSettled(search, ladder)) break;
    const kinds = [...node.steps.map(({ kind }) => kind), ladder.kind];
    if (ladder.excuse !== null) {
      if (kinds.length === 1) search.failed.push(nothingOfKind(ladder.kind, ladder.excuse));
      continue;
    }
    const climb = climbLadder(ladder, (step) => search.tryOn(stepsTo(node, step), meshSizeIn));
    const offer = confirm(search, node, climb, meshSizeIn);
    if (offer !== null) search.offers.push(offer);
    else
      search.failed.push(
        climb.passing === null ? nothingPasses(kinds, climb.nearest) : noConfirmation(kinds),
      );
    const { nearest } = climb;
    if (offer === null && nearest !== null && clearsSome(node.failing, nearest.trial)) {
      next.push({
        steps: stepsTo(node, nearest.step),
        trial: nearest.trial,
        failing: nearest.trial.failing,
      });
    }
  }
  return next
    .sort((a, b) => a.failing.length - b.failing.length || order(a.steps) - order(b.steps))
    .slice(0, MOST_NEAR_MISSES);
}

/** The smallest step that passes on the mesh of the verdict, as a change; larger ones are tried where it fails there. */
function confirm(search: Search, node: Node, { passing }: Climb, trialMeshIn: number | null): Offer | null {
  if (passing === null) return null;
  const { options } = search;
  const isSameMesh = trialMeshIn === options.finalMeshSizeIn;
  for (const step of [passing.first.step, ...passing.larger].slice(0, MOST_CONFIRMATIONS)) {
    const steps = stepsTo(node, step);
    const isFirst = step === passing.first.step;
    const trial = isSameMesh && isFirst ? passing.first.trial : search.tryOn(steps, options.finalMeshSizeIn);
    if (trial === null) continue;
    if (missRatio(trial) > MISJUDGED_RATIO) return null;
    if (trial.failing.length > 0) continue;
    if (readJob(withPiece(search.job, trial.piece)).ok) {
      return { change: changeOf(search, steps, trial), givesLess: steps.some((one) => one.givesLess) };
    }
  }
  return null;
}

function changeOf({ job, piece }: Search, steps: readonly Step[], trial: Trial): Change {
  const { analysis, checks } = trial;
  const worst = checks[0];
  if (analysis === null || worst === undefined) throw new Error(`a change of ${piece.id} was not checked`);
  const words = steps.map((step) => step.words({ piece: trial.piece, analysis }));
  const kinds = steps.map(({ kind }) => kind);
  return {
    id: `${piece.id}-${kinds.join('-')}`,
    pieceId: piece.id,
    kinds,
    needs: [...new Set(kinds.map((kind) => NEED_OF[kind]))],
    title: words.map(({ title }) => title).join('; '),
    patch: piecePatch(job, trial.piece),
    cost: costOf(job, piece, trial.piece, words),
    worstRatio: worst.ratio,
    worstCheckId: worst.id,
    level: worstLevel(checks),
  };
}

/** Kinds that come after those of the node, so that no bundle is met twice, and that do not pass alone. */
function nextKinds(node: Node, passAlone: readonly ChangeKind[]): ChangeKind[] {
  const last = node.steps.at(-1);
  const from = last === undefined ? 0 : KINDS.indexOf(last.kind) + 1;
  return kindsWorthTrying(node.failing).filter(
    (kind) => KINDS.indexOf(kind) >= from && !passAlone.includes(kind),
  );
}

function ladderFor({ job, options }: Search, { trial }: Node, kind: ChangeKind): Ladder {
  const { piece, analysis } = trial;
  const context: LadderContext = {
    job: withPiece(job, piece),
    piece,
    region: regionOf(piece),
    analysis,
    limits: options.limits,
    print: printersOf(job),
  };
  return ladderOf(kind, context);
}

/** The steps of a node and one more, which starts from the piece as the node left it. */
function stepsTo(node: Node, step: Step): Step[] {
  return [...node.steps, step];
}

/** Whether enough offers are in that no ladder still to come can beat. */
function isSettled({ offers, options }: Search, ladder: Ladder): boolean {
  if (options.most === undefined || offers.length < options.most) return false;
  const worst = [...offers].sort(smallestFirst)[options.most - 1]!;
  if (worst.givesLess !== ladder.givesLess) return ladder.givesLess;
  return worst.change.cost.parts <= ladder.leastParts;
}

/** Fewest kinds, then those that give all that was drawn, then fewest parts. */
function smallestFirst(a: Offer, b: Offer): number {
  return (
    a.change.kinds.length - b.change.kinds.length ||
    Number(a.givesLess) - Number(b.givesLess) ||
    a.change.cost.parts - b.change.cost.parts ||
    KINDS.indexOf(a.change.kinds[0]!) - KINDS.indexOf(b.change.kinds[0]!)
  );
}

function order(steps: readonly Step[]): number {
  return KINDS.indexOf(steps[0]!.kind);
}

function clearsSome(failing: readonly Check[], trial: Trial): boolean {
  return failing.some(({ id }) => trial.failing.every((still) => still.id !== id));
}

function regionOf(piece: Piece): Region {
  const plan = pieceRegion(piece);
  if (!plan.ok) throw new Error(`piece ${piece.id} has an outline that cannot be used`);
  return { outer: plan.outer, holes: plan.holes };
}

/** Whether the changed piece fits together by itself; its neighbours are asked before it is offered. */
function fitsAlone(job: Job, piece: Piece): boolean {
  const problems = crossCheck({ ...job, pieces: [piece] });
  return problems.every(({ code, path }) => !path.startsWith('pieces[0]') || code === 'butted-to-nothing');
}
