/** Random supports for random pieces. All are laid out in the piece's own frame; `random-job.ts` places the piece. */
import type { JobDraft } from '../../src-core/job';
import type { Dice } from './seeded-random';

export type PieceDraft = JobDraft['pieces'][number];
export type SupportDraft = NonNullable<PieceDraft['supports']>[number];
export interface PointDraft {
  readonly xIn: number;
  readonly yIn: number;
}

/** Slab in its own frame: the rectangle 0..length by 0..depth, and for an L a leg 0..legWidth by -leg..0. */
export interface Frame {
  readonly lengthIn: number;
  readonly depthIn: number;
  readonly leg: { readonly widthIn: number; readonly lengthIn: number } | null;
}

export type Scheme = 'cabinets' | 'wall' | 'piers' | 'legs' | 'brackets' | 'bed';
export const SCHEMES: readonly Scheme[] = ['cabinets', 'wall', 'piers', 'legs', 'brackets', 'bed'];

/** Supports of one scheme, each with an id that starts with `prefix`. */
export function randomSupports(dice: Dice, frame: Frame, scheme: Scheme, prefix: string): SupportDraft[] {
  const drafts = LAYOUTS[scheme](dice, frame);
  return drafts.map(
    (draft, i) => ({ ...draft, id: `${prefix}-${i + 1}`, ...everySupport(dice) }) as SupportDraft,
  );
}

type Layout = (dice: Dice, frame: Frame) => object[];

const LAYOUTS: { readonly [K in Scheme]: Layout } = { cabinets, wall, piers, legs, brackets, bed };

function everySupport(dice: Dice): object {
  return {
    ...(dice.chance(0.15) ? { gapIn: dice.pick([1 / 64, 1 / 32, 1 / 16]) } : {}),
    ...(dice.chance(0.1) ? { raisedIn: dice.pick([1 / 64, 1 / 32]) } : {}),
    ...(dice.chance(0.1) ? { stiffness: { low: 3000, high: 30000 } } : {}),
    ...(dice.chance(0.1) ? { firstDay: dice.whole(0, 30), lastDay: dice.whole(30, 60) } : {}),
    ...(dice.chance(0.25)
      ? {
          hold: {
            kind: 'tied',
            spacingIn: dice.whole(6, 24),
            ratingLbf: dice.chance(0.5) ? dice.whole(100, 800) : null,
          },
        }
      : {}),
  };
}

function cabinets(dice: Dice, frame: Frame): object[] {
  const count = Math.max(1, Math.ceil(frame.lengthIn / dice.whole(20, 40)));
  const each = frame.lengthIn / count;
  const options = () => ({
    kind: 'cabinet',
    frontRail: dice.chance(0.7),
    backRail: dice.chance(0.7),
    subTop: dice.chance(0.15),
  });
  const row = Array.from({ length: count }, (_, i) => ({
    ...options(),
    corner: { xIn: i * each, yIn: 1.5 },
    widthIn: each,
    depthIn: frame.depthIn - 1.5,
  }));
  if (frame.leg === null) return row;
  const corner = { xIn: frame.leg.widthIn - 1.5, yIn: -frame.leg.lengthIn };
  const leg = { corner, angleDeg: 90, widthIn: frame.leg.lengthIn, depthIn: frame.leg.widthIn - 1.5 };
  return [...row, { ...options(), ...leg }];
}

function wall(dice: Dice, frame: Frame): object[] {
  const widthIn = dice.pick([3.5, 5.5, 7.625]);
  const yIn = dice.sixteenths(0, frame.depthIn);
  const build = dice.pick(['stud', 'block', 'brick']);
  const walls: object[] = [
    { kind: 'wall', build, from: { xIn: 0, yIn }, to: { xIn: frame.lengthIn, yIn }, widthIn },
  ];
  if (frame.leg !== null) {
    const xIn = dice.sixteenths(1, frame.leg.widthIn - 1);
    walls.push({
      kind: 'wall',
      build,
      from: { xIn, yIn: 0 },
      to: { xIn, yIn: -frame.leg.lengthIn },
      widthIn,
    });
  }
  return walls;
}

