/** Random jobs that are valid by construction: rectangles and L shapes, turned, with cutouts, steel and every support. */
import fc from 'fast-check';
import type { JobDraft } from '../../src-core/job';
import type { Frame, PieceDraft, PointDraft, SupportDraft } from './random-supports';
import { randomSupports, SCHEMES } from './random-supports';
import type { Dice } from './seeded-random';
import { diceOf, seededRandom } from './seeded-random';

type CutoutDraft = NonNullable<PieceDraft['cutouts']>[number];
type SteelDraft = NonNullable<PieceDraft['reinforcement']>[number];

/** Jobs for property tests; shrinks to fewer pieces and shows the seed that made them. */
export const jobArbitrary: fc.Arbitrary<{ seed: number; pieceCount: number; job: JobDraft }> = fc
  .record({ seed: fc.nat(), pieceCount: fc.integer({ min: 1, max: 3 }) })
  .map(({ seed, pieceCount }) => ({ seed, pieceCount, job: randomJob(seededRandom(seed), pieceCount) }));

/** A valid job drawn from `random`, which gives numbers from 0 up to 1. */
export function randomJob(random: () => number, pieceCount = 1): JobDraft {
  const dice = diceOf(random);
  const strengthPsi = dice.pick([null, 3000, 4000, 5000, 6000]);
  return {
    format: 'ledgewright-job',
    version: 1,
    id: 'random',
    name: 'Random job',
    shownIn: dice.pick(['imperial', 'metric']),
    mixes: [{ id: 'mix', name: 'Mix', strengthPsi, cement: dice.pick(['ordinary', 'rapid']) }],
    pieces: Array.from({ length: pieceCount }, (_, i) => randomPiece(dice, i, pieceCount)),
  };
}

function randomPiece(dice: Dice, index: number, pieceCount: number): PieceDraft {
  const frame = randomFrame(dice);
  const thicknessIn = dice.pick([1, 1.25, 1.5, 1.5, 2, 2, 2.5, 3, 4]);
  const schemes = dice.chance(0.7) ? [dice.pick(SCHEMES)] : [dice.pick(SCHEMES), dice.pick(SCHEMES)];
  const supports = schemes.flatMap((scheme, k) => randomSupports(dice, frame, scheme, `p${index}-s${k}`));
  const cutouts = randomCutouts(dice, frame, supports);
  const corners = randomCorners(dice, frame);
  const piece: PieceDraft = {
    id: `piece-${index}`,
    name: `Piece ${index + 1}`,
    use: dice.pick(['counter', 'bar-ledge', 'foot-ledge', 'bench', 'hearth', 'cap', 'other']),
    corners,
    edges: dice.chance(0.5) ? null : corners.map(() => randomEdge(dice, index, pieceCount)),
    thicknessIn,
    exposure: dice.pick(['indoors', 'outdoors']),
    mixId: 'mix',
    cutouts,
    reinforcement: randomSteel(dice, frame, thicknessIn),
    supports,
    loads: {
      roving: randomRoving(dice),
      spreadPsf: dice.pick([0, 50, 100]),
      fixed: randomFixed(dice, frame, cutouts),
    },
  };
  const turnDeg = dice.pick([0, 0, 0, 90, 180, 37, -61.5]);
  const placed = placePiece(piece, turnDeg, {
    xIn: dice.sixteenths(-200, 200),
    yIn: dice.sixteenths(-200, 200),
  });
  return dice.chance(0.3) ? { ...placed, corners: [...placed.corners].reverse() } : placed;
}

function randomFrame(dice: Dice): Frame {
  const lengthIn = dice.sixteenths(24, 132);
  const depthIn = dice.sixteenths(10, Math.min(40, lengthIn));
  if (dice.chance(0.65)) return { lengthIn, depthIn, leg: null };
  return {
    lengthIn,
    depthIn,
    leg: { widthIn: dice.sixteenths(10, lengthIn * 0.7), lengthIn: dice.sixteenths(12, 72) },
  };
}

