/** An offer: a bundle of steps that passed, as a change with its patch, its cost and its place among the others. */
import { governingCheck, worstLevel } from '../checks';
import type { Job, Piece } from '../job';
import type { Change } from './change';
import { costOf } from './cost';
import { KINDS, NEED_OF } from './kinds';
import { piecePatch } from './patch';
import type { Step } from './step';
import type { Trial } from './trial';

export interface Offer {
  readonly change: Change;
  readonly givesLess: boolean;
}

/** The offer that a passing trial makes; `piece` is the piece as drawn. */
export function offerOf(job: Job, piece: Piece, steps: readonly Step[], trial: Trial): Offer {
  const { analysis, checks } = trial;
  const worst = governingCheck(checks);
  if (analysis === null || worst === null) throw new Error(`a change of ${piece.id} was not checked`);
  const words = steps.map((step) => step.words({ piece: trial.piece, analysis }));
  const kinds = steps.map(({ kind }) => kind);
  const change: Change = {
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
  return { change, givesLess: steps.some((step) => step.givesLess) };
}

/** Fewest kinds, then those that give all that was drawn, then fewest parts. */
export function smallestFirst(a: Offer, b: Offer): number {
  return (
    a.change.kinds.length - b.change.kinds.length ||
    Number(a.givesLess) - Number(b.givesLess) ||
    a.change.cost.parts - b.change.cost.parts ||
    KINDS.indexOf(a.change.kinds[0]!) - KINDS.indexOf(b.change.kinds[0]!)
  );
}
