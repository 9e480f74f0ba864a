/** Holes that a section's deck needs: sinks, taps, and what stands up through it. */

import type { Cutout, Piece } from '../job';
import { pieceRegion } from '../job';
import { SAND_PCF, TIMBER_PCF } from '../openings';
import type { Point } from '../outline';
import { polygonAreaIn2 } from '../outline';
import { type Patch, patchOf, type SectionFrame } from './frame';
import type { FalseworkPractice } from './practice';
import { sharedIn } from './runs';
import type { DeckOpening } from './section';

const IN3_PER_FT3 = 1728;
/** Openings nearer than this to each other are framed as one, in: two headers and a hand between. Common practice, no source. */
const ONE_FRAME_IN = 3;
const SAME_IN = 1e-6;

export interface SectionOpenings {
  readonly openings: readonly DeckOpening[];
  /** Openings that the rim of the section cuts through, in words. */
  readonly cutThrough: readonly string[];
}

/** The openings of a section: those of the piece, and the plans of what stands under it. */
export function openingsOf(
  piece: Piece,
  frame: SectionFrame,
  standing: readonly { readonly id: string; readonly words: string; readonly corners: readonly Point[] }[],
  practice: FalseworkPractice,
): SectionOpenings {
  const region = pieceRegion(piece);
  const holes = region.ok ? region.holes : [];
  const all = [
    ...piece.cutouts.map((cutout, i): DeckOpening => {
      const outline = holes[i] ?? [];
      const areaIn2 = polygonAreaIn2(outline);
      const patch = patchOf(frame, outline);
      return {
        id: cutout.id,
        words: cutout.name ?? `The ${cutout.purpose} ${cutout.id}`,
        patch,
        isFramed: largestSide(patch) > practice.boredOpeningIn,
        weightLb: infillWeightLb(cutout, areaIn2, piece.thicknessIn),
        areaIn2,
      };
    }),
    ...standing.map(
      ({ id, words, corners }): DeckOpening => ({
        id,
        words,
        patch: patchOf(frame, corners),
        isFramed: true,
        weightLb: 0,
        areaIn2: polygonAreaIn2(corners),
      }),
    ),
  ].filter(({ patch }) => isWithin(patch, frame));
  const cutThrough = all.filter(({ patch }) => isCutThrough(patch, frame)).map(({ words }) => words);
  const whole = all.filter(({ patch }) => !isCutThrough(patch, frame));
  return { openings: joined(whole), cutThrough };
}

/** Weight that hangs in an opening while the slab is poured, lb: a bowl full of sand, or a plug as thick as the slab. */
export function infillWeightLb(cutout: Cutout, areaIn2: number, thicknessIn: number): number {
  const { sink } = cutout;
  if (sink === null || sink.mounting === 'dropped-in') {
    return (areaIn2 * thicknessIn * TIMBER_PCF) / IN3_PER_FT3;
  }
  return sink.emptyWeightLb + (areaIn2 * sink.bowlDepthIn * SAND_PCF) / IN3_PER_FT3;
}

function largestSide({ p0, p1, q0, q1 }: Patch): number {
  return Math.max(p1 - p0, q1 - q0);
}

function isWithin({ p0, p1, q0, q1 }: Patch, { widthIn, depthIn }: SectionFrame): boolean {
  return sharedIn(p0, p1, 0, widthIn) > SAME_IN && sharedIn(q0, q1, 0, depthIn) > SAME_IN;
}

function isCutThrough({ p0, p1, q0, q1 }: Patch, { widthIn, depthIn }: SectionFrame): boolean {
  return p0 < -SAME_IN || q0 < -SAME_IN || p1 > widthIn + SAME_IN || q1 > depthIn + SAME_IN;
}

/** Openings close to a framed one are framed with it. */
function joined(openings: readonly DeckOpening[]): DeckOpening[] {
  const groups: DeckOpening[] = [];
  for (const opening of openings) {
    const near = groups.findIndex(
      (other) => (other.isFramed || opening.isFramed) && gapIn(other.patch, opening.patch) < ONE_FRAME_IN,
    );
    if (near < 0) groups.push(opening);
    else groups[near] = together(groups[near]!, opening);
  }
  return groups.length === openings.length ? groups : joined(groups);
}

function gapIn(a: Patch, b: Patch): number {
  return Math.max(-sharedIn(a.p0, a.p1, b.p0, b.p1), -sharedIn(a.q0, a.q1, b.q0, b.q1));
}

function together(a: DeckOpening, b: DeckOpening): DeckOpening {
  return {
    id: a.id,
    words: `${a.words} with ${b.words}`,
    isFramed: true,
    weightLb: a.weightLb + b.weightLb,
    areaIn2: a.areaIn2 + b.areaIn2,
    patch: {
      p0: Math.min(a.patch.p0, b.patch.p0),
      p1: Math.max(a.patch.p1, b.patch.p1),
      q0: Math.min(a.patch.q0, b.patch.q0),
      q1: Math.max(a.patch.q1, b.patch.q1),
    },
  };
}
