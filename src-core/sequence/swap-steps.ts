/** The steps of a piece's swap, and every moment between them with what stands then. */
import type { Job, Piece, Support } from '../job';

/** One step for one piece. A step that is not drawn follows from the days of the piece's supports and sections. */
export interface PieceStep {
  readonly id: string;
  readonly isDrawn: boolean;
  readonly day: number;
  readonly sectionsOut: readonly string[];
  readonly supportsOut: readonly string[];
  readonly supportsIn: readonly string[];
  readonly note: string;
}

/** A moment of the swap: what stands and on which day, before the first step or after a part of one. */
export interface SwapMoment {
  readonly stepId: string | null;
  /** Before anything is touched; with what the step takes out gone; with what it brings in standing and touching. */
  readonly phase: 'before' | 'out' | 'in';
  readonly day: number;
  /** Ids of the supports that stand, in the piece's order. */
  readonly standing: readonly string[];
  /** Ids of the falsework sections that stand. */
  readonly sections: readonly string[];
}

/** The steps that touch a piece, by day: those drawn in the job first, then what only the days of supports and sections tell. */
export function swapSteps(job: Job, piece: Piece): PieceStep[] {
  const drawn = drawnSteps(job, piece);
  return [...drawn, ...stepsByDays(job, piece, drawn)]
    .map((step, order) => ({ step, order }))
    .sort((a, b) => a.step.day - b.step.day || a.order - b.order)
    .map(({ step }) => step);
}

/** Every moment of a piece's swap, in order; none where nothing under it changes after the pour. */
export function swapStates(job: Job, pieceId: string): SwapMoment[] {
  const piece = job.pieces.find(({ id }) => id === pieceId);
  return piece === undefined ? [] : momentsOf(job, piece, swapSteps(job, piece));
}

/** The moments that given steps make, in their order. */
export function momentsOf(job: Job, piece: Piece, steps: readonly PieceStep[]): SwapMoment[] {
  const [first] = steps;
  if (first === undefined) return [];
  const supports = new Set(standingAtFirst(piece, steps));
  const sections = new Set(
    job.falsework.sections.filter(({ pieceId }) => pieceId === piece.id).map(({ id }) => id),
  );
  const moment = (stepId: string | null, phase: SwapMoment['phase'], day: number): SwapMoment => ({
    stepId,
    phase,
    day,
    standing: piece.supports.map(({ id }) => id).filter((id) => supports.has(id)),
    sections: [...sections],
  });
  const moments = [moment(null, 'before', first.day)];
  for (const { id, day, sectionsOut, supportsOut, supportsIn } of steps) {
    for (const out of sectionsOut) sections.delete(out);
    for (const out of supportsOut) supports.delete(out);
    if (supportsOut.length + sectionsOut.length > 0) moments.push(moment(id, 'out', day));
    for (const come of supportsIn) supports.add(come);
    if (supportsIn.length > 0) moments.push(moment(id, 'in', day));
  }
  return moments;
}

/** Whether a support goes again: by its days or by a step of the swap that does not bring it back. */
export function isTemporary(support: Support, steps: readonly PieceStep[]): boolean {
  const last = lastNaming(steps, support.id);
  return last === undefined ? support.lastDay !== null : !last.supportsIn.includes(support.id);
}

/** The last step that takes a support out or brings it in. */
function lastNaming(steps: readonly PieceStep[], id: string): PieceStep | undefined {
  return steps.findLast(({ supportsOut, supportsIn }) => supportsOut.includes(id) || supportsIn.includes(id));
}

function drawnSteps(job: Job, piece: Piece): PieceStep[] {
  const ownSupports = new Set(piece.supports.map(({ id }) => id));
  const ownSections = new Set(
    job.falsework.sections.filter(({ pieceId }) => pieceId === piece.id).map(({ id }) => id),
  );
  return job.swap.steps.flatMap((step): PieceStep[] => {
    const sectionsOut = step.sectionsOut.filter((id) => ownSections.has(id));
    const supportsOut = step.supportsOut.filter((id) => ownSupports.has(id));
    const supportsIn = step.supportsIn.filter((id) => ownSupports.has(id));
    if (sectionsOut.length + supportsOut.length + supportsIn.length === 0) return [];
    return [
      { id: step.id, isDrawn: true, day: step.day, sectionsOut, supportsOut, supportsIn, note: step.note },
    ];
  });
}

/** What comes after the pour, or goes, and no drawn step names: one step a day. */
function stepsByDays(job: Job, piece: Piece, drawn: readonly PieceStep[]): PieceStep[] {
  const sectionsOut = new Set(drawn.flatMap((step) => step.sectionsOut));
  const supportsIn = new Set(drawn.flatMap((step) => step.supportsIn));
  const byDay = new Map<number, { sectionsOut: string[]; supportsOut: string[]; supportsIn: string[] }>();
  const on = (day: number) => {
    const found = byDay.get(day) ?? { sectionsOut: [], supportsOut: [], supportsIn: [] };
    byDay.set(day, found);
    return found;
  };
  for (const { id, firstDay, lastDay } of piece.supports) {
    if (firstDay > piece.pourDay && !supportsIn.has(id)) on(firstDay).supportsIn.push(id);
    if (lastDay === null || lastDay < piece.pourDay) continue;
    const named = lastNaming(drawn, id);
    if (named === undefined) on(lastDay).supportsOut.push(id);
    else if (named.supportsIn.includes(id)) on(Math.max(lastDay, named.day)).supportsOut.push(id);
  }
  for (const { id, pieceId, lastDay } of job.falsework.sections) {
    if (pieceId === piece.id && lastDay !== null && !sectionsOut.has(id)) on(lastDay).sectionsOut.push(id);
  }
  return [...byDay].map(([day, lists]) => ({ id: `day-${day}`, isDrawn: false, day, ...lists, note: '' }));
}

/** What stands before the first step: all but what a step brings in before any takes it out. */
function standingAtFirst(piece: Piece, steps: readonly PieceStep[]): string[] {
  return piece.supports
    .map(({ id }) => id)
    .filter((id) => {
      const first = steps.find((step) => step.supportsOut.includes(id) || step.supportsIn.includes(id));
      return first === undefined || first.supportsOut.includes(id);
    });
}
