/** Pieces whose falsework is built alike: one plan and one list of legs for all of them. */
import type { FalseworkDesign } from '../falsework';
import type { Piece } from '../job';
import type { BookContext } from './context';
import { drawingNumber } from './names';

export interface HeldPiece {
  readonly piece: Piece;
  readonly design: FalseworkDesign;
}

/** One design, and every piece of the same drawing that is held just so. */
export interface HoldGroup {
  readonly number: number;
  readonly held: readonly [HeldPiece, ...HeldPiece[]];
}

/** Pieces in the job's order, those of one drawing together where sections, days and every leg agree. */
export function holdGroups({ job, facts }: Pick<BookContext, 'job' | 'facts'>): HoldGroup[] {
  const groups = new Map<string, { number: number; held: [HeldPiece, ...HeldPiece[]] }>();
  job.pieces.forEach((piece, k) => {
    const design = facts.falsework.designs[k]!;
    const number = drawingNumber(facts, piece.id);
    const key = `${number} ${designKey(design)}`;
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { number, held: [{ piece, design }] });
    else known.held.push({ piece, design });
  });
  return [...groups.values()];
}

function designKey({ sections, refusals, remarks }: FalseworkDesign): string {
  const built = sections.map(({ section, worked, legs }) => [
    section.frame.widthIn.toFixed(4),
    section.frame.depthIn.toFixed(4),
    section.firstDay,
    section.lastDay,
    worked.framing.arrangement,
    legs.map(({ leg }) => leg.words),
  ]);
  return JSON.stringify([built, refusals.length, remarks.length]);
}

/** Whether a design has anything to build or to say against it. */
export function isHeld({ design }: HeldPiece): boolean {
  return design.sections.length > 0 || design.refusals.length > 0;
}

/** Id under which a group stands in the book: that of its first piece by its place in the job. */
export function holdId({ job }: Pick<BookContext, 'job'>, { held }: HoldGroup): string {
  return `hold-${1 + job.pieces.indexOf(held[0].piece)}`;
}

/** "Serving counter"; "Bench seat and 2 like it". */
export function groupName({ held }: HoldGroup): string {
  const { name } = held[0].piece;
  return held.length === 1 ? name : `${name} and ${held.length - 1} like it`;
}

/** Sections in the order in which they come out: by their day, then as they stand in the design. */
export function removalOrder({ sections }: FalseworkDesign): FalseworkDesign['sections'] {
  return [...sections].sort((a, b) => a.section.lastDay - b.section.lastDay);
}
