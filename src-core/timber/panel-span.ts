/** What a panel carries between joists, and how far apart the joists may be. Loads in psf, spans in inches, a foot of width. */
import { formula, type Line } from '../workings';
import { type AllowableSpan, type SpanLimitId, shortestSpan } from './allowable-span';
import type { PanelValues } from './panel';
import type { SagLimits } from './sag-limit';
import type { Symbols } from './symbols';
import type { SpanCount } from './uniform-spans';

/** Coefficients of the panel formulas: w psf, L in, a foot of width, so 12 and 144 are folded in. */
export interface PanelCoefficients {
  /** w = kb FbS / L^2 */
  readonly kb: number;
  /** w = ks Fs(Ib/Q) / L */
  readonly ks: number;
  /** deflection = w L^4 / (kp EI) */
  readonly kp: number;
}

/** Coefficients on 1, 2, and 3 and more spans. Panel design specification, from memory. */
export const PANEL_SPANS: { readonly [K in SpanCount]: PanelCoefficients } = {
  1: { kb: 96, ks: 24, kp: 921.6 },
  2: { kb: 96, ks: 19.2, kp: 2220 },
  3: { kb: 120, ks: 20, kp: 1743 },
};

const SPECIFICATION = 'uniform load on panels, panel design specification';

/** Load that bending allows, psf. kb: 96, 96, 120; FbS: lbf-in/ft; L: in, centre to centre. */
export const panelBendingLoad = formula<Symbols<'kb' | 'FbS' | 'L'>>({
  symbol: 'wb',
  label: 'load on the panel that bending allows',
  formula: 'kb * FbS / L^2',
  units: { kb: '', FbS: 'lbf in/ft', L: 'in' },
  unit: 'psf',
  source: SPECIFICATION,
  compute: ({ kb, FbS, L }) => (kb * FbS) / L ** 2,
});

/** Load that rolling shear allows, psf. ks: 24, 19.2, 20; FsIbQ: lbf/ft; L: in, centre to centre (the clear span would allow more). */
export const panelShearLoad = formula<Symbols<'ks' | 'FsIbQ' | 'L'>>({
  symbol: 'ws',
  label: 'load on the panel that shear allows',
  formula: 'ks * FsIbQ / L',
  units: { ks: '', FsIbQ: 'lbf/ft', L: 'in' },
  unit: 'psf',
  source: SPECIFICATION,
  compute: ({ ks, FsIbQ, L }) => (ks * FsIbQ) / L,
});

/** Deflection between joists, in. w: psf; L: in; kp: 921.6, 2220, 1743; EI: lbf-in2/ft. */
export const panelDeflection = formula<Symbols<'w' | 'L' | 'kp' | 'EI'>>({
  symbol: 'delta',
  label: 'sag of the panel between joists',
  formula: 'w * L^4 / (kp * EI)',
  units: { w: 'psf', L: 'in', kp: '', EI: 'lbf in2/ft' },
  unit: 'in',
  source: SPECIFICATION,
  compute: ({ w, L, kp, EI }) => (w * L ** 4) / (kp * EI),
});

/** Load at which the panel sags L / n, psf. kp, n: ratios; EI: lbf-in2/ft; L: in. */
export const panelRatioLoad = formula<Symbols<'kp' | 'EI' | 'n' | 'L'>>({
  symbol: 'wn',
  label: 'load on the panel at which it sags its nth part',
  formula: 'kp * EI / (n * L^3)',
  units: { kp: '', EI: 'lbf in2/ft', n: '', L: 'in' },
  unit: 'psf',
  source: SPECIFICATION,
  compute: ({ kp, EI, n, L }) => (kp * EI) / (n * L ** 3),
});

/** Load at which the panel sags dmax, psf. kp: ratio; EI: lbf-in2/ft; dmax, L: in. */
export const panelSagLoad = formula<Symbols<'kp' | 'EI' | 'dmax' | 'L'>>({
  symbol: 'wd',
  label: 'load on the panel that the plain limit on sag allows',
  formula: 'kp * EI * dmax / L^4',
  units: { kp: '', EI: 'lbf in2/ft', dmax: 'in', L: 'in' },
  unit: 'psf',
  source: SPECIFICATION,
  compute: ({ kp, EI, dmax, L }) => (kp * EI * dmax) / L ** 4,
});

/** Joist spacing that bending allows, in. kb: ratio; FbS: lbf-in/ft; w: psf. */
export const panelBendingSpan = formula<Symbols<'kb' | 'FbS' | 'w'>>({
  symbol: 'Lb',
  label: 'joist spacing that bending of the panel allows',
  formula: 'sqrt(kb * FbS / w)',
  units: { kb: '', FbS: 'lbf in/ft', w: 'psf' },
  unit: 'in',
  source: SPECIFICATION,
  compute: ({ kb, FbS, w }) => Math.sqrt((kb * FbS) / w),
});

