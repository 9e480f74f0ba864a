/** What each arm of a bracket row carries in the engine's states, and which of those loads can govern. */
import type { Bound, LoadCase, PieceAnalysis } from '../analysis';
import { armFlexibility, factoredLoad } from '../bracket';
import type { BracketSupport } from '../job';
import type { Point } from '../outline';
import { directionAt, leftOf } from '../outline';
import type { NamedState } from './states';
import { statesOf } from './states';

/** A moment below this is the engine's rounding, lbf-in. */
const NOTHING_LBF_IN = 1;

export interface Arm {
  /** "bracket 2 of arms". */
  readonly words: string;
  readonly at: Point;
  /** Contacts on it, ties included, and how far each lies from the wall face. */
  readonly contacts: readonly number[];
  readonly alongIn: readonly number[];
}

/** One arm in one load case of one state. */
export interface ArmLoad {
  readonly arm: Arm;
  readonly named: NamedState;
  readonly loadCase: LoadCase;
  readonly totalLbf: number;
  /** Of it self weight and what the slab carries. */
  readonly deadLbf: number;
  readonly momentLbfIn: number;
  /** Distance of the load's centroid from the wall face. */
  readonly atIn: number;
  /** How far the engine's reactions sink the arm's tip, and self weight's part of it. */
  readonly sinkingIn: number;
  readonly deadSinkingIn: number;
}

/** The arms of a row that the slab covers; `parts` are their bearings. */
export function armsOf(
  { bearings, contacts }: PieceAnalysis,
  bracket: BracketSupport,
  parts: readonly number[],
): Arm[] {
  return parts.flatMap((part) => {
    const { words, centre, contacts: own } = bearings[part]!;
    if (own.length === 0) return [];
    const root = rootUnder(bracket, contacts[own[0]!]!.at);
    const alongIn = own.map((i) => alongArmIn(bracket, root, contacts[i]!.at));
    return [{ words, at: centre, contacts: own, alongIn }];
  });
}

/** The root of the arm on whose line a contact lies. */
function rootUnder(bracket: BracketSupport, at: Point): Point {
  const across = leftOf(directionAt((bracket.directionDeg * Math.PI) / 180));
  const offIn = (root: Point) =>
    Math.abs((at.xIn - root.xIn) * across.x + (at.yIn - root.yIn) * across.y) +
    (isOnArm(bracket, root, at) ? 0 : bracket.reachIn);
  return bracket.roots.reduce((best, root) => (offIn(root) < offIn(best) ? root : best));
}

function isOnArm(bracket: BracketSupport, root: Point, at: Point): boolean {
  const alongIn = alongArmIn(bracket, root, at);
  return alongIn > 0 && alongIn <= bracket.reachIn * (1 + 1e-6);
}

function alongArmIn({ directionDeg }: BracketSupport, root: Point, at: Point): number {
  const u = directionAt((directionDeg * Math.PI) / 180);
  return (at.xIn - root.xIn) * u.x + (at.yIn - root.yIn) * u.y;
}

/** Load of an arm in a case as one force on the arm, lbf and in; a pull of ties that outweighs the rest counts as nothing. */
export function resultantOn(arm: Arm, { contactLbf }: LoadCase, reachIn: number): { P: number; M: number } {
  let sum = 0;
  let moment = 0;
  arm.contacts.forEach((i, k) => {
    sum += contactLbf[i]!;
    moment += contactLbf[i]! * arm.alongIn[k]!;
  });
  const M = Math.max(0, moment);
  const least = M / reachIn;
  return { P: sum > least * (1 + 1e-9) ? sum : least, M };
}

/** Whether ties lift one of the arms in a case. */
export function isLifted(arms: readonly Arm[], { contactLbf }: LoadCase): boolean {
  return arms.some(
    ({ contacts, alongIn }) =>
      contacts.reduce((sum, i, k) => sum + contactLbf[i]! * alongIn[k]!, 0) < -NOTHING_LBF_IN,
  );
}

