import type { ArmSection } from '../job';
import type { Line } from '../workings';
import { armProperties } from './arm-properties';
import { armPull, braceArmMoment, braceTipCompliance, strutForce, strutLength } from './knee-brace';

export type KneeBrace = Extract<ArmSection, { kind: 'knee-brace' }>;

export interface KneeBraceForces {
  readonly strutLengthIn: number;
  readonly strutPushLbf: number;
  readonly armPullLbf: number;
  readonly armMomentLbfIn: number;
  /** Load at the tip for each inch that it sinks, both members giving, joints and fixing rigid. */
  readonly tipStiffnessLbfPerIn: number;
  readonly lines: readonly Line[];
}

/**
 * Forces in a timber knee brace under `loadLbf` at `atIn` from the wall, strut at the tip of the reach; in, lbf, lbf-in, lbf/in.
 * Statics of a two-bar truss; stiffness by virtual work.
 */
export function kneeBraceForces(input: {
  readonly arm: KneeBrace;
  readonly reachIn: number;
  readonly loadLbf: number;
  readonly atIn: number;
}): KneeBraceForces {
  const { loadLbf: P, atIn: e, reachIn: L } = input;
  const h = input.arm.dropIn;
  const section = armProperties(input.arm);
  const length = strutLength({ L, h });
  const push = strutForce({ P, e, L, Ls: length.value, h });
  const pull = armPull({ P, e, h });
  const moment = braceArmMoment({ P, e, L });
  const tip = braceTipCompliance({ L, Ls: length.value, h, A: section.areaIn2, E: section.modulusPsi });
  return {
    strutLengthIn: length.value,
    strutPushLbf: push.value,
    armPullLbf: pull.value,
    armMomentLbfIn: moment.value,
    tipStiffnessLbfPerIn: 1 / tip.value,
    lines: [length.line, push.line, pull.line, moment.line, tip.line],
  };
}
