import { describe, expect, test } from 'vitest';
import {
  allowablePanelSpan,
  allowableSpan,
  bearingCapacity,
  columnCapacity,
  floorAreaNeeded,
  formDesignLoad,
  formWeight,
  type LumberSize,
  lumberSection,
  type PanelId,
  panelBendingSpan,
  panelCapacity,
  panelRatioSpan,
  panelSagSpan,
  panelValues,
  type Repetition,
  type SpanCount,
  type SpanLimitId,
  type Species,
  stripLoad,
  timberMember,
  wetSlabLoad,
} from '../../../src-core/timber';
import { expectWithin } from '../concrete/within';

const LIMITS = { spanLimit: 360, deflectionLimitIn: 1 / 16 };
const SEVEN_DAYS_DRY = { durationFactor: 1.25, isWet: false };
const JOISTS: Repetition = { members: 6, spacingIn: 16 };

function joist(species: Species, size: LumberSize, repetition: Repetition | null = JOISTS, isWet = false) {
  return timberMember({
    species,
    size,
    use: 'edge',
    service: { ...SEVEN_DAYS_DRY, isWet },
    repetition,
  });
}

/** The spans of a joist at 16 in under 100 psf, by limit. */
function spans(species: Species, size: LumberSize, spanCount: SpanCount) {
  const found = allowableSpan({
    member: joist(species, size),
    loadLbfPerIn: stripLoad({ q: 100, s: 16 }).value,
    spanCount,
    limits: LIMITS,
  });
  return { ...found, of: (id: SpanLimitId) => found.limits.find((limit) => limit.id === id)!.spanIn };
}

function panel(id: PanelId) {
  return panelValues({ panel: id, service: { durationFactor: 1, isWet: false }, stripWidthIn: 48 });
}

function legLoadLbf(species: Species, lengthIn: number): number {
  const member = timberMember({
    species,
    size: '2x4',
    use: 'edge',
    service: SEVEN_DAYS_DRY,
    repetition: null,
  });
  const leg = columnCapacity({ member, thinWayIn: lengthIn, wideWayIn: 0, isDuringConstruction: false });
  if (!leg.ok) throw new Error('the leg is too slender');
  return leg.capacityLbf;
}