/** Joist spacing that rolling shear allows, in. ks: ratio; FsIbQ: lbf/ft; w: psf. */
export const panelShearSpan = formula<Symbols<'ks' | 'FsIbQ' | 'w'>>({
  symbol: 'Lv',
  label: 'joist spacing that shear of the panel allows',
  formula: 'ks * FsIbQ / w',
  units: { ks: '', FsIbQ: 'lbf/ft', w: 'psf' },
  unit: 'in',
  source: SPECIFICATION,
  compute: ({ ks, FsIbQ, w }) => (ks * FsIbQ) / w,
});

/** Joist spacing at which the panel sags L / n, in. kp, n: ratios; EI: lbf-in2/ft; w: psf. */
export const panelRatioSpan = formula<Symbols<'kp' | 'EI' | 'n' | 'w'>>({
  symbol: 'Ln',
  label: 'joist spacing at which the panel sags its nth part',
  formula: 'cbrt(kp * EI / (n * w))',
  units: { kp: '', EI: 'lbf in2/ft', n: '', w: 'psf' },
  unit: 'in',
  source: SPECIFICATION,
  compute: ({ kp, EI, n, w }) => Math.cbrt((kp * EI) / (n * w)),
});

/** Joist spacing at which the panel sags dmax, in. kp: ratio; EI: lbf-in2/ft; dmax: in; w: psf. */
export const panelSagSpan = formula<Symbols<'kp' | 'EI' | 'dmax' | 'w'>>({
  symbol: 'Ld',
  label: 'joist spacing that the plain limit on sag of the panel allows',
  formula: '(kp * EI * dmax / w)^0.25',
  units: { kp: '', EI: 'lbf in2/ft', dmax: 'in', w: 'psf' },
  unit: 'in',
  source: SPECIFICATION,
  compute: ({ kp, EI, dmax, w }) => ((kp * EI * dmax) / w) ** 0.25,
});

export interface PanelLoadLimit {
  readonly id: SpanLimitId;
  readonly loadPsf: number;
  readonly lines: readonly Line[];
}

export interface PanelCapacity {
  /** The least of the limits. */
  readonly loadPsf: number;
  readonly governs: SpanLimitId;
  /** Bending, shear, share of the span, plain distance. */
  readonly limits: readonly PanelLoadLimit[];
}

export interface PanelCapacityInput {
  readonly values: PanelValues;
  readonly joistSpacingIn: number;
  readonly spanCount: SpanCount;
  readonly limits: SagLimits;
}

/** Load that a panel may carry at a joist spacing, psf, with each limit and the one that governs. */
export function panelCapacity(input: PanelCapacityInput): PanelCapacity {
  const { values, joistSpacingIn: L, limits } = input;
  const { kb, ks, kp } = PANEL_SPANS[input.spanCount];
  const EI = values.stiffnessLbfIn2PerFt;
  const bending = panelBendingLoad({ kb, FbS: values.bendingLbfInPerFt, L });
  const shear = panelShearLoad({ ks, FsIbQ: values.shearLbfPerFt, L });
  const ratio = panelRatioLoad({ kp, EI, n: limits.spanLimit, L });
  const sag = panelSagLoad({ kp, EI, dmax: limits.deflectionLimitIn, L });
  const all: readonly PanelLoadLimit[] = [
    { id: 'bending', loadPsf: bending.value, lines: [...values.lines.bending, bending.line] },
    { id: 'shear', loadPsf: shear.value, lines: [...values.lines.shear, shear.line] },
    { id: 'span-ratio', loadPsf: ratio.value, lines: [...values.lines.stiffness, ratio.line] },
    { id: 'sag', loadPsf: sag.value, lines: [...values.lines.stiffness, sag.line] },
  ];
  const least = all.reduce((best, limit) => (limit.loadPsf < best.loadPsf ? limit : best));
  return { loadPsf: least.loadPsf, governs: least.id, limits: all };
}

export interface PanelSpanInput {
  readonly values: PanelValues;
  readonly loadPsf: number;
  readonly spanCount: SpanCount;
  readonly limits: SagLimits;
}

/** Widest joist spacing of a panel under a load, in, centre to centre, with each limit and the one that governs. */
export function allowablePanelSpan({ values, loadPsf, spanCount, limits }: PanelSpanInput): AllowableSpan {
  const { kb, ks, kp } = PANEL_SPANS[spanCount];
  const EI = values.stiffnessLbfIn2PerFt;
  const w = loadPsf;
  const bending = panelBendingSpan({ kb, FbS: values.bendingLbfInPerFt, w });
  const shear = panelShearSpan({ ks, FsIbQ: values.shearLbfPerFt, w });
  const ratio = panelRatioSpan({ kp, EI, n: limits.spanLimit, w });
  const sag = panelSagSpan({ kp, EI, dmax: limits.deflectionLimitIn, w });
  return shortestSpan([
    { id: 'bending', spanIn: bending.value, lines: [...values.lines.bending, bending.line] },
    { id: 'shear', spanIn: shear.value, lines: [...values.lines.shear, shear.line] },
    { id: 'span-ratio', spanIn: ratio.value, lines: [...values.lines.stiffness, ratio.line] },
    { id: 'sag', spanIn: sag.value, lines: [...values.lines.stiffness, sag.line] },
  ]);
}
