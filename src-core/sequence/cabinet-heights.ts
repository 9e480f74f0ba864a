/** Whether a cabinet slips in under the slab and its feet then reach it. */
import type { CabinetSupport, Job, Piece } from '../job';
import { floorAt, floorHeights, floorSurface } from '../levels';
import { printLength } from '../units';
import { cabinetPlan } from './bays';
import type { SwapFinding } from './finding';

/**
 * Height of the feet on which a cabinet has the height that it is sold with, as the model draws it, kept within their range. Common
 * practice, no source.
 */
const USUAL_FEET_IN = 4;
/** Room that a cabinet needs over it to slip in. Common practice, no source. */
export const LEAST_ROOM_IN = 1 / 8;
/** A cabinet without feet is packed up this far at the most. Common practice, no source. */
const MOST_PACKING_IN = 3 / 4;
/** Finer than a foot is wound. */
const TOUCH_IN = 1 / 64;

/** Heights of a cabinet against its place, all in inches. */
export interface CabinetRoom {
  /** Soffit over the floor, least and most over the cabinet's corners. */
  readonly soffitLeastIn: number;
  readonly soffitMostIn: number;
  /** Cabinet with the board that stays on it, wound right in and right out. */
  readonly lowestIn: number;
  readonly highestIn: number;
  /** Room over it as it slips in; negative where it does not go under. */
  readonly roomIn: number;
  /** How far it stays short of where it is meant to touch, wound right out; 0 where it reaches. */
  readonly shortIn: number;
  /** What its feet come to at the corners, least and most; null without feet. */
  readonly feetIn: { readonly least: number; readonly most: number } | null;
}

/** Measures a cabinet's place by the level readings; the soffit is the top's elevation less the slab, over the highest reading. */
export function cabinetRoom(job: Job, piece: Piece, cabinet: CabinetSupport): CabinetRoom {
  const floor = floorSurface(floorHeights(job.site.levels, { kind: 'highest' }));
  const soffitIn = piece.topElevationIn - piece.thicknessIn;
  const overFloor = cabinetPlan(cabinet).map((corner) => soffitIn - floorAt(floor, corner).heightIn);
  const soffitLeastIn = Math.min(...overFloor);
  const soffitMostIn = Math.max(...overFloor);
  const { feet, heightIn } = cabinet;
  const boardIn = cabinet.backingBoardIn ?? 0;
  const usualIn = feet === null ? 0 : Math.min(feet.longestIn, Math.max(feet.shortestIn, USUAL_FEET_IN));
  const lowestIn = heightIn + boardIn - (feet === null ? 0 : usualIn - feet.shortestIn);
  const highestIn = heightIn + boardIn + (feet === null ? 0 : feet.longestIn - usualIn);
  const footAt = (placeIn: number) => usualIn + placeIn - cabinet.gapIn - boardIn - heightIn;
  return {
    soffitLeastIn,
    soffitMostIn,
    lowestIn,
    highestIn,
    roomIn: soffitLeastIn - lowestIn,
    shortIn: Math.max(0, soffitMostIn - cabinet.gapIn - highestIn),
    feetIn: feet === null ? null : { least: footAt(soffitLeastIn), most: footAt(soffitMostIn) },
  };
}

/** The finding about one cabinet that comes in. */
export function cabinetHeight(job: Job, piece: Piece, cabinet: CabinetSupport, stepId: string): SwapFinding {
  const room = cabinetRoom(job, piece, cabinet);
  const hasRoom = room.roomIn >= LEAST_ROOM_IN;
  const most = cabinet.feet === null ? MOST_PACKING_IN : TOUCH_IN;
  return {
    id: 'cabinet-height',
    pieceId: piece.id,
    stepId,
    aboutId: cabinet.id,
    level: hasRoom && room.shortIn <= most ? 'holds' : 'change',
    title: 'Height of the cabinet under the slab',
    words: [roomWords(job, cabinet, room, hasRoom), reachWords(job, cabinet, room, most)]
      .filter(Boolean)
      .join(' '),
    source: `arithmetic; room to slip in and a height taken on feet of ${printLength(USUAL_FEET_IN, { system: job.shownIn })}: common practice, no source`,
  };
}

function roomWords(job: Job, cabinet: CabinetSupport, room: CabinetRoom, hasRoom: boolean): string {
  const length = lengthOf(job);
  const name = cabinet.name ?? cabinet.id;
  const board =
    cabinet.backingBoardIn === null
      ? ''
      : ` with the ${length(cabinet.backingBoardIn)} board that stays on it`;
  const wound = cabinet.feet === null ? '' : ', wound right in,';
  const soffit = `The soffit is ${length(room.soffitLeastIn)} over the floor at the least; ${name}${board}${wound} is ${length(room.lowestIn)} high`;
  if (room.roomIn < 0)
    return `${soffit} and does not go under. Take the board off, or shorter feet, or a lower plinth.`;
  if (!hasRoom)
    return `${soffit}, which leaves ${length(room.roomIn)}: too little to slip it in without scraping; ${length(LEAST_ROOM_IN)} is wanted.`;
  return `${soffit} and slips in with ${length(room.roomIn)} to spare.`;
}

function reachWords(job: Job, { feet }: CabinetSupport, room: CabinetRoom, most: number): string {
  const length = lengthOf(job);
  if (room.roomIn < 0) return '';
  if (feet === null || room.feetIn === null) {
    if (room.shortIn <= TOUCH_IN) return '';
    return `It has no feet: pack it up ${length(room.shortIn)} hard under the slab${room.shortIn > most ? `, more than the ${length(most)} that packing serves for` : ''}.`;
  }
  if (room.shortIn > most) return `Wound right out it stays ${length(room.shortIn)} short of the slab.`;
  const { least, most: mostFeet } = room.feetIn;
  const between = mostFeet - least < 1 / 32 ? length(least) : `${length(least)} to ${length(mostFeet)}`;
  return `Its feet come out to ${between}, of ${length(feet.shortestIn)} to ${length(feet.longestIn)}.`;
}

function lengthOf(job: Job): (valueIn: number) => string {
  return (valueIn) => printLength(valueIn, { system: job.shownIn });
}
