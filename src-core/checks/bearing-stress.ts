/** Pressure between the slab and what it lies on. */
import type { LoadCase, PieceAnalysis } from '../analysis';
import { concreteBearing, PHI_BEARING_RATIO } from '../concrete';
import type { Job, Support } from '../job';
import { printStress, sentenceCase } from '../units';
import type { Line, Worked } from '../workings';
import { formula, readingLine } from '../workings';
import type { Check, CheckContext, CheckRule } from './check';
import { wallStrip } from './kern';
import type { NamedState, SupportParts } from './states';
import { statesOf, supportParts } from './states';

/** Bearing across the grain of spruce-pine-fir No. 2, psi. NDS 2018 Supplement Table 4A, from memory. */
export const SPF_ACROSS_GRAIN_PSI = 425;
/** Bearing on the edge of a cabinet's panel, psi. Common practice, no source. */
export const PANEL_EDGE_PSI = 300;
/** Strength of ordinary block or brick masonry, psi, where nothing is known. TMS 602, unit strength method, from memory. */
export const MASONRY_STRENGTH_PSI = 1500;

/** Bearing stress that timber may take across its grain, psi. Fcp: psi. NDS 2018 3.10.2, no CD. */
export const timberBearing = formula<{ Fcp: number }>({
  symbol: 'pa',
  label: 'Pressure that timber may take across its grain',
  formula: 'Fcp',
  units: { Fcp: 'psi' },
  unit: 'psi',
  source: 'NDS 2018 3.10.2; spruce-pine-fir No. 2, Supplement Table 4A',
  fromMemory: true,
  compute: ({ Fcp }) => Fcp,
});

/** Pressure that a panel's edge may take, psi. pe: psi. */
export const panelBearing = formula<{ pe: number }>({
  symbol: 'pa',
  label: "Pressure that the edge of a cabinet's panel may take",
  formula: 'pe',
  units: { pe: 'psi' },
  unit: 'psi',
  source: 'common practice, no source',
  compute: ({ pe }) => pe,
});

/** Bearing stress that masonry may take, psi. fm: strength of masonry, psi. TMS 402 allowable stress design, from memory. */
export const masonryBearing = formula<{ fm: number }>({
  symbol: 'pa',
  label: 'Pressure that masonry may take',
  formula: '0.33 * fm',
  units: { fm: 'psi' },
  unit: 'psi',
  source: 'TMS 402 chapter 8, bearing',
  fromMemory: true,
  compute: ({ fm }) => 0.33 * fm,
});

/** Mean pressure of a bearing, psi. R: lbf; A: in2. */
export const meanPressure = formula<{ R: number; A: number }>({
  symbol: 'pm',
  label: 'Mean pressure over the whole bearing, for comparison',
  formula: 'R / A',
  units: { R: 'lbf', A: 'in2' },
  unit: 'psi',
  source: 'arithmetic',
  compute: ({ R, A }) => R / A,
});

/** Factored pressure, psi. pD: of self weight at the same place, psi; p: in service, psi. ASCE 7-22 2.3.1, combinations 1 and 2. */
export const factoredPressure = formula<{ pD: number; p: number }>({
  symbol: 'pu',
  label: 'Factored pressure',
  formula: 'max(1.4 * pD, 1.2 * pD + 1.6 * (p - pD))',
  units: { pD: 'psi', p: 'psi' },
  unit: 'psi',
  source: 'ASCE 7-22 2.3.1, combinations 1 and 2',
  compute: ({ pD, p }) => Math.max(1.4 * pD, 1.2 * pD + 1.6 * (p - pD)),
});

/** Pressure over what may be taken (a ratio). p, pa: psi. */
export const bearingRatio = formula<{ p: number; pa: number }>({
  symbol: 'ratio',
  label: 'Pressure over what may be taken',
  formula: 'p / pa',
  units: { p: 'psi', pa: 'psi' },
  unit: '',
  source: 'comparison',
  compute: ({ p, pa }) => p / pa,
});

interface Pressed {
  readonly named: NamedState;
  readonly loadCase: LoadCase;
  readonly part: number;
  readonly psi: number;
  readonly deadPsi: number;
}

export const bearingStress: CheckRule = {
  id: 'bearing-stress',
  title: 'Pressure on the bearings',
  run: (context) =>
    supportParts(context.analysis).flatMap((parts) => {
      const found = statesOf(context.analysis).map((named) => mostPressed(context.analysis, named, parts));
      const pressed = found.filter((one) => one !== null);
      return pressed.length === 0 ? [] : [judge(context, parts, pressed)];
    }),
};

