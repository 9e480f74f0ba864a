/** Where mitred pieces lie on a stick and where the saw goes, in the order of the work. */
import { jointIn, type Lie, laid, leansOf, sharedLean } from './mitre';
import { ALIKE_IN } from './practice';
import type { StickStock } from './stock';

export interface MitredCut extends Lie {
  readonly id: string;
  readonly longIn: number;
  /** Where its first point lies, from the first end of the stick, in. */
  readonly atIn: number;
  /** Its ends as they lie, rad: above 0 with the long point on the near edge, below 0 on the far edge. */
  readonly startRad: number;
  readonly endRad: number;
}

/** One cut through the stick. The line is the edge of the piece it makes; the kerf lies beside the line. */
export interface SawLine {
  /** Where the line meets the near and the far edge, from the first end of the stick, in. */
  readonly nearIn: number;
  readonly farIn: number;
  readonly kerfLies: 'before' | 'after';
  /** Ids of the pieces that get an end by it: two where they share the cut, none where it only parts them. */
  readonly ends: readonly string[];
}

export interface MitredStick {
  readonly stockId: string;
  readonly stockLengthIn: number;
  readonly price: number | null;
  readonly faceIn: number;
  readonly cuts: readonly MitredCut[];
  readonly saws: readonly SawLine[];
  /** Length left over on its shorter edge, in. */
  readonly offcutIn: number;
}

interface Step {
  readonly piece: {
    readonly id: string;
    readonly longIn: number;
    readonly startRad: number;
    readonly endRad: number;
  };
  readonly lie: Lie;
}

/** A piece on its stick, and its two end lines. */
interface Placed {
  readonly cut: MitredCut;
  readonly start: Line;
  readonly end: Line;
}

interface Line {
  readonly nearIn: number;
  readonly lean: number;
}

/** Pieces laid on a stick one after another, with the saw's way through it. */
export function sawnStick(
  steps: readonly Step[],
  { id, lengthIn, price }: StickStock,
  faceIn: number,
  kerfIn: number,
): MitredStick {
  const placed: Placed[] = [];
  for (const step of steps) placed.push(placeAfter(placed.at(-1), step, faceIn, kerfIn));
  const saws: SawLine[] = [];
  const saw = ({ nearIn, lean }: Line, kerfLies: SawLine['kerfLies'], ends: readonly string[]) =>
    saws.push({ nearIn, farIn: nearIn + lean * faceIn, kerfLies, ends });

  placed.forEach((here, i) => {
    const before = placed[i - 1];
    if (before !== undefined) sawBetween(before, here);
    else if (here.start.lean !== 0) saw(here.start, 'before', [here.cut.id]);
  });
  const last = placed.at(-1);
  const runIn = last === undefined ? 0 : last.cut.atIn + last.cut.longIn;
  const lastKerfIn = kerfIn * Math.hypot(1, last?.end.lean ?? 0);
  if (last !== undefined && (last.end.lean !== 0 || runIn < lengthIn - ALIKE_IN)) {
    saw(last.end, 'after', [last.cut.id]);
  }
  return {
    stockId: id,
    stockLengthIn: lengthIn,
    price,
    faceIn,
    cuts: placed.map(({ cut }) => cut),
    saws,
    offcutIn: Math.max(0, lengthIn - runIn - lastKerfIn),
  };

  /** The cut that parts two pieces, then what is left to mitre on either. */
  function sawBetween(before: Placed, after: Placed): void {
    const { end, cut } = before;
    const { start } = after;
    const isShared = jointIn(end.lean, start.lean, faceIn, kerfIn) < kerfIn;
    const lean = isShared ? sharedLean(end.lean, start.lean) : 0;
    const endIsCut = lean === end.lean;
    const startIsCut = lean === start.lean;
    if (endIsCut) saw(end, 'after', startIsCut ? [cut.id, after.cut.id] : [cut.id]);
    else if (startIsCut) saw(start, 'before', [after.cut.id]);
    else saw({ nearIn: cut.atIn + cut.longIn, lean: 0 }, 'after', []);
    if (!endIsCut) saw(end, 'after', [cut.id]);
    if (!startIsCut) saw(start, 'before', [after.cut.id]);
  }
}

function placeAfter(
  before: Placed | undefined,
  { piece, lie }: Step,
  faceIn: number,
  kerfIn: number,
): Placed {
  const leans = laid(leansOf(piece.startRad, piece.endRad), lie);
  const atIn =
    before === undefined
      ? 0
      : before.cut.atIn + before.cut.longIn + jointIn(before.end.lean, leans.start, faceIn, kerfIn);
  return {
    cut: {
      id: piece.id,
      longIn: piece.longIn,
      atIn,
      ...lie,
      startRad: Math.atan(leans.start),
      endRad: 0 - Math.atan(leans.end),
    },
    start: { nearIn: atIn + Math.max(0, -leans.start) * faceIn, lean: leans.start },
    end: { nearIn: atIn + piece.longIn - Math.max(0, leans.end) * faceIn, lean: leans.end },
  };
}
