/** What a pour plan says beside its numbers. */
import type { Trace } from '../trace';

/** A note is worth knowing; attention asks for a change; what is refused is left out of the numbers. */
export type PourLevel = 'note' | 'attention' | 'refused';

export type PourFindingId =
  | 'piece-undrawn'
  | 'no-bag-data'
  | 'water-outside'
  | 'pigment-over'
  | 'cement-unknown'
  | 'several-pours'
  | 'cold-joint'
  | 'little-slack'
  | 'batch-stiffens'
  | 'mixers-idle'
  | 'finish-while-placing'
  | 'bucket-heavy'
  | 'bag-heavy'
  | 'hot'
  | 'cold'
  | 'frost'
  | 'rain'
  | 'drying';

export interface PourFinding {
  /** Stable: its kind and what it is about. */
  readonly id: string;
  readonly kind: PourFindingId;
  readonly level: PourLevel;
  /** Null where it is about the whole job. */
  readonly pourId: string | null;
  /** Part of the drawing that it is about; null where it is about a mix, the crew or the weather. */
  readonly trace: Trace | null;
  /** One or two sentences in a builder's words. */
  readonly words: string;
  readonly source: string;
}

/** A finding before its pour puts its own id to it. */
export type FindingDraft = Omit<PourFinding, 'id' | 'pourId'>;

/** Findings of a pour, or of the whole job where `pourId` is null, each with an id of its own. */
export function numbered(drafts: readonly FindingDraft[], pourId: string | null): PourFinding[] {
  const seen = new Map<string, number>();
  return drafts.map((draft) => {
    const about = draft.trace === null ? '' : `/${draft.trace.pieceId}`;
    const stem = `${pourId ?? 'job'}/${draft.kind}${about}`;
    const times = (seen.get(stem) ?? 0) + 1;
    seen.set(stem, times);
    return { ...draft, id: times === 1 ? stem : `${stem}/${times}`, pourId };
  });
}
