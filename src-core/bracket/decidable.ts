import type { ArmSection, BracketSupport } from '../job';
import { hasThinWall } from './arm-strength';

/** Longest arm that this tool decides, in. Common practice, no source; the settings table may pass another. */
export const BRACKET_REACH_LIMIT_IN = 16;
/** From this size of its thinner side on a timber has its own value table (NDS 2018 Supplement Table 4D), in. */
const TIMBER_POST_IN = 4.5;

/**
 * null where the bracket can be decided here, else the sentence that says why it is for an engineer. `reachLimitIn`: longest
 * arm, in. Rolled or bought steel arms and timber braces on timber studs, and brackets with a rated load entered on a
 * backing that is known to hold, are decidable. Common practice, no source.
 */
export function bracketIsDecidable(
  bracket: BracketSupport,
  reachLimitIn: number = BRACKET_REACH_LIMIT_IN,
): string | null {
  if (bracket.make === 'cast-concrete') {
    return 'A cast concrete corbel needs an engineer: its steel and its anchorage in the wall cannot be judged from outside.';
  }
  if (bracket.reachIn > reachLimitIn) {
    return `The bracket reaches ${printed(bracket.reachIn)} in; beyond ${printed(reachLimitIn)} in it is for an engineer.`;
  }
  const backing = backingTrouble(bracket);
  if (backing) return backing;
  if (bracket.fixing.kind === 'rated') return ratedTrouble(bracket.fixing.ratedLoadLbf);
  if (bracket.make === 'shop-welded') {
    return 'A bracket welded in the shop needs an engineer, or enter the load that its maker rates it for.';
  }
  return backingNeedsRating(bracket) ?? armTrouble(bracket.arm);
}

function backingTrouble(bracket: BracketSupport): string | null {
  switch (bracket.backing) {
    case 'hollow-block':
      return 'Anchors into hollow block are for an engineer.';
    case 'brick-veneer':
      return 'Anchors into brick veneer are for an engineer: the veneer is a skin that hangs on the wall behind it.';
    case 'unknown':
      return 'It is not known what the bracket is fixed to. Open the wall and look, or ask an engineer.';
    case 'timber-stud':
    case 'steel-post':
    case 'grouted-block':
    case 'concrete':
      return null;
  }
}

function ratedTrouble(ratedLoadLbf: number): string | null {
  return ratedLoadLbf > 0 ? null : 'The rated load of the bracket is entered as nothing.';
}

function backingNeedsRating(bracket: BracketSupport): string | null {
  switch (bracket.backing) {
    case 'grouted-block':
      return 'Fasteners in grouted block need an engineer, or enter a rated load for bracket and fixing.';
    case 'concrete':
      return 'Anchors in concrete need an engineer, or enter a rated load for bracket and fixing.';
    case 'steel-post':
      return 'A bracket fixed to a steel post needs an engineer, or enter a rated load for bracket and fixing.';
    default:
      return null;
  }
}

function armTrouble(arm: ArmSection): string | null {
  switch (arm.kind) {
    case 'flat-bar':
      return null;
    case 'knee-brace':
      return Math.min(arm.widthIn, arm.depthIn) > TIMBER_POST_IN
        ? 'A brace of post timber (5 in and over) has its own strength table and is for an engineer.'
        : null;
    case 'tube':
      if (2 * arm.wallIn >= Math.min(arm.widthIn, arm.depthIn)) {
        return `A tube with walls of ${printed(arm.wallIn)} in has no room inside; check its sizes.`;
      }
      return thinTrouble(arm);
    case 'angle':
      if (arm.wallIn >= Math.min(arm.legWidthIn, arm.legDepthIn)) return solidTrouble(arm.wallIn);
      return thinTrouble(arm);
    case 'tee':
      if (arm.wallIn >= Math.min(arm.flangeWidthIn, arm.depthIn)) return solidTrouble(arm.wallIn);
      return thinTrouble(arm);
  }
}

function solidTrouble(wallIn: number): string {
  return `An angle or tee ${printed(wallIn)} in thick leaves no leg; check its sizes.`;
}

function thinTrouble(arm: ArmSection): string | null {
  return hasThinWall(arm)
    ? 'The wall of the arm is so thin that it may buckle; that is for an engineer.'
    : null;
}

function printed(lengthIn: number): string {
  return String(Math.round(lengthIn * 1000) / 1000);
}
