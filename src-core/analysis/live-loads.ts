/** Live loads: the roving patch at every place that can govern, and the spread load. */
import type { Piece, RovingPatch } from '../job';
import { rovingOf } from '../job';
import type { Point, Region } from '../outline';
import { rovingPositions } from '../outline';
import type { Printers } from './print';
import { printPlace } from './print';
import type { LiveLoad } from './types';

export interface LiveCase {
  readonly id: string;
  readonly words: string;
  readonly live: LiveLoad;
}

export interface LiveCases {
  readonly roving: RovingPatch | null;
  readonly cases: readonly LiveCase[];
  readonly remarks: readonly string[];
}

const SETTING_WORDS: { readonly [K in RovingPatch['setting']]: string } = {
  leaning: 'leaning',
  sitting: 'sitting',
  climbing: 'climbing',
  own: 'as entered',
};

/**
 * Live load cases of the finished piece. `spacingIn` sets how far apart the roving patch is tried; it always lies wholly on the
 * slab, tight in every corner and to every edge and cutout lip, with the places in `besides`.
 */
export function liveCases(
  piece: Piece,
  region: Region,
  axisRad: number,
  spacingIn: number,
  besides: readonly Point[],
  print: Printers,
): LiveCases {
  const cases: LiveCase[] = [];
  const remarks: string[] = [];
  if (piece.loads.spreadPsf > 0) {
    cases.push({
      id: 'spread',
      words: `${piece.loads.spreadPsf} psf spread over the top`,
      live: { kind: 'spread', psf: piece.loads.spreadPsf },
    });
  }
  const roving = rovingOf(piece);
  if (roving !== null && roving.forceLbf > 0) {
    const found = rovingPositions({
      region,
      patchWidthIn: roving.widthIn,
      patchDepthIn: roving.depthIn,
      spacingIn,
      angleRad: axisRad,
      extraPoints: besides,
    });
    if (found.isShrunk) {
      remarks.push('The slab is narrower than the load patch; the patch was shrunk to fit, its force kept.');
    }
    found.positions.forEach(({ centre, widthIn, depthIn }, index) => {
      cases.push({
        id: `roving-${index + 1}`,
        words: `${print.force(roving.forceLbf)} ${SETTING_WORDS[roving.setting]} ${printPlace(centre, region, axisRad, print)}`,
        live: {
          kind: 'roving',
          forceLbf: roving.forceLbf,
          centre,
          widthIn,
          depthIn,
        },
      });
    });
  }
  return { roving, cases, remarks };
}

/** The load case of a step on the way: the stated working load spread over the top. */
export function workingLoadCases(psf: number): LiveCase[] {
  return [{ id: 'spread', words: `${psf} psf of people and kit`, live: { kind: 'spread', psf } }];
}
