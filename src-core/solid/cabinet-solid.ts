/** A cabinet under a slab: carcass panels, rails, doors, feet and toe kick. */
import type { CabinetSupport } from '../job';
import { directionAt } from '../outline';
import type { Frame, Range } from './extrusion';
import { addBox, planFrame } from './extrusion';
import type { SolidBuilder } from './solid-builder';
import { solidBuilder } from './solid-builder';
import type { SupportPart } from './support-part';

/** Usual sizes. Common practice, no source. */
const TOE_HEIGHT_IN = 4;
const TOE_SETBACK_IN = 3;
const RAIL_HEIGHT_IN = 3.5;
const BACK_PANEL_IN = 0.25;
const DOOR_IN = 0.75;
const DOOR_GAP_IN = 0.125;
const WIDEST_DOOR_IN = 24;
const FOOT_IN = 1.5;
const FOOT_INSET_IN = 2;
/** Of what stands under the slab the toe takes at most this share, so that a low cabinet keeps a front. */
const MOST_TOE_RATIO = 0.3;

/**
 * A cabinet from the floor up to the soffit, less its gap and the backing board that stays between. Its height is that
 * of the soffit, as its feet are wound to it; where it has none it stands on a plinth.
 */
export function cabinetParts(cabinet: CabinetSupport, soffitIn: number): SupportPart[] {
  const boardIn = cabinet.backingBoardIn ?? 0;
  const topIn = soffitIn - cabinet.gapIn - boardIn;
  const frame = planFrame(cabinet.corner, 0, directionAt((cabinet.angleDeg * Math.PI) / 180));
  const wide: Range = [0, cabinet.widthIn];
  const deep: Range = [0, cabinet.depthIn];
  const parts: SupportPart[] = [];
  if (topIn > 0) {
    const { feet } = cabinet;
    const wantedIn =
      feet === null ? TOE_HEIGHT_IN : Math.max(feet.shortestIn, Math.min(TOE_HEIGHT_IN, feet.longestIn));
    const toeIn = Math.min(wantedIn, MOST_TOE_RATIO * topIn);
    const carcass = solidBuilder();
    addCarcass(carcass, frame, cabinet, [toeIn, topIn]);
    addToe(carcass, frame, cabinet, toeIn);
    parts.push({ material: 'painted-panel', solid: carcass.finish() });
    if (feet !== null) {
      const legs = solidBuilder();
      addFeet(legs, frame, cabinet, toeIn);
      parts.push({ material: 'steel', solid: legs.finish() });
    }
  }
  if (boardIn > 0) {
    const board = solidBuilder();
    addBox(board, frame, wide, deep, [topIn, topIn + boardIn]);
    parts.push({ material: 'timber', solid: board.finish() });
  }
  return parts;
}

function addCarcass(builder: SolidBuilder, frame: Frame, cabinet: CabinetSupport, height: Range): void {
  const { widthIn, depthIn } = cabinet;
  const panelIn = Math.min(cabinet.panelIn, widthIn / 2, depthIn / 2);
  const [bottomIn, topIn] = height;
  const inner: Range = [panelIn, widthIn - panelIn];
  const lidIn = cabinet.subTop ? Math.min(panelIn, topIn - bottomIn) : 0;
  const sideTopIn = topIn - lidIn;
  const railIn = Math.max(bottomIn, sideTopIn - RAIL_HEIGHT_IN);
  addBox(builder, frame, [0, panelIn], [0, depthIn], [bottomIn, sideTopIn]);
  addBox(builder, frame, [widthIn - panelIn, widthIn], [0, depthIn], [bottomIn, sideTopIn]);
  addBox(builder, frame, inner, [0, depthIn - BACK_PANEL_IN], [bottomIn, bottomIn + panelIn]);
  addBox(builder, frame, inner, [depthIn - BACK_PANEL_IN, depthIn], [bottomIn, railIn]);
  if (cabinet.frontRail) addBox(builder, frame, inner, [0, panelIn], [railIn, sideTopIn]);
  if (cabinet.backRail) addBox(builder, frame, inner, [depthIn - panelIn, depthIn], [railIn, sideTopIn]);
  if (lidIn > 0) addBox(builder, frame, [0, widthIn], [0, depthIn], [sideTopIn, topIn]);
  const doors = Math.max(1, Math.ceil(widthIn / WIDEST_DOOR_IN - 1e-6));
  for (let door = 0; door < doors; door++) {
    const across: Range = [
      (widthIn * door) / doors + DOOR_GAP_IN / 2,
      (widthIn * (door + 1)) / doors - DOOR_GAP_IN / 2,
    ];
    addBox(builder, frame, across, [-DOOR_IN, 0], [bottomIn, topIn - DOOR_GAP_IN]);
  }
}

/** The board that closes the toe space, set back from the front. */
function addToe(builder: SolidBuilder, frame: Frame, cabinet: CabinetSupport, toeIn: number): void {
  const setbackIn = Math.min(TOE_SETBACK_IN, cabinet.depthIn / 3);
  addBox(builder, frame, [0, cabinet.widthIn], [setbackIn, setbackIn + cabinet.panelIn], [0, toeIn]);
  if (cabinet.feet !== null) return;
  const backIn = cabinet.depthIn - cabinet.panelIn;
  addBox(builder, frame, [0, cabinet.widthIn], [backIn, cabinet.depthIn], [0, toeIn]);
}

/** Feet in two rows, behind the toe board and along the back. */
function addFeet(builder: SolidBuilder, frame: Frame, cabinet: CabinetSupport, toeIn: number): void {
  const count = cabinet.feet?.count ?? 0;
  const { widthIn, depthIn } = cabinet;
  const insetIn = Math.min(FOOT_INSET_IN, widthIn / 4);
  const frontCount = Math.ceil(count / 2);
  for (let foot = 0; foot < count; foot++) {
    const isFront = foot < frontCount;
    const inRow = isFront ? frontCount : count - frontCount;
    const place = isFront ? foot : foot - frontCount;
    const share = inRow > 1 ? place / (inRow - 1) : 0.5;
    const xIn = insetIn + share * (widthIn - 2 * insetIn);
    const yIn = isFront
      ? Math.min(depthIn / 2, TOE_SETBACK_IN + cabinet.panelIn + FOOT_IN)
      : Math.max(depthIn / 2, depthIn - FOOT_INSET_IN - FOOT_IN);
    const half = FOOT_IN / 2;
    addBox(builder, frame, [xIn - half, xIn + half], [yIn - half, yIn + half], [0, toeIn]);
  }
}
