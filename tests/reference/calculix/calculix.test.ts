import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { meanMoments, nodeMoments } from './moments';
import { calculixPlate } from './plate';
import type { NodeSpring, PlateInput } from './plate-input';
import { listOf, oneOf, type ReferenceSettings, reference, referenceSource } from './recording';
import { rectangleMesh } from './rectangle-mesh';

/** Node numbers of a rectangle mesh on the line x = xIn. */
function nodesAtX(mesh: Pick<PlateInput, 'nodes'>, xIn: number): number[] {
  return mesh.nodes.flatMap((node, number) => (Math.abs(node.xIn - xIn) < 1e-9 ? [number] : []));
}

/** Shares out over a line of nodes, half to each end, as a uniform line load or bearing would. */
function lineShares(nodes: readonly number[]): { node: number; share: number }[] {
  const spaces = nodes.length - 1;
  return nodes.map((node, at) => ({ node, share: at === 0 || at === spaces ? 0.5 / spaces : 1 / spaces }));
}

/** Differs by no more than this share of the expected value. */
function expectWithin(actual: number, expected: number, shareRatio: number): void {
  expect(Math.abs(actual - expected) / Math.abs(expected), `${actual} against ${expected}`).toBeLessThan(
    shareRatio,
  );
}

describe('the CalculiX harness against closed forms', () => {
  test(`a simply supported square plate sags 0.00406 q a4/D, with 0.0479 q a2 in the middle (${referenceSource('square-plate')})`, () => {
    // Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, Table 8 (nu 0.3): 0.00406, 0.0479, and
    // shear 0.338 q a at mid-side. The edge slopes are held, so they carry the twist: the edge gives the shear alone,
    // without the book's corner forces.
    const sideIn = 30;
    const mesh = rectangleMesh(sideIn, sideIn, 40, 40);
    const onX = ({ xIn }: { xIn: number }) => xIn === 0 || xIn === sideIn;
    const onY = ({ yIn }: { yIn: number }) => yIn === 0 || yIn === sideIn;
    const holds = mesh.nodes.flatMap((node, number) =>
      onX(node) || onY(node)
        ? [{ node: number, raiseIn: 0, flatAlongX: onY(node), flatAlongY: onX(node) }]
        : [],
    );
    const input: PlateInput = {
      ...mesh,
      thicknessIn: 1.5,
      modulusPsi: 3.6e6,
      poissonRatio: 0.3,
      loads: [],
      pressurePsi: 0.2,
      supports: [],
      holds,
      thinningRatio: 4,
    };
    const found = reference('square-plate', () => {
      const result = calculixPlate(input);
      const middle = mesh.nodes.findIndex(({ xIn, yIn }) => xIn === sideIn / 2 && yIn === sideIn / 2);
      const moments = nodeMoments(input, result.points)[middle]!;
      return {
        middleDownIn: result.downIn[middle]!,
        middleMxLbfInPerIn: moments.mxLbfInPerIn,
        middleMyLbfInPerIn: moments.myLbfInPerIn,
        // Nodes where diagonals end and where they do not take turns, so they are taken in a pair.
        midSideLbf: [20, 21].map((node) => result.holdLbf[holds.findIndex((hold) => hold.node === node)]!),
        totalHoldLbf: result.holdLbf.reduce((sum, force) => sum + force, 0),
      };
    });
    const rigidityLbfIn = (3.6e6 * 1.5 ** 3) / 12 / (1 - 0.3 ** 2);
    expectWithin(oneOf(found, 'middleDownIn'), (0.004062 * 0.2 * sideIn ** 4) / rigidityLbfIn, 0.001);
    expectWithin(oneOf(found, 'middleMxLbfInPerIn'), 0.0479 * 0.2 * sideIn ** 2, 0.002);
    expectWithin(oneOf(found, 'middleMyLbfInPerIn'), 0.0479 * 0.2 * sideIn ** 2, 0.002);
    expectWithin(oneOf(found, 'totalHoldLbf'), 0.2 * sideIn ** 2, 1e-5);
    const spacingIn = sideIn / 40;
    const [first, second] = listOf(found, 'midSideLbf');
    expectWithin((first! + second!) / 2 / spacingIn, 0.338 * 0.2 * sideIn, 0.005);
  });

  test(`a 24 in strip built in at one end drops P L3 / 3 E I at the tip (${referenceSource('cantilever')})`, () => {
    const mesh = rectangleMesh(24, 4, 32, 4);
    const found = reference('cantilever', () => {
      const result = calculixPlate({
        ...mesh,
        thicknessIn: 1.5,
        modulusPsi: 4e6,
        poissonRatio: 0,
        loads: lineShares(nodesAtX(mesh, 24)).map(({ node, share }) => ({ node, forceLbf: 50 * share })),
        supports: [],
        holds: nodesAtX(mesh, 0).map((node) => ({ node, raiseIn: 0, flatAlongX: true, flatAlongY: true })),
      });
      return {
        tipDownIn: result.downIn[nodesAtX(mesh, 24)[2]!]!,
        middleMxLbfInPerIn: meanMoments(result.points, ({ xIn }) => xIn > 9 && xIn < 15).mxLbfInPerIn,
        rootLbf: result.holdLbf.reduce((sum, force) => sum + force, 0),
      };
    });
    // E I = 4e6 x 4 x 1.5^3 / 12 = 4.5e6; bending 50 x 24^3 / 13.5e6 = 0.05120 in; shear 1.2 P L / G A = 0.00012 in.
    expectWithin(oneOf(found, 'tipDownIn'), 0.0512 + 0.00012, 0.001);
    // Mean arm 12 in: 50 x 12 / 4 = 150, tension on top.
    expectWithin(oneOf(found, 'middleMxLbfInPerIn'), -150, 0.001);
    expectWithin(oneOf(found, 'rootLbf'), 50, 1e-5);
  });

  test(`raising the far end of a built-in strip .1 in takes 3 E I d / L3 and puts the root in sagging (${referenceSource('raised-end')})`, () => {
    const mesh = rectangleMesh(24, 4, 32, 4);
    const far = nodesAtX(mesh, 24);
    const root = nodesAtX(mesh, 0);
    const found = reference('raised-end', () => {
      const result = calculixPlate({
        ...mesh,
        thicknessIn: 1.5,
        modulusPsi: 4e6,
        poissonRatio: 0,
        loads: [],
        supports: [],
        holds: [
          ...far.map((node) => ({ node, raiseIn: 0.1 })),
          ...root.map((node) => ({ node, raiseIn: 0, flatAlongX: true, flatAlongY: true })),
        ],
      });
      return {
        jackLbf: result.holdLbf.slice(0, far.length).reduce((sum, force) => sum + force, 0),
        nearRootMxLbfInPerIn: meanMoments(result.points, ({ xIn }) => xIn < 1.5).mxLbfInPerIn,
      };
    });
    // 3 x 4.5e6 x 0.1 / 24^3 = 97.66 lb, less the .23 % that shear flexibility takes; moment 97.43 x 23.25 / 4 there.
    expectWithin(oneOf(found, 'jackLbf'), 97.43, 0.001);
    expectWithin(oneOf(found, 'nearRootMxLbfInPerIn'), (97.43 * 23.25) / 4, 0.001);
  });

  test(`a plate pressed at one corner and held at the other three only twists, Mxy = -P/2 (${referenceSource('pure-twist')})`, () => {
    // Timoshenko & Woinowsky-Krieger, article 11: w = P x y / (2 D (1 - nu)). A slab of real thickness carries the
    // twist a little softer along its free edges, a share of about 0.63 h / a each
    // way (the torsion of a rectangular bar), 1.6 % when thinned by 4.
    const sideIn = 30;
    const mesh = rectangleMesh(sideIn, sideIn, 40, 40);
    const corners = [0, 40, 41 * 40, 41 * 41 - 1] as const;
    const found = reference('pure-twist', () => {
      const result = calculixPlate({
        ...mesh,
        thicknessIn: 1.5,
        modulusPsi: 3.6e6,
        poissonRatio: 0.2,
        loads: [{ node: corners[3], forceLbf: 40 }],
        supports: [],
        holds: corners.slice(0, 3).map((node) => ({ node, raiseIn: 0 })),
        thinningRatio: 4,
      });
      return {
        cornerDownIn: result.downIn[corners[3]]!,
        holdLbf: result.holdLbf,
        mxyLbfInPerIn: meanMoments(result.points, ({ xIn, yIn }) => Math.hypot(xIn - 15, yIn - 15) < 8)
          .mxyLbfInPerIn,
      };
    });
    const rigidityLbfIn = (3.6e6 * 1.5 ** 3) / 12 / (1 - 0.2 ** 2);
    expectWithin(oneOf(found, 'cornerDownIn'), (40 * sideIn ** 2) / (2 * rigidityLbfIn * 0.8), 0.02);
    expectWithin(oneOf(found, 'mxyLbfInPerIn'), -20, 0.015);
    const [near, right, left] = listOf(found, 'holdLbf');
    expectWithin(near!, -40, 1e-4);
    expectWithin(right!, 40, 1e-4);
    expectWithin(left!, 40, 1e-4);
  });

  test(`a stiff plate on four springs shares a load off its middle as a rigid one (${referenceSource('four-springs')})`, () => {
    const mesh = rectangleMesh(40, 20, 20, 10);
    const at = (i: number, j: number): number => j * 21 + i;
    const posts = [at(2, 1), at(18, 1), at(18, 9), at(2, 9)];
    const found = reference('four-springs', () => {
      const result = calculixPlate({
        ...mesh,
        thicknessIn: 2,
        modulusPsi: 4e10,
        poissonRatio: 0.2,
        loads: [{ node: at(14, 6), forceLbf: 320 }],
        supports: posts.map((node) => ({ node, stiffnessLbfPerIn: 5000, gapIn: 0, kind: 'push' })),
        holds: [],
      });
      return { postLbf: result.supportLbf, postDownIn: posts.map((node) => result.downIn[node]!) };
    });
    // Load 8 in right of and 2 in above the middle; posts at (+-16, +-8): share 1/4 (1 +- 8/16 +- 2/8) of 320 lb.
    [20, 100, 140, 60].forEach((forceLbf, post) => {
      expectWithin(listOf(found, 'postLbf')[post]!, forceLbf, 0.001);
      expectWithin(listOf(found, 'postDownIn')[post]!, forceLbf / 5000, 0.001);
    });
  });
});

