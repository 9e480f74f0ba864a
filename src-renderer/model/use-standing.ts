import { useMemo } from 'react';
import type { FalseworkSection, Job, Piece } from '../../src-core/job';
import type { PieceOnDay } from '../../src-core/sequence';
import { standingOn } from '../../src-core/sequence';
import { useWindow } from '../state/store-context';

export interface StandingPiece extends Omit<PieceOnDay, 'sections'> {
  readonly day: number;
  readonly sections: readonly FalseworkSection[];
}

/** What stands of a piece on the day that is shown; null for the finished job. */
export function useStanding(job: Job, piece: Piece): StandingPiece | null {
  const day = useWindow((state) => state.day);
  return useMemo(() => {
    if (day === null) return null;
    const onDay = standingOn(job, day).find(({ pieceId }) => pieceId === piece.id)!;
    const sections = job.falsework.sections.filter(({ id }) => onDay.sections.includes(id));
    return { ...onDay, day, sections };
  }, [job, piece.id, day]);
}
