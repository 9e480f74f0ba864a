/** One level of the search: each near miss so far with one kind of change more. */
import { printersOf } from '../analysis';
import type { Check, Limits } from '../checks';
import type { Job, Piece } from '../job';
import { pieceRegion, readJob } from '../job';
import type { Region } from '../outline';
import type { Change, ChangeKind, ChangeSearch } from './change';
import type { Climb } from './climb';
import { climbLadder } from './climb';
import { KINDS, kindsFor, kindsWorthTrying, ladderOf } from './kinds';
import { noConfirmation, nothingOfKind, nothingPasses } from './miss-words';
import type { Offer } from './offer';
import { offerOf, smallestFirst } from './offer';
import type { Ladder, LadderContext, Step } from './step';
import type { Trial } from './trial';
import { missRatio, withPiece } from './trial';

/** A near miss that a further kind of change may turn into a pass. */
export interface Node {
  readonly steps: readonly Step[];
  readonly trial: Trial;
  readonly failing: readonly Check[];
}

export interface Search {
  readonly job: Job;
  /** The piece as drawn. */
  readonly piece: Piece;
  readonly limits: Limits;
  readonly trialMeshIn: number | null;
  readonly finalMeshIn: number | null;
  /** How many offers are wanted. */
  readonly most: number;
  /** null where the steps make no valid job, or the search is over. */
  readonly tryOn: (steps: readonly Step[], meshSizeIn: number | null) => Trial | null;
  readonly isOver: () => boolean;
  readonly onChange: (change: Change) => void;
}

export interface LevelResult {
  /** Confirmed on the mesh of the verdict, smallest first. */
  readonly offers: readonly Offer[];
  readonly failed: ChangeSearch['failed'];
  /** Near misses from which the next level may start, nearest first. */
  readonly nodes: readonly Node[];
}

/** Near misses of a level that are carried on into bundles. */
const MOST_NEAR_MISSES = 3;
/** Larger steps tried when one that passes on the coarse mesh fails on the fine one. */
const MOST_CONFIRMATIONS = 3;
/** From this ratio on the fine mesh, larger steps are not confirmed either: the coarse one misjudged the kind. */
const MISJUDGED_RATIO = 1.5;

interface Way {
  readonly node: Node;
  readonly ladder: Ladder;
  readonly kinds: readonly ChangeKind[];
}

/** What passes on the coarse mesh, confirmed or not yet. */
interface Found {
  readonly way: Way;
  readonly climb: Climb;
  readonly offer: Offer;
  readonly isConfirmed: boolean;
}

/**
 * Ladders are climbed on the coarse mesh, those with the fewest parts first, until none to come can beat what is found; then
 * what would be offered is confirmed on the mesh of the verdict, and if it fails there the climbing goes on.
 */
export function searchLevel(
  search: Search,
  nodes: readonly Node[],
  offered: readonly (readonly ChangeKind[])[],
): LevelResult {
  const ways = nodes.flatMap((node) => waysFrom(search, node, offered)).sort(fewestPartsFirst);
  const failed: ChangeSearch['failed'][number][] = [];
  const next: Node[] = [];
  let found: Found[] = [];
  const miss = (way: Way, climb: Climb, words: ChangeSearch['failed'][number]) => {
    failed.push(words);
    const { node } = way;
    const nearest = climb.nearest;
    if (nearest === null || !clearsSome(node.failing, nearest.trial)) return;
    next.push({ steps: [...node.steps, nearest.step], trial: nearest.trial, failing: nearest.trial.failing });
  };
  let at = 0;
  for (;;) {
    for (; at < ways.length && !search.isOver() && !isSettled(search, found, ways[at]!.ladder); at++) {
      const way = ways[at]!;
      const { excuse, kind } = way.ladder;
      if (excuse !== null) {
        if (way.kinds.length === 1) failed.push(nothingOfKind(kind, excuse));
        continue;
      }
      const climb = climbLadder(way.ladder, (step) =>
        search.tryOn([...way.node.steps, step], search.trialMeshIn),
      );
      const offer = offerOnTrial(search, way, climb);
      if (offer !== null) found.push({ way, climb, offer, isConfirmed: false });
      else miss(way, climb, nothingPasses(way.node.steps, kind, climb.nearest));
    }
    found.sort((a, b) => smallestFirst(a.offer, b.offer));
    const doubtful = found.slice(0, search.most).find(({ isConfirmed }) => !isConfirmed);
    if (doubtful === undefined) break;
    const offer = confirm(search, doubtful);
    found = found.filter((one) => one !== doubtful);
    if (offer !== null) {
      found.push({ ...doubtful, offer, isConfirmed: true });
      search.onChange(offer.change);
    } else miss(doubtful.way, doubtful.climb, noConfirmation(doubtful.way.kinds));
  }
  const offers = found.filter(({ isConfirmed }) => isConfirmed).map(({ offer }) => offer);
  next.sort((a, b) => a.failing.length - b.failing.length || kindOrder(a) - kindOrder(b));
  return { offers, failed, nodes: next.slice(0, MOST_NEAR_MISSES) };
}

