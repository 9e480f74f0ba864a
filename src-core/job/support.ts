/** What a piece bears on. One object a support; all plan positions are in the drawing's own coordinates. */
import { z } from 'zod';
import {
  angleDeg,
  count,
  day,
  forceLbf,
  id,
  lengthIn,
  lengthOrZeroIn,
  name,
  planSizeIn,
  point,
  stiffness,
  weightLb,
  yieldPsi,
} from './quantities';

/**
 * How stiff the support is, as two bounds; every verdict is the worse of the two. Unit by kind:
 * lbf/in per inch of line (walls, ledger, cabinet sides), lbf/in a point (leg), lbf/in per in2 (pier, bed).
 */
export const stiffnessBounds = z.strictObject({ low: stiffness, high: stiffness });

/** Resting pushes only. Tied also holds down, at tie points set along its centre line. */
export const hold = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('resting') }),
  z.strictObject({
    kind: z.literal('tied'),
    spacingIn: lengthIn.min(1).default(16),
    /** Load that one tie may take, as its maker states; null asks for an engineer's or maker's figure. */
    ratingLbf: forceLbf.nullable().default(null),
    stiffness: stiffnessBounds.default({ low: 2_000, high: 20_000 }),
  }),
]);

const everySupport = {
  id,
  name: name.optional(),
  /** First day on which it stands. */
  firstDay: day.default(0),
  /** Last day on which it stands; null when it stays. */
  lastDay: day.nullable().default(null),
  /** Clear space under the slab before this support touches. */
  gapIn: z.number().min(0).max(2).default(0),
  /** How far it is raised beyond touching: a foot wound up against the slab. */
  raisedIn: z.number().min(0).max(1).default(0),
  stiffness: stiffnessBounds.nullable().default(null),
  hold: hold.default({ kind: 'resting' }),
};

export const cabinet = z.strictObject({
  ...everySupport,
  kind: z.literal('cabinet'),
  /** Front left corner seen from the front; the front runs along `angleDeg`, the depth to its left. */
  corner: point,
  angleDeg: angleDeg.default(0),
  widthIn: planSizeIn,
  depthIn: planSizeIn,
  heightIn: lengthIn.default(34.5),
  panelIn: lengthIn.max(4).default(0.75),
  frontRail: z.boolean().default(true),
  backRail: z.boolean().default(true),
  /** A full sub-top makes it bear on its whole plan; without one it never does. */
  subTop: z.boolean().default(false),
  /** Stiffness bounds of the rails, as beams between the panels. */
  railStiffness: stiffnessBounds.nullable().default(null),
  feet: z
    .strictObject({
      count: count.min(1),
      shortestIn: lengthOrZeroIn,
      longestIn: lengthIn,
      ratingLb: weightLb,
    })
    .nullable()
    .default(null),
  removableParts: z
    .array(z.enum(['front', 'back', 'left-side', 'right-side', 'sub-top', 'toe-kick']))
    .default([]),
  /** Thickness of the backing board that stays between it and the slab; null where the board comes out. */
  backingBoardIn: lengthIn.max(3).nullable().default(null),
  weightLb: weightLb.default(0),
});

export const wall = z.strictObject({
  ...everySupport,
  kind: z.literal('wall'),
  build: z.enum(['stud', 'block', 'brick']),
  /** Centre line of the bearing strip. */
  from: point,
  to: point,
  widthIn: planSizeIn.max(48),
  studSpacingIn: lengthIn.min(1).default(16),
  heightIn: lengthIn.nullable().default(null),
});

export const ledger = z.strictObject({
  ...everySupport,
  kind: z.literal('ledger'),
  /** Centre line of the bearing strip. */
  from: point,
  to: point,
  widthIn: planSizeIn.max(12),
});

export const footprint = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('rectangle'),
    centre: point,
    widthIn: planSizeIn,
    depthIn: planSizeIn,
    angleDeg: angleDeg.default(0),
  }),
  z.strictObject({ kind: z.literal('circle'), centre: point, diameterIn: planSizeIn }),
]);

export const pier = z.strictObject({
  ...everySupport,
  kind: z.literal('pier'),
  build: z.enum(['block', 'brick', 'concrete', 'stone', 'timber-post']),
  footprint,
  /** Bedded in mortar or dry. A bed that is not dowelled is never counted as a tie. */
  bed: z.enum(['mortar', 'dry']).default('mortar'),
  heightIn: lengthIn.nullable().default(null),
});

