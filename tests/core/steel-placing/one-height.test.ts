/**
 * The height of steel is one number wherever it is shown. d is the depth from the pressed face to the centroid of the
 * tension steel (ACI 318-19 2.2), cover the least distance from the surface of the steel to that of the concrete
 * (ACI 318-19 2.3, "cover, specified concrete").
 */
import { describe, expect, test } from 'vitest';
import { steelLayers } from '../../../src-core/analysis';
import { DEFAULT_LIMITS } from '../../../src-core/checks';
import { bendingReinforced } from '../../../src-core/checks/bending-reinforced';
import type { Job } from '../../../src-core/job';
import { pieceRegion, steelRange, steelSets } from '../../../src-core/job';
import { sectionSteel } from '../../../src-core/paper/edge-kinds';
import { steelRuns } from '../../../src-core/solid';
import { analyse } from '../../support/pieces';
import { plank } from '../checks/plank';
import { LIGHT_MESH, placed } from './cases';

const ALONG = { x: 1, y: 0 };

/** Mesh of W2.9 wire lengthways on cross wires of W1.4, low in a 2-1/2 in plank. */
const UNLIKE = {
  ...LIGHT_MESH,
  wireIn: 0.1922,
  spacingIn: 4,
  crossWireIn: 0.1335,
  crossSpacingIn: 6,
  depthIn: 1.75,
  yieldPsi: 65_000,
};
const THICK_IN = 2.5;

const job = (more: object = {}): Job =>
  plank({ spanIn: 84, thicknessIn: THICK_IN, depthIn: 18, steel: [{ ...UNLIKE, ...more }] });

/** Effective depths that the check of reinforced bending prints, from its workings. */
function printedDepths(of: Job): number[] {
  const analysis = analyse(of, { meshSizeIn: 3 });
  const checks = bendingReinforced.run({ job: of, analysis, limits: DEFAULT_LIMITS });
  return (
    checks
      .flatMap(({ workings }) => workings)
      // what the steel would do elsewhere, which the check prints beside it, has another depth
      .filter(({ label }) => !label.startsWith('The same steel'))
      .flatMap(({ inputs }) => inputs)
      .filter(({ symbol }) => /^d\d*$/.test(symbol))
      .map(({ printed }) => Number(printed))
  );
}

describe('a mesh of wires unlike each other', () => {
  test('has the wires of its own direction on its cross wires', () => {
    const { steel } = { steel: job().pieces[0]!.reinforcement[0]! };
    // 1.75 - 0.1922 / 2 = 1.6539; 1.75 + 0.1335 / 2 = 1.81675
    expect(steelSets(steel).map(({ centreDepthIn }) => centreDepthIn)).toEqual([
      expect.closeTo(1.6539, 9),
      expect.closeTo(1.81675, 9),
    ]);
    // 1.75 - 0.1922 = 1.5578; 1.75 + 0.1335 = 1.8835
    expect(steelRange(steel)).toEqual({ fromIn: expect.closeTo(1.5578, 9), toIn: expect.closeTo(1.8835, 9) });
  });

  test.each([
    ['lengthways', 0, 1.6539],
    ['front to back, its cross wires lengthways', 90, 1.81675],
  ])('laid %s sags with the depth that the section and the model draw', (_, angleDeg, depthIn) => {
    const of = job({ angleDeg });
    const piece = of.pieces[0]!;
    // the plank spans lengthways and sags, so the depth is that of the wires that run lengthways, from the top
    const depths = printedDepths(of);
    expect(depths.length).toBeGreaterThan(0);
    for (const printed of depths) expect(Math.abs(printed - depthIn)).toBeLessThan(6e-4);
    const drawn = sectionSteel(piece, ALONG).filter(({ isLine }) => isLine);
    expect(drawn.map(({ upIn }) => THICK_IN - upIn)).toEqual([expect.closeTo(depthIn, 9)]);
    const runs = steelRuns(piece).filter(({ from, to }) => Math.abs(from[1] - to[1]) < 1e-6);
    expect(runs.length).toBeGreaterThan(0);
    for (const { from } of runs) expect(piece.topElevationIn - from[2]).toBeCloseTo(depthIn, 9);
  });

  test('stands on standoffs as high as its lowest wire, and that is its cover below', () => {
    const { standoffs, covers } = placed(job());
    // 2.5 - 1.8835 = 0.6165
    for (const { heightIn } of standoffs) expect(heightIn).toBeCloseTo(0.6165, 9);
    const left = (face: string) => covers.find((cover) => cover.face === face)!.leftIn;
    expect(left('bottom')).toBeCloseTo(0.6165, 9);
    expect(left('top')).toBeCloseTo(1.5578, 9);
  });

  test('says on the list which way up it is laid', () => {
    expect(placed(job()).meshes[0]!.notes.join(' ')).toContain('wires that run along the front uppermost');
    expect(placed(job({ angleDeg: 90 })).meshes[0]!.notes.join(' ')).toContain(
      'from front to back uppermost',
    );
  });
});

test('every layer of random steel lies at one height in the check, the section, the model and on its standoffs', () => {
  for (let k = 0; k < 20; k++) {
    const steel = { wireIn: 0.06 + 0.01 * k, crossWireIn: 0.26 - 0.01 * k, depthIn: 0.5 + 0.08 * k };
    const of = job(steel);
    const piece = of.pieces[0]!;
    if (!pieceRegion(piece).ok) throw new Error('no region');
    const counted = steelLayers(piece).map(({ depthFromTopIn }) => depthFromTopIn);
    const drawn = sectionSteel(piece, ALONG).map(({ upIn }) => THICK_IN - upIn);
    expect(drawn.map((depth) => depth.toFixed(9))).toEqual(counted.map((depth) => depth.toFixed(9)));
    const heights = new Set(steelRuns(piece).map(({ from }) => (piece.topElevationIn - from[2]).toFixed(6)));
    expect(heights).toEqual(new Set(counted.map((depth) => depth.toFixed(6))));
    const lowest = Math.max(
      ...steelLayers(piece).map(({ depthFromTopIn, barIn }) => depthFromTopIn + barIn / 2),
    );
    expect(placed(of).standoffSets[0]!.heightIn).toBeCloseTo(THICK_IN - lowest, 9);
  }
});
