/** Legs of falsework on a plan: black squares, each with its number and the length that it is cut to. */

import type { DesignedSection, FormLeg } from '../falsework';
import { legNumber } from '../falsework';
import type { PaperPoint } from '../figure';
import type { Job } from '../job';
import { patchOutline } from '../outline';
import type { Board, Spot } from './board';
import { draw, keepFree, placeWords } from './board';
import { bareLength } from './figure-words';
import { areaMark } from './marks';
import type { PlanView } from './plan-view';
import { apartIn } from './plan-view';
import { SMALL_PT } from './practice';
import { wordsHeightIn, wordsWidthIn } from './words-box';

/** A leg is drawn no smaller than this square, on paper, in. */
const LEAST_LEG_IN = 0.05;

/** The legs of a section, which no words may cover. */
export function drawLegs(board: Board, view: PlanView, { legs }: DesignedSection): void {
  for (const leg of legs) {
    const loop = legLoop(view, leg);
    draw(board, areaMark([loop], 'ink', 'thin'));
    keepFree(board, { centre: view.at(leg.at), ...uprightHalves(loop), turnDeg: 0 });
  }
}

/** A leg in plan, never too small to be seen. */
function legLoop(view: PlanView, { at, widthIn, depthIn, angleDeg }: FormLeg): PaperPoint[] {
  const leastIn = LEAST_LEG_IN / view.ratio;
  const rad = (angleDeg * Math.PI) / 180;
  return view.loop(patchOutline(at, Math.max(widthIn, leastIn), Math.max(depthIn, leastIn), rad));
}

/**
 * Number and length beside every leg of a section, or on a leader. `everyLeg` holds the places of all legs of the plan: words nearer to
 * another would be read as that one's.
 */
export function nameLegs(
  board: Board,
  view: PlanView,
  job: Job,
  { legs }: DesignedSection,
  letter: string,
  everyLeg: readonly PaperPoint[],
): void {
  legs.forEach((each, i) => {
    const words = `${legNumber(letter, i)}: ${bareLength(each.leg.cutIn, job.shownIn)}`;
    const place = view.at(each.at);
    const { halfWidth, halfHeight } = uprightHalves(legLoop(view, each));
    const sideIn = wordsWidthIn(words, SMALL_PT) / 2 + halfWidth + LEG_WHITE_IN;
    const overIn = wordsHeightIn(SMALL_PT) / 2 + halfHeight + LEG_WHITE_IN;
    const beside = [1, -1].flatMap((side) =>
      [0, 0.07, -0.07, 0.12, -0.12].map((y) => ({ x: place.x + side * sideIn, y: place.y + y })),
    );
    const over = [1, -1].flatMap((side) =>
      [0, 0.1, -0.1, 0.2, -0.2].map((x) => ({ x: place.x + x, y: place.y + side * overIn })),
    );
    const halves = { halfWidth: wordsWidthIn(words, SMALL_PT) / 2, halfHeight: wordsHeightIn(SMALL_PT) / 2 };
    const spots = [...beside, ...over].map((centre, k): Spot => {
      const ownIn = awayIn(place, centre, halves);
      const isNearAnother = everyLeg.some(
        (other) =>
          apartIn(other, place) > SAME_LEG_IN && awayIn(other, centre, halves) < ownIn + OWN_MARGIN_IN,
      );
      return { centre, turnDeg: 0, leaderTo: null, cost: 0.02 * k + (isNearAnother ? AMBIGUOUS_COST : 0) };
    });
    placeWords(board, { words, sizePt: SMALL_PT }, spots, place);
  });
}

/** White between a leg and its words, on paper, in. */
const LEG_WHITE_IN = 0.04;
/** Places nearer than this are one leg, on paper, in. */
const SAME_LEG_IN = 1e-6;
/** Words nearer to another leg would be read as that one's. */
const AMBIGUOUS_COST = 20;
/** Words without a leader stand nearer to their own leg than to any other by this much, on paper, in. */
const OWN_MARGIN_IN = 0.06;

interface Halves {
  readonly halfWidth: number;
  readonly halfHeight: number;
}

/** From a place to the nearest of level words round a middle. */
function awayIn(place: PaperPoint, centre: PaperPoint, { halfWidth, halfHeight }: Halves): number {
  const x = Math.max(0, Math.abs(place.x - centre.x) - halfWidth);
  const y = Math.max(0, Math.abs(place.y - centre.y) - halfHeight);
  return Math.hypot(x, y);
}

function uprightHalves(points: readonly PaperPoint[]): Halves {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return {
    halfWidth: (Math.max(...xs) - Math.min(...xs)) / 2,
    halfHeight: (Math.max(...ys) - Math.min(...ys)) / 2,
  };
}
