/** A row of brackets: arms under the slab, heels down the wall, struts of knee braces. */
import type { ArmSection, BracketSupport } from '../job';
import type { Direction, Point } from '../outline';
import { directionAt, leftOf, moved } from '../outline';
import { addBox, addPrism, crossFrame, rectangle, sideFrame } from './extrusion';
import type { SolidBuilder } from './solid-builder';
import { solidBuilder } from './solid-builder';
import type { SupportPart } from './support-part';
import type { SolidMaterial } from './types';

/** A steel heel drawn no thinner than this, and the post of a timber brace. Common practice, no source. */
const HEEL_IN = 1 / 4;
const POST_IN = 1.5;
/** A strut is drawn no deeper than this share of its drop and reach, so that it stays a strut. */
const MOST_STRUT_RATIO = 0.6;

/** Every arm of a row, its top at the soffit less the gap. */
export function bracketParts(bracket: BracketSupport, soffitIn: number): SupportPart[] {
  const builder = solidBuilder();
  const along = directionAt((bracket.directionDeg * Math.PI) / 180);
  const topIn = soffitIn - bracket.gapIn;
  for (const root of bracket.roots) {
    addPrism(builder, crossFrame(root, topIn, along), armLoops(bracket.arm), bracket.reachIn);
    addHeel(builder, bracket, root, along, topIn);
    if (bracket.arm.kind === 'knee-brace') {
      addStrut(builder, bracket.arm, bracket.reachIn, root, along, topIn);
    }
  }
  return [{ material: materialOf(bracket), solid: builder.finish() }];
}

function materialOf({ make, arm }: BracketSupport): SolidMaterial {
  if (arm.kind === 'knee-brace' || make === 'timber') return 'timber';
  return make === 'cast-concrete' ? 'concrete' : 'steel';
}

/** The arm's section, its top at 0 and centred: an outline, and the opening of a tube. */
function armLoops(arm: ArmSection): readonly (readonly Point[])[] {
  switch (arm.kind) {
    case 'flat-bar':
    case 'knee-brace':
      return [rectangle([-arm.widthIn / 2, arm.widthIn / 2], [-arm.depthIn, 0])];
    case 'tube': {
      const half = arm.widthIn / 2;
      const wallIn = Math.min(arm.wallIn, 0.45 * arm.widthIn, 0.45 * arm.depthIn);
      return [
        rectangle([-half, half], [-arm.depthIn, 0]),
        rectangle([wallIn - half, half - wallIn], [wallIn - arm.depthIn, -wallIn]),
      ];
    }
    case 'angle':
      return [flangeAndLeg(arm.legWidthIn, arm.legDepthIn, arm.wallIn, -arm.legWidthIn / 2)];
    case 'tee':
      return [flangeAndLeg(arm.flangeWidthIn, arm.depthIn, arm.wallIn, -arm.wallIn / 2)];
  }
}

/** A level flange with a plumb leg that starts at `legAtIn` from the middle: an angle at its edge, a tee at its centre. */
function flangeAndLeg(flangeIn: number, depthIn: number, wallIn: number, legAtIn: number): Point[] {
  const half = flangeIn / 2;
  const wall = Math.min(wallIn, 0.9 * flangeIn, 0.9 * depthIn);
  const outline: [number, number][] = [
    [legAtIn, -depthIn],
    [legAtIn + wall, -depthIn],
    [legAtIn + wall, -wall],
    [half, -wall],
    [half, 0],
    [-half, 0],
  ];
  if (legAtIn > -half) outline.push([-half, -wall], [legAtIn, -wall]);
  return outline.map(([xIn, yIn]) => ({ xIn, yIn }));
}

/** The leg against the wall: in the thickness of the arm's steel, or a post as deep as a plank for a timber brace. */
function addHeel(
  builder: SolidBuilder,
  { arm, heelIn, reachIn }: BracketSupport,
  root: Point,
  along: Direction,
  topIn: number,
): void {
  const widthIn = topWidthIn(arm);
  const outIn = Math.min(heelThicknessIn(arm), reachIn / 2);
  const under = underIn(arm);
  const frame = crossFrame(root, topIn, along);
  addBox(builder, frame, [-widthIn / 2, widthIn / 2], [-Math.max(heelIn, under), -under], [0, outIn]);
}

function heelThicknessIn(arm: ArmSection): number {
  switch (arm.kind) {
    case 'flat-bar':
      return Math.max(HEEL_IN, Math.min(arm.widthIn, arm.depthIn));
    case 'angle':
    case 'tee':
    case 'tube':
      return Math.max(HEEL_IN, arm.wallIn);
    case 'knee-brace':
      return POST_IN;
  }
}

function topWidthIn(arm: ArmSection): number {
  switch (arm.kind) {
    case 'angle':
      return arm.legWidthIn;
    case 'tee':
      return arm.flangeWidthIn;
    case 'flat-bar':
    case 'tube':
    case 'knee-brace':
      return arm.widthIn;
  }
}

/** From the top of an arm to its underside, where heel and strut begin. */
function underIn(arm: ArmSection): number {
  return arm.kind === 'angle' ? arm.legDepthIn : arm.depthIn;
}

/** The strut of a knee brace, from the wall up to the underside of the arm's tip, cut plumb below and level above. */
function addStrut(
  builder: SolidBuilder,
  arm: Extract<ArmSection, { kind: 'knee-brace' }>,
  reachIn: number,
  root: Point,
  along: Direction,
  topIn: number,
): void {
  const slopeIn = Math.hypot(reachIn, arm.dropIn);
  const plumbIn = Math.min((arm.depthIn * slopeIn) / reachIn, MOST_STRUT_RATIO * arm.dropIn);
  const levelIn = (plumbIn * reachIn) / arm.dropIn;
  const left = moved(root, leftOf(along), arm.widthIn / 2);
  const section = [
    { xIn: 0, yIn: -arm.dropIn },
    { xIn: reachIn, yIn: 0 },
    { xIn: reachIn - levelIn, yIn: 0 },
    { xIn: 0, yIn: plumbIn - arm.dropIn },
  ];
  addPrism(builder, sideFrame(left, topIn - arm.depthIn, along), [section], arm.widthIn);
}
