/** Whether a leg, a bracket or the person on top punches through the slab. */
import type { Bearing, BoundState, PieceAnalysis } from '../analysis';
import { printersOf } from '../analysis';
import type { CriticalPerimeter } from '../concrete';
import {
  criticalPerimeter,
  PHI_PLAIN_RATIO,
  PHI_SHEAR_RATIO,
  plainPunching,
  punchingStrength,
  punchingStress,
  sizeEffect,
} from '../concrete';
import type { Point } from '../outline';
import { directionAt, leftOf, moved } from '../outline';
import type { Line, Worked } from '../workings';
import { formula, readingLine } from '../workings';
import { caseWords, round2 } from './case-words';
import type { Check, CheckContext, CheckRule, Location } from './check';
import { factoredEffect } from './factored';
import type { ShearSection } from './shear-section';
import { shearSection } from './shear-section';
import { slabAheadIn } from './slab-ahead';
import { statesOf } from './states';

/** Factored load over punching strength (a ratio). Vu, phiVn: lbf. ACI 318-19 8.5.1.1. */
export const punchingRatio = formula<{ Vu: number; phiVn: number }>({
  symbol: 'ratio',
  label: 'Factored load on the patch over punching strength',
  formula: 'Vu / phiVn',
  units: { Vu: 'lbf', phiVn: 'lbf' },
  unit: '',
  source: 'ACI 318-19 8.5.1.1',
  compute: ({ Vu, phiVn }) => Vu / phiVn,
});

/** Factored load on a patch, lbf; see `factoredEffect`. */
export const factoredPatchLoad = factoredEffect('Vu', 'Factored load on the patch', 'lbf');

/** One check for the roving load, and one for the worst head of every support that bears on a patch. */
export const punchingShear: CheckRule = {
  id: 'punching-shear',
  title: 'Punching through',
  run: (context) => [...rovingChecks(context), ...supportChecks(context)],
};

/** A load on a small rectangle of the slab. */
interface Patch {
  readonly centre: Point;
  readonly angleRad: number;
  readonly widthIn: number;
  readonly depthIn: number;
}

/** A patch where it is: its clear distances to the edges near enough to matter, and the section under it. */
interface Spot {
  readonly patch: Patch;
  readonly gapXIn: number | null;
  readonly gapYIn: number | null;
  readonly section: ShearSection;
}

interface Punch {
  readonly patch: Patch;
  readonly load: Worked;
  readonly perimeter: CriticalPerimeter;
  readonly steps: readonly Worked[];
  readonly strength: Worked;
  readonly bySteel: boolean;
  readonly ratio: Worked;
}

function rovingChecks(context: CheckContext): Check[] {
  const { elastic, shape } = context.analysis;
  const seen = new Set<string>();
  let worst: { punch: Punch; words: string } | null = null;
  for (const { live, words } of elastic.low.cases) {
    if (live.kind !== 'roving') continue;
    const { centre, widthIn, depthIn } = live;
    const spot = spotOf(context.analysis, { centre, angleRad: shape.axisRad, widthIn, depthIn });
    // most places are alike: far from every edge, on the same steel
    const key = JSON.stringify([spot.gapXIn, spot.gapYIn, widthIn, depthIn, spot.section]);
    if (seen.has(key)) continue;
    seen.add(key);
    const punch = judge(context.analysis, spot, { D: 0, S: live.forceLbf });
    if (worst === null || punch.ratio.value > worst.punch.ratio.value) worst = { punch, words };
  }
  if (worst === null) return [];
  const { punch, words } = worst;
  const where = { kind: 'point', at: punch.patch.centre } as const;
  return [checkOf(context, punch, { where, words, readings: [], cautions: [] })];
}

function supportChecks(context: CheckContext): Check[] {
  const ids = new Set(
    context.analysis.bearings.flatMap(({ form, support }) => (form === 'patch' ? [support.id] : [])),
  );
  return [...ids].flatMap((id) => supportCheck(context, id));
}

