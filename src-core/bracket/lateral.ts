import type { Line } from '../workings';
import {
  bearingAcrossGrain,
  bearingAlongGrain,
  bearingSmallDowel,
  LARGE_DOWEL_IN,
  rootDiameterIn,
  screwYieldPsi,
  steelBearingPsi,
} from './dowel-strength';
import { singleShear, type YieldMode } from './yield-modes';

/** Bending yield strength of a bolt, psi. NDS 2018 Appendix I, Table I1, from memory. */
const BOLT_YIELD_PSI = 45_000;

export interface LateralInput {
  readonly kind: 'screws' | 'lags' | 'through-bolts';
  readonly diameterIn: number;
  /** Bearing length in the timber: thread without tip of a screw, thickness of the timber for a bolt. */
  readonly bearingIn: number;
  /** Specific gravity of the timber that the fastener sits in. */
  readonly specificGravity: number;
  /** Thickness of the side member against the fastener's head. */
  readonly sideIn: number;
  readonly side: 'steel' | 'timber';
  /** Load along the grain (a bracket on a stud) or across it (on a level plate or ledger). */
  readonly grain: 'along' | 'across';
}

export interface LateralValue {
  readonly referenceLbf: number;
  readonly mode: YieldMode;
  readonly byMode: { readonly [K in YieldMode]: number };
  readonly lines: readonly Line[];
}

/**
 * Reference lateral value of one screw, lag or bolt in single shear between timber and a side plate of steel (or of the same
 * timber), lbf, before CD, CM and end grain. Screws count with their root diameter throughout. NDS 2018 12.3.
 */
export function lateralValue(input: LateralInput): LateralValue {
  const isBolt = input.kind === 'through-bolts';
  const timber = timberBearing(input.specificGravity, input.diameterIn, input.grain);
  const shear = singleShear({
    diameterIn:
      input.kind === 'through-bolts' ? input.diameterIn : rootDiameterIn(input.kind, input.diameterIn),
    nominalIn: input.diameterIn,
    mainIn: input.bearingIn,
    sideIn: input.sideIn,
    mainPsi: timber.value,
    sidePsi: input.side === 'steel' ? steelBearingPsi(input.sideIn) : timber.value,
    yieldPsi: input.kind === 'through-bolts' ? BOLT_YIELD_PSI : screwYieldPsi(input.kind, input.diameterIn),
    angleDeg: input.grain === 'across' && (isBolt || input.diameterIn >= LARGE_DOWEL_IN) ? 90 : 0,
  });
  return { ...shear, lines: [timber.line, ...shear.lines] };
}

function timberBearing(
  G: number,
  D: number,
  grain: LateralInput['grain'],
): ReturnType<typeof bearingAlongGrain> {
  if (D < LARGE_DOWEL_IN) return bearingSmallDowel({ G });
  return grain === 'along' ? bearingAlongGrain({ G }) : bearingAcrossGrain({ G, D });
}
