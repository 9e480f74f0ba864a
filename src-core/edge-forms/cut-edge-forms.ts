/** The cut list of all edge forms, and what holds and seals them. */
import type { MitredStick, Proof, StickStock } from '../cutting';
import { cutMitred, cutSticks } from '../cutting';
import type { Job } from '../job';
import { stripStockIn } from './context';
import { SHIPPED_STRIP_IN } from './practice';
import type { Reuse } from './reuse';
import type { Sealant } from './sealing';
import { sealantFor } from './sealing';
import type { Strip, StripKind } from './strips';
import { stripsOf } from './strips';
import type { EdgeForms } from './types';

/** Where a strip lies on its stick. */
export interface FormCut {
  readonly strip: Strip;
  /** Where its first point lies, from the first end of the stick, in. */
  readonly atIn: number;
  /** Whether it lies half a turn round, face up. */
  readonly isTurned: boolean;
}

export interface FormStick {
  readonly id: string;
  readonly stockId: string;
  readonly stockLengthIn: number;
  readonly price: number | null;
  readonly cuts: readonly FormCut[];
  /** The saw's way, where mitres share cuts; none where the strips are cut square apart and mitred after. */
  readonly saws: MitredStick['saws'];
  readonly offcutIn: number;
}

/** Strips of one kind and the sticks that they come from. */
export interface StripCutList {
  readonly id: string;
  readonly of: StripKind;
  readonly sticks: readonly FormStick[];
  /** How near the list is to the least that any could take. */
  readonly proof: Proof;
  /** Strips that no stick yields: longer than the stock, or so short that their mitres meet. */
  readonly notCut: readonly Strip[];
}

export interface CutEdgeForms {
  readonly lists: readonly StripCutList[];
  /** Corner blocks, which are shaped and not cut from strip. */
  readonly blocks: readonly Strip[];
  /** Strips left out because another comes free for them. */
  readonly reuses: readonly Reuse[];
  /** Over all pieces and copies; a strip that is used again takes new screws. */
  readonly screws: number;
  readonly cornerTapeIn: number;
  readonly jointTapeIn: number;
  readonly sealant: Sealant;
}

/**
 * Cuts the strips of every piece and copy from stock. A strip with a profile keeps its slab face on one edge of the stick and
 * cannot be turned end for end, so it is cut square apart at its long points and mitred after; plain strips are nested. Screws, tape
 * and sealant are those of every pour, nothing added for waste.
 */
export function cutEdgeForms(
  job: Job,
  all: readonly EdgeForms[],
  reuses: readonly Reuse[] = [],
): CutEdgeForms {
  const spared = new Set(reuses.map(({ toId }) => toId));
  const strips = all.flatMap(stripsOf).filter(({ id }) => !spared.has(id));
  const cut = strips.filter(({ made }) => made !== 'shaped-block');
  const kinds = [...new Map(cut.map(({ of }) => [of.id, of])).values()];
  const overCopies = (one: (forms: EdgeForms) => number) =>
    all.reduce((sum, forms) => sum + forms.copies * one(forms), 0);
  return {
    lists: kinds.map((of) =>
      listOf(
        job,
        of,
        cut.filter((strip) => strip.of.id === of.id),
      ),
    ),
    blocks: strips.filter(({ made }) => made === 'shaped-block'),
    reuses,
    screws: overCopies(({ screws }) => screws.reduce((sum, { count }) => sum + count, 0)),
    cornerTapeIn: overCopies(({ sealing }) => sealing.cornerTapeIn),
    jointTapeIn: overCopies(({ sealing }) => sealing.jointTapeIn),
    sealant: sealantFor(overCopies(({ sealing }) => sealing.beadIn)),
  };
}

/** Sticks of a kind of strip: the job's own form strips, else the shipped length. Isolation strip has the shipped length. */
function stocksFor(job: Job, { material }: StripKind): StickStock[] {
  if (material === 'isolation-strip') {
    return [{ id: 'isolation-strip', lengthIn: SHIPPED_STRIP_IN, price: null }];
  }
  return stripStockIn(job).map((lengthIn) => {
    const own = job.stock.find((item) => item.kind === 'form-strip' && item.lengthIn === lengthIn);
    return { id: own?.id ?? 'form-strip', lengthIn, price: own?.price ?? null };
  });
}

function listOf(job: Job, of: StripKind, strips: readonly Strip[]): StripCutList {
  const order = { stocks: stocksFor(job, of), kerfIn: job.forms.kerfIn };
  const byId = new Map(strips.map((strip) => [strip.id, strip]));
  const stripOf = ({ id }: { readonly id: string }) => byId.get(id)!;
  if (mayBeTurned(of)) {
    const pieces = strips.map(({ id, longIn, startRad, endRad }) => ({
      id,
      longIn: settled(longIn),
      startRad: settled(startRad),
      endRad: settled(endRad),
      faceIn: of.faceIn,
    }));
    const { sticks, tooLong, tooShort, proof } = cutMitred({ ...order, pieces });
    return {
      id: of.id,
      of,
      sticks: sticks.map((stick, k) => ({
        ...stick,
        id: `${of.id}/stick/${k + 1}`,
        cuts: stick.cuts.map((cut) => ({ strip: stripOf(cut), atIn: cut.atIn, isTurned: cut.isTurned })),
      })),
      proof,
      notCut: [...tooLong, ...tooShort].map(stripOf),
    };
  }
  const pieces = strips.map(({ id, longIn }) => ({ id, lengthIn: settled(longIn) }));
  const { sticks, tooLong, proof } = cutSticks({ ...order, pieces });
  return {
    id: of.id,
    of,
    sticks: sticks.map((stick, k) => ({
      ...stick,
      id: `${of.id}/stick/${k + 1}`,
      cuts: stick.cuts.map((cut) => ({ strip: stripOf(cut), atIn: cut.atIn, isTurned: false })),
      saws: [],
    })),
    proof,
    notCut: tooLong.map(stripOf),
  };
}

/** A strip of plain square section has no slab face until it is set. */
function mayBeTurned({ material, profile }: StripKind): boolean {
  return material === 'form-strip' && profile.kind === 'square';
}

/** Lengths and angles without the rounding of their arithmetic, so that strips that are alike are seen to be. */
function settled(value: number): number {
  return Math.round(value / GRAIN) * GRAIN;
}

/** In or rad: far below any saw. */
const GRAIN = 1e-7;
