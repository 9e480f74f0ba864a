/** A piece being drawn, corner by corner. */
import type { Point } from '../../src-core/outline';
import { directionBetween, distanceIn, moved } from '../../src-core/outline';
import type { UnitSystem } from '../../src-core/units';
import { parseLength } from '../../src-core/units';

export interface DrawState {
  readonly corners: readonly Point[];
  /** Where the next corner would go; null before the pointer has been seen. */
  readonly cursor: Point | null;
  /** Length typed for the next side. */
  readonly typed: string;
  /** What is wrong with it. */
  readonly sentence: string | null;
  readonly isClosed: boolean;
}

export const EMPTY_DRAWING: DrawState = {
  corners: [],
  cursor: null,
  typed: '',
  sentence: null,
  isClosed: false,
};

/** Fewest corners of a piece. */
const LEAST_CORNERS = 3;
/** A side nearer than this (degrees) to straight across or up is meant so when its length is typed. */
const STRAIGHT_DEG = 8;
const LENGTH_CHARACTERS = /^[0-9a-z.,'"/=+()\- ]$/i;

/** The cursor on a point; with `isSquare` the side to it runs straight across or straight up. */
export function pointTo(state: DrawState, to: Point, isSquare: boolean): DrawState {
  const last = state.corners.at(-1);
  return { ...state, cursor: isSquare && last !== undefined ? squared(last, to) : to };
}

/** A corner at the cursor; on the first corner, within reach, it closes the piece. Two corners in one place are one. */
export function placeCorner(state: DrawState, reachIn: number): DrawState {
  const { cursor, corners } = state;
  const [first] = corners;
  const last = corners.at(-1);
  if (cursor === null) return state;
  if (first !== undefined && corners.length >= LEAST_CORNERS && distanceIn(first, cursor) <= reachIn) {
    return { ...state, isClosed: true };
  }
  if (last !== undefined && distanceIn(last, cursor) < 1e-6) return state;
  return { ...state, corners: [...corners, cursor], typed: '', sentence: null };
}

/** One more character of a length; a length begins with a digit, a point or an equals sign. */
export function typeCharacter(state: DrawState, character: string): DrawState {
  const begins = state.typed !== '' || /^[0-9.=]$/.test(character);
  if (!begins || !LENGTH_CHARACTERS.test(character)) return state;
  return { ...state, typed: state.typed + character, sentence: null };
}

/** Back: the last character of the length, or where there is none the last corner. */
export function stepBack(state: DrawState): DrawState {
  if (state.typed !== '') return { ...state, typed: state.typed.slice(0, -1), sentence: null };
  return { ...state, corners: state.corners.slice(0, -1), sentence: null };
}

/** Enter: a side of the typed length towards the cursor, or with nothing typed the piece is closed. */
export function enter(state: DrawState, system: UnitSystem): DrawState {
  if (state.typed !== '') return enterLength(state, system);
  if (state.corners.length >= LEAST_CORNERS) return { ...state, isClosed: true };
  return { ...state, sentence: 'A piece needs at least three corners.' };
}

/** Length of the side that is being drawn, in; null before its first corner. */
export function sideIn({ corners, cursor }: DrawState): number | null {
  const last = corners.at(-1);
  return last === undefined || cursor === null ? null : distanceIn(last, cursor);
}

function enterLength(state: DrawState, system: UnitSystem): DrawState {
  const length = parseLength(state.typed, system);
  if (!length.ok) return { ...state, sentence: length.problem.sentence };
  const last = state.corners.at(-1);
  if (last === undefined) return { ...state, sentence: 'Place the first corner before a length.' };
  if (!(length.valueIn > 0)) return { ...state, sentence: 'A side must be longer than nothing.' };
  if (state.cursor === null || distanceIn(last, state.cursor) < 1e-6) {
    return { ...state, sentence: 'Point the way that the side goes, then type its length.' };
  }
  const direction = directionBetween(last, nearlySquared(last, state.cursor));
  const corner = moved(last, direction, length.valueIn);
  return { ...state, corners: [...state.corners, corner], cursor: corner, typed: '', sentence: null };
}

function squared(from: Point, to: Point): Point {
  const isAcross = Math.abs(to.xIn - from.xIn) >= Math.abs(to.yIn - from.yIn);
  return isAcross ? { xIn: to.xIn, yIn: from.yIn } : { xIn: from.xIn, yIn: to.yIn };
}

function nearlySquared(from: Point, to: Point): Point {
  const straight = squared(from, to);
  const offIn = distanceIn(straight, to);
  const alongIn = distanceIn(from, straight);
  return offIn <= alongIn * Math.tan((STRAIGHT_DEG * Math.PI) / 180) ? straight : to;
}