describe('one-sided supports against hand-solved beams', () => {
  // A strip 4 in wide and 1 in thick on supports A, B, C at 0, 30 and 60 in; E I = 3e6 x 4 / 12 = 1e6 lb-in2.
  const mesh = rectangleMesh(60, 4, 60, 3);
  const strip = { ...mesh, thicknessIn: 1, modulusPsi: 3e6, poissonRatio: 0, holds: [] };
  const places = [0, 30, 60];
  const bearings = (kind: NodeSpring['kind'], gapsIn: readonly number[]): NodeSpring[] =>
    places.flatMap((xIn, place) =>
      lineShares(nodesAtX(mesh, xIn)).map(({ node, share }) => ({
        node,
        stiffnessLbfPerIn: 20000 * share,
        gapIn: gapsIn[place]!,
        kind,
      })),
    );
  const loadAt = (xIn: number, forceLbf: number) =>
    lineShares(nodesAtX(mesh, xIn)).map(({ node, share }) => ({ node, forceLbf: forceLbf * share }));
  const solve = (supports: readonly NodeSpring[], loads: PlateInput['loads']) => {
    const result = calculixPlate({ ...strip, supports, loads });
    const forcesLbf = places.map((xIn) => {
      const nodes = new Set(nodesAtX(mesh, xIn));
      return supports.reduce(
        (sum, { node }, at) => (nodes.has(node) ? sum + result.supportLbf[at]! : sum),
        0,
      );
    });
    return { forcesLbf, downIn: places.map((xIn) => result.downIn[nodesAtX(mesh, xIn)[1]!]!) };
  };

  test(`100 lb in the middle of the right span lifts the left end clear (${referenceSource('lift-off')})`, () => {
    const found = reference('lift-off', () => solve(bearings('push', [0, 0, 0]), loadAt(45, 100)));
    // A continuous beam would need -3/32 P at A; A cannot pull, so B and C carry 50 each, both sink 50/20000,
    // and A rises L x P L2 / (16 E I) = 30 x 0.005625 in less that.
    const [a, b, c] = listOf(found, 'forcesLbf');
    expect(Math.abs(a!)).toBeLessThan(1e-3);
    expectWithin(b!, 50, 1e-4);
    expectWithin(c!, 50, 1e-4);
    expectWithin(listOf(found, 'downIn')[0]!, 0.0025 - 0.16875, 0.002);
  });

  test(`supports that may pull hold that end down as a continuous beam does (${referenceSource('tied-beam')})`, () => {
    const found = reference('tied-beam', () => solve(bearings('both', [0, 0, 0]), loadAt(45, 100)));
    // Force method, A redundant: released, A rises 0.16625 (above); a pull of 1 lb at A lowers it by
    // 2 L3 / 3 E I = 0.018, and by (1 + 4 + 1)/k = 0.0003 in the springs. 0.16625 / 0.0183 = 9.085 lb.
    const [a, b, c] = listOf(found, 'forcesLbf');
    expectWithin(a!, -9.085, 0.001);
    expectWithin(b!, 50 + 2 * 9.085, 0.001);
    expectWithin(c!, 50 - 9.085, 0.001);
  });

  test(`a middle support .2 in low takes what is left after the gap has closed (${referenceSource('gap')})`, () => {
    const found = reference('gap', () => solve(bearings('push', [0, 0.2, 0]), loadAt(30, 100)));
    // Flexibility at the middle c = 60^3/48e6 + 1.2 x 60/(4 G A) + 1/(2 k) = 0.0045 + 0.000003 + 0.000025 = 0.004528;
    // R = k (100 c - 0.2) / (1 + k c) = 20000 x 0.2528 / 91.56 = 55.22 lb.
    const [a, b, c] = listOf(found, 'forcesLbf');
    expectWithin(b!, 55.22, 0.001);
    expectWithin(a!, (100 - 55.22) / 2, 0.001);
    expectWithin(c!, (100 - 55.22) / 2, 0.001);
  });

  test(`a tie with .05 in of play holds the end it stands at (${referenceSource('slack-tie')})`, () => {
    const supports = [
      ...bearings('push', [0, 0, 0]),
      ...bearings('pull', [0.05, 0, 0]).slice(0, nodesAtX(mesh, 0).length),
    ];
    const found = reference('slack-tie', () => solve(supports, loadAt(45, 100)));
    // As the tied beam, but A first rises .05 freely: (0.16625 - 0.05) / 0.0183 = 6.352 lb of pull.
    const [a, b, c] = listOf(found, 'forcesLbf');
    expectWithin(a!, -6.352, 0.002);
    expectWithin(b!, 50 + 2 * 6.352, 0.001);
    expectWithin(c!, 50 - 6.352, 0.001);
  });

  test(`a strip with nothing under its heavy end is refused, not solved (${referenceSource('unheld')})`, () => {
    const supports = bearings('push', [0, 0, 0]).slice(0, nodesAtX(mesh, 0).length);
    const found = reference('unheld', () => {
      try {
        solve(supports, loadAt(60, 10));
        return { refusedCount: 0 };
      } catch (cause) {
        if (!/not held|did not finish/.test(String(cause))) throw cause;
        return { refusedCount: 1 };
      }
    });
    expect(oneOf(found, 'refusedCount')).toBe(1);
  });
});