/** The worst head or arm of one support, with what it carries in every state. */
function supportCheck(context: CheckContext, supportId: string): Check[] {
  const { analysis } = context;
  const found = analysis.bearings.flatMap((bearing, index) =>
    bearing.support.id !== supportId || bearing.form !== 'patch'
      ? []
      : statesOf(analysis).flatMap(({ state, words }) => {
          const push = worstPush(state, index);
          if (push.S <= 0) return [];
          const punch = judge(analysis, spotOf(analysis, patchOf(bearing)), push);
          return [{ punch, bearing, push, words, load: caseWords(state, push.caseId) }];
        }),
  );
  const [first] = found;
  if (first === undefined) return [];
  const worst = found.reduce((a, b) => (b.punch.ratio.value > a.punch.ratio.value ? b : a), first);
  const { bearing } = worst;
  return [
    checkOf(context, worst.punch, {
      where: { kind: 'support', supportId, at: bearing.centre },
      words: `${bearing.words} under ${worst.load}`,
      readings: found
        .filter((one) => one.bearing === bearing)
        .map(({ words, push }) =>
          readingLine({
            symbol: 'R',
            label: `Service push of ${bearing.words}, ${words}`,
            value: push.S,
            unit: 'lbf',
            from: 'plate engine, one-sided supports',
          }),
        ),
      cautions: bearing.part === 'arm' ? ['The arm is taken as pushing evenly over its whole length.'] : [],
    }),
  ];
}

function checkOf(
  { job, analysis }: CheckContext,
  punch: Punch,
  say: {
    readonly where: Location;
    readonly words: string;
    readonly readings: readonly Line[];
    readonly cautions: readonly string[];
  },
): Check {
  const { patch, load, strength, steps, ratio, bySteel, perimeter } = punch;
  const { length } = printersOf(job);
  const holds = ratio.value <= 1;
  const patchWords = `${length(patch.widthIn)} by ${length(patch.depthIn)} ${PLACE_WORDS[perimeter.place]}`;
  return {
    id: punchingShear.id,
    title: punchingShear.title,
    pieceId: analysis.piece.id,
    where: say.where,
    demand: { value: load.value, unit: 'lbf' },
    capacity: { value: strength.value, unit: 'lbf' },
    ratio: ratio.value,
    level: holds ? (bySteel ? 'steel' : 'holds') : 'change',
    words: holds
      ? `Nothing punches through: ${say.words}, on ${patchWords}, uses ${round2(ratio.value)} of what the slab can carry.`
      : `It may punch through: ${say.words}, on ${patchWords}, is ${round2(ratio.value)} times what the slab can carry.`,
    needs: holds ? [] : ['thickness', 'support'],
    workings: [...say.readings, ...[load, ...steps, strength, ratio].map(({ line }) => line)],
    cautions: say.cautions,
  };
}

const PLACE_WORDS = { inside: 'inside the slab', edge: 'at an edge', corner: 'at a corner' } as const;

/** Largest factored push of one bearing over all cases, with its lasting part, and the case. */
function worstPush(state: BoundState, bearing: number): { D: number; S: number; caseId: string } {
  const D = state.cases[0]?.reactions[bearing]?.pushLbf ?? 0;
  let worst = { D, S: D, caseId: state.cases[0]?.id ?? '' };
  for (const { id, reactions } of state.cases) {
    const S = reactions[bearing]?.pushLbf ?? 0;
    if (factoredPatchLoad.compute({ D, S }) > factoredPatchLoad.compute(worst)) worst = { D, S, caseId: id };
  }
  return worst;
}

function judge(analysis: PieceAnalysis, spot: Spot, effect: { D: number; S: number }): Punch {
  const load = factoredPatchLoad({ D: effect.D, S: effect.S });
  const bySteel = steelOffers(analysis, spot);
  // a cracked section that has steel counts by its steel; whole concrete counts as plain, or by its steel if that is more, but it
  // only stands because of its steel where plain concrete alone would not
  const plain = plainOffer(analysis, spot);
  const standsPlain = !spot.section.isCracked && plain.strength.value >= load.value;
  const offers = spot.section.isCracked && bySteel.length > 0 ? bySteel : [plain, ...bySteel];
  const offer = offers.reduce((a, b) => (b.strength.value > a.strength.value ? b : a));
  const ratio = punchingRatio({ Vu: load.value, phiVn: offer.strength.value });
  return { patch: spot.patch, load, ...offer, bySteel: offer.bySteel && !standsPlain, ratio };
}