function randomCorners(dice: Dice, { lengthIn, depthIn, leg }: Frame): PieceDraft['corners'] {
  const low: PointDraft[] =
    leg === null
      ? [{ xIn: 0, yIn: 0 }]
      : [
          { xIn: 0, yIn: -leg.lengthIn },
          { xIn: leg.widthIn, yIn: -leg.lengthIn },
          { xIn: leg.widthIn, yIn: 0 },
        ];
  const points = [
    ...low,
    { xIn: lengthIn, yIn: 0 },
    { xIn: lengthIn, yIn: depthIn },
    { xIn: 0, yIn: depthIn },
  ];
  const radii = dice.chance(0.5) ? [0] : [0, 0.25, 1, 3];
  return points.map((point) => ({ ...point, radiusIn: dice.pick(radii) }));
}

function randomEdge(dice: Dice, index: number, pieceCount: number): NonNullable<PieceDraft['edges']>[number] {
  if (dice.chance(0.15)) return { kind: 'wall' };
  if (dice.chance(0.1) && pieceCount > 1)
    return { kind: 'butted', toPieceId: `piece-${(index + 1) % pieceCount}` };
  return {
    kind: 'free',
    profile: { kind: dice.pick(['square', 'eased', 'chamfer', 'bullnose', 'stepped']) },
  };
}

/** Up to two openings in the main rectangle, clear of its edges, of each other and of every post and pier. */
function randomCutouts(dice: Dice, frame: Frame, supports: readonly SupportDraft[]): CutoutDraft[] {
  const taken: { centre: PointDraft; reachIn: number }[] = supports.flatMap((support) => {
    if (support.kind === 'leg') return [{ centre: support.centre, reachIn: 0 }];
    return support.kind === 'pier' ? [{ centre: support.footprint.centre, reachIn: 0 }] : [];
  });
  const cutouts: CutoutDraft[] = [];
  for (let i = 0; i < 2; i++) {
    // Corner radii reach at most 3 in into the slab.
    const reachIn = Math.min(14, frame.depthIn / 2 - 3.25) * dice.pick([0.15, 0.5, 1]);
    if (dice.chance(0.6) || reachIn < 0.5) continue;
    const clearIn = reachIn + 3.25;
    const centre = {
      xIn: dice.sixteenths(clearIn, frame.lengthIn - clearIn),
      yIn: dice.sixteenths(clearIn, frame.depthIn - clearIn),
    };
    const isClear = taken.every((other) => {
      const apartIn = Math.hypot(other.centre.xIn - centre.xIn, other.centre.yIn - centre.yIn);
      return apartIn > other.reachIn + reachIn + 1.25;
    });
    if (frame.lengthIn < 2 * clearIn || !isClear) continue;
    taken.push({ centre, reachIn });
    cutouts.push(cutoutWithin(dice, `cutout-${i}`, centre, reachIn));
  }
  return cutouts;
}

function cutoutWithin(dice: Dice, id: string, centre: PointDraft, reachIn: number): CutoutDraft {
  const sideIn = reachIn * Math.SQRT2;
  switch (dice.whole(0, 2)) {
    case 0:
      return { id, purpose: 'tap', shape: { kind: 'circle', centre, diameterIn: 2 * reachIn } };
    case 1: {
      const corners = [90, 210, 330].map((deg) => onCircle(centre, reachIn, deg));
      return { id, purpose: 'other', shape: { kind: 'polygon', corners } };
    }
    default: {
      const angleDeg = dice.pick([0, 0, 20]);
      const radiusIn = sideIn * dice.pick([0, 0.1]);
      return {
        id,
        purpose: 'sink',
        shape: { kind: 'rectangle', centre, widthIn: sideIn, depthIn: sideIn * 0.8, radiusIn, angleDeg },
        sink: {
          mounting: dice.pick(['dropped-in', 'under-rim', 'cast-over']),
          carriedBySlab: dice.chance(0.7),
        },
      };
    }
  }
}

function onCircle(centre: PointDraft, radiusIn: number, deg: number): PointDraft {
  const rad = (deg * Math.PI) / 180;
  return { xIn: centre.xIn + radiusIn * Math.cos(rad), yIn: centre.yIn + radiusIn * Math.sin(rad) };
}

