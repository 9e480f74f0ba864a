import { describe, expect, test } from 'vitest';
import type { CoverFace } from '../../../src-core/steel-placing';
import type { PieceDraft } from './cases';
import { BARS, box, caseOf, LIGHT_MESH, placed, sink } from './cases';

const sagOf = (more: object = {}, spacingIn: number | null = 10) =>
  placed(
    caseOf(
      box(60, 25),
      { reinforcement: [{ ...LIGHT_MESH, ...more }] },
      { forms: { standoffSpacingIn: spacingIn } },
    ),
  ).sags[0]!;

describe('sag of mesh between standoffs', () => {
  test('14 gauge wire 2 in apart over 10 in sinks .47 in under 20 lbf, by hand', () => {
    const sag = sagOf();
    const I = (Math.PI * 0.08 ** 4) / 64;
    // 8 in of load cover four wires each way; 1/91.51 for one loaded span of many
    const byHand = (20 * 1000) / (91.51 * 29e6 * 8 * I);
    expect(sag.placingSagIn).toBeCloseTo(byHand, 4);
    expect(sag.placingSagIn).toBeCloseTo(0.469, 3);
    // .001426 lb/in2 on a wire of 2 in
    expect(sag.ownSagIn).toBeCloseTo((0.002851 * 1e4) / (384 * 29e6 * I), 5);
    expect(sag.level).toBe('caution');
    expect(sag.words).toContain('Set standoffs 8 in apart');
    expect(sag.coverLeftIn).toBeCloseTo(0.92 - sag.sagIn, 9);
  });

  test('standoffs at the spacing that it asks hold it to a quarter inch', () => {
    const asked = sagOf().spanForLimitIn;
    expect(asked).toBeGreaterThan(8);
    expect(sagOf({}, asked).sagIn).toBeLessThanOrEqual(0.25 + 1e-9);
    expect(sagOf({}, 8).level).toBe('enough');
  });

  test('where the job sets no spacing, 14 gauge mesh gets standoffs 8 in apart and no caution', () => {
    const { standoffSets, sags, cautions } = placed(caseOf(box(60, 25)));
    // 10 in x cbrt(.25 / .471) = 8.1 in
    expect(standoffSets.map(({ spacingIn }) => spacingIn)).toEqual([8]);
    expect(sags[0]).toMatchObject({ spanIn: 8, level: 'enough' });
    expect(sags[0]!.words).toContain('At 10 in it would sink 15/32 in');
    expect(cautions.join(' ')).not.toContain('sinks');
  });

  test('16 gauge asks 5-1/2 in, welded mesh of the code keeps 10 in, and so do bars', () => {
    const apart = (layer: object) =>
      placed(caseOf(box(60, 25), { reinforcement: [{ ...LIGHT_MESH, ...layer }] })).standoffSets[0]!
        .spacingIn;
    // 1/91.51 x 20 x 1000 / (29e6 x 8 x pi .0625^4 / 64) = 1.26 in; 10 x cbrt(.25 / 1.26) = 5.8 in
    expect(apart({ wireIn: 0.0625, crossWireIn: 0.0625 })).toBe(5.5);
    for (const wireIn of [0.1335, 0.1922])
      expect(apart({ wireIn, crossWireIn: wireIn, spacingIn: 6, crossSpacingIn: 6 })).toBe(10);
    expect(placed(caseOf(box(60, 25), { reinforcement: [BARS] })).standoffSets[0]!.spacingIn).toBe(10);
  });

  test('wire of 40 ksi gets them 7-1/2 in apart: at 8 in it would give way under the shovelful', () => {
    const soft = { yieldPsi: 40_000 };
    // M = .17075 x 2.5 x 8 = 3.415 lbf-in; Mp = fy d^3 / 6 = 3.413 lbf-in
    expect((40_000 * 0.08 ** 3) / 6).toBeLessThan(
      (1 / 4 - Math.sqrt(3) / (8 * (1 + Math.sqrt(3)))) * 2.5 * 8,
    );
    expect(sagOf(soft, 8).level).toBe('caution');
    expect(sagOf(soft, null)).toMatchObject({ spanIn: 7.5, level: 'enough', staysBent: true });
  });

  test('wire that no spacing holds keeps 10 in and the caution, with concrete first below it as the cure', () => {
    expect(sagOf({ wireIn: 0.0625, crossWireIn: 0.0625, yieldPsi: 40_000 }, null).spanIn).toBe(10);
    const sag = sagOf({ wireIn: 0.03, crossWireIn: 0.03 }, null);
    expect(sag).toMatchObject({ spanIn: 10, level: 'caution' });
    expect(sag.words).toContain('Place concrete under the mesh first');
    expect(sag.words).not.toContain('Set standoffs');
  });

  test('a spacing that the job sets is kept, and its sag told', () => {
    expect(sagOf({}, 12)).toMatchObject({ spanIn: 12, level: 'caution' });
  });

  test('W2.9 wire 4 in apart hardly moves', () => {
    const sag = sagOf({ wireIn: 0.1922, crossWireIn: 0.1922, spacingIn: 4, crossSpacingIn: 4 });
    expect(sag.sagIn).toBeLessThan(0.05);
    expect([sag.level, sag.staysBent]).toEqual(['enough', false]);
  });

  test('20 lbf on eight wires works them to 85 ksi: wire of 40 ksi stays bent, wire of 86 ksi does not', () => {
    // M = (1/4 - .07925) x 2.5 x 10 = 4.27 lbf-in; S = pi .08^3 / 32 = 5.03e-5 in3
    expect(sagOf({ yieldPsi: 40_000 }).staysBent).toBe(true);
    expect(sagOf({ yieldPsi: 86_000 }).staysBent).toBe(false);
  });

  test('mesh on bars 6 in apart spans 6 in', () => {
    const layers = [
      { ...BARS, depthIn: 1.3125 },
      { ...LIGHT_MESH, depthIn: 1.03 },
    ];
    expect(placed(caseOf(box(60, 25), { reinforcement: layers })).sags[0]!.spanIn).toBe(6);
  });
});

