/** Pieces that are one drawing under several names: they are checked once and share a chapter. */
import type { Job, Piece } from '../job';
import { boundingBox } from '../outline';
import { swapSteps } from '../sequence';

export interface AlikePieces {
  /** Those of one drawing, in the job's order. */
  readonly pieces: readonly [Piece, ...Piece[]];
}

/** Lengths that differ by less are rounding of a move, in. */
const GRAIN_IN = 1e-6;

/**
 * Pieces by what is drawn of them, in the job's order: alike are those that differ in nothing but their id, their name, the ids of
 * their supports, and where in the plan they lie.
 */
export function alikePieces(job: Job): AlikePieces[] {
  const groups = new Map<string, [Piece, ...Piece[]]>();
  for (const piece of job.pieces) {
    const key = drawingKey(piece);
    const known = groups.get(key);
    if (known === undefined) groups.set(key, [piece]);
    else known.push(piece);
  }
  return [...groups.values()].map((pieces) => ({ pieces }));
}

function drawingKey(piece: Piece): string {
  const { id: _, name: __, ...drawn } = piece;
  return keyOf(drawn, supportNumbers(piece), frontLeft(piece));
}

/** Alike for pieces whose swap is the same: one drawing in one place, with the same sections and steps. */
export function swapKey(job: Job, piece: Piece): string {
  const sections = job.falsework.sections.filter(({ pieceId }) => pieceId === piece.id);
  const numbers = new Map([
    ...supportNumbers(piece),
    ...sections.map(({ id }, k): [string, string] => [id, `section ${k + 1}`]),
    [piece.id, 'piece'],
  ]);
  const steps = swapSteps(job, piece).map(({ id: _, ...step }) => step);
  return `${drawingKey(piece)} ${keyOf({ at: frontLeft(piece), sections, steps }, numbers, { xIn: 0, yIn: 0 })}`;
}

function supportNumbers({ supports }: Piece): Map<string, string> {
  return new Map(supports.map(({ id }, k) => [id, `support ${k + 1}`]));
}

interface Place {
  readonly xIn: number;
  readonly yIn: number;
}

function frontLeft({ corners }: Piece): Place {
  const { minXIn, minYIn } = boundingBox(corners);
  return { xIn: minXIn, yIn: minYIn };
}

/** A value as text, with ids by their numbers and places measured from an origin. */
function keyOf(value: unknown, numbers: ReadonlyMap<string, string>, origin: Place): string {
  return JSON.stringify(value, (_, item: unknown) => {
    if (typeof item === 'string') return numbers.get(item) ?? item;
    if (!isPlace(item)) return item;
    return { ...item, xIn: onGrain(item.xIn - origin.xIn), yIn: onGrain(item.yIn - origin.yIn) };
  });
}

function isPlace(item: unknown): item is Place {
  return typeof item === 'object' && item !== null && 'xIn' in item && 'yIn' in item;
}

function onGrain(valueIn: number): number {
  return Math.round(valueIn / GRAIN_IN) * GRAIN_IN + 0;
}
