/** One section in one arrangement: framed, loaded, checked and priced. */
import type { Job, Piece } from '../job';
import type { Arrangement } from './arrangement';
import type { CarriedSection } from './carry';
import { carrySection } from './carry';
import { checkHandling, checkJoistBearing, checkLegs, checkStringerBearing } from './check-bearing';
import { checkHeaders, checkSheathing, checkSticks } from './check-deck';
import type { LateralDesign } from './check-lateral';
import { designLateral } from './check-lateral';
import type { FormCheck } from './form-check';
import type { Framing } from './framing';
import { frameSection } from './framing';
import type { FalseworkPractice } from './practice';
import type { Section } from './section';
import type { FormStack } from './stack';
import { longestLegIn } from './stack';

/** What a section is worked with. */
export interface WorkContext {
  readonly job: Job;
  readonly piece: Piece;
  readonly stack: FormStack;
  readonly practice: FalseworkPractice;
}

/** A leg shorter than this is a block, in. Common practice, no source. */
const LEAST_LEG_IN = 3;

export interface FittedSection {
  readonly framing: Framing;
  readonly legIn: number;
}

/** The framing of an arrangement with room for its legs; null where its parts do not fit. */
export function fitSection(
  context: WorkContext,
  section: Section,
  arrangement: Arrangement,
): FittedSection | null {
  const legIn = longestLegIn(context.stack, arrangement);
  if (legIn < LEAST_LEG_IN) return null;
  const framing = frameSection(section, arrangement, context.practice);
  return framing === null ? null : { framing, legIn };
}

export interface LoadedSection extends FittedSection {
  readonly carried: CarriedSection;
}

/** A loaded section with what holds it sideways. */
export interface WorkedSection extends LoadedSection {
  readonly lateral: LateralDesign;
}

/** A fitted section with its loads; null where a stick would lift off a support or hang in the air. */
export function loadSection(
  { job, piece, practice }: WorkContext,
  fitted: FittedSection,
): LoadedSection | null {
  const carried = carrySection(job, fitted.framing, piece.thicknessIn, practice);
  return carried === null ? null : { ...fitted, carried };
}

/** The same held against a push from the side. */
export function holdSection({ job, practice }: WorkContext, loaded: LoadedSection): WorkedSection {
  return { ...loaded, lateral: designLateral(job, loaded.carried, loaded.legIn, practice) };
}

/** Every check of a loaded section, the cheapest to work first, one by one: a search stops at the first that fails. */
export function* checksOf(context: WorkContext, loaded: LoadedSection): Generator<FormCheck> {
  const { job, practice } = context;
  const { carried, legIn } = loaded;
  yield checkHandling(job, carried, practice);
  yield checkSheathing(job, carried);
  yield checkJoistBearing(job, carried);
  yield* checkSticks(job, carried, 'joist');
  yield* checkSticks(job, carried, 'stringer');
  const { lateral } = holdSection(context, loaded);
  yield* checkStringerBearing(job, carried, lateral.addedLegLbf);
  yield* checkLegs(job, carried, legIn, lateral.addedLegLbf);
  yield* checkHeaders(job, carried);
  yield* lateral.checks;
}