function piers(dice: Dice, frame: Frame): object[] {
  const count = dice.whole(2, 4);
  const build = dice.pick(['block', 'brick', 'concrete', 'stone', 'timber-post']);
  const pierAt = (centre: object, depthIn: number) => ({
    kind: 'pier',
    build,
    bed: dice.pick(['mortar', 'dry']),
    footprint: dice.chance(0.3)
      ? { kind: 'circle', centre, diameterIn: dice.sixteenths(4, 12) }
      : {
          kind: 'rectangle',
          centre,
          widthIn: dice.sixteenths(4, 12),
          depthIn,
          angleDeg: dice.pick([0, 0, 30]),
        },
  });
  const row = Array.from({ length: count }, (_, i) =>
    pierAt({ xIn: (frame.lengthIn * (i + 0.5)) / count, yIn: frame.depthIn / 2 }, frame.depthIn * 0.8),
  );
  if (frame.leg === null) return row;
  return [...row, pierAt({ xIn: frame.leg.widthIn / 2, yIn: -frame.leg.lengthIn * 0.8 }, 8)];
}

function legs(dice: Dice, frame: Frame): object[] {
  const across = Math.max(2, Math.round(frame.lengthIn / dice.whole(18, 36)));
  const inset = 2;
  const at = (xIn: number, yIn: number) => ({ kind: 'leg', centre: { xIn, yIn } });
  const drafts: object[] = [];
  for (let i = 0; i < across; i++) {
    const xIn = inset + ((frame.lengthIn - 2 * inset) * i) / (across - 1);
    drafts.push(at(xIn, inset), at(xIn, frame.depthIn - inset));
  }
  if (frame.leg !== null) {
    const yIn = inset - frame.leg.lengthIn;
    drafts.push(at(inset, yIn), at(frame.leg.widthIn - inset, yIn));
  }
  return drafts;
}

function brackets(dice: Dice, frame: Frame): object[] {
  const count = Math.max(2, Math.ceil(frame.lengthIn / dice.whole(12, 30)));
  const heelIn = dice.whole(6, 12);
  const reachIn = Math.min(30, dice.sixteenths(frame.depthIn * 0.4, frame.depthIn * 0.9));
  const ledger = {
    kind: 'ledger',
    from: { xIn: 0, yIn: frame.depthIn - 0.75 },
    to: { xIn: frame.lengthIn, yIn: frame.depthIn - 0.75 },
    widthIn: 1.5,
  };
  const row = {
    kind: 'bracket',
    roots: Array.from({ length: count }, (_, i) => ({
      xIn: (frame.lengthIn * (i + 0.5)) / count,
      yIn: frame.depthIn,
    })),
    directionDeg: 270,
    reachIn,
    seatWidthIn: dice.pick([1.5, 2, 3]),
    heelIn,
    arm: dice.pick(ARMS),
    backing: dice.pick([
      'timber-stud',
      'steel-post',
      'grouted-block',
      'hollow-block',
      'brick-veneer',
      'concrete',
      'unknown',
    ]),
    fixing: dice.pick(fixingsOf(heelIn - 1)),
    make: dice.pick(['rolled', 'rolled', 'bought', 'shop-welded', 'cast-concrete', 'timber']),
  };
  return dice.chance(0.7) ? [ledger, row] : [row];
}

const ARMS: readonly object[] = [
  { kind: 'flat-bar', widthIn: 2, depthIn: 0.5, yieldPsi: 36_000 },
  { kind: 'angle', legWidthIn: 2, legDepthIn: 2, wallIn: 0.25, yieldPsi: 36_000 },
  { kind: 'tee', flangeWidthIn: 2, depthIn: 2, wallIn: 0.25, yieldPsi: 36_000 },
  { kind: 'tube', widthIn: 1.5, depthIn: 1.5, wallIn: 0.12, yieldPsi: 46_000 },
  { kind: 'knee-brace', species: 'spf', widthIn: 1.5, depthIn: 3.5, dropIn: 10 },
];

function fixingsOf(leverIn: number): readonly object[] {
  const counts = { topCount: 2, totalCount: 4, leverIn };
  return [
    { kind: 'lags', diameterIn: 0.375, threadIn: 2.5, specificGravity: 0.42, ...counts },
    { kind: 'screws', diameterIn: 0.25, threadIn: 2, specificGravity: 0.5, ...counts, lateralLbf: 150 },
    { kind: 'through-bolts', diameterIn: 0.5, washerIn: 1.5, ...counts },
    { kind: 'rated', ratedLoadLbf: 400, ratedAtIn: 8, ratedBy: 'its maker' },
  ];
}

function bed(dice: Dice, frame: Frame): object[] {
  if (dice.chance(0.5)) return [{ kind: 'full-bed' }];
  const insetIn = Math.min(3, frame.depthIn / 4);
  const far = { xIn: frame.lengthIn - insetIn, yIn: frame.depthIn - insetIn };
  const corners = [
    { xIn: insetIn, yIn: insetIn },
    { xIn: far.xIn, yIn: insetIn },
    far,
    { xIn: insetIn, yIn: far.yIn },
  ];
  return [{ kind: 'full-bed', corners }];
}
