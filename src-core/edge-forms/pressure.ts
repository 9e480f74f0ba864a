/** How hard wet concrete pushes on a form. */
import { IN_PER_FT } from '../units';
import { formula } from '../workings';
import { BRACE_SPACING_IN } from './practice';
import type { FormPressure } from './types';

/** Pressure at the foot of a form, psf: full fluid head. w: wet density, pcf; h: depth poured, in. ACI 347R, full liquid head. */
export const formPressure = formula<{ w: number; h: number }>({
  symbol: 'p',
  label: 'pressure of wet concrete at the foot of the form',
  formula: 'w * h / 12',
  units: { w: 'pcf', h: 'in' },
  unit: 'psf',
  source: 'ACI 347R, p = w h (full liquid head)',
  fromMemory: true,
  compute: ({ w, h }) => (w * h) / IN_PER_FT,
});

/** Push on each foot of a form, lbf/ft. w: wet density, pcf; h: depth poured, in. ACI 347R, full liquid head. */
export const formResultant = formula<{ w: number; h: number }>({
  symbol: 'R',
  label: 'push of wet concrete on a foot of form',
  formula: 'w * (h / 12)^2 / 2',
  units: { w: 'pcf', h: 'in' },
  unit: 'lbf/ft',
  source: 'ACI 347R, w h^2 / 2 (full liquid head)',
  fromMemory: true,
  compute: ({ w, h }) => (w * (h / IN_PER_FT) ** 2) / 2,
});

/** Push on one brace, lbf. R: push, lbf/ft; s: spacing, in. Statics. */
export const bracePush = formula<{ R: number; s: number }>({
  symbol: 'Fb',
  label: 'push on each brace or block of the form',
  formula: 'R * s / 12',
  units: { R: 'lbf/ft', s: 'in' },
  unit: 'lbf',
  source: 'statics; spacing common practice, no source',
  compute: ({ R, s }) => (R * s) / IN_PER_FT,
});

/** Pressure and push for a wet density (pcf) and a depth (in) poured in one lift, with workings. */
export function pressureOf(wetDensityPcf: number, heightIn: number): FormPressure {
  const of = { w: wetDensityPcf, h: heightIn };
  const pressure = formPressure(of);
  const resultant = formResultant(of);
  const brace = bracePush({ R: resultant.value, s: BRACE_SPACING_IN });
  return {
    pressurePsf: pressure.value,
    resultantLbfPerFt: resultant.value,
    braceSpacingIn: BRACE_SPACING_IN,
    braceLbf: brace.value,
    lines: [pressure.line, resultant.line, brace.line],
  };
}
