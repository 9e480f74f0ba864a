/** How wide a crack opens over the steel in service. */
import type { PieceAnalysis } from '../analysis';
import { steelLayers, tensionLayers } from '../analysis';
import {
  analyseSection,
  crackSpacingLimit,
  faceStrainRatio,
  froschCrackWidth,
  gergelyLutzCrackWidth,
  STEEL_MODULUS_PSI,
  serviceSteelStress,
} from '../concrete';
import { printDeflection } from '../units';
import type { Worked } from '../workings';
import { formula, readingLine } from '../workings';
import { caseWords } from './case-words';
import type { Check, CheckContext, CheckRule } from './check';
import { sortChecks } from './level';
import { faceWords, placeWords } from './place-words';
import type { CarriedDemand } from './steel-demands';
import { carriedDemands } from './steel-demands';
import { isCarried } from './steel-section';

/** Crack width over the width at which an engineer is asked (a ratio). w, wlim: in. ACI 224R-01 Table 4.1, from memory. */
export const crackWidthRatio = formula<{ w: number; wlim: number }>({
  symbol: 'ratio',
  label: 'Crack width over the widest that is let pass',
  formula: 'w / wlim',
  units: { w: 'in', wlim: 'in' },
  unit: '',
  source: 'ACI 224R-01 Table 4.1 (dry air)',
  fromMemory: true,
  compute: ({ w, wlim }) => w / wlim,
});

/** One check a piece that cracks over steel that carries it: the widest crack. Where steel falls short, bending says so. */
export const crackWidth: CheckRule = {
  id: 'crack-width',
  title: 'Width of cracks',
  run: (context) => {
    const { analysis } = context;
    const steel = steelLayers(analysis.piece);
    const checks = carriedDemands(analysis)
      .filter((demand) => isCarried(analysis, steel, demand))
      .flatMap((demand) => judge(context, demand) ?? []);
    return sortChecks(checks).slice(0, 1);
  },
};

function judge(context: CheckContext, demand: CarriedDemand): Check | null {
  const { job, analysis, limits } = context;
  const { piece, cracked, elastic } = analysis;
  const crack = openCrack(analysis, demand);
  if (crack === null) return null;
  const wlim = limits.crackWidthEngineerIn;
  const ratio = crackWidthRatio({ w: crack.width.value, wlim });
  const holds = ratio.value <= 1;
  const print = (widthIn: number) => printDeflection(widthIn, { system: job.shownIn, digits: 2 });
  const load = caseWords(cracked?.low ?? elastic.low, demand.caseId);
  const place = `${faceWords(demand.face)}, ${placeWords(context, demand.at)}`;
  const isWet = getsWet(analysis);
  const cautions: string[] = [];
  if (isWet && crack.width.value > limits.crackWidthWetIn) {
    cautions.push(
      `Where it gets wet a crack wants to stay below ${print(limits.crackWidthWetIn)} (ACI 224R-01, from memory): thinner bars closer together, or more depth, keep it finer.`,
    );
  }
  if (crack.yields)
    cautions.push('The steel yields in service, so the crack opens wider than any formula gives.');
  if (crack.spacingIn > crack.widestSpacing.value) {
    cautions.push('The bars are further apart than ACI 318-19 24.3.2 lets them be for fine cracks.');
  }
  return {
    id: crackWidth.id,
    title: crackWidth.title,
    pieceId: piece.id,
    where: { kind: 'point', at: demand.at },
    demand: { value: crack.width.value, unit: 'in' },
    capacity: { value: wlim, unit: 'in' },
    ratio: ratio.value,
    level: holds ? 'steel' : 'engineer',
    words: `The crack ${place} opens about ${print(crack.width.value)} under ${load}; ${holds ? 'up to' : 'beyond'} ${print(wlim)} ${holds ? 'is let pass' : 'an engineer should look'}.`,
    needs: [],
    workings: [
      readingLine({
        symbol: 'M',
        label: 'Service moment on the bars, worse of both stiffness bounds',
        value: demand.serviceLbfInPerIn,
        unit: 'lbf-in/in',
        from: 'plate engine, cracked zones softened, Wood-Armer moments (Wood 1968, Armer 1968)',
      }),
      ...crack.steps.map(({ line }) => line),
      ratio.line,
    ],
    cautions,
  };
}

interface OpenCrack {
  readonly width: Worked;
  readonly widestSpacing: Worked;
  readonly spacingIn: number;
  readonly yields: boolean;
  readonly steps: readonly Worked[];
}

/** The crack over the layer nearest the stretched face; null where no steel lies in its tension zone. */
function openCrack({ piece, concrete }: PieceAnalysis, demand: CarriedDemand): OpenCrack | null {
  const h = piece.thicknessIn;
  const layers = tensionLayers(steelLayers(piece), demand.face, h, demand.barRad, demand.at);
  const section = analyseSection({
    thicknessIn: h,
    strengthPsi: concrete.strengthPsi,
    elasticModulusPsi: concrete.modulusPsi,
    tensionFace: demand.face,
    layers,
  });
  if (section === null) return null;
  const outer = layers.reduce((a, b) => (b.depthIn > a.depthIn ? b : a));
  const { depthIn: d, spacingIn, barIn, yieldPsi } = outer;
  const kd = section.crackedDepthIn;
  const fs = serviceSteelStress({
    n: section.modularRatio,
    M: demand.serviceLbfInPerIn,
    d,
    kd,
    Icr: section.crackedInertiaIn4PerIn,
  });
  const beta = faceStrainRatio({ h, d, kd });
  const dc = h - d;
  const width = froschCrackWidth({ fs: fs.value, Es: STEEL_MODULUS_PSI, beta: beta.value, dc, s: spacingIn });
  const second = gergelyLutzCrackWidth({ fs: fs.value, beta: beta.value, dc, s: spacingIn });
  const widestSpacing = crackSpacingLimit({ fs: fs.value, cc: dc - barIn / 2 });
  return {
    width,
    widestSpacing,
    spacingIn,
    yields: fs.value > yieldPsi,
    steps: [fs, beta, width, second, widestSpacing],
  };
}

function getsWet({ piece }: PieceAnalysis): boolean {
  return piece.exposure === 'outdoors' || piece.cutouts.some(({ purpose }) => purpose === 'sink');
}
