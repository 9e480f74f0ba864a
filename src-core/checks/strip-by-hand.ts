/** The hand calculation of a builder's engineer, printed beside the plate: a strip of overhang and a strip of span. */
import type { PieceAnalysis } from '../analysis';
import type { Line } from '../workings';
import { formula } from '../workings';

type Symbols<Name extends string> = Readonly<Record<Name, number>>;

/** Root moment over load at the free edge of a long overhang, far from its ends (a ratio). Jaramillo (1950), nu 0.2. */
export const MID_RUN_RATIO = 0.4912;
/** The same for a load on the free corner, the peak near the end (a ratio). Derived by series and finite elements, nu 0.2. */
export const FREE_CORNER_RATIO = 1.48;

/**
 * Root moment of an overhang strip clamped at its root, lbf-in in an inch. q: psi; a: overhang, in; kP: ratio above;
 * P: load on the very edge, lbf. Statics for q; Jaramillo (1950) for P.
 */
export const overhangStrip = formula<Symbols<'q' | 'a' | 'kP' | 'P'>>({
  symbol: 'Mstrip',
  label: 'By hand, an overhang clamped at its root with the load on its edge',
  formula: 'q * a^2 / 2 + kP * P',
  units: { q: 'psi', a: 'in', kP: '', P: 'lbf' },
  unit: 'lbf-in/in',
  source: 'statics; kP from Jaramillo (1950) and Timoshenko & Woinowsky-Krieger, recomputed for nu 0.2',
  compute: ({ q, a, kP, P }) => (q * a ** 2) / 2 + kP * P,
});

/**
 * Width of slab that carries a load standing at its free edge in the middle of a span, in. c: side of the load along the
 * edge's square, in; L: span, in; W: width of the slab, in. BS 8110-1:1997 3.5.2.2, from memory.
 */
export const edgeLoadWidth = formula<Symbols<'W' | 'c' | 'L'>>({
  symbol: 'b',
  label: 'Width of slab that helps to carry a load at its free edge',
  formula: 'min(W, c / 2 + (c + 0.6 * L) / 2)',
  units: { W: 'in', c: 'in', L: 'in' },
  unit: 'in',
  source: 'BS 8110-1:1997 3.5.2.2',
  fromMemory: true,
  compute: ({ W, c, L }) => Math.min(W, c / 2 + (c + 0.6 * L) / 2),
});

/** Middle moment of a simply supported strip, lbf-in in an inch. q: psi; L: span, in; P: lbf; b: width that carries P, in. Statics. */
export const spanStrip = formula<Symbols<'q' | 'L' | 'P' | 'b'>>({
  symbol: 'Mstrip',
  label: 'By hand, a plank resting on both ends of its span',
  formula: 'q * L^2 / 8 + P * L / (4 * b)',
  units: { q: 'psi', L: 'in', P: 'lbf', b: 'in' },
  unit: 'lbf-in/in',
  source: 'statics, simply supported beam',
  compute: ({ q, L, P, b }) => (q * L ** 2) / 8 + (P * L) / (4 * b),
});

interface StripLoad {
  readonly spreadPsi: number;
  readonly pointLbf: number;
  /** Side of the point load; 0 without one. */
  readonly sideIn: number;
}

const IN2_PER_FT2 = 144;
/** Below this many thicknesses a strip is a block, and says nothing. */
const SHORTEST_STRIP = 2;

/** Strips for the longest overhang and the longest free span, each with a sentence on why the plate differs. */
export function stripsByHand(analysis: PieceAnalysis): Line[] {
  return [...overhangLines(analysis), ...spanLines(analysis)];
}

function overhangLines(analysis: PieceAnalysis): Line[] {
  const a = analysis.shape.longestOverhang?.overhangIn ?? 0;
  if (a < SHORTEST_STRIP * analysis.piece.thicknessIn) return [];
  const at = (kP: number, { spreadPsi, pointLbf }: StripLoad) =>
    overhangStrip({ q: spreadPsi, a, kP, P: pointLbf });
  const worst = worstLoad(analysis, (load) => at(MID_RUN_RATIO, load).value);
  const midRun = at(MID_RUN_RATIO, worst);
  const plate = Math.max(
    analysis.elastic.low.hogging.momentLbfInPerIn,
    analysis.elastic.high.hogging.momentLbfInPerIn,
  );
  const lines = [
    withReason(
      midRun.line,
      plate,
      'its load sits on a patch and its support gives, while the strip has a point load on a clamped overhang',
    ),
  ];
  if (worst.pointLbf > 0) {
    const corner = at(FREE_CORNER_RATIO, worst).line;
    lines.push({
      ...corner,
      label: 'The same with the load on a free corner, the peak before any averaging',
    });
  }
  return lines;
}

function spanLines(analysis: PieceAnalysis): Line[] {
  const span = analysis.shape.freeSpan;
  if (span === null || span.spanIn < SHORTEST_STRIP * analysis.piece.thicknessIn) return [];
  const { lengthIn, depthIn, axisRad } = analysis.shape;
  const runsLengthways = Math.abs(Math.cos(span.directionRad - axisRad)) > Math.SQRT1_2;
  const W = runsLengthways ? depthIn : lengthIn;
  const L = span.spanIn;
  const width = (load: StripLoad) => edgeLoadWidth({ W, c: load.sideIn, L });
  const at = (load: StripLoad) => spanStrip({ q: load.spreadPsi, L, P: load.pointLbf, b: width(load).value });
  const worst = worstLoad(analysis, (load) => at(load).value);
  const plate = Math.max(
    analysis.elastic.low.sagging.momentLbfInPerIn,
    analysis.elastic.high.sagging.momentLbfInPerIn,
  );
  return [
    width(worst).line,
    withReason(
      at(worst).line,
      plate,
      'the slab runs on over its supports and spreads the load, while the plank ends at both',
    ),
  ];
}

function withReason(line: Line, plateLbfInPerIn: number, whyBelow: string): Line {
  const percent = Math.round(Math.abs(plateLbfInPerIn / line.value - 1) * 100);
  const reason =
    plateLbfInPerIn <= line.value
      ? `the plate is ${percent} % below it, because ${whyBelow}`
      : `the plate is ${percent} % above it, because corners, openings and uneven supports draw more than an even strip shows`;
  return { ...line, label: `${line.label}; ${reason}` };
}

/** Self weight with whichever live load gives the strip more. */
function worstLoad(analysis: PieceAnalysis, momentOf: (load: StripLoad) => number): StripLoad {
  const dead = analysis.weight.slabLb / analysis.weight.areaIn2;
  let worst: StripLoad = { spreadPsi: dead, pointLbf: 0, sideIn: 0 };
  for (const { live } of analysis.elastic.low.cases) {
    const load = loadOf(dead, live);
    if (momentOf(load) > momentOf(worst)) worst = load;
  }
  return worst;
}

function loadOf(deadPsi: number, live: PieceAnalysis['elastic']['low']['cases'][number]['live']): StripLoad {
  switch (live.kind) {
    case 'none':
      return { spreadPsi: deadPsi, pointLbf: 0, sideIn: 0 };
    case 'spread':
      return { spreadPsi: deadPsi + live.psf / IN2_PER_FT2, pointLbf: 0, sideIn: 0 };
    case 'roving':
      return {
        spreadPsi: deadPsi,
        pointLbf: live.forceLbf,
        sideIn: Math.min(live.widthIn, live.depthIn),
      };
  }
}
