import { afterAll, describe, expect, test } from 'vitest';
import type { Bound } from '../../src-core/analysis';
import {
  bracketRow,
  calculixRow,
  loadRow,
  ourRow,
  type RowArm,
  type RowWall,
  rowArms,
  rowWalls,
} from './bracket-rows';
import { calculixPlate } from './calculix/plate';
import type { Cantilever, NodeSpring, PlateInput } from './calculix/plate-input';
import { here, listOf, oneOf, reference, referenceSource } from './calculix/recording';
import { rectangleMesh } from './calculix/rectangle-mesh';
import { beyondLimit, type ComparedRow, tableHead, tableLines } from './worktop-comparison';

const REACTION_RATIO = 0.03;
const ARM_RATIO = 0.005;
/** A small change of our mesh moves a run this far from its recording at the most. */
const settings = { ...here, driftRatio: 0.02 };

describe('the arms of the deck against beam tables', () => {
  // A slab of stone-hard stuff 12 in square, a node every inch, shares its load by statics alone.
  const mesh = rectangleMesh(12, 12, 12, 12);
  const at = (xIn: number, yIn: number): number => yIn * 13 + xIn;
  const slab = { ...mesh, thicknessIn: 2, modulusPsi: 4e10, poissonRatio: 0.2, holds: [] };
  const seatLbfPerIn = 200_000;
  const seat = (node: number): NodeSpring => ({
    node,
    stiffnessLbfPerIn: seatLbfPerIn,
    gapIn: 0,
    kind: 'push',
  });
  const sink = (input: PlateInput, nodes: readonly number[]) => {
    const result = calculixPlate(input);
    return { armLbf: result.armLbf, downIn: nodes.map((node) => result.downIn[node]!) };
  };
  const turns = [
    { name: 'hard', words: 'fixed hard', turnPerLbfIn: 0 },
    {
      name: 'turning',
      words: 'whose fixing turns 1 degree under 2700 lb-in',
      turnPerLbfIn: Math.PI / 180 / 2700,
    },
  ];

  const rows = rowArms.flatMap((arm) =>
    turns.map((turn) => ({ arm, turn, name: `arms-${arm.name}-${turn.name}` })),
  );
  for (const {
    arm: { words, flexuralRigidityLbfIn2 },
    turn: { words: turnWords, turnPerLbfIn },
    name,
  } of rows) {
    test(`${words}, ${turnWords}, sink P a3 / 3 E I + P a2 c under 40 lb at 3, 6 and 9 in (${referenceSource(name)})`, () => {
      const places = [
        { node: at(1, 3), root: { xIn: 1, yIn: 0 }, alongIn: 3 },
        { node: at(6, 9), root: { xIn: 6, yIn: 3 }, alongIn: 6 },
        { node: at(11, 3), root: { xIn: 11, yIn: -6 }, alongIn: 9 },
      ];
      const arms = places.map(
        ({ node, root }): Cantilever => ({
          root,
          directionRad: Math.PI / 2,
          flexuralRigidityLbfIn2,
          fixingTurnPerLbfIn: turnPerLbfIn,
          contacts: [seat(node)],
        }),
      );
      // The load stands at the centroid of the three: a third each.
      const input = { ...slab, loads: [{ node: at(6, 5), forceLbf: 120 }], supports: [], arms };
      const found = reference(name, () =>
        sink(
          input,
          places.map(({ node }) => node),
        ),
      );
      places.forEach(({ alongIn: a }, number) => {
        expect(listOf(found, 'armLbf')[number]!).toBeCloseTo(40, 3);
        const sinkIn = listOf(found, 'downIn')[number]! - 40 / seatLbfPerIn;
        const expectedIn = (40 * a ** 3) / (3 * flexuralRigidityLbfIn2) + 40 * a ** 2 * turnPerLbfIn;
        expect(Math.abs(sinkIn / expectedIn - 1), `${sinkIn} against ${expectedIn}`).toBeLessThan(ARM_RATIO);
      });
    });
  }

  test(`50 lb at 3 in and 10 lb at 9 in on one arm sink it by both, each where it stands and where the other does (${referenceSource('arm-at-two-places')})`, () => {
    const [near, far, post] = [at(3, 6), at(9, 6), at(6, 10)];
    const [limp] = rowArms;
    const rigidity = limp!.flexuralRigidityLbfIn2;
    const turn = turns[1]!.turnPerLbfIn;
    const found = reference('arm-at-two-places', () => {
      const { armLbf, downIn } = sink(
        {
          ...slab,
          loads: [{ node: at(5, 8), forceLbf: 120 }],
          supports: [{ node: post, stiffnessLbfPerIn: 5000, gapIn: 0, kind: 'push' }],
          arms: [
            {
              root: { xIn: 0, yIn: 6 },
              directionRad: 0,
              flexuralRigidityLbfIn2: rigidity,
              fixingTurnPerLbfIn: turn,
              contacts: [seat(near), seat(far)],
            },
          ],
        },
        [near, far],
      );
      return { armLbf: armLbf[0]!, downIn };
    });
    // Half the load goes to the post at (6, 10), 60 lb; about x = 0 the arm has 600 - 360 = 240 = 3 R1 + 9 R2, R1 + R2 = 60.
    expect(oneOf(found, 'armLbf')).toBeCloseTo(60, 3);
    // f11 = 3^3 / 3 = 9, f12 = 3^2 (3 x 9 - 3) / 6 = 36, f22 = 9^3 / 3 = 243, each over E I; the root's moment is 240 lb-in.
    const expectedIn = [
      (50 * 9 + 10 * 36) / rigidity + 3 * 240 * turn,
      (50 * 36 + 10 * 243) / rigidity + 9 * 240 * turn,
    ];
    const seatsIn = [50 / seatLbfPerIn, 10 / seatLbfPerIn];
    expectedIn.forEach((expected, place) => {
      const sinkIn = listOf(found, 'downIn')[place]! - seatsIn[place]!;
      expect(Math.abs(sinkIn / expected - 1), `${sinkIn} against ${expected}`).toBeLessThan(ARM_RATIO);
    });
  });
});

