/** Walls, ledgers, piers, legs and beds: what stands straight up under a slab. */
import type { PierSupport, Support, WallSupport } from '../job';
import type { Point } from '../outline';
import { directionBetween, distanceIn, leftOf, moved, TOUCH_IN } from '../outline';
import type { Range } from './extrusion';
import { addBox, addPrism, levelFrame, planFrame } from './extrusion';
import { BLOCK_BOND, BRICK_BOND, masonrySolid } from './masonry';
import { solidBuilder } from './solid-builder';
import type { SupportPart } from './support-part';

type Ledger = Extract<Support, { kind: 'ledger' }>;

/** Sawn sizes of studs, plates and ledgers. Common practice, no source. */
const STUD_IN = 1.5;
const LEDGER_HEIGHT_IN = 5.5;
/** Thickness of a mortar joint under a slab, and of a bed that is the only support. Common practice, no source. */
const JOINT_IN = 3 / 8;
const BED_IN = 1 / 2;

/**
 * A wall under its bearing strip, up to the soffit less its gap. A wall with a height of its own starts that far below;
 * any other stands on the floor. A stud wall has a plate below, one above, and studs between at their spacing.
 */
export function wallParts(wall: WallSupport, soffitIn: number): SupportPart[] {
  const lengthIn = distanceIn(wall.from, wall.to);
  const topIn = soffitIn - wall.gapIn;
  const bottomIn = wall.heightIn === null ? 0 : topIn - wall.heightIn;
  if (lengthIn <= TOUCH_IN || topIn <= bottomIn) return [];
  if (wall.build !== 'stud') {
    const bond = wall.build === 'block' ? BLOCK_BOND : BRICK_BOND;
    const footprint = strip(wall.from, wall.to, wall.widthIn);
    return [{ material: wall.build, solid: masonrySolid(footprint, bottomIn, topIn, bond) }];
  }
  const builder = solidBuilder();
  const frame = planFrame(wall.from, 0, directionBetween(wall.from, wall.to));
  const deep: Range = [-wall.widthIn / 2, wall.widthIn / 2];
  const lowIn = Math.min(bottomIn + STUD_IN, topIn);
  const highIn = Math.max(topIn - STUD_IN, lowIn);
  addBox(builder, frame, [0, lengthIn], deep, [bottomIn, lowIn]);
  addBox(builder, frame, [0, lengthIn], deep, [highIn, topIn]);
  for (const atIn of studPlacesIn(lengthIn, wall.studSpacingIn)) {
    addBox(builder, frame, [atIn, Math.min(lengthIn, atIn + STUD_IN)], deep, [lowIn, highIn]);
  }
  return [{ material: 'timber', solid: builder.finish() }];
}

/** Near faces of the studs: one at each end, and one centred on every spacing between. */
function studPlacesIn(lengthIn: number, spacingIn: number): number[] {
  const places = [0];
  const lastIn = lengthIn - STUD_IN;
  for (let atIn = spacingIn - STUD_IN / 2; atIn < lastIn - STUD_IN; atIn += spacingIn) {
    if (atIn >= STUD_IN) places.push(atIn);
  }
  if (lastIn >= STUD_IN) places.push(lastIn);
  return places;
}

/** A timber strip fixed to a wall, its top at the soffit less its gap. */
export function ledgerParts(ledger: Ledger, soffitIn: number): SupportPart[] {
  const topIn = soffitIn - ledger.gapIn;
  if (distanceIn(ledger.from, ledger.to) <= TOUCH_IN) return [];
  const heightIn = Math.min(LEDGER_HEIGHT_IN, topIn);
  return prismParts('timber', strip(ledger.from, ledger.to, ledger.widthIn), [topIn - heightIn, topIn]);
}

/** A pier up to the soffit: the pier itself, and the mortar joint on it where it is bedded and no gap is left. */
export function pierParts(pier: PierSupport, footprint: readonly Point[], soffitIn: number): SupportPart[] {
  const topIn = soffitIn - pier.gapIn;
  const bottomIn = pier.heightIn === null ? 0 : topIn - pier.heightIn;
  const heightIn = topIn - bottomIn;
  if (heightIn <= 0) return [];
  const isBedded = pier.bed === 'mortar' && pier.gapIn === 0 && pier.build !== 'timber-post';
  const jointIn = isBedded ? Math.min(JOINT_IN, heightIn / 2) : 0;
  return [
    ...pierBody(pier.build, footprint, [bottomIn, topIn - jointIn]),
    ...(isBedded ? prismParts('mortar', footprint, [topIn - jointIn, topIn]) : []),
  ];
}

function pierBody(build: PierSupport['build'], footprint: readonly Point[], height: Range): SupportPart[] {
  switch (build) {
    case 'block':
      return [{ material: 'block', solid: masonrySolid(footprint, ...height, BLOCK_BOND) }];
    case 'brick':
      return [{ material: 'brick', solid: masonrySolid(footprint, ...height, BRICK_BOND) }];
    case 'concrete':
    case 'stone':
      return prismParts(build, footprint, height);
    case 'timber-post':
      return prismParts('timber', footprint, height);
  }
}

/** A leg from the floor to the soffit less its gap. */
export function legParts(footprint: readonly Point[], gapIn: number, soffitIn: number): SupportPart[] {
  return prismParts('timber', footprint, [0, soffitIn - gapIn]);
}

/** A bed of mortar under the slab; what lies below it is not recorded and not drawn. */
export function bedParts(footprint: readonly Point[], gapIn: number, soffitIn: number): SupportPart[] {
  const topIn = soffitIn - gapIn;
  return prismParts('mortar', footprint, [topIn - BED_IN, topIn]);
}

function prismParts(
  material: SupportPart['material'],
  footprint: readonly Point[],
  [fromIn, toIn]: Range,
): SupportPart[] {
  if (toIn <= fromIn) return [];
  const builder = solidBuilder();
  addPrism(builder, levelFrame(fromIn), [footprint], toIn - fromIn);
  return [{ material, solid: builder.finish() }];
}

function strip(from: Point, to: Point, widthIn: number): Point[] {
  const across = leftOf(directionBetween(from, to));
  const half = widthIn / 2;
  return [
    moved(from, across, -half),
    moved(to, across, -half),
    moved(to, across, half),
    moved(from, across, half),
  ];
}
