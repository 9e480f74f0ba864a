/** What each tie must take to hold the slab down, against the rating of one tie. */
import type { LoadCase, PieceAnalysis } from '../analysis';
import { printersOf } from '../analysis';
import type { Point } from '../outline';
import { directionBetween, leftOf } from '../outline';
import { sentenceCase } from '../units';
import type { Line } from '../workings';
import { formula, readingLine } from '../workings';
import type { Check, CheckContext, CheckRule } from './check';
import type { SupportParts } from './states';
import { statesOf, supportParts } from './states';
import { waysToTurn } from './turning';

/** Below this a tie has nothing to do, lbf. */
const NOTHING_LBF = 1;

/** Pull that one tie must be good for, by the engine, lbf. T: worst pull of one tie in service, lbf; FS: a ratio. */
export const factoredTie = formula<{ T: number; FS: number }>({
  symbol: 'Te',
  label: 'Worst pull of one tie in service, with its safety factor',
  formula: 'FS * T',
  units: { T: 'lbf', FS: '' },
  unit: 'lbf',
  source: 'plate engine; factor 1.5: common practice, no source',
  compute: ({ T, FS }) => FS * T,
});

/**
 * Pull of all ties together that brings the safety factor to FS, lbf, not below nothing. Mo, Mr: overturning and righting moment,
 * lbf-in, weight past the pivot (Mr below nothing) overturns; z: ties behind the pivot, in. Statics.
 */
export const tieTotal = formula<{ FS: number; Mo: number; Mr: number; z: number }>({
  symbol: 'Tall',
  label: 'Pull of all ties together by hand, to bring the safety factor up',
  formula: 'max(0, (FS * (Mo + max(0, -Mr)) - max(0, Mr)) / z)',
  units: { FS: '', Mo: 'lbf-in', Mr: 'lbf-in', z: 'in' },
  unit: 'lbf',
  source: 'statics; factor 1.5: common practice, no source',
  compute: ({ FS, Mo, Mr, z }) => Math.max(0, (FS * (Mo + Math.max(0, -Mr)) - Math.max(0, Mr)) / z),
});

/** Share of the most loaded tie by hand, lbf. Tall: lbf; s: its share of the whole (a ratio). */
export const tieShare = formula<{ Tall: number; s: number }>({
  symbol: 'Th',
  label: 'Share of the most loaded tie, in proportion as the plate engine shares it',
  formula: 's * Tall',
  units: { Tall: 'lbf', s: '' },
  unit: 'lbf',
  source: 'statics; all of it on one tie where the engine finds no pull: common practice, no source',
  compute: ({ Tall, s }) => s * Tall,
});

/** Pull over rating of one tie (a ratio). Te, Th, rating: lbf. */
export const tieRatio = formula<{ Te: number; Th: number; rating: number }>({
  symbol: 'ratio',
  label: 'Larger of both pulls over the rating of one tie',
  formula: 'max(Te, Th) / rating',
  units: { Te: 'lbf', Th: 'lbf', rating: 'lbf' },
  unit: '',
  source: "rating as the tie's maker states it in the job",
  compute: ({ Te, Th, rating }) => Math.max(Te, Th) / rating,
});

/** Ties nearer to the pivot than this hold nothing down, in. */
const LEAST_ARM_IN = 0.01;

/** Ratio of a tie that has a pull to take and a rating of nothing. */
const NO_RATING_RATIO = 9.99;

export const tieForce: CheckRule = {
  id: 'tie-force',
  title: 'Pull on the ties',
  run: (context) =>
    supportParts(context.analysis).flatMap((parts) =>
      parts.support.hold.kind === 'tied' ? [judge(context, parts)] : [],
    ),
};

