/** Every leg of a section cut to the floor at its place. */
import type { Job } from '../job';
import type { Leg } from '../levels';
import { legAt, WEDGE_SHIMS } from '../levels';
import type { Point } from '../outline';
import { LUMBER } from '../timber';
import { MM_PER_IN } from '../units';
import { placeInPlan } from './frame';
import { lumberDepthIn, turnedPlace } from './framing';
import { SOLE } from './practice';
import type { FormStack } from './stack';
import type { WorkedSection } from './work-section';

export interface FormLeg {
  readonly id: string;
  readonly at: Point;
  readonly angleDeg: number;
  readonly widthIn: number;
  readonly depthIn: number;
  readonly loadLbf: number;
  readonly leg: Leg;
}

/** The legs of a section, from the front left: the soffit less board, panel, joist, stringer, sole, shim and floor at each. */
export function cutLegs(job: Job, stack: FormStack, { framing, carried }: WorkedSection): FormLeg[] {
  const { section, arrangement } = framing;
  const { joistRun, joistSize, beamSize, legSize } = arrangement;
  const { frame } = section;
  const { thicknessIn, widthIn } = LUMBER[legSize];
  // The wide side lies along what the leg carries: the stringer, or the joist.
  const alongFront = (joistRun === 'back') === (beamSize !== null);
  const angleRad = Math.atan2(frame.along.y, frame.along.x) + (alongFront ? 0 : Math.PI / 2);
  const step = job.shownIn === 'imperial' ? 1 / 16 : 1 / MM_PER_IN;
  return carried.legs.map(({ s, t, loadLbf }, i) => {
    const { p, q } = turnedPlace(s, t, joistRun);
    const at = placeInPlan(frame, p, q);
    const leg = legAt(stack.floor, {
      at,
      footWidthIn: widthIn,
      footDepthIn: thicknessIn,
      footAngleRad: angleRad,
      soffitIn: stack.soffitAt(at) - stack.boardIn,
      panelIn: stack.panelIn,
      joistIn: lumberDepthIn(joistSize),
      plateIn: (beamSize === null ? 0 : lumberDepthIn(beamSize)) + SOLE.thicknessIn,
      shimIn: stack.shimIn,
      shims: WEDGE_SHIMS,
      cutStepIn: step,
      cutLengthIn: null,
      shownIn: job.shownIn,
    });
    return {
      id: `${section.id}-leg-${i + 1}`,
      at,
      angleDeg: (angleRad * 180) / Math.PI,
      widthIn,
      depthIn: thicknessIn,
      loadLbf,
      leg,
    };
  });
}
