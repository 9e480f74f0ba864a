/** Laps of mesh and bars by the code, with their workings. */
import {
  barLap,
  clearBarLength,
  gradeFactorRatio,
  hookDevelopment,
  hookLength,
  hookStrengthFactor,
  plainMeshLap,
  plainMeshLength,
  tightBarLength,
} from '../concrete';
import type { Job, Piece, Reinforcement } from '../job';
import { UNTESTED_STRENGTH_PSI } from '../job';
import type { Line } from '../workings';

export type MeshLayer = Extract<Reinforcement, { kind: 'mesh' }>;
export type BarLayer = Extract<Reinforcement, { kind: 'bars' }>;

/** The concrete that steel takes hold in. */
export interface Hold {
  readonly fc: number;
  readonly lambda: number;
}

/** Strength and lightness of a piece's concrete; an untested mix counts as the strength for untested concrete. */
export function holdOf(job: Job, piece: Piece): Hold {
  const mix = job.mixes.find(({ id }) => id === piece.mixId);
  return { fc: mix?.strengthPsi ?? UNTESTED_STRENGTH_PSI, lambda: mix?.lambda ?? 1 };
}

export interface LapLength {
  readonly lapIn: number;
  readonly lines: readonly Line[];
}

/**
 * Lap of the wires of a mesh one way, in, from outermost cross wire to outermost cross wire: never less than a
 * spacing and 2 in. All mesh counts as plain wire, as in the load check, since the job does not say which it is.
 */
export function meshLap(layer: MeshLayer, way: 'along' | 'across', { fc, lambda }: Hold): LapLength {
  const [wireIn, s, sx] =
    way === 'along'
      ? [layer.wireIn, layer.spacingIn, layer.crossSpacingIn]
      : [layer.crossWireIn, layer.crossSpacingIn, layer.spacingIn];
  const byStrength = plainMeshLength({ Ab: (Math.PI * wireIn ** 2) / 4, s, fy: layer.yieldPsi, lambda, fc });
  const lap = plainMeshLap({ ld0: byStrength.value, sx });
  return { lapIn: lap.value, lines: [byStrength.line, lap.line] };
}

/** Lap of bars in tension, class B, in: half of them or more lap at one place in a narrow slab. */
export function lapOfBars(layer: BarLayer, thicknessIn: number, hold: Hold): LapLength {
  const straight = straightLength(layer, thicknessIn, hold);
  const lap = barLap({ ld0: straight.value });
  return { lapIn: lap.value, lines: [straight.line, lap.line] };
}

/** Length in which the hooks of a layer take hold, in, and its workings. Side cover of six bar diameters is not had in a thin top. */
export function holdOfHooks(
  { barIn: db, spacingIn, yieldPsi: fy }: BarLayer,
  { fc, lambda }: Hold,
): LapLength {
  const psic = hookStrengthFactor({ fc });
  const psir = spacingIn >= 6 * db ? 1 : 1.6;
  const hook = hookLength({ fy, psie: 1, psir, psio: 1.25, psic: psic.value, lambda, fc, db });
  const length = hookDevelopment({ ldh0: hook.value, db });
  return { lapIn: length.value, lines: [psic.line, hook.line, length.line] };
}

/** Length in which a straight bar of a layer takes hold by the code's formula, before its least, in. */
export function straightLength(layer: BarLayer, thicknessIn: number, { fc, lambda }: Hold) {
  const { barIn: db, depthIn, spacingIn, yieldPsi: fy } = layer;
  const coverIn = Math.min(depthIn, thicknessIn - depthIn) - db / 2;
  const hasRoom = coverIn >= db && spacingIn - db >= 2 * db;
  const inputs = { fy, psit: 1, psie: 1, psig: gradeFactorRatio(fy), lambda, fc, db };
  return hasRoom ? clearBarLength(inputs) : tightBarLength(inputs);
}
