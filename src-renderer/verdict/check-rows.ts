/** The checks of a piece as rows: which, in what order, and printed how. */
import type { Check } from '../../src-core/checks';
import { sortChecks, stands } from '../../src-core/checks';
import type { Piece } from '../../src-core/job';
import type { Point } from '../../src-core/outline';
import { printQuantity, printRatio } from '../../src-core/report';
import type { UnitSystem } from '../../src-core/units';
import { levelWords } from './level-words';
import { tapeEndRatio } from './tape';

/** A ratio below this would print as 0.00: it takes nothing of its limit. */
const LEAST_RATIO = 0.005;

export interface CheckRow {
  readonly key: string;
  readonly check: Check;
  /** The support that the check is about, where there are several alike; empty otherwise. */
  readonly about: string;
  /** Two decimals; empty where the check compares nothing. */
  readonly ratio: string;
  /** The rung in words. */
  readonly level: string;
  /** Where both views fly to; null for a check of the piece as a whole. */
  readonly at: Point | null;
}

export interface CheckRows {
  /** Worst first: every check that fails, and of those that hold the worst of each kind. */
  readonly rows: readonly CheckRow[];
  /** Checks that hold at other supports with more to spare than the one of their kind among the rows. */
  readonly atOtherSupports: readonly CheckRow[];
  /** Checks that only inform and ask for nothing. */
  readonly alsoLookedAt: readonly CheckRow[];
  /** Ratio at the end of every tape. */
  readonly endRatio: number;
}

/** Rows of a piece's checks. One without a ratio that does not stand is among the rows: it is a finding, not a remark. */
export function checkRows(piece: Piece, checks: readonly Check[]): CheckRows {
  const rows = sortChecks(checks).map((check, index) => rowOf(piece, check, index));
  const informs = ({ check }: CheckRow) => check.ratio < LEAST_RATIO && stands(check.level);
  const compared = rows.filter((row) => !informs(row));
  const isElsewhere = ({ check, about }: CheckRow, index: number) =>
    about !== '' &&
    stands(check.level) &&
    compared.slice(0, index).some((worse) => worse.check.id === check.id && worse.about !== '');
  return {
    rows: compared.filter((row, index) => !isElsewhere(row, index)),
    atOtherSupports: compared.filter(isElsewhere),
    alsoLookedAt: rows.filter(informs),
    endRatio: tapeEndRatio(checks.map(({ ratio }) => ratio)),
  };
}

/** Key of a check of a piece by its place among the piece's checks, worst first. */
export function checkKey(pieceId: string, checkId: string, index: number): string {
  return `${pieceId}/${checkId}/${index}`;
}

function rowOf(piece: Piece, check: Check, index: number): CheckRow {
  const { where, ratio } = check;
  return {
    key: checkKey(piece.id, check.id, index),
    check,
    about: where.kind === 'support' ? supportName(piece, where.supportId) : '',
    ratio: ratio > 0 ? printRatio(ratio) : '',
    level: levelWords(check.level),
    at: where.kind === 'piece' ? null : where.at,
  };
}

function supportName({ supports }: Piece, supportId: string): string {
  return supports.find(({ id }) => id === supportId)?.name ?? supportId;
}

/** Demand and capacity printed, where the check compares them; null where it only informs. */
export function comparedWords(
  { ratio, demand, capacity }: Check,
  system: UnitSystem,
): { readonly demand: string; readonly capacity: string } | null {
  if (ratio <= 0) return null;
  return { demand: printQuantity(demand, system), capacity: printQuantity(capacity, system) };
}
