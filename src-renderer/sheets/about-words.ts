/** What the about sheet says. */
import { DEFAULT_LIMITS } from '../../src-core/checks';
import type { UnitSystem } from '../../src-core/units';
import { printDeflection, printLength } from '../../src-core/units';

/** Trouble of concrete that no check looks for. */
export const NOT_COVERED =
  'Fire and heat in a hearth, frost and de-icers, alkali-silica reaction, fatigue, vibration, post-tensioning.';

/** Licences in a line. */
export const LICENCE =
  'MIT licence. The libraries inside keep their own licences: MIT, Apache 2.0 and ISC; the typeface is under the SIL Open Font License 1.1.';

/** Beyond these a piece needs an engineer, in the units of the job. */
export function undecidable(system: UnitSystem): string[] {
  const limits = DEFAULT_LIMITS;
  const length = (valueIn: number) => printLength(valueIn, { system });
  return [
    `an overhang over ${length(limits.overhangEngineerIn)}, or over ${length(limits.overhangUnbracketedEngineerIn)} without brackets`,
    `a free span over ${length(limits.freeSpanEngineerIn)}`,
    `a slab under ${length(limits.thinnestIn)} or over ${length(limits.thickestIn)} thick`,
    `a bracket that reaches over ${length(limits.bracketReachEngineerIn)}`,
    'anchors into hollow block, veneer or an unknown wall',
    'cast concrete corbels, and brackets of your own welding without a rated load',
    `cracks wider than ${printDeflection(limits.crackWidthEngineerIn, { system, digits: 2 })}`,
  ];
}
