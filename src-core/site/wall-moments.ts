/** What slabs put on the walls that brackets hang on or ties hold to: moments about the wall's middle, stud by stud. */
import type { LoadCase, PieceAnalysis } from '../analysis';
import type { BracketSupport, WallSupport } from '../job';
import type { Point } from '../outline';
import { directionAt, directionBetween, distanceIn, leftOf } from '../outline';

/** How far from a wall's face a bracket's root may be drawn and still hang on that wall, in. */
const NEAR_FACE_IN = 1;
/** Contacts nearer together along a wall than this are at one place, in. */
const SAME_PLACE_IN = 0.01;
/** Spacing of studs in a wall that is not drawn, in. */
const USUAL_STUDS_IN = 16;

export type WallBuild = WallSupport['build'] | 'concrete' | 'post' | 'veneer' | 'unknown';

/** A wall, drawn under the piece or only known by the brackets on it. */
export interface LoadedWall {
  readonly name: string;
  readonly build: WallBuild;
  /** null where the wall is not drawn. */
  readonly widthIn: number | null;
  /** Length of wall that is taken to carry what falls on it: one stud's share. */
  readonly shareIn: number;
}

export interface WallMoment {
  readonly wall: LoadedWall;
  readonly pieceName: string;
  readonly isOutdoors: boolean;
  /** Largest moment on one share of the wall, over all cases and states. */
  readonly shareLbfIn: number;
  readonly caseWords: string;
  /** Of it under self weight. */
  readonly deadLbfIn: number;
}

/** The contacts at one place along a wall, and how far out from its middle each acts. */
interface Hold {
  readonly alongIn: number;
  readonly contacts: number[];
  readonly leversIn: number[];
}

/**
 * Moment about the middle of each wall that carries brackets, or to which the slab is tied, from every reaction on it; about the face
 * of a wall that is not drawn. A slab that only rests on its wall turns it little and is left out. Statics.
 */
export function wallMoments(analysis: PieceAnalysis): WallMoment[] {
  const supports = new Set(analysis.bearings.map(({ support }) => support));
  const rows = [...supports].filter((one): one is BracketSupport => one.kind === 'bracket');
  const walls = [...supports].filter((one): one is WallSupport => one.kind === 'wall');
  const onWall = new Map(rows.map((row) => [row, walls.find((wall) => hangsOn(row, wall)) ?? null]));
  const drawn = walls.flatMap((wall) => {
    const own = rows.filter((row) => onWall.get(row) === wall);
    if (own.length === 0 && wall.hold.kind === 'resting') return [];
    return [worstOf(analysis, wallOf(wall), holdsAbout(analysis, [wall, ...own], wall.from, wall.to))];
  });
  const alone = rows.flatMap((row) => {
    if (onWall.get(row) !== null) return [];
    const u = directionAt((row.directionDeg * Math.PI) / 180);
    const from = row.roots[0]!;
    const along = leftOf(u);
    const to = { xIn: from.xIn + along.x, yIn: from.yIn + along.y };
    return [worstOf(analysis, wallBehind(row), holdsAbout(analysis, [row], from, to))];
  });
  return [...drawn, ...alone];
}

function wallOf(wall: WallSupport): LoadedWall {
  return {
    name: wall.name ?? wall.id,
    build: wall.build,
    widthIn: wall.widthIn,
    shareIn: wall.studSpacingIn,
  };
}

function wallBehind(row: BracketSupport): LoadedWall {
  return {
    name: `behind the brackets ${row.name ?? row.id}`,
    build: BUILD_OF[row.backing],
    widthIn: null,
    shareIn: USUAL_STUDS_IN,
  };
}

const BUILD_OF: { readonly [B in BracketSupport['backing']]: WallBuild } = {
  'timber-stud': 'stud',
  'steel-post': 'post',
  'grouted-block': 'block',
  'hollow-block': 'block',
  'brick-veneer': 'veneer',
  concrete: 'concrete',
  unknown: 'unknown',
};

/** Whether the roots of a row lie at a face of a wall. */
function hangsOn(row: BracketSupport, wall: WallSupport): boolean {
  const along = directionBetween(wall.from, wall.to);
  const lengthIn = distanceIn(wall.from, wall.to);
  return row.roots.every((root) => {
    const { alongIn, outIn } = placeOn(root, wall.from, along);
    return (
      Math.abs(outIn) <= wall.widthIn / 2 + NEAR_FACE_IN &&
      alongIn >= -NEAR_FACE_IN &&
      alongIn <= lengthIn + NEAR_FACE_IN
    );
  });
}

function placeOn(at: Point, from: Point, along: ReturnType<typeof directionAt>) {
  const out = leftOf(along);
  const dx = at.xIn - from.xIn;
  const dy = at.yIn - from.yIn;
  return { alongIn: dx * along.x + dy * along.y, outIn: dx * out.x + dy * out.y };
}

function holdsAbout(
  { bearings, contacts }: PieceAnalysis,
  supports: readonly (WallSupport | BracketSupport)[],
  from: Point,
  to: Point,
): Hold[] {
  const along = directionBetween(from, to);
  const holds: Hold[] = [];
  const places = bearings
    .filter(({ support }) => supports.some((one) => one === support))
    .flatMap((bearing) =>
      bearing.contacts.map((contact) => ({ contact, ...placeOn(contacts[contact]!.at, from, along) })),
    )
    .sort((a, b) => a.alongIn - b.alongIn);
  for (const { contact, alongIn, outIn } of places) {
    const last = holds.at(-1);
    const hold =
      last !== undefined && alongIn - last.alongIn < SAME_PLACE_IN
        ? last
        : { alongIn, contacts: [], leversIn: [] };
    if (hold !== last) holds.push(hold);
    hold.contacts.push(contact);
    hold.leversIn.push(outIn);
  }
  return holds;
}

function worstOf(analysis: PieceAnalysis, wall: LoadedWall, holds: readonly Hold[]): WallMoment {
  const { elastic, cracked, piece } = analysis;
  const states = [elastic.low, elastic.high, ...(cracked === null ? [] : [cracked.low, cracked.high])];
  let worst = { shareLbfIn: 0, caseWords: states[0]!.cases[0]!.words };
  let deadLbfIn = 0;
  for (const { cases } of states) {
    cases.forEach((loadCase, index) => {
      const shareLbfIn = largestShare(holds, loadCase, wall.shareIn);
      if (index === 0) deadLbfIn = Math.max(deadLbfIn, shareLbfIn);
      if (shareLbfIn > worst.shareLbfIn) worst = { shareLbfIn, caseWords: loadCase.words };
    });
  }
  return {
    wall,
    pieceName: piece.name,
    isOutdoors: piece.exposure === 'outdoors',
    deadLbfIn,
    ...worst,
  };
}

/** Largest moment, either way, of the reactions on any stretch as long as one share. */
function largestShare(holds: readonly Hold[], { contactLbf }: LoadCase, shareIn: number): number {
  const moments = holds.map(({ contacts, leversIn }) =>
    contacts.reduce((sum, contact, i) => sum + contactLbf[contact]! * leversIn[i]!, 0),
  );
  let most = 0;
  let sum = 0;
  let first = 0;
  holds.forEach(({ alongIn }, last) => {
    sum += moments[last]!;
    // a share ends just before the next stud, so that brackets at the studs never count two at once
    while (alongIn - holds[first]!.alongIn > shareIn - SAME_PLACE_IN) sum -= moments[first++]!;
    most = Math.max(most, Math.abs(sum));
  });
  return most;
}