/** Where no kind that may mend a failing check can be tried at all, why not; null where each check has one. */
export function nothingMends(search: Search, node: Node): ChangeSearch['failed'] | null {
  const context = contextOf(search, node);
  for (const check of node.failing) {
    const ladders = kindsFor(check).map((kind) => ladderOf(kind, context));
    const excuses = ladders.flatMap(({ kind, excuse }) =>
      excuse === null ? [] : [nothingOfKind(kind, excuse)],
    );
    if (excuses.length === ladders.length) return excuses;
  }
  return null;
}

/** Kinds that come after those of the node, so that no bundle is met twice, and that hold no smaller offer in them. */
function waysFrom(search: Search, node: Node, offered: readonly (readonly ChangeKind[])[]): Way[] {
  const last = node.steps.at(-1);
  const from = last === undefined ? 0 : KINDS.indexOf(last.kind) + 1;
  return kindsWorthTrying(node.failing).flatMap((kind) => {
    const kinds = [...node.steps.map((step) => step.kind), kind];
    const holdsOffer = offered.some((smaller) => smaller.every((one) => kinds.includes(one)));
    if (KINDS.indexOf(kind) < from || holdsOffer) return [];
    return [{ node, ladder: ladderOf(kind, contextOf(search, node)), kinds }];
  });
}

/** Ladders start from the piece before its new ties were rated, so that each trial rates them anew. */
function contextOf({ job, piece, limits }: Search, { steps, trial }: Node): LadderContext {
  const changed = steps.at(-1)?.piece ?? piece;
  return {
    job: withPiece(job, changed),
    piece: changed,
    region: regionOf(changed),
    analysis: trial.analysis,
    limits,
    print: printersOf(job),
  };
}

function offerOnTrial(search: Search, { node }: Way, { passing }: Climb): Offer | null {
  if (passing === null) return null;
  const { step, trial } = passing.first;
  return offerOf(search.job, search.piece, [...node.steps, step], trial);
}

/** The smallest step that passes on the mesh of the verdict; larger ones are tried where it fails there. */
function confirm(search: Search, { way, climb }: Found): Offer | null {
  if (climb.passing === null) return null;
  const { first, larger } = climb.passing;
  const isSameMesh = search.trialMeshIn === search.finalMeshIn;
  for (const step of [first.step, ...larger].slice(0, MOST_CONFIRMATIONS)) {
    const steps = [...way.node.steps, step];
    const trial = isSameMesh && step === first.step ? first.trial : search.tryOn(steps, search.finalMeshIn);
    if (trial === null) continue;
    if (missRatio(trial) > MISJUDGED_RATIO) return null;
    if (trial.failing.length > 0) continue;
    if (readJob(withPiece(search.job, trial.piece)).ok) {
      return offerOf(search.job, search.piece, steps, trial);
    }
  }
  return null;
}

/** Whether enough is found that no ladder still to come can beat. */
function isSettled({ most }: Search, found: readonly Found[], ladder: Ladder): boolean {
  if (found.length < most) return false;
  const worst = found.map(({ offer }) => offer).sort(smallestFirst)[most - 1]!;
  if (worst.givesLess !== ladder.givesLess) return ladder.givesLess;
  return worst.change.cost.parts <= ladder.leastParts;
}

function fewestPartsFirst({ ladder: a }: Way, { ladder: b }: Way): number {
  return Number(a.givesLess) - Number(b.givesLess) || a.leastParts - b.leastParts;
}

function kindOrder({ steps }: Node): number {
  return KINDS.indexOf(steps[0]!.kind);
}

/** Whether something that failed no longer does. */
function clearsSome(failing: readonly Check[], trial: Trial): boolean {
  return failing.some(({ id }) => trial.failing.every((still) => still.id !== id));
}

/** The slab in plan. A piece of a job that was read has one. */
export function regionOf(piece: Piece): Region {
  const plan = pieceRegion(piece);
  if (!plan.ok) throw new Error(`piece ${piece.id} has an outline that cannot be used`);
  return { outer: plan.outer, holes: plan.holes };
}
