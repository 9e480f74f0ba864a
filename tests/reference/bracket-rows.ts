import type { Bound } from '../../src-core/analysis';
import type { JobDraft } from '../../src-core/job';
import { jobOf, rectangle, wallAlongX } from '../support/pieces';
import { calculixPlate } from './calculix/plate';
import type { Cantilever, NodeSpring } from './calculix/plate-input';
import type { WorktopCase } from './worktop-cases';
import { type LoadedWorktop, loadWorktop, plateInputOf, totalLoadLbf } from './worktop-measures';

type SupportDraft = NonNullable<JobDraft['pieces'][number]['supports']>[number];
type ArmDraft = Extract<SupportDraft, { kind: 'bracket' }>['arm'];

/** An arm as the job has it, and its E I worked by hand. */
export type RowArm = {
  readonly name: 'limp' | 'stiff';
  readonly words: string;
  readonly arm: ArmDraft;
  readonly flexuralRigidityLbfIn2: number;
};

export const rowArms: readonly RowArm[] = [
  {
    name: 'limp',
    words: 'flat bars 2 x 1/2 in',
    arm: { kind: 'flat-bar', widthIn: 2, depthIn: 0.5, yieldPsi: 36_000 },
    // 29e6 psi x 2 x 0.5^3 / 12
    flexuralRigidityLbfIn2: 604_167,
  },
  {
    name: 'stiff',
    words: 'tubes 1-1/2 in',
    arm: { kind: 'tube', widthIn: 1.5, depthIn: 1.5, wallIn: 0.12, yieldPsi: 36_000 },
    // 29e6 psi x (1.5^4 - 1.26^4) / 12
    flexuralRigidityLbfIn2: 6_143_216,
  },
];

/** A fixing rated for 300 lbf at 9 in, 2700 lbf-in, turns 1 degree under that moment at the low bound. */
const ratedLoadLbf = 300;
const ratedAtIn = 9;
const turnPerLbfIn: Readonly<Record<Bound, number>> = { low: Math.PI / 180 / 2700, high: 0 };
const wallFaceYIn = 12;

/** One row: what every bracket and the wall give, and how far the front edge comes down at the places of the case. */
export type RowNumbers = {
  /** The arms in order, then the wall. */
  readonly reactionsLbf: number[];
  readonly downIn: number[];
};

/** A ledge 56 in long, 12 in out, on a stud wall and four arms 9 in long at 16 in, with a weight between the middle two. */
export function bracketRow({ name, words, arm }: RowArm, bound: Bound): WorktopCase {
  return {
    name: `brackets-${name}-${bound}`,
    says: `a ledge on a stud wall and four ${words}, stiffness ${bound}, takes 160 lb between two of them`,
    job: jobOf({
      use: 'bar-ledge',
      corners: rectangle(56, 17.5),
      thicknessIn: 1.5,
      loads: {
        roving: { setting: 'none' },
        spreadPsf: 20,
        fixed: [
          { id: 'load', name: 'Load', centre: { xIn: 25, yIn: 4 }, widthIn: 8, depthIn: 8, weightLb: 160 },
        ],
      },
      supports: [
        {
          kind: 'bracket',
          id: 'arms',
          roots: [4, 20, 36, 52].map((xIn) => ({ xIn, yIn: wallFaceYIn })),
          directionDeg: 270,
          reachIn: 9,
          seatWidthIn: 2,
          heelIn: 9,
          arm,
          backing: 'timber-stud',
          fixing: { kind: 'rated', ratedLoadLbf, ratedAtIn, ratedBy: 'the maker' },
        },
        wallAlongX('wall', 0, 56, wallFaceYIn + 2.75, 5.5),
      ],
    }),
    bound,
    meshSizeIn: 1.5,
    rovingAt: null,
    alsoThinned: false,
    deflections: [
      { words: 'front edge between brackets', at: { xIn: 28, yIn: 0 } },
      { words: 'front corner', at: { xIn: 56, yIn: 0 } },
    ],
    moments: [],
    partlyOff: [],
  };
}
