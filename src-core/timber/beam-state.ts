/** A solved beam looked at along its length: at one place, at stations to draw it by, and at its extremes. */
import type { BeamPart, BeamPartKind, SolvedBeam } from './beam';
import { type PartState, partState } from './beam-part';

export interface BeamState extends PartState {
  readonly atIn: number;
}

/**
 * State of a beam at x, in from its left tip: moment lbf-in, shear lbf on either side (over a support, on either side of it),
 * slope, deflection in.
 */
export function beamAt(beam: SolvedBeam, atIn: number): BeamState {
  const { parts } = beam;
  const past = parts.findIndex(({ fromIn }, i) => i > 0 && fromIn >= atIn);
  const index = past < 0 ? parts.length - 1 : past - 1;
  const part = parts[index]!;
  const state = partState(part, Math.min(part.lengthIn, Math.max(0, atIn - part.fromIn)));
  const next = parts[index + 1];
  if (next === undefined || next.fromIn > atIn) return { atIn, ...state };
  return { atIn, ...state, shearAfterLbf: partState(next, 0).shearAfterLbf };
}

/** States at even steps along every part, both edges of each among them, so that a drawing meets every support. */
export function beamStations(beam: SolvedBeam, stepsAPart: number): readonly BeamState[] {
  const steps = Math.max(1, Math.floor(stepsAPart));
  return beam.parts.flatMap((part) =>
    Array.from({ length: steps + 1 }, (_, i): BeamState => {
      const x = (part.lengthIn * i) / steps;
      return { atIn: part.fromIn + x, ...partState(part, x) };
    }),
  );
}

export interface MomentExtreme {
  readonly atIn: number;
  readonly momentLbfIn: number;
}

/** The largest deflection of one part, up or down. */
export interface PartDeflection {
  readonly kind: BeamPartKind;
  /** Length of the part. */
  readonly lengthIn: number;
  readonly atIn: number;
  /** Negative where the part only rises. */
  readonly deflectionIn: number;
}

export interface BeamExtremes {
  /** Zero or more. */
  readonly sagging: MomentExtreme;
  /** Zero or less. */
  readonly hogging: MomentExtreme;
  /** Largest shear of either sign, lbf, as a positive number. */
  readonly shearLbf: number;
  /** One a part, from left to right. */
  readonly deflections: readonly PartDeflection[];
}

/** Largest sagging and hogging moment, shear, and the deflection of each part: found exactly, not by sampling. */
export function beamExtremes(beam: SolvedBeam): BeamExtremes {
  let sagging: MomentExtreme = { atIn: 0, momentLbfIn: 0 };
  let hogging: MomentExtreme = { atIn: 0, momentLbfIn: 0 };
  let shearLbf = 0;
  for (const part of beam.parts) {
    for (const x of momentTurns(part)) {
      const { momentLbfIn, shearBeforeLbf, shearAfterLbf } = partState(part, x);
      const atIn = part.fromIn + x;
      if (momentLbfIn > sagging.momentLbfIn) sagging = { atIn, momentLbfIn };
      if (momentLbfIn < hogging.momentLbfIn) hogging = { atIn, momentLbfIn };
      // A step at the part's own edge stands on the support and shears nothing beside it.
      if (x > 0) shearLbf = Math.max(shearLbf, Math.abs(shearBeforeLbf));
      if (x < part.lengthIn) shearLbf = Math.max(shearLbf, Math.abs(shearAfterLbf));
    }
  }
  return { sagging, hogging, shearLbf, deflections: beam.parts.map(partDeflection) };
}

/** Places where the loads of a part change, its two edges among them, in from its left edge, rising. */
export function loadBreaks({ lengthIn, loads }: BeamPart): number[] {
  const places = [
    0,
    lengthIn,
    ...loads.points.map(({ atIn }) => atIn),
    ...loads.uniform.flatMap(({ fromIn, toIn }) => [fromIn, toIn]),
  ];
  return [...new Set(places)].sort((a, b) => a - b);
}

/** The breaks, and the places between them where the shear, straight there, passes through zero. */
function momentTurns(part: BeamPart): number[] {
  const breaks = loadBreaks(part);
  const turns = [...breaks];
  for (let i = 0; i + 1 < breaks.length; i++) {
    const [a, b] = [breaks[i]!, breaks[i + 1]!];
    const va = partState(part, a).shearAfterLbf;
    const vb = partState(part, b).shearBeforeLbf;
    if (va * vb < 0) turns.push(a + ((b - a) * va) / (va - vb));
  }
  return turns.sort((a, b) => a - b);
}

/** Bisections that bring any bracket to the last bit of a double. */
const BISECTIONS = 60;

function partDeflection(part: BeamPart): PartDeflection {
  // Between two turns of the moment it has at most one zero, and between two zeros of the moment the slope at most one.
  const momentZeros = zerosBetween(momentTurns(part), (x) => partState(part, x).momentLbfIn);
  const marks = [...new Set([0, ...momentZeros, part.lengthIn])].sort((a, b) => a - b);
  const level = zerosBetween(marks, (x) => partState(part, x).slopeRatio);
  let best: PartDeflection | null = null;
  for (const x of [0, ...level, part.lengthIn]) {
    const { deflectionIn } = partState(part, x);
    if (best === null || Math.abs(deflectionIn) > Math.abs(best.deflectionIn)) {
      best = { kind: part.kind, lengthIn: part.lengthIn, atIn: part.fromIn + x, deflectionIn };
    }
  }
  return best!;
}

/** Zeros of a function that has at most one between each two marks. */
function zerosBetween(marks: readonly number[], value: (x: number) => number): number[] {
  const zeros: number[] = [];
  for (let i = 0; i + 1 < marks.length; i++) {
    let [low, high] = [marks[i]!, marks[i + 1]!];
    const atLow = value(low);
    if (atLow * value(high) >= 0) continue;
    for (let step = 0; step < BISECTIONS; step++) {
      const middle = (low + high) / 2;
      if (value(middle) * atLow > 0) low = middle;
      else high = middle;
    }
    zeros.push((low + high) / 2);
  }
  return zeros;
}
