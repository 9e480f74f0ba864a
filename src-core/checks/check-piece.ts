/** Runs every check on one analysed piece. The runner knows no check by name. */
import type { AnalyseOptions, PieceAnalysis } from '../analysis';
import { analysePiece } from '../analysis';
import type { Job, Piece } from '../job';
import type { Check } from './check';
import { sortChecks } from './level';
import type { Limits } from './limits';
import { RULES } from './list';

export interface CheckedPiece {
  /** null where the piece could not be analysed; the only check then says why. */
  readonly analysis: PieceAnalysis | null;
  /** Worst first. */
  readonly checks: readonly Check[];
}

/** Analyses a piece and runs every check on it. Never throws for a job that passed the schema. */
export function checkPiece(job: Job, piece: Piece, options: AnalyseOptions, limits: Limits): CheckedPiece {
  const result = analysePiece(job, piece, options);
  if (!result.ok) {
    return { analysis: null, checks: [cannotCheck(piece.id, result.cannot.reason, result.cannot.sentence)] };
  }
  return { analysis: result.analysis, checks: checkAnalysis(job, result.analysis, limits) };
}

/** Every check of the piece, worst first. A bug in a rule is thrown on with the rule's and the piece's id. */
export function checkAnalysis(job: Job, analysis: PieceAnalysis, limits: Limits): Check[] {
  const checks = RULES.flatMap((rule) => {
    try {
      return rule.run({ job, analysis, limits });
    } catch (cause) {
      throw new Error(`check ${rule.id} of piece ${analysis.piece.id}: ${String(cause)}`, { cause });
    }
  });
  for (const check of checks) {
    if (!Number.isFinite(check.ratio) || check.ratio < 0) {
      throw new Error(`check ${check.id} of piece ${check.pieceId} has ratio ${check.ratio}`);
    }
  }
  return sortChecks(checks);
}

/** A check that says why a piece could not be looked at. */
export function cannotCheck(pieceId: string, reason: string, sentence: string): Check {
  return {
    id: 'support-load',
    title: 'Load on each support',
    pieceId,
    where: { kind: 'piece' },
    demand: { value: 0, unit: 'lbf' },
    capacity: { value: 0, unit: 'lbf' },
    ratio: 0,
    level: reason === 'no-support' ? 'change' : 'engineer',
    words: sentence,
    needs: reason === 'no-support' ? ['support'] : [],
    workings: [],
    cautions: [],
  };
}
