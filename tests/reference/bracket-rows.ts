import { type Bound, caseField } from '../../src-core/analysis';
import type { JobDraft } from '../../src-core/job';
import { jobOf, rectangle, wallAlongX } from '../support/pieces';
import { calculixPlate } from './calculix/plate';
import type { Cantilever } from './calculix/plate-input';
import type { WorktopCase } from './worktop-cases';
import { type LoadedWorktop, loadWorktop, plateInputOf, totalLoadLbf } from './worktop-measures';

type SupportDraft = NonNullable<JobDraft['pieces'][number]['supports']>[number];
type HoldDraft = NonNullable<SupportDraft['hold']>;
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

/** A fixing rated for 300 lbf at 9 in turns 1 degree under those 2700 lbf-in at the low bound. */
const RATED_LBF = 300;
const RATED_AT_IN = 9;
const TURN_PER_LBF_IN: Readonly<Record<Bound, number>> = { low: Math.PI / 180 / 2700, high: 0 };
const REACH_IN = 9;
/** Reactions of the other program sum to the load within this share. */
const BALANCE_RATIO = 2e-5;

/** What the ledge has at its back, where its load stands, and how far out of the wall's face its front edge is. */
export type RowWall = {
  readonly name: 'loose' | 'tied';
  readonly words: string;
  readonly overhangIn: number;
  readonly loadYIn: number;
  readonly wall: { readonly build: 'stud' | 'block'; readonly widthIn: number; readonly hold: HoldDraft };
};

/**
 * The loose ledge tilts with what is under it and leans on its arms; close ties on a block wall make the other a cantilever of
 * its own, whose arms carry what they are stiff enough to take.
 */
export const rowWalls: readonly RowWall[] = [
  {
    name: 'loose',
    words: 'loose on a stud wall',
    overhangIn: 12,
    loadYIn: 9,
    wall: { build: 'stud', widthIn: 5.5, hold: { kind: 'resting' } },
  },
  {
    name: 'tied',
    words: 'tied every 8 in to a block wall',
    overhangIn: 10,
    loadYIn: 4,
    wall: {
      build: 'block',
      widthIn: 7.5,
      hold: { kind: 'tied', spacingIn: 8, stiffness: { low: 20_000, high: 200_000 } },
    },
  },
];

/** A ledge 56 in long on four arms of 9 in at 16 in, 160 lb standing between the middle two. */
export function bracketRow(
  { name, words, overhangIn, loadYIn, wall }: RowWall,
  arm: RowArm,
  bound: Bound,
): WorktopCase {
  return {
    name: `brackets-${name}-${arm.name}-${bound}`,
    says: `a ledge ${words} leans on four ${arm.words} that are ${bound === 'high' ? 'fixed hard' : 'on fixings that turn'}`,
    job: jobOf({
      use: 'bar-ledge',
      corners: rectangle(56, 17.5),
      thicknessIn: 1.5,
      loads: {
        roving: { setting: 'none' },
        spreadPsf: 0,
        fixed: [
          {
            id: 'load',
            name: 'Load',
            centre: { xIn: 25, yIn: loadYIn },
            widthIn: 8,
            depthIn: 8,
            weightLb: 160,
          },
        ],
      },
      supports: [
        {
          kind: 'bracket',
          id: 'arms',
          roots: [4, 20, 36, 52].map((xIn) => ({ xIn, yIn: overhangIn })),
          directionDeg: 270,
          reachIn: REACH_IN,
          seatWidthIn: 2,
          heelIn: 9,
          arm: arm.arm,
          backing: wall.build === 'stud' ? 'timber-stud' : 'grouted-block',
          fixing: { kind: 'rated', ratedLoadLbf: RATED_LBF, ratedAtIn: RATED_AT_IN, ratedBy: 'the maker' },
        },
        wallAlongX('wall', 0, 56, overhangIn + wall.widthIn / 2, wall.widthIn, {
          build: wall.build,
          hold: wall.hold,
        }),
      ],
    }),
    bound,
    meshSizeIn: 1.5,
    rovingAt: null,
    alsoThinned: false,
    deflections: [],
    moments: [],
    partlyOff: [],
  };
}

/** A row meshed and loaded, with its arms as the deck has them. */
export type LoadedRow = { readonly loaded: LoadedWorktop; readonly arms: readonly Cantilever[] };

/** Prepares a row; the four arms are the first bearings, the wall is the last. */
export function loadRow(wall: RowWall, arm: RowArm, bound: Bound): LoadedRow {
  const loaded = loadWorktop(bracketRow(wall, arm, bound));
  const springs = plateInputOf(loaded, 1).supports;
  const arms = loaded.prepared.bearings.flatMap(({ support, contacts }, number): Cantilever[] =>
    support.kind === 'bracket'
      ? [
          {
            root: support.roots[number]!,
            directionRad: (3 * Math.PI) / 2,
            flexuralRigidityLbfIn2: arm.flexuralRigidityLbfIn2,
            fixingTurnPerLbfIn: TURN_PER_LBF_IN[bound],
            contacts: contacts.map((contact) => springs[contact]!),
          },
        ]
      : [],
  );
  return { loaded, arms };
}

/** Our force of every arm and of the wall less its ties, and which contacts bear. */
export function ourRow({ loaded }: LoadedRow): { reactionsLbf: number[]; bearing: boolean[][] } {
  const { prepared, worktop, labelIndex } = loaded;
  const { contactLbf, asIfHeld } = caseField(prepared, worktop.bound, labelIndex);
  if (asIfHeld) throw new Error(`${worktop.name} turns over under its load`);
  const forces = prepared.bearings.map(({ contacts }) => contacts.map((contact) => contactLbf[contact]!));
  return {
    reactionsLbf: forces.map((own) => own.reduce((sum, force) => sum + force, 0)),
    bearing: forces.map((own) => own.map((force) => force !== 0)),
  };
}

/** The same of a CalculiX run on the same mesh and nodal loads, its arms bending as solids. */
export function calculixRow({ loaded, arms }: LoadedRow): { reactionsLbf: number[] } {
  const all = plateInputOf(loaded, 1);
  const wall = loaded.prepared.bearings[arms.length]!;
  const result = calculixPlate({
    ...all,
    supports: wall.contacts.map((contact) => all.supports[contact]!),
    arms,
  });
  const wallLbf = result.supportLbf.reduce((sum, force) => sum + force, 0);
  const reactionsLbf = [...result.armLbf, wallLbf];
  const balance = reactionsLbf.reduce((sum, force) => sum + force, 0) / totalLoadLbf(loaded);
  if (!(Math.abs(balance - 1) < BALANCE_RATIO)) {
    throw new Error(`${loaded.worktop.name}: reactions are ${balance} of the load`);
  }
  return { reactionsLbf };
}
