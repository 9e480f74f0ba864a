/** Everything that is taken off the drawing of a job, and what is bought for it. */
import type { CutEdgeForms } from '../edge-forms';
import { cutEdgeForms, reusable } from '../edge-forms';
import type { CutList, JobFalsework } from '../falsework';
import type { Job, Piece } from '../job';
import { pourPlan } from '../pour';
import { earliestStripDay, workDayFrom } from '../sequence';
import type { BoardsBought } from './board-lines';
import { boardLines, boardsByStock } from './board-lines';
import { falseworkCuts, falseworkLines } from './falsework-lines';
import { fixingLines } from './fixing-lines';
import { formLines } from './form-lines';
import { gapsOf, remarksOf } from './gaps';
import { mixLines } from './mix-lines';
import { openingLines } from './opening-lines';
import type { PieceTakeoff } from './piece-takeoff';
import { pieceTakeoff } from './piece-takeoff';
import { protectionLines } from './protection-lines';
import { shoppingList } from './shopping-list';
import type { BarCuts, MeshCuts } from './steel-cuts';
import { cutBars, cutMesh } from './steel-cuts';
import { steelExtras } from './steel-extras';
import { barLines, meshLines } from './steel-lines';
import type { Tool } from './tools';
import { toolsOf } from './tools';
import type { ShoppingList } from './types';

export interface JobTakeoffOptions {
  /** One piece alone; left out or null for all. */
  readonly pieceId?: string | null;
  /** Gives the take-off of a piece: a caller that keeps those of pieces that did not change hands its own. */
  readonly takeoffOf?: (job: Job, piece: Piece) => PieceTakeoff;
  /** Day on which the edge forms of a piece come off, null where none is known. The first work day that its strength allows unless told. */
  readonly strippedOnDay?: (pieceId: string) => number | null;
}

export interface JobTakeoff {
  readonly jobId: string;
  /** In the job's order. */
  readonly pieces: readonly PieceTakeoff[];
  readonly formCuts: CutEdgeForms;
  readonly boardsByStock: readonly BoardsBought[];
  readonly meshCuts: readonly MeshCuts[];
  readonly barCuts: readonly BarCuts[];
  /** null where the falsework is left out. */
  readonly falseworkCuts: CutList | null;
  readonly list: ShoppingList;
  readonly tools: readonly Tool[];
}

/** The take-off of a job. The falsework takes seconds to design, so it is handed in; null leaves it out, and the list says so. */
export function jobTakeoff(
  job: Job,
  falsework: JobFalsework | null,
  { pieceId = null, takeoffOf = pieceTakeoff, strippedOnDay = stripDays(job) }: JobTakeoffOptions = {},
): JobTakeoff {
  const drawn = job.pieces.filter(({ id }) => pieceId === null || id === pieceId);
  const pieceIds = drawn.map(({ id }) => id);
  const pieces = drawn.map((piece) => takeoffOf(job, piece));
  const forms = pieces.flatMap((piece) => (piece.forms === null ? [] : [piece.forms]));
  const formCuts = cutEdgeForms(job, forms, reusable(forms, strippedOnDay));
  const boards = boardsByStock(pieces);
  const meshCuts = cutMesh(job, pieces);
  const barCuts = cutBars(job, pieces);
  const falsed = falsework === null ? null : falseworkCuts(job, falsework, pieceIds);
  const plan = pourPlan({ ...job, pieces: drawn });
  const tools = toolsOf(job, pieces, plan);
  const lines = [
    ...formLines(job, pieces, formCuts),
    ...boardLines(job, pieces, boards),
    ...(falsework === null || falsed === null ? [] : falseworkLines(job, falsework, falsed, pieceIds)),
    ...mixLines(job, plan),
    ...meshLines(job, meshCuts),
    ...barLines(job, barCuts),
    ...steelExtras(job, pieces),
    ...openingLines(job, pieces),
    ...fixingLines(job, pieces),
    ...protectionLines(job, tools, plan),
  ];
  return {
    jobId: job.id,
    pieces,
    formCuts,
    boardsByStock: boards,
    meshCuts,
    barCuts,
    falseworkCuts: falsed,
    list: shoppingList(
      lines,
      gapsOf(job, { pieces, formCuts, meshCuts, barCuts, falsework, falseworkCuts: falsed, plan }),
      remarksOf(pieces, formCuts, falsework),
    ),
    tools,
  };
}

/** The first work day on or after the one that a piece's strength allows. */
function stripDays(job: Job): (pieceId: string) => number | null {
  return (pieceId) => {
    const piece = job.pieces.find(({ id }) => id === pieceId);
    const day = piece === undefined ? null : earliestStripDay(job, piece);
    return day === null ? null : workDayFrom(job.site.calendar, day);
  };
}