type Offer = Pick<Punch, 'perimeter' | 'steps' | 'strength' | 'bySteel'>;

function plainOffer({ concrete, piece }: PieceAnalysis, spot: Spot): Offer {
  const h = piece.thicknessIn;
  const perimeter = perimeterOf(spot, h);
  const strength = plainPunching({
    phi: PHI_PLAIN_RATIO,
    lambda: concrete.lambda,
    fc: concrete.strengthPsi,
    beta: perimeter.betaRatio,
    bo: perimeter.perimeter.value,
    h,
  });
  return { perimeter, steps: [perimeter.perimeter], strength, bySteel: false };
}

/** By the steel, where it runs both ways on the stretched side there: mean depth of the two. */
function steelOffers({ concrete }: PieceAnalysis, spot: Spot): Offer[] {
  const [first, second] = spot.section.steel;
  if (first === undefined || second === undefined) return [];
  const d = (first.depthIn + second.depthIn) / 2;
  const perimeter = perimeterOf(spot, d);
  const lambdas = sizeEffect({ d });
  const bo = perimeter.perimeter.value;
  const vc = punchingStress({
    beta: perimeter.betaRatio,
    alphas: perimeter.alphasRatio,
    d,
    bo,
    lambdas: lambdas.value,
    lambda: concrete.lambda,
    fc: concrete.strengthPsi,
  });
  const strength = punchingStrength({ phi: PHI_SHEAR_RATIO, vc: vc.value, bo, d });
  return [{ perimeter, steps: [perimeter.perimeter, lambdas, vc], strength, bySteel: true }];
}

function perimeterOf({ patch, gapXIn, gapYIn }: Spot, depthIn: number): CriticalPerimeter {
  return criticalPerimeter({
    sideXIn: patch.widthIn,
    sideYIn: patch.depthIn,
    depthIn,
    gapXIn,
    gapYIn,
  });
}

function spotOf(analysis: PieceAnalysis, patch: Patch): Spot {
  // an edge further off than this cannot shorten the perimeter
  const farIn = patch.widthIn + patch.depthIn + 3 * analysis.piece.thicknessIn;
  const gapIn = (wayRad: number, sideIn: number): number | null => {
    const slabIn = Math.min(
      slabAheadIn(analysis, patch.centre, wayRad),
      slabAheadIn(analysis, patch.centre, wayRad + Math.PI),
    );
    const clearIn = Math.max(0, slabIn - sideIn / 2);
    return clearIn > farIn ? null : clearIn;
  };
  return {
    patch,
    gapXIn: gapIn(patch.angleRad, patch.widthIn),
    gapYIn: gapIn(patch.angleRad + Math.PI / 2, patch.depthIn),
    section: shearSection(analysis, patch.centre),
  };
}

/** The part of a leg's head or an arm that the slab covers, in the support's own directions. */
function patchOf({ support, corners }: Bearing): Patch {
  const angleDeg =
    support.kind === 'bracket' ? support.directionDeg : support.kind === 'leg' ? support.angleDeg : 0;
  const angleRad = (angleDeg * Math.PI) / 180;
  const u = directionAt(angleRad);
  const v = leftOf(u);
  const along = corners.map((p) => p.xIn * u.x + p.yIn * u.y);
  const across = corners.map((p) => p.xIn * v.x + p.yIn * v.y);
  const middle = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2;
  const extent = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
  const origin = { xIn: 0, yIn: 0 };
  return {
    centre: moved(moved(origin, u, middle(along)), v, middle(across)),
    angleRad,
    widthIn: extent(along),
    depthIn: extent(across),
  };
}