/** Every arm of a row in every load case of every state. */
export function armLoads(analysis: PieceAnalysis, bracket: BracketSupport, arms: readonly Arm[]): ArmLoad[] {
  return statesOf(analysis).flatMap((named) => arms.flatMap((arm) => loadsOn(bracket, arm, named)));
}

/**
 * The few loads among which the worst for every part of a bracket is. A part that grows with the load and is largest nearest or
 * farthest along the arm (bending, fasteners, toe, strut) is worst under a load that no other beats in size and distance
 * either way; screws are among them, for a pull may add to what they bear in shear. The arm of a brace also bends
 * between its ends, concrete takes factored loads, and the tip sinks by itself.
 */
export function governingLoads(loads: readonly ArmLoad[], reachIn: number): ArmLoad[] {
  const fronts = [
    front(loads, ({ totalLbf, atIn }) => [totalLbf, atIn]),
    front(loads, ({ totalLbf, atIn }) => [totalLbf, -atIn]),
    front(loads, ({ momentLbfIn, atIn }) => [momentLbfIn, momentLbfIn * (reachIn - atIn)]),
    front(loads, ({ deadLbf, totalLbf }) => [factoredLoad.compute({ D: deadLbf, L: totalLbf - deadLbf })]),
    front(loads, ({ sinkingIn, deadSinkingIn }) => [sinkingIn, deadSinkingIn]),
  ];
  return [...new Set(fronts.flat())];
}

function loadsOn(bracket: BracketSupport, arm: Arm, named: NamedState): ArmLoad[] {
  const { cases, bound } = named.state;
  const sinkingOf = tipSinking(bracket, bound, arm);
  const self = resultantOn(arm, cases[0]!, bracket.reachIn);
  const deadSinkingIn = sinkingOf(cases[0]!);
  return cases.map((loadCase) => {
    const { P, M } = resultantOn(arm, loadCase, bracket.reachIn);
    return {
      arm,
      named,
      loadCase,
      totalLbf: P,
      deadLbf: Math.min(P, self.P),
      momentLbfIn: M,
      atIn: distanceFromWallIn(P, M, bracket.reachIn),
      sinkingIn: sinkingOf(loadCase),
      deadSinkingIn,
    };
  });
}

/** Distance at which a load has its moment; the tip itself where the two differ by rounding. */
function distanceFromWallIn(P: number, M: number, reachIn: number): number {
  if (P === 0) return 0;
  return P * reachIn > M * (1 + 1e-9) ? M / P : reachIn;
}

/** Sinking of the tip under the reactions of a case with the same flexibility that the engine gave the arm. */
function tipSinking(bracket: BracketSupport, bound: Bound, arm: Arm): (loadCase: LoadCase) => number {
  const { stiffness, reachIn } = bracket;
  const count = arm.alongIn.length;
  const row =
    stiffness === null
      ? armFlexibility({
          bracket,
          bound,
          positionsIn: [...arm.alongIn.map((xIn) => Math.min(reachIn, xIn)), reachIn],
        }).subarray(count * (count + 1))
      : arm.alongIn.map((xIn) => (xIn === Math.max(...arm.alongIn) ? 1 / stiffness[bound] : 0));
  return ({ contactLbf }) =>
    Math.max(
      0,
      arm.contacts.reduce((sum, i, k) => sum + contactLbf[i]! * row[k]!, 0),
    );
}

/** Those that no other is at least as great as in every measure, the first of equals. */
function front(loads: readonly ArmLoad[], measure: (load: ArmLoad) => readonly number[]): ArmLoad[] {
  const sized = loads.map((load) => ({ load, size: measure(load) }));
  let kept: typeof sized = [];
  for (const one of sized) {
    const beats = (a: readonly number[], b: readonly number[]) => a.every((value, i) => value >= b[i]!);
    if (kept.some(({ size }) => beats(size, one.size))) continue;
    kept = kept.filter(({ size }) => !beats(one.size, size));
    kept.push(one);
  }
  return kept.map(({ load }) => load);
}
