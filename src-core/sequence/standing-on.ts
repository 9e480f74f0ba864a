/** What stands on a day, piece by piece: what the model shows and what the load check of that day takes. */
import { stands } from '../analysis';
import type { Job } from '../job';
import { formDays } from './day-line';

export interface PieceOnDay {
  readonly pieceId: string;
  readonly state: 'nothing' | 'formed' | 'wet' | 'hard';
  /** Ids of the supports that stand, in the piece's order: those that the load check of the day bears it on. */
  readonly supports: readonly string[];
  /** Ids of the falsework sections that stand. */
  readonly sections: readonly string[];
  readonly formsStand: boolean;
}

/** Every piece on a day of the job. On the day of the pour a slab is wet; from the next on the engine takes it as hard. */
export function standingOn(job: Job, day: number): PieceOnDay[] {
  return job.pieces.map((piece) => {
    const { form, strip } = formDays(job, piece);
    const formsStand = day >= form && day < strip;
    return {
      pieceId: piece.id,
      state: day > piece.pourDay ? 'hard' : day === piece.pourDay ? 'wet' : formsStand ? 'formed' : 'nothing',
      supports: piece.supports.filter((support) => stands(support, day)).map(({ id }) => id),
      sections: job.falsework.sections
        .filter(
          ({ pieceId, firstDay, lastDay }) =>
            pieceId === piece.id && firstDay <= day && (lastDay === null || day <= lastDay),
        )
        .map(({ id }) => id),
      formsStand,
    };
  });
}
