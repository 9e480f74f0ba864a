/** A piece: one slab cast in one pour, with its edges, openings, steel, supports and loads. */
import { z } from 'zod';
import {
  angleDeg,
  coordinateIn,
  day,
  elevationIn,
  forceLbf,
  id,
  lengthIn,
  lengthOrZeroIn,
  name,
  note,
  planSizeIn,
  point,
  pressurePsf,
  thicknessIn,
  weightLb,
  yieldPsi,
} from './quantities';
import { support } from './support';

export const corner = z.strictObject({
  xIn: coordinateIn,
  yIn: coordinateIn,
  radiusIn: lengthOrZeroIn.default(0),
});

export const profileKind = z.enum([
  'square',
  'eased',
  'chamfer',
  'round-over',
  'bullnose',
  'half-bullnose',
  'cove',
  'ogee',
  'stepped',
  'own',
]);

export const profile = z.strictObject({
  kind: profileKind.default('eased'),
  /** Leg or radius of the profile; null takes the kind's own. */
  sizeIn: lengthIn.max(12).nullable().default(null),
  /** Own profile: outward distance from the face and height above the soffit, bottom to top. */
  points: z
    .array(z.strictObject({ outIn: coordinateIn, upIn: lengthOrZeroIn }))
    .nullable()
    .default(null),
});

/** Edge i runs from corner i to corner i + 1. */
export const edge = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('free'),
    profile: profile.default({ kind: 'eased', sizeIn: null, points: null }),
    dripGroove: z
      .strictObject({ widthIn: lengthIn.max(2), depthIn: lengthIn.max(2), setbackIn: lengthIn.max(6) })
      .nullable()
      .default(null),
  }),
  z.strictObject({ kind: z.literal('wall'), gapIn: lengthOrZeroIn.max(2).default(0.125) }),
  z.strictObject({ kind: z.literal('butted'), toPieceId: id, gapIn: lengthOrZeroIn.max(2).default(0.125) }),
]);

export const joint = z.strictObject({
  id,
  kind: z.enum(['control', 'isolation', 'construction']),
  from: point,
  to: point,
  widthIn: lengthIn.max(2).default(0.125),
});

export const cutoutShape = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('rectangle'),
    centre: point,
    widthIn: planSizeIn,
    depthIn: planSizeIn,
    radiusIn: lengthOrZeroIn.default(0),
    angleDeg: angleDeg.default(0),
  }),
  z.strictObject({ kind: z.literal('circle'), centre: point, diameterIn: planSizeIn }),
  z.strictObject({ kind: z.literal('polygon'), corners: z.array(corner).min(3) }),
]);

export const cutout = z.strictObject({
  id,
  name: name.optional(),
  purpose: z.enum(['sink', 'hob', 'tap', 'drain', 'other']),
  shape: cutoutShape,
  /** Only for a sink. */
  sink: z
    .strictObject({
      mounting: z.enum(['dropped-in', 'under-rim', 'cast-over']),
      rimIn: lengthOrZeroIn.max(6).default(0.75),
      bowlDepthIn: lengthIn.max(24).default(8),
      emptyWeightLb: weightLb.default(20),
      /** Water and what stands in it; null fills the bowl to its brim. */
      contentsLb: weightLb.nullable().default(null),
      /** Whether the slab carries the sink; an under-rim sink may hang from its cabinet. */
      carriedBySlab: z.boolean().default(true),
    })
    .nullable()
    .default(null),
  /** Weight of a hob or other appliance that the rim carries. */
  applianceLb: weightLb.default(0),
});

