/** Pressure of wet concrete against an upright form. */
import { formula } from '../workings';

/**
 * Pressure at the foot of an upright form, psf: full head, as for a thin pour placed in one lift. w: density of the wet
 * concrete, lb/ft3; h: height of wet concrete against the form, in. ACI 347R.
 */
export const formPressure = formula<Readonly<Record<'w' | 'h', number>>>({
  symbol: 'p',
  label: 'pressure of the wet concrete at the foot of the form',
  formula: 'w * h / 12',
  units: { w: 'lb/ft3', h: 'in' },
  unit: 'psf',
  source: 'ACI 347R, full head',
  fromMemory: true,
  compute: ({ w, h }) => (w * h) / 12,
});

/**
 * Push of the wet concrete on a running inch of an upright form, lbf/in; it acts at a third of the height.
 * w: density of the wet concrete, lb/ft3; h: height of wet concrete, in. ACI 347R: w h^2 / 2.
 */
export const formResultant = formula<Readonly<Record<'w' | 'h', number>>>({
  symbol: 'R',
  label: 'push of the wet concrete on a running inch of the form',
  formula: 'w * h^2 / 3456',
  units: { w: 'lb/ft3', h: 'in' },
  unit: 'lbf/in',
  source: 'ACI 347R, full head: w * h^2 / 2, and 1728 in3 a ft3',
  fromMemory: true,
  compute: ({ w, h }) => (w * h ** 2) / 3456,
});
