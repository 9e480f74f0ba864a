/** What a section weighs as it comes out. */
import { LUMBER } from '../timber';
import type { Arrangement } from './arrangement';
import type { Framing } from './framing';
import { LUMBER_PCF, PANEL_PCF } from './practice';

const IN3_PER_FT3 = 1728;

/** Weight of what comes out in one go, lb: deck, joists, headers, stringers. */
export function handlingWeightLb(framing: Framing, panelIn: number): number {
  const { arrangement, acrossIn, alongIn, joists, headers, lines } = framing;
  const openIn2 = framing.openings.reduce((sum, { s0, s1, t0, t1 }) => sum + (s1 - s0) * (t1 - t0), 0);
  const panelIn3 = (acrossIn * alongIn - openIn2) * panelIn;
  const joistIn =
    joists.reduce((sum, { t0, t1 }) => sum + t1 - t0, 0) +
    headers.reduce((sum, { s0, s1 }) => sum + s1 - s0, 0);
  const stringers = lines.filter(({ kind }) => kind === 'stringer').length;
  const lumberIn3 =
    joistIn * areaIn2(arrangement.joistSize) +
    (arrangement.beamSize === null ? 0 : stringers * acrossIn * areaIn2(arrangement.beamSize));
  return (panelIn3 * PANEL_PCF + lumberIn3 * LUMBER_PCF) / IN3_PER_FT3;
}

function areaIn2(size: Arrangement['joistSize']): number {
  return LUMBER[size].thicknessIn * LUMBER[size].widthIn;
}