export const leg = z.strictObject({
  ...everySupport,
  kind: z.literal('leg'),
  centre: point,
  widthIn: planSizeIn.max(24).default(3.5),
  depthIn: planSizeIn.max(24).default(1.5),
  angleDeg: angleDeg.default(0),
});

/** Section of a bracket's arm. Sizes are actual. */
export const armSection = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('flat-bar'), widthIn: lengthIn, depthIn: lengthIn, yieldPsi }),
  z.strictObject({
    kind: z.literal('angle'),
    legWidthIn: lengthIn,
    legDepthIn: lengthIn,
    wallIn: lengthIn,
    yieldPsi,
  }),
  z.strictObject({
    kind: z.literal('tee'),
    flangeWidthIn: lengthIn,
    depthIn: lengthIn,
    wallIn: lengthIn,
    yieldPsi,
  }),
  z.strictObject({
    kind: z.literal('tube'),
    widthIn: lengthIn,
    depthIn: lengthIn,
    wallIn: lengthIn,
    yieldPsi,
  }),
  z.strictObject({
    kind: z.literal('knee-brace'),
    species: z.enum(['spf', 'df-l']),
    widthIn: lengthIn,
    depthIn: lengthIn,
    /** Height of the brace's foot below the arm. */
    dropIn: lengthIn,
  }),
]);

export const backing = z.enum([
  'timber-stud',
  'steel-post',
  'grouted-block',
  'hollow-block',
  'brick-veneer',
  'concrete',
  'unknown',
]);

export const fixing = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.enum(['screws', 'lags']),
    diameterIn: lengthIn.max(1),
    threadIn: lengthIn.max(12),
    /** Fasteners in the top row and in all. */
    topCount: count.min(1),
    totalCount: count.min(1),
    /** Height of the top row above the toe of the heel. */
    leverIn: lengthIn,
    /** Specific gravity of the timber. */
    specificGravity: z.number().min(0.3).max(0.8),
    /** Lateral design value of one fastener; null takes the tool's own. */
    lateralLbf: forceLbf.nullable().default(null),
  }),
  z.strictObject({
    kind: z.literal('through-bolts'),
    diameterIn: lengthIn.max(2),
    topCount: count.min(1),
    totalCount: count.min(1),
    leverIn: lengthIn,
    washerIn: lengthIn,
  }),
  z.strictObject({
    kind: z.literal('rated'),
    ratedLoadLbf: forceLbf,
    /** Distance from the wall face at which the rating holds. */
    ratedAtIn: lengthIn,
    ratedBy: name,
  }),
]);

export const bracket = z.strictObject({
  ...everySupport,
  kind: z.literal('bracket'),
  /** Where each arm leaves the wall face, one a bracket of the row. */
  roots: z.array(point).min(1).max(200),
  /** Direction in which the arms reach. */
  directionDeg: angleDeg,
  reachIn: planSizeIn.max(60),
  /** Width of the arm under the slab. */
  seatWidthIn: planSizeIn.max(12),
  /** Height of the leg that bears against the wall. */
  heelIn: lengthIn.max(48),
  arm: armSection,
  backing,
  fixing,
  /** Cast concrete and shop-welded arms are for an engineer unless a rated load is entered. */
  make: z.enum(['rolled', 'bought', 'shop-welded', 'cast-concrete', 'timber']).default('rolled'),
});

export const fullBed = z.strictObject({
  ...everySupport,
  kind: z.literal('full-bed'),
  /** Corners of the bed; null beds the whole piece. */
  corners: z.array(point).min(3).nullable().default(null),
});

export const support = z.discriminatedUnion('kind', [cabinet, wall, ledger, pier, leg, bracket, fullBed]);

export type Support = z.infer<typeof support>;
export type SupportKind = Support['kind'];
export type CabinetSupport = z.infer<typeof cabinet>;
export type WallSupport = z.infer<typeof wall>;
export type PierSupport = z.infer<typeof pier>;
export type BracketSupport = z.infer<typeof bracket>;
export type ArmSection = z.infer<typeof armSection>;
export type BracketFixing = z.infer<typeof fixing>;
export type StiffnessBounds = z.infer<typeof stiffnessBounds>;