interface SolvedRow {
  readonly ours: readonly number[];
  readonly theirs: readonly number[];
  readonly bearing: readonly (readonly boolean[])[];
}

const solved = new Map<string, SolvedRow>();

/** Both answers to one row, found once for all tests. */
function solveRow(wall: RowWall, arm: RowArm, bound: Bound): SolvedRow {
  const { name } = bracketRow(wall, arm, bound);
  const known = solved.get(name);
  if (known !== undefined) return known;
  const row = loadRow(wall, arm, bound);
  const { reactionsLbf: ours, bearing } = ourRow(row);
  const found = {
    ours,
    bearing,
    theirs: listOf(
      reference(name, () => calculixRow(row), settings),
      'reactionsLbf',
    ),
  };
  solved.set(name, found);
  return found;
}

const bounds = ['high', 'low'] as const;

describe('rows of brackets against CalculiX: every reaction within 3 %', () => {
  const table: string[] = [];
  afterAll(() => {
    console.log([tableHead(), ...table].join('\n'));
  });

  const cases = rowWalls.flatMap((wall) =>
    rowArms.flatMap((arm) => bounds.map((bound) => ({ wall, arm, ...bracketRow(wall, arm, bound) }))),
  );
  for (const { wall, arm, bound, name, says } of cases) {
    test(`${says} (${referenceSource(name)})`, () => {
      const { ours, theirs } = solveRow(wall, arm, bound);
      const rows = ours.map(
        (force, number): ComparedRow => ({
          quantity: number < 4 ? `on bracket ${number + 1}` : 'on the wall, less its ties',
          unit: 'lbf',
          ours: force,
          trueSlab: theirs[number]!,
          thinned: null,
          heldAgainst: 'true',
          limitRatio: REACTION_RATIO,
          leastScale: 0,
        }),
      );
      table.push(...tableLines(name.replace('brackets-', ''), rows));
      expect(rows).toHaveLength(5);
      expect(beyondLimit(rows)).toEqual([]);
    });
  }
});

describe('limp arms and stiff ones', () => {
  const [loose, tied] = rowWalls;
  const [limp, stiff] = rowArms;
  const armsOf = (reactionsLbf: readonly number[]): number =>
    reactionsLbf.slice(0, 4).reduce((sum, force) => sum + force, 0);
  const wallOf = (reactionsLbf: readonly number[]): number => reactionsLbf[4]!;

  test.each(bounds)(
    'of a ledge tied to its wall limp arms carry less than stiff ones and the wall more, stiffness %s',
    (bound) => {
      const [limpRow, stiffRow] = [solveRow(tied!, limp!, bound), solveRow(tied!, stiff!, bound)];
      for (const by of ['ours', 'theirs'] as const) {
        expect(armsOf(limpRow[by])).toBeLessThan(0.95 * armsOf(stiffRow[by]));
        expect(wallOf(limpRow[by])).toBeGreaterThan(1.1 * wallOf(stiffRow[by]));
      }
    },
  );

  test.each(bounds)(
    'a loose ledge slides its weight in along limp arms, which then push harder, and the wall less, stiffness %s',
    (bound) => {
      // The load's moment about the wall stays; the lever of limp arms is shorter.
      const [limpRow, stiffRow] = [solveRow(loose!, limp!, bound), solveRow(loose!, stiff!, bound)];
      for (const by of ['ours', 'theirs'] as const) {
        expect(armsOf(limpRow[by])).toBeGreaterThan(1.03 * armsOf(stiffRow[by]));
        expect(wallOf(limpRow[by])).toBeLessThan(0.9 * wallOf(stiffRow[by]));
      }
    },
  );

  test('stiff arms fixed hard bear at all three places each, and limp arms come off in three or more', () => {
    for (const wall of rowWalls) {
      const bearingCount = (arm: RowArm): number =>
        solveRow(wall, arm, 'high').bearing.slice(0, 4).flat().filter(Boolean).length;
      expect(bearingCount(stiff!)).toBe(12);
      expect(bearingCount(limp!)).toBeLessThan(10);
    }
  });
});