describe('recordings', () => {
  const inDirectory = (run: (settings: ReferenceSettings) => void): void => {
    const directory = mkdtempSync(join(tmpdir(), 'recordings-'));
    try {
      run({ directory, version: '2.20', record: false });
    } finally {
      rmSync(directory, { recursive: true, force: true });
    }
  };

  test('a run .05 % off its recording passes and one .2 % off does not', () => {
    inDirectory((settings) => {
      reference('case', () => ({ downIn: 1, forcesLbf: [0, 100] }), { ...settings, record: true });
      expect(() =>
        reference('case', () => ({ downIn: 1.0005, forcesLbf: [0.05, 100] }), settings),
      ).not.toThrow();
      expect(() => reference('case', () => ({ downIn: 1.002, forcesLbf: [0, 100] }), settings)).toThrow(
        /downIn/,
      );
      expect(() => reference('case', () => ({ downIn: 1, forcesLbf: [0.2, 100] }), settings)).toThrow(
        /forcesLbf\[0\]/,
      );
      expect(() => reference('case', () => ({ downIn: 1 }), settings)).toThrow(/2 recorded, 0 now/);
      expect(() => reference('case', () => ({ downIn: Number.NaN, forcesLbf: [0, 100] }), settings)).toThrow(
        /NaN/,
      );
    });
  });

  test('without ccx the recording stands in and says which version made it', () => {
    inDirectory((settings) => {
      reference('case', () => ({ downIn: 1.25 }), { ...settings, record: true });
      const compute = () => {
        throw new Error('must not run');
      };
      const found = reference('case', compute, { ...settings, version: null });
      expect(oneOf(found, 'downIn')).toBe(1.25);
      expect(found.source).toBe('recorded with CalculiX 2.20; ccx is not installed here');
    });
  });

  test('a case that was never recorded is an error that says how to record it', () => {
    inDirectory((settings) => {
      expect(() => reference('new', () => ({ downIn: 1 }), settings)).toThrow(/RECORD=1/);
      expect(() => reference('new', () => ({ downIn: 1 }), { ...settings, version: null })).toThrow(
        /RECORD=1/,
      );
    });
  });
});
