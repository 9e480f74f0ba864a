/**
 * A stick of form strip as it is cut: lengths to scale, the strip's thickness larger than it is. It lies as it is seen from above with
 * the rim up; what is not turned has its slab face at the far edge, which is drawn at the top.
 */
import type { FormCut, FormStick } from '../../src-core/edge-forms';
import type { PlacePx } from './fit-to-width';
import { loopPath } from './fit-to-width';

/** Height of the bar, and what is left free round it, px. */
export const BAR_PX = 24;
const MARGIN_PX = 2;
/** A length is written into its cut from this width on, px. */
const WORDS_FROM_PX = 64;

export interface DrawnCut {
  readonly key: string;
  /** Counted on its stick from 1, as in the list below. */
  readonly number: string;
  readonly outline: string;
  /** The face that touches the slab. */
  readonly slabFace: { readonly from: PlacePx; readonly to: PlacePx };
  readonly middle: PlacePx;
  /** Whether its length has room beside its number. */
  readonly isWide: boolean;
}

export interface DrawnStick {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly bar: string;
  readonly cuts: readonly DrawnCut[];
}

/** A cut's four corners along the stick, in: the near edge is the one towards whoever saws. */
export interface CutCorners {
  readonly nearFromIn: number;
  readonly nearToIn: number;
  readonly farFromIn: number;
  readonly farToIn: number;
}

/** Where the corners of a cut lie. A mitre leans over the face of its strip; a turned strip lies half a turn round. */
export function cutCorners({ strip, atIn, isTurned }: FormCut): CutCorners {
  const [startRad, endRad] = isTurned ? [-strip.endRad, -strip.startRad] : [strip.startRad, strip.endRad];
  const startIn = Math.tan(startRad) * strip.of.faceIn;
  const endIn = Math.tan(endRad) * strip.of.faceIn;
  const toIn = atIn + strip.longIn;
  return {
    nearFromIn: atIn + Math.max(0, -startIn),
    nearToIn: toIn - Math.max(0, -endIn),
    farFromIn: atIn + Math.max(0, startIn),
    farToIn: toIn - Math.max(0, endIn),
  };
}

/** The stick in a width that the longest stick of the list fills; null while there is no width. */
export function drawnStick(stick: FormStick, longestIn: number, widthPx: number): DrawnStick | null {
  if (widthPx <= 2 * MARGIN_PX) return null;
  const pxPerIn = (widthPx - 2 * MARGIN_PX) / longestIn;
  const near = (alongIn: number): PlacePx => ({ x: MARGIN_PX + alongIn * pxPerIn, y: MARGIN_PX + BAR_PX });
  const far = (alongIn: number): PlacePx => ({ x: MARGIN_PX + alongIn * pxPerIn, y: MARGIN_PX });
  return {
    widthPx,
    heightPx: BAR_PX + 2 * MARGIN_PX,
    bar: loopPath([near(0), near(stick.stockLengthIn), far(stick.stockLengthIn), far(0)]),
    cuts: stick.cuts.map((cut, i): DrawnCut => {
      const { nearFromIn, nearToIn, farFromIn, farToIn } = cutCorners(cut);
      const [from, to] = cut.isTurned ? [near(nearFromIn), near(nearToIn)] : [far(farFromIn), far(farToIn)];
      return {
        key: cut.strip.id,
        number: String(i + 1),
        outline: loopPath([near(nearFromIn), near(nearToIn), far(farToIn), far(farFromIn)]),
        slabFace: { from, to },
        middle: { x: MARGIN_PX + (cut.atIn + cut.strip.longIn / 2) * pxPerIn, y: MARGIN_PX + BAR_PX / 2 },
        isWide: cut.strip.longIn * pxPerIn > WORDS_FROM_PX,
      };
    }),
  };
}
