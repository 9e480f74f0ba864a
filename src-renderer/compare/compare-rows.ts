/** Two versions of a piece side by side, as rows. */
import { governingCheck } from '../../src-core/checks';
import type { EdgeProfile, Piece } from '../../src-core/job';
import { printRatio } from '../../src-core/report';
import type { UnitSystem } from '../../src-core/units';
import { printLength, printMass, sentenceCase } from '../../src-core/units';
import type { PieceResult } from '../../src-core/verdict';
import type { PieceFacts } from '../pieces/piece-facts';
import type { PieceVerdict } from '../state/verdict-store';
import { weightChange } from '../verdict/change-rows';
import type { ProfileKind } from './instead';
import { drawnProfile } from './instead';
import type { AsideCheck } from './useAside';

/** A version, and what is known of it; null until its answer is there. */
export interface Version {
  readonly piece: Piece;
  readonly facts: PieceFacts;
  readonly result: Pick<PieceResult, 'checks' | 'verdict'> | null;
}

export interface CompareRow {
  readonly label: string;
  readonly drawn: string;
  readonly instead: string;
  readonly differs: boolean;
}

export const PROFILE_WORDS: { readonly [K in EdgeProfile['kind']]: string } = {
  square: 'square',
  eased: 'eased',
  chamfer: 'chamfer',
  'round-over': 'round-over',
  bullnose: 'bullnose',
  'half-bullnose': 'half bullnose',
  cove: 'cove',
  ogee: 'ogee',
  stepped: 'stepped',
  own: 'own profile',
};

export const FINISH_WORDS: { readonly [F in Piece['finish']]: string } = {
  smooth: 'smooth',
  honed: 'honed',
  exposed: 'exposed stone',
};

/** Profiles that may be chosen; one of the builder's own needs its points and is drawn elsewhere. */
export const PROFILE_CHOICES = (Object.keys(PROFILE_WORDS) as EdgeProfile['kind'][])
  .filter((kind): kind is ProfileKind => kind !== 'own')
  .map((value) => ({ value, words: sentenceCase(PROFILE_WORDS[value]) }));

export const FINISH_CHOICES = (Object.keys(FINISH_WORDS) as Piece['finish'][]).map((value) => ({
  value,
  words: sentenceCase(FINISH_WORDS[value]),
}));

const WAITING = 'not worked out yet';
const WEIGHT_DIGITS = 3;

/** Every measure of both versions, in the order in which a builder weighs them. */
export function compareRows(drawn: Version, instead: Version, system: UnitSystem): CompareRow[] {
  const measures: readonly [string, (version: Version) => string][] = [
    ['Thickness', ({ piece }) => printLength(piece.thicknessIn, { system })],
    ['Free edges', ({ piece }) => profileWords(piece)],
    ['Finish', ({ piece }) => FINISH_WORDS[piece.finish]],
    ['Pigment', ({ piece }) => colourWords(piece.colour)],
    ['Weight', ({ facts }) => weightWords(facts, system)],
    ['Longest overhang', ({ facts }) => overhangWords(facts, system)],
    ['Worst check', ({ result }) => worstWords(result)],
  ];
  return measures.map(([label, words]) => {
    const row = { label, drawn: words(drawn), instead: words(instead) };
    return { ...row, differs: row.drawn !== row.instead };
  });
}

/** What the other version costs in weight, with every copy: "141 lb heavier, 3 of them". Empty where one cannot be weighed. */
export function weightDifference(drawn: Version, instead: Version, system: UnitSystem): string {
  const [before, after] = [drawn.facts.weightLb, instead.facts.weightLb];
  if (before === null || after === null) return '';
  const { copies } = instead.piece;
  const change = weightChange((after - before) * copies, system);
  return copies > 1 ? `${change}, all ${copies} together` : change;
}

function profileWords(piece: Piece): string {
  const kind = drawnProfile(piece);
  if (kind !== null) return PROFILE_WORDS[kind];
  return piece.edges?.some((edge) => edge.kind === 'free') === true ? 'several profiles' : 'none';
}

function colourWords(colour: Piece['colour']): string {
  if (colour === null) return 'none';
  return `${colour.pigment}, ${Number((colour.pigmentRatio * 100).toFixed(1))} % of the cement`;
}

function weightWords({ weightLb }: PieceFacts, system: UnitSystem): string {
  return weightLb === null ? 'cannot be built' : printMass(weightLb, { system, digits: WEIGHT_DIGITS });
}

function overhangWords({ overhangIn }: PieceFacts, system: UnitSystem): string {
  return overhangIn === null ? 'nothing carries it' : printLength(overhangIn, { system });
}

function worstWords(result: Version['result']): string {
  if (result === null) return WAITING;
  const worst = governingCheck(result.checks);
  if (worst === null) return 'nothing was checked';
  return worst.ratio > 0 ? `${worst.title} ${printRatio(worst.ratio)}` : worst.title;
}

/** What is said under the two versions while either is not the last word. */
export function versionWords(
  state: AsideCheck['state'],
  drawn: Pick<PieceVerdict, 'quality' | 'isStale'> | undefined,
): string {
  switch (state) {
    case 'nothing-asked':
      return 'Both are as drawn.';
    case 'checking':
      return 'Checking the other version.';
    case 'no-answer':
      return 'The other version could not be checked. Change something to try again.';
    case 'answered':
      return drawn === undefined || drawn.isStale || drawn.quality === 'coarse'
        ? 'The version as drawn is still being checked.'
        : '';
  }
}
