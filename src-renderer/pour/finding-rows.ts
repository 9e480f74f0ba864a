/** What a pour plan says beside its numbers, as rows: what asks for a change first, notes where they belong. */
import type { Pour, PouredPiece, PourFinding, PourFindingId, PourLevel, PourPlan } from '../../src-core/pour';

export interface FindingRow {
  readonly id: string;
  readonly level: PourLevel;
  /** "Attention: cold joint". */
  readonly title: string;
  readonly words: string;
  readonly source: string;
  /** Piece of a pour that it is about; null where it is about none. */
  readonly piece: { readonly pieceId: string; readonly name: string } | null;
}

export interface PlacedFindings {
  /** At the head of the panel. */
  readonly first: readonly FindingRow[];
  /** Notes that stand beside the numbers they are about. */
  readonly weather: readonly FindingRow[];
  readonly lifting: readonly FindingRow[];
}

const LEVEL_WORDS: { readonly [L in PourLevel]: string } = {
  refused: 'Refused',
  attention: 'Attention',
  note: 'Note',
};

const KIND_WORDS: { readonly [K in PourFindingId]: string } = {
  'piece-undrawn': 'a piece cannot be drawn',
  'no-bag-data': 'the bag is not known',
  'water-outside': 'water outside the range of the bag',
  'pigment-over': 'too much pigment',
  'cement-unknown': 'cement in the bag not known',
  'several-pours': 'several mixes on one day',
  'cold-joint': 'cold joint',
  'little-slack': 'little time to spare',
  'batch-stiffens': 'a batch stiffens too soon',
  'mixers-idle': 'a mixer stands idle',
  'finish-while-placing': 'float while others place',
  'bucket-heavy': 'heavy bucket',
  'bag-heavy': 'heavy bag',
  hot: 'hot weather',
  cold: 'cold weather',
  frost: 'frost',
  rain: 'rain',
  drying: 'fast drying',
};

const WEATHER_NOTES: readonly PourFindingId[] = ['rain'];
/** A note about drying only repeats what stands under its band. */
const SAID_ELSEWHERE: readonly PourFindingId[] = ['drying'];
const LIFTING_NOTES: readonly PourFindingId[] = ['bag-heavy', 'bucket-heavy'];
const GRAVEST_FIRST: readonly PourLevel[] = ['refused', 'attention', 'note'];

/** Findings of a pour and of the whole job by where they stand. What is no note always stands at the head. */
export function placedFindings(plan: PourPlan, pour: Pour | null): PlacedFindings {
  const all = [...(pour?.findings ?? []), ...plan.findings];
  const ordered = GRAVEST_FIRST.flatMap((level) => all.filter((finding) => finding.level === level));
  const isNote = (kinds: readonly PourFindingId[]) => (finding: PourFinding) =>
    finding.level === 'note' && kinds.includes(finding.kind);
  const pieces = plan.pours.flatMap((one) => one.pieces);
  const toRow = (finding: PourFinding) => rowOf(finding, pieces);
  const elsewhere = isNote([...WEATHER_NOTES, ...SAID_ELSEWHERE, ...LIFTING_NOTES]);
  return {
    first: ordered.filter((finding) => !elsewhere(finding)).map(toRow),
    weather: ordered.filter(isNote(WEATHER_NOTES)).map(toRow),
    lifting: ordered.filter(isNote(LIFTING_NOTES)).map(toRow),
  };
}

function rowOf(
  { id, level, kind, words, source, trace }: PourFinding,
  pieces: readonly PouredPiece[],
): FindingRow {
  const piece = pieces.find(({ pieceId }) => pieceId === trace?.pieceId);
  return {
    id,
    level,
    title: `${LEVEL_WORDS[level]}: ${KIND_WORDS[kind]}`,
    words,
    source,
    piece: piece === undefined ? null : { pieceId: piece.pieceId, name: piece.name },
  };
}