function coversOf(more: Partial<PieceDraft>, width = 60) {
  const { covers } = placed(caseOf(box(width, 25), more));
  return (face: CoverFace) => covers.find((cover) => cover.face === face);
}

describe('cover that is left', () => {
  test('mesh in the middle of 2 in has .92 in over and under it, 1 in at the edge', () => {
    const cover = coversOf({
      edges: Array.from({ length: 4 }, () => ({ kind: 'free', profile: { kind: 'square' } })),
    });
    expect(cover('top')).toMatchObject({ leftIn: expect.closeTo(0.92, 9), wantedIn: 0.5, level: 'enough' });
    expect(cover('bottom')).toMatchObject({ leftIn: expect.closeTo(0.92, 9), level: 'enough' });
    expect(cover('edge')!.leftIn).toBeCloseTo(1, 9);
    expect(cover('opening')).toBeUndefined();
    expect(cover('top-at-laps')).toBeUndefined();
  });

  test('at a lap the second sheet takes .16 in of it', () => {
    const cover = coversOf({}, 120);
    expect(cover('top-at-laps')!.leftIn).toBeCloseTo(0.92 - 0.16, 9);
  });

  test('outdoors a face that gets wet asks 3/4 in; a soffit behind drip grooves all round does not', () => {
    const outdoors = {
      exposure: 'outdoors',
      thicknessIn: 1.5,
      reinforcement: [{ ...LIGHT_MESH, depthIn: 0.75 }],
    } satisfies Partial<PieceDraft>;
    const cover = coversOf(outdoors);
    expect(cover('top')).toMatchObject({ wantedIn: 0.75, level: 'short' });
    expect(cover('bottom')!.wantedIn).toBe(0.75);
    const grooved = { kind: 'free', dripGroove: { widthIn: 0.25, depthIn: 0.25, setbackIn: 0.5 } } as const;
    const dry = coversOf({ ...outdoors, edges: [grooved, grooved, grooved, { kind: 'wall' }] });
    expect(dry('bottom')!.wantedIn).toBe(0.5);
    expect(dry('top')!.wantedIn).toBe(0.75);
  });

  test('a groove under the steel takes its depth from the cover below: .67 less .25', () => {
    const grooved = { kind: 'free', dripGroove: { widthIn: 0.25, depthIn: 0.25, setbackIn: 1.25 } } as const;
    const plain = { kind: 'free' } as const;
    const job = caseOf(box(60, 25), {
      thicknessIn: 1.5,
      reinforcement: [{ ...LIGHT_MESH, depthIn: 0.75 }],
      edges: [plain, plain, grooved, plain],
    });
    const cover = placed(job).covers.find(({ face }) => face === 'bottom')!;
    expect(cover.leftIn).toBeCloseTo(0.42, 9);
    expect(cover.level).toBe('short');
    expect(cover.trace.part).toEqual({ kind: 'edge', index: 2 });
    expect(cover.words).toContain('drip groove of edge 3');
  });

  test('a 1 in chamfer takes the edge cover of steel near the top: the corner of the mesh to the slope', () => {
    const chamfer = { kind: 'free', profile: { kind: 'chamfer', sizeIn: 1 } } as const;
    const edges = [chamfer, chamfer, chamfer, chamfer];
    const cover = coversOf({ edges, reinforcement: [{ ...LIGHT_MESH, depthIn: 0.6 }] });
    // the mesh ends 1 in from the face, plumb below the upper end of the slope, .52 in below the slab's top
    expect(cover('edge')!.leftIn).toBeCloseTo(0.52 / Math.SQRT2, 9);
    expect(cover('edge')!.level).toBe('short');
  });

  test('a shortfall that no tape shows is none', () => {
    const cover = coversOf({
      reinforcement: [{ ...LIGHT_MESH, edgeCoverIn: 0.49 }],
      cutouts: [sink(30, 12, 20, 12)],
    });
    expect(cover('opening')).toMatchObject({ leftIn: 0.49, level: 'enough' });
  });

  test('steel at the soffit is out, and the caution says that it shows', () => {
    const job = caseOf(box(60, 25), { reinforcement: [{ ...LIGHT_MESH, depthIn: 1.92 }] });
    const { covers, cautions, standoffSets } = placed(job);
    expect(covers.find(({ face }) => face === 'bottom')!.level).toBe('out');
    expect(cautions.join(' ')).toContain('the steel shows');
    expect(standoffSets[0]!.heightIn).toBeCloseTo(0, 9);
  });

  test('a layer with a half inch of edge cover keeps that from the lip of a sink', () => {
    const cover = coversOf({
      cutouts: [sink(30, 12, 20, 12)],
      reinforcement: [{ ...LIGHT_MESH, edgeCoverIn: 0.25 }],
    });
    expect(cover('opening')).toMatchObject({ leftIn: 0.25, level: 'short' });
  });
});
