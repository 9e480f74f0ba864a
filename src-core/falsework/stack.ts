/** The stack from the floor to the soffit, and how long a leg it leaves room for. */
import type { Job, Piece } from '../job';
import { pieceOutline } from '../job';
import type { FloorSurface } from '../levels';
import { floorHeights, floorRange, floorSurface } from '../levels';
import type { Point } from '../outline';
import { directionAt } from '../outline';
import { PANELS } from '../timber';
import { IN_PER_FT } from '../units';
import type { Arrangement } from './arrangement';
import { frameDepthIn } from './carry';
import { SOLE } from './practice';

export interface FormStack {
  readonly floor: FloorSurface;
  /** Lowest floor that was read, above the highest; 0 where nothing was. */
  readonly lowestFloorIn: number;
  /** Board that lies on the deck under the slab, in. */
  readonly boardIn: number;
  readonly panelIn: number;
  readonly shimIn: number;
  /** Underside of the slab above the highest floor reading, at a place in plan, in. */
  readonly soffitAt: (place: Point) => number;
  /** The same where it is highest. */
  readonly highestSoffitIn: number;
}

/** The stack of a piece. The top is at its height where the piece is highest; a fall lowers it from there. */
export function formStack(job: Job, piece: Piece): FormStack {
  const floor = floorSurface(floorHeights(job.site.levels, { kind: 'highest' }));
  const range = floorRange(floor);
  const highestSoffitIn = piece.topElevationIn - piece.thicknessIn;
  const { falsework } = job;
  return {
    floor,
    lowestFloorIn: range?.lowest.heightIn ?? 0,
    boardIn: falsework.backingBoardIn,
    panelIn: PANELS[falsework.panel].thicknessIn,
    shimIn: falsework.shimIn,
    soffitAt: soffitOf(piece, highestSoffitIn),
    highestSoffitIn,
  };
}

function soffitOf(piece: Piece, highestIn: number): (place: Point) => number {
  const { fall } = piece;
  const outline = pieceOutline(piece);
  if (fall === null || !outline.ok) return () => highestIn;
  const toward = directionAt((fall.towardDeg * Math.PI) / 180);
  const down = ({ xIn, yIn }: Point) => xIn * toward.x + yIn * toward.y;
  const topIn = Math.min(...outline.outer.map(down));
  return (place) => highestIn - ((down(place) - topIn) * fall.inPerFt) / IN_PER_FT;
}

/** The longest leg that an arrangement may need, in, before it is cut to its own place. */
export function longestLegIn(stack: FormStack, arrangement: Arrangement): number {
  const { highestSoffitIn, boardIn, panelIn, shimIn, lowestFloorIn } = stack;
  return (
    highestSoffitIn -
    boardIn -
    panelIn -
    frameDepthIn(arrangement) -
    SOLE.thicknessIn -
    shimIn -
    lowestFloorIn
  );
}
