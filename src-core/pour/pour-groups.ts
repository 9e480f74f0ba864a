/** Which pieces are poured together: one day, one mix, one colour. */
import type { Job, Mix, Piece } from '../job';
import type { Colour } from './bag-amounts';

export interface PourGroup {
  readonly id: string;
  readonly day: number;
  readonly mix: Mix;
  readonly colour: Colour | null;
  readonly pieces: readonly Piece[];
}

/** The pours of a job by day, then as the pieces stand in the file. Throws where a mix is unknown, which cross-checks refuse. */
export function pourGroups(job: Job): readonly PourGroup[] {
  const groups = new Map<string, PourGroup>();
  for (const piece of job.pieces) {
    const { pourDay: day, mixId, colour } = piece;
    const mix = job.mixes.find((one) => one.id === mixId);
    if (mix === undefined) throw new Error(`no mix "${mixId}" for piece "${piece.id}"`);
    const id = `pour/${day}/${mixId}${colour === null ? '' : `/${colour.pigmentRatio}/${colour.pigment}`}`;
    const before = groups.get(id)?.pieces ?? [];
    groups.set(id, { id, day, mix, colour, pieces: [...before, piece] });
  }
  return [...groups.values()].sort((one, other) => one.day - other.day);
}