describe('falsework of the basis, section 6', () => {
  // Peurifoy & Oberlender, Formwork for Concrete Structures, worked wall form: prints 12.4, 14.3 and 16.0 in.
  test('6.1: a 3/4 in panel under 825 psf spans 12.4 in by bending, 14.3 in by L/360, 16.0 in by 1/16 in', () => {
    const EI = 1_800_000 * 0.278;
    expectWithin(panelBendingSpan({ kb: 120, FbS: 2062 * 0.515, w: 825 }).value, 12.43, 5e-3);
    expectWithin(panelRatioSpan({ kp: 1743, EI, n: 360, w: 825 }).value, 14.32, 5e-3);
    expectWithin(panelSagSpan({ kp: 1743, EI, dmax: 1 / 16, w: 825 }).value, 16.03, 5e-3);
  });

  // ACI 347R-14 4.1.1: sum, or the least combined load.
  test('6.2: a 2-1/2 in slab with form and people comes to 86.25 psf, so 100 psf governs', () => {
    const qw = wetSlabLoad({ wc: 150, h: 2.5 }).value;
    expect(qw + 5 + 50).toBe(86.25);
    expect(formDesignLoad({ qw, qf: 5, ql: 50, qmin: 100 }).value).toBe(100);
    expect(formDesignLoad({ qw, qf: 5, ql: 75, qmin: 100 }).value).toBe(111.25);
  });

  // NDS 2018 Supplement Tables 1B and 4A, from memory.
  test('6.3: a 2x4 on edge is 5.25 in2, 3.0625 in3, 5.359 in4, and takes 1887, 1641 or 1604 psi', () => {
    const section = lumberSection('2x4', 'edge');
    expect([section.areaIn2, section.modulusIn3]).toEqual([5.25, 3.0625]);
    expectWithin(section.inertiaIn4, 5.359, 1e-3);
    expectWithin(joist('spf', '2x4').bendingPsi, 1887, 1e-3);
    expectWithin(joist('spf', '2x4', null).bendingPsi, 1641, 1e-3);
    expectWithin(joist('spf', '2x4', JOISTS, true).bendingPsi, 1604, 1e-3);
  });

  // Derived from the continuous-beam coefficients of ACI SP-4 and NDS 2018 3.4.3.1.
  test('6.4: SPF 2x4 at 16 in on three spans: 72.1 in bending, 64.8 in L/360, 94.4 in shear, 49.7 in 1/16 in governs', () => {
    const found = spans('spf', '2x4', 3);
    expectWithin(found.of('bending'), 72.1, 5e-3);
    expectWithin(found.of('span-ratio'), 64.8, 5e-3);
    expectWithin(found.of('shear'), 94.4, 5e-3);
    expectWithin(found.spanIn, 49.7, 5e-3);
    expect(found.governs).toBe('sag');
  });

  test('6.5: the same on one span: 64.5 in bending, 52.4 in L/360', () => {
    const found = spans('spf', '2x4', 1);
    expectWithin(found.of('bending'), 64.5, 5e-3);
    expectWithin(found.of('span-ratio'), 52.4, 5e-3);
  });

  test('6.6: DF-L 2x6 at 16 in on three spans takes 1682 psi: 107.0, 106.4 and 72.2 in', () => {
    expectWithin(joist('df-l', '2x6').bendingPsi, 1682, 5e-3);
    const found = spans('df-l', '2x6', 3);
    expectWithin(found.of('bending'), 107.0, 5e-3);
    expectWithin(found.of('span-ratio'), 106.4, 5e-3);
    expectWithin(found.of('sag'), 72.2, 5e-3);
    expect(found.governs).toBe('sag');
  });

  // NDS 2018 3.7.1.5.
  test('6.7: an SPF 2x4 leg of 30, 36 and 48 in carries 4520, 3387 and 2026 lbf (Cp .521, .390, .233)', () => {
    for (const [lengthIn, loadLbf, factor] of [
      [30, 4520, 0.521],
      [36, 3387, 0.39],
      [48, 2026, 0.233],
    ] as const) {
      expectWithin(legLoadLbf('spf', lengthIn), loadLbf, 5e-3);
      expectWithin(legLoadLbf('spf', lengthIn) / (1653 * 5.25), factor, 5e-3);
    }
    expectWithin(legLoadLbf('spf', 60), 1328, 5e-3);
  });

  test('6.8: a DF-L 2x4 leg of 36 in buckles at 827.7 psi and carries 3871 lbf', () => {
    const member = joist('df-l', '2x4', null);
    const leg = columnCapacity({ member, thinWayIn: 36, wideWayIn: 0, isDuringConstruction: false });
    const line = (symbol: string) => leg.lines.find((each) => each.symbol === symbol)!.value;
    expectWithin(line('FcE'), 827.7, 5e-3);
    expectWithin(line('Cp'), 0.38, 5e-3);
    expectWithin(line('Pa'), 3871, 5e-3);
  });

  // NDS 2018 3.10.2, 3.10.4.
  test('6.9: 1-1/2 x 1-1/2 in bears 956 lbf on SPF, 1195 with Cb 1.25, 1406 on DF-L', () => {
    const bears = (species: Species, fromEndIn: number) =>
      bearingCapacity({
        bearingPsi: joist(species, '2x4').bearingPsi,
        widthIn: 1.5,
        lengthIn: 1.5,
        fromEndIn,
      }).capacityLbf;
    expectWithin(bears('spf', 0), 956, 1e-3);
    expectWithin(bears('spf', 3), 1195, 1e-3);
    expectWithin(bears('df-l', 0), 1406, 1e-3);
  });

  // Panel design specification, values from memory.
  test('6.10: a 24/16 panel on joists at 16 in carries 92 psf, short of 100; at 12 in 218 psf', () => {
    const at = (joistSpacingIn: number) =>
      panelCapacity({ values: panel('span-24-16'), joistSpacingIn, spanCount: 3, limits: LIMITS });
    const loads = Object.fromEntries(at(16).limits.map(({ id, loadPsf }) => [id, loadPsf]));
    expectWithin(loads.bending!, 150, 5e-3);
    expectWithin(loads['span-ratio']!, 92.2, 5e-3);
    expectWithin(loads.sag!, 129.7, 5e-3);
    expect(at(16).governs).toBe('span-ratio');
    expect(at(16).loadPsf).toBeLessThan(100);
    expectWithin(at(12).loadPsf, 218, 5e-3);
  });

  test('6.11: a 40/20 panel on joists at 16 in carries 293 psf by bending and 266 by L/360', () => {
    const { limits } = panelCapacity({
      values: panel('span-40-20'),
      joistSpacingIn: 16,
      spanCount: 3,
      limits: LIMITS,
    });
    const loads = Object.fromEntries(limits.map(({ id, loadPsf }) => [id, loadPsf]));
    expectWithin(loads.bending!, 293, 5e-3);
    expectWithin(loads['span-ratio']!, 266, 5e-3);
  });

  // IRC Table R301.5: 40 psf.
  test('6.12: a 25-1/2 x 96 in top of 616 lbf with two people takes up 27.9 ft2 of deck; it covers 17.0', () => {
    const Af = (25.5 * 96) / 144;
    const W = formWeight({ qw: wetSlabLoad({ wc: 150, h: 2.5 }).value, qf: 5, Af }).value;
    expectWithin(Af, 17, 5e-3);
    expectWithin(W, 616, 5e-3);
    expectWithin(floorAreaNeeded({ W, P: 500, qa: 40 }).value, 27.9, 5e-3);
  });

  test('the span at which a panel just carries a load is the span it is allowed under that load', () => {
    const values = panel('span-32-16');
    const span = allowablePanelSpan({ values, loadPsf: 100, spanCount: 3, limits: LIMITS });
    const load = panelCapacity({ values, joistSpacingIn: span.spanIn, spanCount: 3, limits: LIMITS });
    expectWithin(load.loadPsf, 100, 1e-12);
    expect(load.governs).toBe(span.governs);
  });
});
