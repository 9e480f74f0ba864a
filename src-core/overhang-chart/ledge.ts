/** The ledge that the chart asks about, as a job like any other. */
import { STOCK_ARMS } from '../bracket';
import type { BracketFixing, BracketSupport, Job, JobDraft, Reinforcement } from '../job';
import { JOB_FORMAT, JOB_VERSION, jobSchema } from '../job';
import type { ChartBasis } from './basis';

/** The free edge lies this far past the tip of an arm, as far as the arm's own limit lets it. Common practice, no source. */
const PAST_TIP_IN = 1;
/** Shortest arm worth its lags, in. Common practice, no source. */
const LEAST_REACH_IN = 3;
/** Middle of the stud at either end of the wall, from its end, in. */
const END_STUD_IN = 1.5;
/** A rating that no tie comes near, so that the ties never decide; what each must take is told beside the answer. */
const AMPLE_TIE_LBF = 50_000;
const TOWARD_FREE_EDGE_DEG = -90;

type SupportDraft = NonNullable<JobDraft['pieces'][number]['supports']>[number];

/** Shortest overhang that an arm fits under, in. */
export const LEAST_BRACKETED_IN = LEAST_REACH_IN + PAST_TIP_IN;

/**
 * A job of one ledge: `overhangIn` past a wall that it covers, its free edge along y = 0, tied along the wall's centre line,
 * with brackets at `spacingIn` or none.
 */
export function ledgeJob(
  basis: ChartBasis,
  ledge: {
    readonly thicknessIn: number;
    readonly overhangIn: number;
    readonly spacingIn: number | null;
    readonly steel: readonly Reinforcement[];
  },
): Job {
  const { root, lengthIn } = basis;
  const { overhangIn, spacingIn } = ledge;
  const depthIn = overhangIn + root.widthIn;
  const centreYIn = overhangIn + root.widthIn / 2;
  const wall: SupportDraft = {
    kind: 'wall',
    id: 'wall',
    name: `${root.build} wall`,
    build: root.build,
    from: { xIn: 0, yIn: centreYIn },
    to: { xIn: lengthIn, yIn: centreYIn },
    widthIn: root.widthIn,
    stiffness: root.stiffness,
    hold: {
      kind: 'tied',
      spacingIn: root.tieSpacingIn,
      ratingLbf: AMPLE_TIE_LBF,
      ...(root.tieStiffness === null ? {} : { stiffness: root.tieStiffness }),
    },
  };
  return jobSchema.parse({
    format: JOB_FORMAT,
    version: JOB_VERSION,
    id: 'overhang-chart',
    name: 'Overhang chart',
    mixes: [
      {
        id: 'mix',
        name: 'Concrete of the chart',
        strengthPsi: basis.strengthPsi,
        strengthFrom: basis.strengthPsi === null ? 'assumed' : 'bag',
        densityPcf: basis.densityPcf,
      },
    ],
    pieces: [
      {
        id: 'ledge',
        name: 'Ledge',
        use: 'bar-ledge',
        mixId: 'mix',
        corners: [
          { xIn: 0, yIn: 0 },
          { xIn: lengthIn, yIn: 0 },
          { xIn: lengthIn, yIn: depthIn },
          { xIn: 0, yIn: depthIn },
        ],
        thicknessIn: ledge.thicknessIn,
        reinforcement: [...ledge.steel],
        supports: spacingIn === null ? [wall] : [wall, bracketRow(basis, overhangIn, spacingIn)],
        loads: { roving: basis.roving, spreadPsf: basis.spreadPsf },
      },
    ],
  } satisfies JobDraft);
}

/** The chart's row of brackets under an overhang, at both end studs and every spacing between. */
export function bracketRow(basis: ChartBasis, overhangIn: number, spacingIn: number): BracketSupport {
  const stock = STOCK_ARMS.find(({ id }) => id === basis.bracket.armId);
  if (stock === undefined) throw new Error(`no stock arm "${basis.bracket.armId}"`);
  const { lengthIn, limits, root } = basis;
  const reachIn = Math.min(limits.bracketReachEngineerIn, overhangIn - PAST_TIP_IN);
  const places = [END_STUD_IN];
  for (let atIn = spacingIn; atIn < lengthIn - END_STUD_IN - spacingIn / 4; atIn += spacingIn)
    places.push(atIn);
  places.push(lengthIn - END_STUD_IN);
  const { ratedAtTipLbf } = basis.bracket;
  const rated: BracketFixing | null =
    ratedAtTipLbf === null
      ? null
      : { kind: 'rated', ratedLoadLbf: ratedAtTipLbf, ratedAtIn: reachIn, ratedBy: 'its maker, as entered' };
  return {
    id: 'brackets',
    name: 'brackets',
    kind: 'bracket',
    firstDay: 0,
    lastDay: null,
    gapIn: 0,
    raisedIn: 0,
    stiffness: null,
    hold: { kind: 'resting' },
    roots: places.map((xIn) => ({ xIn, yIn: overhangIn })),
    directionDeg: TOWARD_FREE_EDGE_DEG,
    reachIn,
    seatWidthIn: stock.seatWidthIn,
    heelIn: stock.heelIn,
    arm: stock.arm,
    backing: root.build === 'stud' ? 'timber-stud' : 'grouted-block',
    fixing: rated ?? stock.fixing,
    make: stock.make,
  };
}
