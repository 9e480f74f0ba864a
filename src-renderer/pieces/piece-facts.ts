/** What the list says of a piece before any check has run: its weight and its longest overhang. */
import { stands } from '../../src-core/analysis';
import type { Job, Piece } from '../../src-core/job';
import { bearingPatches, pieceRegion } from '../../src-core/job';
import type { Region } from '../../src-core/outline';
import { clipPatchToRegion, measureOverhangs, regionAreaIn2 } from '../../src-core/outline';
import type { UnitSystem } from '../../src-core/units';
import { IN3_PER_FT3, printLength, printMass } from '../../src-core/units';

/** Between points along an edge at which its overhang is measured, as the checks do it, in. */
const MEASURE_STEP_IN = 3;
const WEIGHT_DIGITS = 3;
const NO_OVERHANG_IN = 1 / 32;

export interface PieceFacts {
  readonly thicknessIn: number;
  /** One of the piece's copies; null where its outline cannot be built. */
  readonly weightLb: number | null;
  /** Of its free edges over what stays under it; null where nothing carries one. */
  readonly overhangIn: number | null;
}

/** Weight and longest overhang of a piece as it is drawn. */
export function pieceFacts(piece: Piece, densityPcf: number): PieceFacts {
  const plan = pieceRegion(piece);
  const { thicknessIn } = piece;
  if (!plan.ok) return { thicknessIn, weightLb: null, overhangIn: null };
  return {
    thicknessIn,
    weightLb: weightOfLb(plan, thicknessIn, densityPcf),
    overhangIn: longestOverhangIn(piece, plan),
  };
}

/** Edge profiles are not taken off, as in the checks. */
function weightOfLb(region: Region, thicknessIn: number, densityPcf: number): number {
  return (regionAreaIn2(region) * thicknessIn * densityPcf) / IN3_PER_FT3;
}

/** Density of the piece's concrete, lb per cu ft. A job that was read names every mix that a piece takes. */
export function densityOf({ mixes }: Pick<Job, 'mixes'>, { mixId }: Piece): number {
  const mix = mixes.find(({ id }) => id === mixId);
  if (mix === undefined) throw new Error(`no mix "${mixId}" is in the job`);
  return mix.densityPcf;
}

/** Overhangs run from the corners as drawn, so that a rounded corner counts to where its edges meet, as in the checks. */
function longestOverhangIn(piece: Piece, region: Region): number | null {
  const bearings = piece.supports
    .filter((support) => stands(support, null))
    .flatMap((support) => bearingPatches(support, region.outer))
    .flatMap(({ corners }) => clipPatchToRegion(corners, region))
    .map((points) => ({ kind: 'polygon' as const, points }));
  const overhangs = measureOverhangs({
    region: { outer: piece.corners, holes: region.holes },
    bearings,
    sampleIn: MEASURE_STEP_IN,
  }).flatMap(({ edge, overhangIn }) => (overhangIn === null || !isFree(piece, edge) ? [] : [overhangIn]));
  return overhangs.length === 0 ? null : Math.max(...overhangs);
}

function isFree({ edges }: Piece, edge: number): boolean {
  return edges === null || edges[edge]?.kind === 'free';
}

/** "1-1/2 in · 211 lb each" and "11 in out"; empty where no edge overhangs. */
export function factsWords(
  { thicknessIn, weightLb, overhangIn }: PieceFacts,
  copies: number,
  system: UnitSystem,
): { readonly slab: string; readonly overhang: string } {
  const thick = printLength(thicknessIn, { system });
  const each = copies > 1 ? ' each' : '';
  const isOut = overhangIn !== null && overhangIn >= NO_OVERHANG_IN;
  return {
    slab:
      weightLb === null
        ? thick
        : `${thick} · ${printMass(weightLb, { system, digits: WEIGHT_DIGITS })}${each}`,
    overhang: isOut ? `${printLength(overhangIn, { system })} out` : '',
  };
}

/** Concrete of the whole job with every copy: "9 slabs, 2170 lb of concrete". */
export function jobWeightLine(job: Job): string {
  let slabs = 0;
  let totalLb = 0;
  let unbuilt = 0;
  for (const piece of job.pieces) {
    slabs += piece.copies;
    const plan = pieceRegion(piece);
    if (plan.ok) totalLb += piece.copies * weightOfLb(plan, piece.thicknessIn, densityOf(job, piece));
    else unbuilt += piece.copies;
  }
  const weight = printMass(totalLb, { system: job.shownIn, digits: WEIGHT_DIGITS });
  const but = unbuilt === 0 ? '' : `, without ${unbuilt} whose outline cannot be built`;
  return `${slabs} ${slabs === 1 ? 'slab' : 'slabs'}, ${weight} of concrete${but}`;
}