function judge({ job, analysis }: CheckContext, parts: SupportParts, found: readonly Pressed[]): Check {
  const { support } = parts;
  const worst = found.reduce((a, b) => (b.psi > a.psi ? b : a));
  const bearing = analysis.bearings[worst.part]!;
  const wall = wallStrip(analysis);
  const slab = concreteBearing({
    phi: PHI_BEARING_RATIO,
    fc: analysis.concrete.strengthPsi,
    A1: 1,
    A2: 1,
  });
  const pu = factoredPressure({ pD: worst.deadPsi, p: worst.psi });
  const onSlab = {
    demand: pu.value,
    capacity: slab.value,
    ...ratioOf(pu.value, slab.value),
    what: 'the slab itself',
  };
  const below = allowanceBelow(support);
  const servicePsi = Math.max(worst.psi, wall?.peakPsi ?? 0);
  const onBelow =
    below === null
      ? null
      : {
          demand: servicePsi,
          capacity: below.allowed.value,
          ...ratioOf(servicePsi, below.allowed.value),
          what: below.what,
        };
  const governs = onBelow !== null && onBelow.ratio.value >= onSlab.ratio.value ? onBelow : onSlab;
  const crushes = governs.ratio.value > 1;
  const psi = (value: number) => printStress(value, { system: job.shownIn, digits: 3 });
  const name = bearing.words;
  const words = crushes
    ? `${sentenceCase(name)} would be pressed with ${psi(governs.demand)}, more than the ${psi(governs.capacity)} that ${governs.what} may take, under ${worst.loadCase.words}.`
    : `${sentenceCase(name)} is pressed with ${psi(governs.demand)} at the most, ${governs.what} may take ${psi(governs.capacity)}; under ${worst.loadCase.words}.`;
  return {
    id: bearingStress.id,
    title: bearingStress.title,
    pieceId: analysis.piece.id,
    where: { kind: 'support', supportId: support.id, at: bearing.centre },
    demand: { value: governs.demand, unit: 'psi' },
    capacity: { value: governs.capacity, unit: 'psi' },
    ratio: governs.ratio.value,
    level: crushes ? 'change' : 'holds',
    words,
    needs: crushes ? ['support'] : [],
    workings: [
      ...found.map((one) => pressureLine(one, bearing.form)),
      meanPressure({ R: worst.loadCase.reactions[worst.part]!.pushLbf, A: bearing.areaIn2 }).line,
      ...(wall?.lines ?? []),
      ...(below === null || onBelow === null ? [] : [below.allowed.line, onBelow.ratio.line]),
      pu.line,
      { ...slab.line, label: 'Load that one square inch of the slab may take in bearing' },
      onSlab.ratio.line,
    ],
    cautions: below === null ? [] : cautionsOf(job, analysis, below),
  };
}

function ratioOf(p: number, pa: number): { readonly ratio: Worked } {
  return { ratio: bearingRatio({ p, pa }) };
}

/** The contact point of the support that is pressed hardest; a leg or an arm counts as one. Cases that turn over are no bearing. */
function mostPressed(analysis: PieceAnalysis, named: NamedState, { parts }: SupportParts): Pressed | null {
  const { cases } = named.state;
  const dead = cases[0]!;
  let most: Pressed | null = null;
  for (const loadCase of cases) {
    if (loadCase.asIfHeld) continue;
    for (const part of parts) {
      const psi = pressureOf(analysis, loadCase, part);
      if (psi > (most?.psi ?? 0)) {
        const deadPsi = Math.min(psi, Math.max(0, pressureOf(analysis, dead, part)));
        most = { named, loadCase, part, psi, deadPsi };
      }
    }
  }
  return most;
}

function pressureOf({ bearings }: PieceAnalysis, { reactions }: LoadCase, part: number): number {
  const bearing = bearings[part]!;
  const reaction = reactions[part]!;
  return bearing.form === 'patch' ? reaction.pushLbf / bearing.areaIn2 : reaction.peakPressurePsi;
}

function pressureLine({ named, loadCase, psi }: Pressed, form: 'line' | 'area' | 'patch'): Line {
  const over = form === 'patch' ? 'over the whole seat' : 'over the part that one contact point stands for';
  return readingLine({
    symbol: 'p',
    label: `Most pressure, averaged ${over}, ${named.words}, under ${loadCase.words}`,
    value: psi,
    unit: 'psi',
    from: 'plate engine; pressure at a sharp edge has no meaning below such a part',
  });
}

interface Allowance {
  readonly what: string;
  readonly allowed: Worked;
  readonly isTimber: boolean;
}

/** What lies below, or null where only the slab itself can crush (steel arms, concrete). */
function allowanceBelow(support: Support): Allowance | null {
  const timber = (what: string): Allowance => ({
    what,
    allowed: timberBearing({ Fcp: SPF_ACROSS_GRAIN_PSI }),
    isTimber: true,
  });
  const masonry = (what: string): Allowance => ({
    what,
    allowed: masonryBearing({ fm: MASONRY_STRENGTH_PSI }),
    isTimber: false,
  });
  switch (support.kind) {
    case 'cabinet':
      return {
        what: "the panel's edge",
        allowed: panelBearing({ pe: PANEL_EDGE_PSI }),
        isTimber: false,
      };
    case 'wall':
      return support.build === 'stud' ? timber("the wall's plate") : masonry('the masonry');
    case 'ledger':
      return timber('the ledger');
    case 'leg':
      return timber("the leg's head");
    case 'pier':
      if (support.build === 'timber-post') return timber('the post');
      return support.build === 'concrete' ? null : masonry('the masonry');
    case 'bracket':
      return support.arm.kind === 'knee-brace' ? timber("the bracket's arm") : null;
    case 'full-bed':
      return null;
  }
}

function cautionsOf(job: Job, { piece }: PieceAnalysis, below: Allowance): string[] {
  if (!below.isTimber || piece.exposure !== 'outdoors') return [];
  const wet = printStress(SPF_ACROSS_GRAIN_PSI * WET_TIMBER_RATIO, { system: job.shownIn, digits: 3 });
  return [
    `Timber that stays wet takes ${wet} across its grain, a third less (NDS wet service factor, from memory).`,
  ];
}

/** Wet service factor for bearing across the grain (a ratio). NDS 2018 Supplement Table 4A, from memory. */
const WET_TIMBER_RATIO = 0.67;