export const reinforcement = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('mesh'),
    id,
    label: name.optional(),
    /** Wires running along `angleDeg`, and the cross wires at a right angle below them. */
    wireIn: lengthIn.max(0.75),
    spacingIn: lengthIn.min(0.25).max(24),
    crossWireIn: lengthIn.max(0.75),
    crossSpacingIn: lengthIn.min(0.25).max(24),
    angleDeg: angleDeg.default(0),
    /** From the top of the slab to the plane where the two wire directions touch; see `steelSets` for what lies where. */
    depthIn: lengthIn.max(24),
    yieldPsi: yieldPsi.default(65_000),
    edgeCoverIn: lengthOrZeroIn.max(12).default(1),
  }),
  z.strictObject({
    kind: z.literal('bars'),
    id,
    label: name.optional(),
    barIn: lengthIn.max(1),
    areaIn2: z.number().min(0.0005).max(1),
    spacingIn: lengthIn.min(0.25).max(48),
    angleDeg: angleDeg.default(0),
    /** From the top of the slab to the centre of the bars. */
    depthIn: lengthIn.max(24),
    yieldPsi: yieldPsi.default(60_000),
    edgeCoverIn: lengthOrZeroIn.max(12).default(1),
    hooked: z.boolean().default(false),
    /** Where the bars lie; null means the whole piece. */
    corners: z.array(point).min(3).nullable().default(null),
  }),
  z.strictObject({
    kind: z.enum(['fabric', 'fibre']),
    id,
    label: name.optional(),
    /** Recorded for the list; counts zero for strength. */
    material: z.enum(['glass', 'basalt', 'carbon', 'polymer', 'steel']),
    dosePcy: z.number().nonnegative().max(200).nullable().default(null),
  }),
]);

export const rovingLoad = z.discriminatedUnion('setting', [
  z.strictObject({ setting: z.enum(['leaning', 'sitting', 'climbing', 'none']) }),
  z.strictObject({
    setting: z.literal('own'),
    forceLbf,
    widthIn: planSizeIn.max(60),
    depthIn: planSizeIn.max(60),
    source: note.default(''),
  }),
]);

export const fixedLoad = z.strictObject({
  id,
  name,
  centre: point,
  widthIn: planSizeIn,
  depthIn: planSizeIn,
  /** Direction of its width, from x towards y. */
  angleDeg: angleDeg.default(0),
  weightLb,
});

export const loads = z.strictObject({
  /** null takes the default of the piece's use. */
  roving: rovingLoad.nullable().default(null),
  /** Spread over the whole top; never together with the roving load. */
  spreadPsf: pressurePsf.default(50),
  fixed: z.array(fixedLoad).default([]),
});

export const use = z.enum(['counter', 'bar-ledge', 'foot-ledge', 'bench', 'hearth', 'cap', 'other']);

export const piece = z.strictObject({
  id,
  name,
  use,
  /** The outline, either way round; edge i runs from corner i to corner i + 1. */
  corners: z.array(corner).min(3).max(200),
  /** One an edge; null takes free edges all round. */
  edges: z.array(edge).nullable().default(null),
  thicknessIn,
  topElevationIn: elevationIn.default(36),
  /** Drainage fall, made by tilting the form. */
  fall: z
    .strictObject({ inPerFt: z.number().min(0).max(2), towardDeg: angleDeg })
    .nullable()
    .default(null),
  joints: z.array(joint).default([]),
  cutouts: z.array(cutout).default([]),
  exposure: z.enum(['indoors', 'outdoors']).default('indoors'),
  mixId: id,
  pourDay: day.default(0),
  colour: z
    .strictObject({ pigment: name, pigmentRatio: z.number().min(0).max(0.2) })
    .nullable()
    .default(null),
  finish: z.enum(['smooth', 'honed', 'exposed']).default('smooth'),
  reinforcement: z.array(reinforcement).default([]),
  supports: z.array(support).default([]),
  loads: loads.default({ roving: null, spreadPsf: 50, fixed: [] }),
  /** How many of this piece the job needs, each on supports of its own. */
  copies: z.number().int().min(1).max(100).default(1),
  note: note.default(''),
});

export type Piece = z.infer<typeof piece>;
export type PieceUse = z.infer<typeof use>;
export type PieceEdge = z.infer<typeof edge>;
export type Cutout = z.infer<typeof cutout>;
export type CutoutShape = z.infer<typeof cutoutShape>;
export type Reinforcement = z.infer<typeof reinforcement>;
export type RovingLoad = z.infer<typeof rovingLoad>;
export type EdgeProfile = z.infer<typeof profile>;