function judge(context: CheckContext, parts: SupportParts): Check {
  const { job, analysis, limits } = context;
  const { support } = parts;
  const hold = support.hold.kind === 'tied' ? support.hold : null;
  const rating = hold?.ratingLbf ?? null;
  const print = printersOf(job);
  const ties = tiePoints(analysis, parts.parts);
  const pull = worstPull(analysis, parts.parts);
  const Te = factoredTie({ T: pull.worstLbf, FS: limits.tieFactor });
  const hand = handPull(context, ties, pull.share);
  const wanted = Math.max(Te.value, hand?.shareLbf ?? 0);
  const idle = wanted < NOTHING_LBF;
  const ratio =
    idle || rating === null
      ? null
      : rating > 0
        ? tieRatio({ Te: Te.value, Th: hand?.shareLbf ?? 0, rating })
        : null;
  const over = !idle && (ratio === null || ratio.value > 1);
  const name = sentenceCase(parts.words);
  const count =
    ties.length === 1 ? 'its one tie' : `${ties.length} ties at ${print.length(hold?.spacingIn ?? 0)}`;
  const words = idle
    ? `No load pulls on the ties of ${parts.words}: the slab stays down without them.`
    : rating === null
      ? `Ask for ties at ${parts.words} that are rated for ${print.force(wanted)} each in pull; the job states no rating.`
      : over
        ? `${name}: ${ties.length === 1 ? count : `one of ${count}`} must take ${print.force(wanted)}, more than the ${print.force(rating)} it is rated for; set them closer or take a stronger one.`
        : `${name}: ${ties.length === 1 ? count : `each of ${count}`} must take ${print.force(wanted)} of the ${print.force(rating)} it is rated for, under ${pull.words}.`;
  return {
    id: tieForce.id,
    title: tieForce.title,
    pieceId: analysis.piece.id,
    where: { kind: 'support', supportId: support.id, at: pull.at ?? ties[0] ?? parts.at },
    demand: { value: idle ? 0 : wanted, unit: 'lbf' },
    capacity: { value: rating ?? 0, unit: 'lbf' },
    ratio: idle ? 0 : (ratio?.value ?? (rating === null ? 0 : NO_RATING_RATIO)),
    level: over ? 'change' : 'holds',
    words,
    needs: over ? ['tie'] : [],
    workings: [...pull.lines, Te.line, ...(hand?.lines ?? []), ...(ratio === null ? [] : [ratio.line])],
    cautions: [
      'A tie is a bolt, screw, strap or dowel with a rating in pull. Adhesive, mortar and grout are never counted.',
      ...(ties.length === 0 ? [`No tie of ${parts.words} falls under the slab as drawn.`] : []),
    ],
  };
}

function tiePoints({ bearings, contacts }: PieceAnalysis, parts: readonly number[]): Point[] {
  return parts.flatMap((part) =>
    bearings[part]!.contacts.flatMap((i) => (contacts[i]!.acts === 'pull' ? [contacts[i]!.at] : [])),
  );
}

interface Pull {
  readonly worstLbf: number;
  /** Share of the most loaded tie in all that the support's ties take in that case; 1 where none pulls. */
  readonly share: number;
  readonly words: string;
  readonly at: Point | null;
  readonly lines: readonly Line[];
}

function worstPull(analysis: PieceAnalysis, parts: readonly number[]): Pull {
  const { contacts, bearings } = analysis;
  const own = parts.flatMap((part) => bearings[part]!.contacts.filter((i) => contacts[i]!.acts === 'pull'));
  const pullsOf = (loadCase: LoadCase) => own.map((i) => -loadCase.contactLbf[i]!);
  let worst: Omit<Pull, 'lines'> = { worstLbf: 0, share: 1, words: 'any load', at: null };
  const lines = statesOf(analysis).map(({ state, words }) => {
    let most = { lbf: 0, words: 'no case pulls' };
    for (const loadCase of state.cases) {
      const pulls = pullsOf(loadCase);
      const lbf = Math.max(0, ...pulls);
      if (lbf > most.lbf) most = { lbf, words: loadCase.words };
      if (lbf > worst.worstLbf) {
        const all = pulls.reduce((sum, one) => sum + one, 0);
        worst = {
          worstLbf: lbf,
          share: lbf / all,
          words: loadCase.words,
          at: contacts[own[pulls.indexOf(lbf)]!]!.at,
        };
      }
    }
    return readingLine({
      symbol: 'T',
      label: `Worst pull of one tie, ${words}, under ${most.words}`,
      value: most.lbf,
      unit: 'lbf',
      from: 'plate engine, ties pull and bearings push',
    });
  });
  return { ...worst, lines };
}

/** Statics about every side over which the slab could turn, the ties at their mean distance behind it; the most counts. */
function handPull(
  context: CheckContext,
  ties: readonly Point[],
  share: number,
): { readonly shareLbf: number; readonly lines: readonly Line[] } | null {
  const totals = waysToTurn(context).flatMap(({ pivot, overturningLbfIn, rightingLbfIn }) => {
    const inward = leftOf(directionBetween(pivot.from, pivot.to));
    const arms = ties.map((p) => (p.xIn - pivot.from.xIn) * inward.x + (p.yIn - pivot.from.yIn) * inward.y);
    const z = arms.reduce((sum, arm) => sum + arm, 0) / arms.length;
    if (!(z > LEAST_ARM_IN)) return [];
    return [tieTotal({ FS: context.limits.tieFactor, Mo: overturningLbfIn, Mr: rightingLbfIn, z })];
  });
  if (totals.length === 0) return null;
  const Tall = totals.reduce((a, b) => (b.value > a.value ? b : a));
  const Th = tieShare({ Tall: Tall.value, s: share });
  return { shareLbf: Th.value, lines: [Tall.line, Th.line] };
}
