/** How much concrete a pour takes, in bags and batches. */
import { formPressure, formResultant } from '../edge-forms';
import type { Job, Piece } from '../job';
import type { Trace } from '../trace';
import type { Line } from '../workings';
import type { Bag, BagAmounts } from './bag-amounts';
import { bagAmounts } from './bag-amounts';
import type { BatchAmounts } from './batches';
import { batchesOf } from './batches';
import type { Casting } from './cold-joints';
import type { FillPath } from './fill-path';
import { bagsFor, neededVolume, topUpVolume } from './mix-formulas';
import type { PieceVolume } from './piece-volume';
import type { PourGroup } from './pour-groups';
import { TOP_UP_RATIO } from './practice';
import { cubicYards, plainVolume, shapedVolume, weightOf } from './volume-formulas';

/** A piece of a pour with all its copies. */
export interface PouredPiece {
  readonly id: string;
  readonly trace: Trace;
  readonly pieceId: string;
  readonly name: string;
  readonly copies: number;
  readonly volume: PieceVolume;
  readonly volumeFt3: number;
  /** Of all copies: hardened by the density of the mix, and wet by that of the falsework. */
  readonly weightLb: number;
  readonly wetWeightLb: number;
  /** What wet concrete does to the edge forms. */
  readonly edgePressurePsf: number;
  readonly edgeThrustLbPerFt: number;
  readonly lines: readonly Line[];
}

/** Parts of the concrete to mix; they add up to `totalFt3`. */
export interface PourVolumes {
  readonly drawnFt3: number;
  readonly overfillFt3: number;
  readonly wasteFt3: number;
  readonly topUpFt3: number;
  readonly totalFt3: number;
  readonly totalYd3: number;
  readonly lines: readonly Line[];
}

export interface PourBags {
  readonly bags: number;
  readonly bagLb: number;
  readonly yieldFt3: number;
  /** What the whole bags give beyond the concrete to mix; it comes out of the last batch. */
  readonly surplusFt3: number;
  readonly perBag: BagAmounts;
  readonly batches: readonly BatchAmounts[];
  readonly lines: readonly Line[];
}

/** A piece of a pour: volume, weight, and its push on the edge forms. */
export function pouredPiece(
  job: Job,
  group: Pick<PourGroup, 'id' | 'mix'>,
  piece: Piece,
  volume: PieceVolume,
): PouredPiece {
  const { thicknessIn: h, copies } = piece;
  const plain = plainVolume({ A: volume.grossAreaIn2, Ac: volume.grossAreaIn2 - volume.areaIn2, h });
  const shaped = shapedVolume({ V0: plain.value, E: volume.areaIn2 * h - volume.oneIn3, n: copies });
  const w = job.falsework.wetDensityPcf;
  const weight = weightOf({ V: shaped.value, w: group.mix.densityPcf });
  const wet = weightOf({ V: shaped.value, w });
  const pressure = formPressure({ w, h });
  const thrust = formResultant({ w, h });
  return {
    id: `${group.id}/${piece.id}`,
    trace: volume.trace,
    pieceId: piece.id,
    name: piece.name,
    copies,
    volume,
    volumeFt3: shaped.value,
    weightLb: weight.value,
    wetWeightLb: wet.value,
    edgePressurePsf: pressure.value,
    edgeThrustLbPerFt: thrust.value,
    lines: [plain, shaped, weight, wet, pressure, thrust].map(({ line }) => line),
  };
}

/** Forms to fill: each copy of each piece, overfill included. */
export function castingsOf(
  pieces: readonly PouredPiece[],
  paths: ReadonlyMap<string, FillPath>,
  overfillRatio: number,
): readonly Casting[] {
  return pieces.flatMap(({ pieceId, copies, volumeFt3 }) =>
    Array.from({ length: copies }, (_, k) => ({
      pieceId,
      copy: k + 1,
      volumeFt3: (volumeFt3 / copies) * (1 + overfillRatio),
      turns: paths.get(pieceId)?.turns ?? [],
    })),
  );
}

/** The concrete to mix for a pour. Without bags there is no batch to keep a share of. */
export function pourVolumes(job: Job, pieces: readonly PouredPiece[], bag: Bag | null): PourVolumes {
  const { overfillRatio: o, wasteRatio: w } = job.forms;
  const drawnFt3 = pieces.reduce((sum, { volumeFt3 }) => sum + volumeFt3, 0);
  const topUp =
    bag === null ? null : topUpVolume({ r: TOP_UP_RATIO, n: job.crew.mixerBags, y: bag.yieldFt3 });
  const topUpFt3 = topUp?.value ?? 0;
  const total = neededVolume({ V: drawnFt3, o, w, Vt: topUpFt3 });
  const yards = cubicYards({ V: total.value });
  return {
    drawnFt3,
    overfillFt3: drawnFt3 * o,
    wasteFt3: drawnFt3 * (1 + o) * w,
    topUpFt3,
    totalFt3: total.value,
    totalYd3: yards.value,
    lines: [...(topUp === null ? [] : [topUp.line]), total.line, yards.line],
  };
}

/** Whole bags for a pour, and its batches, none over what the mixer takes. */
export function pourBags(job: Job, { mix, colour }: PourGroup, bag: Bag, volumes: PourVolumes): PourBags {
  const bags = bagsFor({ V: volumes.totalFt3, y: bag.yieldFt3 });
  const perBag = bagAmounts(mix, bag, colour, job.shownIn);
  const batches = batchesOf(
    {
      bags: bags.value,
      mixerBags: job.crew.mixerBags,
      bagYieldFt3: bag.yieldFt3,
      inFormsFt3: volumes.drawnFt3 + volumes.overfillFt3,
      wasteRatio: job.forms.wasteRatio,
    },
    perBag,
  );
  return {
    bags: bags.value,
    bagLb: bag.weightLb,
    yieldFt3: bag.yieldFt3,
    surplusFt3: bags.value * bag.yieldFt3 - volumes.totalFt3,
    perBag,
    batches,
    lines: [bags.line, ...perBag.lines],
  };
}
