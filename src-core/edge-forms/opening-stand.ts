/** What the form of an opening stands on, how high it is, and whether it is a plug. */
import type { Cutout, CutoutShape, Job, Piece } from '../job';
import { boundingBox } from '../outline';
import { ONE_SCREW_IN, PLUG_SCREWS, PLUG_UP_TO_IN } from './practice';

export interface ShapeSize {
  readonly widthIn: number;
  readonly depthIn: number;
}

/** Width and depth of a shape along its own directions, in. */
export function shapeSize(shape: CutoutShape): ShapeSize {
  switch (shape.kind) {
    case 'circle':
      return { widthIn: shape.diameterIn, depthIn: shape.diameterIn };
    case 'rectangle':
      return { widthIn: shape.widthIn, depthIn: shape.depthIn };
    case 'polygon': {
      const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(shape.corners);
      return { widthIn: maxXIn - minXIn, depthIn: maxYIn - minYIn };
    }
  }
}

/** Whether the bowl of a sink is in the form when the slab is poured, so that the form of its opening stands on it. */
export function isCastIn({ sink }: Cutout): boolean {
  return (
    sink !== null && (sink.mounting === 'cast-over' || (sink.mounting === 'under-rim' && sink.carriedBySlab))
  );
}

export interface OpeningStand {
  readonly standsOn: 'deck' | 'bowl';
  /** From what it stands on to its top, in: through the backing board from the deck, or from the rim of a bowl. */
  readonly heightIn: number;
}

/** Where the form of an opening stands. `proudIn` is what it stands above the top of the slab, in. */
export function openingStand(job: Job, piece: Piece, cutout: Cutout, proudIn = 0): OpeningStand {
  const aboveBoardIn = piece.thicknessIn + proudIn;
  return isCastIn(cutout)
    ? { standsOn: 'bowl', heightIn: aboveBoardIn }
    : { standsOn: 'deck', heightIn: aboveBoardIn + job.falsework.backingBoardIn };
}

/** Whether an opening takes a plug: it is too narrow for two strips and a hand between them. Widths in. */
export function takesPlug({ widthIn, depthIn }: ShapeSize, stripIn: number, upToIn = PLUG_UP_TO_IN): boolean {
  return Math.min(widthIn, depthIn) <= Math.max(upToIn, 2 * stripIn);
}

/** Fewest screws that hold a plug or a frame from below. */
export function leastScrews({ widthIn, depthIn }: ShapeSize): number {
  return Math.min(widthIn, depthIn) < ONE_SCREW_IN ? 1 : PLUG_SCREWS;
}
