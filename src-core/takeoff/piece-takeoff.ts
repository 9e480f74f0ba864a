/** Everything that is taken off one piece of the drawing. */
import type { BackingBoards } from '../boards';
import { backingBoards } from '../boards';
import type { EdgeForms } from '../edge-forms';
import { edgeForms } from '../edge-forms';
import type { Job, JobProblem, Piece } from '../job';
import type { OpeningForm } from '../openings';
import { openingForms } from '../openings';
import type { SteelPlacing } from '../steel-placing';
import { placeSteel } from '../steel-placing';

/** Of one copy of the piece. Forms and steel are null, and openings empty, where it cannot be drawn. */
export interface PieceTakeoff {
  readonly pieceId: string;
  readonly copies: number;
  readonly forms: EdgeForms | null;
  /** Braces, hold-downs, infill and templates; the strips and plugs themselves are in `forms`. */
  readonly openings: readonly OpeningForm[];
  /** null also where the job lays none. */
  readonly boards: BackingBoards | null;
  readonly steel: SteelPlacing | null;
  readonly problems: readonly JobProblem[];
}

/** Forms, openings, boards and steel of a piece; joints of the forms keep off the seams of the boards. */
export function pieceTakeoff(job: Job, piece: Piece): PieceTakeoff {
  const boards = backingBoards(job, piece);
  const forms = edgeForms(job, piece, { seams: boards?.seams ?? [] });
  const steel = placeSteel(job, piece);
  return {
    pieceId: piece.id,
    copies: piece.copies,
    forms: forms.ok ? forms.forms : null,
    openings: openingForms(job, piece),
    boards,
    steel: steel.ok ? steel.placing : null,
    problems: forms.ok ? (steel.ok ? [] : steel.problems) : forms.problems,
  };
}
