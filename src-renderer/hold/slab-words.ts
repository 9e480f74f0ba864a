/** The concrete of a piece on a day, in words. */
import type { Job, Piece } from '../../src-core/job';
import { UNTESTED_STRENGTH_PSI } from '../../src-core/job';
import type { PieceOnDay } from '../../src-core/sequence';
import { standingOn, strengthOn } from '../../src-core/sequence';
import { printStress } from '../../src-core/units';

export interface SlabOnDay {
  /** null for the finished job. */
  readonly state: PieceOnDay['state'] | null;
  /** "Hard, 35 days old". */
  readonly title: string;
  /** Strength, or what holds it until then. */
  readonly words: string;
  /** What to mind about it; empty where nothing is. */
  readonly caution: string;
}

/** State and strength of a slab; null is the finished job, at its 28-day strength. */
export function slabOnDay(job: Job, piece: Piece, day: number | null): SlabOnDay {
  const stress = (psi: number) => printStress(Math.round(psi), { system: job.shownIn });
  const mix = job.mixes.find(({ id }) => id === piece.mixId);
  if (day === null) {
    return {
      state: null,
      title: 'Hard, as it stays',
      words: `Counted at its 28-day strength, ${stress(mix?.strengthPsi ?? UNTESTED_STRENGTH_PSI)}${mix?.strengthPsi == null ? ', the figure for a mix that nobody tested' : ''}.`,
      caution: '',
    };
  }
  const { state, formsStand } = standingOn(job, day).find(({ pieceId }) => pieceId === piece.id)!;
  const forms = formsStand ? ' The edge forms are still on.' : '';
  switch (state) {
    case 'nothing':
      return { state, title: 'Not formed yet', words: `It is poured on day ${piece.pourDay}.`, caution: '' };
    case 'formed':
      return {
        state,
        title: 'Formed, not cast',
        words: `It is poured on day ${piece.pourDay}.`,
        caution: '',
      };
    case 'wet':
      return {
        state,
        title: 'Poured this day, wet',
        words: 'It carries nothing: forms and falsework carry it, the people and the kit.',
        caution: 'Wet concrete burns skin and eyes: gloves, long sleeves, goggles. Nobody stands under it.',
      };
    case 'hard': {
      const ageDays = day - piece.pourDay;
      const { strengthPsi, strengthRatio, isTested, isCold } = strengthOn(job, piece, ageDays);
      const from = isTested ? 'by your cylinder tests' : 'by the strength curve';
      return {
        state,
        title: `Hard, ${ageDays} ${ageDays === 1 ? 'day' : 'days'} old`,
        words: `${stress(strengthPsi)}, ${Math.round(100 * strengthRatio)} % of its 28-day strength ${from}.${forms}`,
        caution: isCold ? 'It is colder than the strength curve holds for. Go by a cylinder test.' : '',
      };
    }
  }
}