function randomSteel(dice: Dice, frame: Frame, thicknessIn: number): SteelDraft[] {
  const steel: SteelDraft[] = [];
  if (dice.chance(0.4)) {
    const wireIn = dice.pick([0.0625, 0.08, 0.1335, 0.1635]);
    const spacingIn = dice.pick([2, 4, 6]);
    const wires = { wireIn, spacingIn, crossWireIn: wireIn, crossSpacingIn: spacingIn };
    steel.push({ kind: 'mesh', id: 'mesh', ...wires, depthIn: thicknessIn * dice.pick([0.3, 0.5, 0.7]) });
  }
  if (dice.chance(0.4)) {
    const angleDeg = dice.pick([0, 90]);
    const corners = dice.chance(0.3) ? fieldOf(frame) : null;
    const depthIn = thicknessIn * dice.pick([0.35, 0.5, 0.65]);
    steel.push({
      kind: 'bars',
      id: 'bars',
      barIn: 0.375,
      areaIn2: 0.11,
      spacingIn: dice.pick([3, 4, 6]),
      angleDeg,
      depthIn,
      corners,
    });
  }
  if (dice.chance(0.1)) steel.push({ kind: 'fibre', id: 'fibre', material: 'glass', dosePcy: 3 });
  return steel;
}

function fieldOf({ lengthIn, depthIn }: Frame): PointDraft[] {
  return [
    { xIn: 3, yIn: 3 },
    { xIn: lengthIn - 3, yIn: 3 },
    { xIn: lengthIn - 3, yIn: depthIn - 3 },
    { xIn: 3, yIn: depthIn - 3 },
  ];
}

function randomRoving(dice: Dice): NonNullable<PieceDraft['loads']>['roving'] {
  if (dice.chance(0.5)) return null;
  if (dice.chance(0.2)) return { setting: 'own', forceLbf: dice.whole(50, 500), widthIn: 6, depthIn: 4 };
  return { setting: dice.pick(['leaning', 'sitting', 'climbing', 'none']) };
}

function randomFixed(
  dice: Dice,
  { lengthIn, depthIn }: Frame,
  cutouts: readonly CutoutDraft[],
): NonNullable<NonNullable<PieceDraft['loads']>['fixed']> {
  if (cutouts.length > 0 || dice.chance(0.7)) return [];
  const centre = { xIn: lengthIn * dice.pick([0.3, 0.5, 0.6]), yIn: depthIn / 2 };
  const weightLb = dice.whole(20, 300);
  return [
    { id: 'appliance', name: 'Appliance', centre, widthIn: lengthIn / 4, depthIn: depthIn / 2, weightLb },
  ];
}

/** The piece turned about the origin and moved; fixed loads turn only with whole quarters, so others are dropped. */
function placePiece(piece: PieceDraft, turnDeg: number, by: PointDraft): PieceDraft {
  const moved = placeValue(piece, turnDeg, by) as PieceDraft;
  const isUpright = turnDeg % 180 === 0;
  return isUpright ? moved : { ...moved, loads: { ...moved.loads, fixed: [] } };
}

/** Every point and every angle below `value`, turned and moved. */
function placeValue(value: unknown, turnDeg: number, by: PointDraft): unknown {
  if (Array.isArray(value)) return value.map((item) => placeValue(item, turnDeg, by));
  if (typeof value !== 'object' || value === null) return value;
  const fields = value as Readonly<Record<string, unknown>>;
  const placed: Record<string, unknown> = Object.fromEntries(
    Object.entries(fields).map(([key, member]) => [key, placeValue(member, turnDeg, by)]),
  );
  const { xIn, yIn, kind } = fields;
  if (typeof xIn === 'number' && typeof yIn === 'number') {
    const turned = onCircle(
      { xIn: 0, yIn: 0 },
      Math.hypot(xIn, yIn),
      turnDeg + (Math.atan2(yIn, xIn) * 180) / Math.PI,
    );
    placed.xIn = by.xIn + (turnDeg === 0 ? xIn : turned.xIn);
    placed.yIn = by.yIn + (turnDeg === 0 ? yIn : turned.yIn);
  }
  for (const key of ['angleDeg', 'directionDeg']) {
    if (typeof fields[key] === 'number') placed[key] = upToFullTurn(fields[key] + turnDeg);
  }
  const canTurn =
    kind === 'cabinet' || kind === 'leg' || kind === 'rectangle' || kind === 'mesh' || kind === 'bars';
  if (canTurn && fields.angleDeg === undefined) placed.angleDeg = upToFullTurn(turnDeg);
  return placed;
}

function upToFullTurn(deg: number): number {
  return ((deg % 360) + 360) % 360;
}
