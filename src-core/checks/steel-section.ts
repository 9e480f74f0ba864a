/** The reinforced section at a point: as much of every layer as takes hold there, and what it carries. */
import type { Face, PieceAnalysis, SteelDemand, SteelLayer } from '../analysis';
import { tensionLayers } from '../analysis';
import type { SectionAnalysis } from '../concrete';
import { analyseSection } from '../concrete';
import type { Point } from '../outline';
import type { Line } from '../workings';
import { formula } from '../workings';
import type { Anchorage } from './anchorage';
import { anchorage } from './anchorage';

type Symbols<Name extends string> = Readonly<Record<Name, number>>;

/**
 * Moment that steel must be able to carry, lbf-in in an inch of width: the factored one, and enough to catch the crack as
 * it opens, unless a third more than the factored one is at hand. Mu: factored; Mcr: cracking moment.
 * After ACI 318-19 9.6.1.2 and 9.6.1.3, which ask it of beams; asked of thin tops here by engineering judgement.
 */
export const neededMoment = formula<Symbols<'Mu' | 'Mcr'>>({
  symbol: 'Mneed',
  label: 'Moment that the steel must carry: the factored one, and enough to catch the crack',
  formula: 'max(Mu, min(Mcr, 4 / 3 * Mu))',
  units: { Mu: 'lbf-in/in', Mcr: 'lbf-in/in' },
  unit: 'lbf-in/in',
  source: 'ACI 318-19 7.5.1.1; the idea of 9.6.1.3 (engineering judgement)',
  compute: ({ Mu, Mcr }) => Math.max(Mu, Math.min(Mcr, (4 / 3) * Mu)),
});

/** The same for steel that hardly stretches before the concrete crushes, lbf-in in an inch. Common practice, no source. */
export const neededOfStiffSteel = formula<Symbols<'Mu'>>({
  symbol: 'Mneed',
  label: 'Moment that steel must carry which hardly stretches before the concrete crushes',
  formula: '4 / 3 * Mu',
  units: { Mu: 'lbf-in/in' },
  unit: 'lbf-in/in',
  source: 'common practice, no source (outside ACI 318-19 7.3.3.1)',
  compute: ({ Mu }) => (4 / 3) * Mu,
});

/** Moment needed over moment at hand (a ratio). Both lbf-in in an inch of width. ACI 318-19 7.5.1.1. */
export const reinforcedBendingRatio = formula<Symbols<'Mneed' | 'Mcap'>>({
  symbol: 'ratio',
  label: 'Moment needed over the moment that the steel carries',
  formula: 'Mneed / Mcap',
  units: { Mneed: 'lbf-in/in', Mcap: 'lbf-in/in' },
  unit: '',
  source: 'ACI 318-19 7.5.1.1',
  compute: ({ Mneed, Mcap }) => Mneed / Mcap,
});

export interface HeldSection {
  readonly section: SectionAnalysis;
  /** The layer that takes hold least. */
  readonly worst: Anchorage;
  readonly lines: readonly Line[];
  readonly cautions: readonly string[];
}

/** The section an inch wide at a point with what takes hold of its layers; null where nothing does. */
export function heldSection(
  analysis: PieceAnalysis,
  layers: readonly SteelLayer[],
  face: Face,
  at: Point,
): HeldSection | null {
  const held = layers.map((layer) => ({ layer, hold: anchorage(analysis, layer, at) }));
  const section = analyseSection({
    thicknessIn: analysis.piece.thicknessIn,
    strengthPsi: analysis.concrete.strengthPsi,
    elasticModulusPsi: analysis.concrete.modulusPsi,
    tensionFace: face,
    layers: held.map(({ layer, hold }) => ({ ...layer, areaIn2PerIn: hold.heldIn2PerIn })),
  });
  if (section === null) return null;
  return {
    section,
    worst: held.map(({ hold }) => hold).reduce((a, b) => (b.shareRatio < a.shareRatio ? b : a)),
    lines: [...held.flatMap(({ hold }) => hold.lines), ...section.lines],
    cautions: [...new Set(held.flatMap(({ hold }) => hold.cautions))],
  };
}

export interface SteelStrength {
  readonly neededLbfInPerIn: number;
  readonly capacityLbfInPerIn: number;
  readonly ratio: number;
  readonly isTensionControlled: boolean;
  readonly lines: readonly Line[];
}

/** What the section carries against what it must: the design moment, or 0.65 Mn against 4/3 Mu where its steel is stiff. */
export function steelStrength(
  section: SectionAnalysis,
  factoredLbfInPerIn: number,
  crackingLbfInPerIn: number,
): SteelStrength {
  const cautious = section.cautiousMomentLbfInPerIn;
  const capacity = cautious ?? section.designMomentLbfInPerIn;
  const needed =
    cautious === null
      ? neededMoment({ Mu: factoredLbfInPerIn, Mcr: crackingLbfInPerIn })
      : neededOfStiffSteel({ Mu: factoredLbfInPerIn });
  const ratio = reinforcedBendingRatio({ Mneed: needed.value, Mcap: capacity });
  return {
    neededLbfInPerIn: needed.value,
    capacityLbfInPerIn: capacity,
    ratio: ratio.value,
    isTensionControlled: cautious === null,
    lines: [needed.line, ratio.line],
  };
}

/** Whether the steel that holds at a demand's point carries it. */
export function isCarried(
  analysis: PieceAnalysis,
  steel: readonly SteelLayer[],
  demand: SteelDemand,
): boolean {
  const { face, barRad, at, factoredLbfInPerIn } = demand;
  const layers = tensionLayers(steel, face, analysis.piece.thicknessIn, barRad, at);
  const held = heldSection(analysis, layers, face, at);
  if (held === null) return false;
  const cracking = analysis.concrete.crackingMomentLbfInPerIn;
  return steelStrength(held.section, factoredLbfInPerIn, cracking).ratio <= 1;
}
