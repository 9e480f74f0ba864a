/** How much of a bar or wire takes hold at a point: a bar that ends too near cannot pull its whole strength there. */
import type { PieceAnalysis, SteelLayer } from '../analysis';
import {
  barDevelopment,
  clearBarLength,
  gradeFactorRatio,
  hookDevelopment,
  hookLength,
  hookStrengthFactor,
  plainMeshDevelopment,
  plainMeshLength,
  tightBarLength,
} from '../concrete';
import type { Reinforcement } from '../job';
import type { Point } from '../outline';
import type { Line, Worked } from '../workings';
import { formula } from '../workings';
import { regionAheadIn, slabAheadIn } from './slab-ahead';

/**
 * Steel that may be counted where a bar has less length than it needs, in2 an inch of width. As: in2/in; la: length at
 * hand on the shorter side, in; ld: length needed, in. ACI 318-19 25.4.10.1, which lets ld shrink as As required / provided.
 */
export const anchoredSteel = formula<{ As: number; la: number; ld: number }>({
  symbol: 'Asa',
  label: 'Steel that takes hold there, an inch of width',
  formula: 'As * min(1, la / ld)',
  units: { As: 'in2/in', la: 'in', ld: 'in' },
  unit: 'in2/in',
  source: 'ACI 318-19 25.4.10.1, read from the length at hand',
  compute: ({ As, la, ld }) => As * Math.min(1, la / ld),
});

export interface Anchorage {
  /** Share of the steel that takes hold, 0 to 1. */
  readonly shareRatio: number;
  readonly heldIn2PerIn: number;
  readonly atHandIn: number;
  readonly neededIn: number;
  readonly lines: readonly Line[];
  readonly cautions: readonly string[];
}

/** Tilt of two directions below which they are one, rad. */
const SAME_WAY_RAD = 1e-6;
/** Height of a standard half-turn hook over its bar: bend of 6 db and both legs. ACI 318-19 Table 25.3.1. */
const HOOK_HEIGHT_BARS = 8;

/** Looks both ways along the bar from `at` to where it ends, and compares with the length that it needs to take hold. */
export function anchorage(analysis: PieceAnalysis, layer: SteelLayer, at: Point): Anchorage {
  const steel = steelOf(analysis, layer);
  const atHandIn = Math.min(
    lengthAheadIn(analysis, layer, steel.edgeCoverIn, at, layer.barRad),
    lengthAheadIn(analysis, layer, steel.edgeCoverIn, at, layer.barRad + Math.PI),
  );
  const need = steel.kind === 'mesh' ? meshNeed(analysis, layer, steel) : barNeed(analysis, layer, steel);
  const held = anchoredSteel({ As: layer.areaIn2PerIn, la: atHandIn, ld: need.length.value });
  const isHooked = steel.kind === 'bars' && steel.hooked;
  return {
    shareRatio: held.value / layer.areaIn2PerIn,
    heldIn2PerIn: held.value,
    atHandIn,
    neededIn: need.length.value,
    lines: [...need.steps, need.length, held].map(({ line }) => line),
    cautions:
      isHooked && HOOK_HEIGHT_BARS * layer.barIn > analysis.piece.thicknessIn
        ? ['The hooks are taller than the slab is thick: bend them and lay them flat.']
        : [],
  };
}

type Bars = Extract<Reinforcement, { kind: 'bars' }>;
type Mesh = Extract<Reinforcement, { kind: 'mesh' }>;

function steelOf({ piece }: PieceAnalysis, layer: SteelLayer): Bars | Mesh {
  for (const steel of piece.reinforcement) {
    if (steel.id !== layer.reinforcementId) continue;
    if (steel.kind === 'bars' || steel.kind === 'mesh') return steel;
  }
  throw new Error(`layer ${layer.reinforcementId} is no bar or mesh of piece ${piece.id}`);
}

interface NeededLength {
  readonly length: Worked;
  readonly steps: readonly Worked[];
}

function barNeed({ concrete, piece }: PieceAnalysis, layer: SteelLayer, steel: Bars): NeededLength {
  const { yieldPsi: fy, barIn: db, spacingIn, depthFromTopIn } = layer;
  const common = { fy, psie: 1, lambda: concrete.lambda, fc: concrete.strengthPsi, db };
  if (steel.hooked) {
    const psic = hookStrengthFactor({ fc: concrete.strengthPsi });
    // side cover of six bar diameters is not to be had in a thin top, hence 1.25
    const psir = spacingIn >= 6 * db ? 1 : 1.6;
    const straight = hookLength({ ...common, psir, psio: 1.25, psic: psic.value });
    return { length: hookDevelopment({ ldh0: straight.value, db }), steps: [psic, straight] };
  }
  const coverIn = Math.min(depthFromTopIn, piece.thicknessIn - depthFromTopIn) - db / 2;
  const hasRoom = coverIn >= db && spacingIn - db >= 2 * db;
  const inputs = { ...common, psit: 1, psig: gradeFactorRatio(fy) };
  const straight = hasRoom ? clearBarLength(inputs) : tightBarLength(inputs);
  return { length: barDevelopment({ ld0: straight.value }), steps: [straight] };
}

function meshNeed({ concrete }: PieceAnalysis, layer: SteelLayer, steel: Mesh): NeededLength {
  const isMain = Math.abs(layer.barRad - (steel.angleDeg * Math.PI) / 180) < SAME_WAY_RAD;
  const straight = plainMeshLength({
    Ab: (Math.PI * layer.barIn ** 2) / 4,
    s: layer.spacingIn,
    fy: layer.yieldPsi,
    lambda: concrete.lambda,
    fc: concrete.strengthPsi,
  });
  const sx = isMain ? steel.crossSpacingIn : steel.spacingIn;
  return { length: plainMeshDevelopment({ ld0: straight.value, sx }), steps: [straight] };
}

/** From `at` along the bar to its end: where its own field ends, or its cover short of where the slab ends. */
function lengthAheadIn(
  analysis: PieceAnalysis,
  layer: SteelLayer,
  edgeCoverIn: number,
  at: Point,
  wayRad: number,
): number {
  const onSlabIn = slabAheadIn(analysis, at, wayRad) - edgeCoverIn;
  const inFieldIn =
    layer.corners === null ? onSlabIn : regionAheadIn({ outer: layer.corners, holes: [] }, at, wayRad);
  return Math.max(0, Math.min(onSlabIn, inFieldIn));
}
