/** The square by which a person sees that a sheet was printed at full size, with what must be known on every page. */
import type { Mark, PaperPoint } from '../figure';
import { MM_PER_IN } from '../units';

/** 100 mm. */
export const CHECK_SQUARE_IN = 100 / MM_PER_IN;

/** Words in the square, from its top left corner, in. Common practice, no source. */
const LINE_IN = 0.22;
const LABEL_AT_IN = 0.6;
const FACE_AT_IN = 1.15;
const MEASURE_AT_IN = 1.9;
const ARROW_FROM_IN = 3.2;
const ARROW_TO_IN = 3.8;
const ARROW_HEAD_IN = 0.15;
const EDGE_WORDS_AT_IN = 3.1;

/** The square from its top left corner, with the page's name, which face is up and which edge is the front. */
export function checkSquare(topLeft: PaperPoint, pageWords: string, faceWords: string): Mark[] {
  const { x, y } = topLeft;
  const middle = x + CHECK_SQUARE_IN / 2;
  const corner = (across: number, down: number): PaperPoint => ({
    x: x + across * CHECK_SQUARE_IN,
    y: y + down * CHECK_SQUARE_IN,
  });
  const words = (text: string, downIn: number, sizePt: number, isBold: boolean): Mark => ({
    kind: 'text',
    words: text,
    at: { x: middle, y: y + downIn },
    sizePt,
    anchor: 'middle',
    turnDeg: 0,
    isBold,
    hasGround: true,
  });
  const tip = { x: middle, y: y + ARROW_TO_IN };
  const barb = (side: number): Mark => ({
    kind: 'line',
    from: { x: tip.x + side * ARROW_HEAD_IN, y: tip.y - ARROW_HEAD_IN },
    to: tip,
    pen: 'visible',
  });
  return [
    {
      kind: 'run',
      points: [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)],
      isClosed: true,
      pen: 'thin',
    },
    words(pageWords, LABEL_AT_IN, 20, true),
    words(faceWords, FACE_AT_IN, 12, true),
    words('Measure this square: 100 mm each side;', MEASURE_AT_IN, 9, false),
    words('if it is not, print at 100 %.', MEASURE_AT_IN + LINE_IN, 9, false),
    words('This edge front', EDGE_WORDS_AT_IN, 12, true),
    { kind: 'line', from: { x: middle, y: y + ARROW_FROM_IN }, to: tip, pen: 'visible' },
    barb(-1),
    barb(1),
  ];
}
