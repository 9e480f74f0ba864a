/** Whether a slab that only rests on its supports can turn over. */
import type { Stability } from '../analysis';
import { printersOf } from '../analysis';
import { between } from '../outline';
import type { Line } from '../workings';
import { readingLine } from '../workings';
import { round2 } from './case-words';
import type { Check, CheckContext, CheckRule } from './check';
import { wallStrip } from './kern';
import type { Turn } from './turning';
import { TIPS_ALONE_RATIO, waysToTurn } from './turning';

/** A safety factor beyond this is not worth its decimals (a ratio). */
const PLENTY_RATIO = 10;

export const tipping: CheckRule = {
  id: 'tipping',
  title: 'Tipping',
  run: (context) => {
    const turns = waysToTurn(context);
    return turns.length === 0 ? [] : [judge(context, turns)];
  },
};

function judge(context: CheckContext, turns: readonly Turn[]): Check {
  const { analysis, limits } = context;
  const { stability } = analysis;
  const worst = turns.reduce((a, b) => (b.ratio > a.ratio ? b : a));
  const turnsOver = stability.kind !== 'stands';
  const byEngine = stability.kind === 'tips-alone' ? TIPS_ALONE_RATIO : turnsOver ? limits.tippingFactor : 0;
  const heldDown = stability.tied && !turnsOver;
  const ratio = heldDown ? 0 : Math.max(worst.ratio, byEngine);
  const fails = ratio > 1;
  const strip = wallStrip(analysis);
  return {
    id: tipping.id,
    title: tipping.title,
    pieceId: analysis.piece.id,
    where: { kind: 'point', at: between(worst.pivot.from, worst.pivot.to, 0.5) },
    demand: { value: worst.overturningLbfIn, unit: 'lbf-in' },
    capacity: { value: worst.rightingLbfIn, unit: 'lbf-in' },
    ratio,
    level: fails ? 'change' : 'holds',
    words: wordsOf(context, worst, stability, heldDown),
    needs: fails ? ['tie', 'corbel', 'support'] : [],
    workings: [...worst.lines, ...(strip?.lines ?? []), engineLine(stability)],
    cautions: [
      ...(fails || stability.tied ? ['Adhesive, mortar and grout are never counted as a tie.'] : []),
      ...(strip !== null && !strip.isWithinThird
        ? [
            'The weight lies outside the middle third of the wall: one face of the bearing lifts free under the slab alone.',
          ]
        : []),
    ],
  };
}

function wordsOf(
  { job, limits }: CheckContext,
  worst: Turn,
  stability: Stability,
  heldDown: boolean,
): string {
  const print = printersOf(job);
  const { rightingLbfIn: Mr, overturningLbfIn: Mo } = worst;
  const factor = Mr > PLENTY_RATIO * Mo ? `over ${PLENTY_RATIO}` : `${round2(Mr / Mo)}`;
  if (heldDown) {
    const loose =
      Mr <= 0
        ? 'loose it would tip off under its own weight'
        : Mo > 0
          ? `loose its safety factor would be ${factor}`
          : 'nothing lies past its supports';
    return `Its ties hold it down; ${loose}. The check of the ties says what each must take.`;
  }
  if (Mr <= 0) {
    return `It tips off under its own weight: the centre of gravity lies ${print.length(-worst.weightArmIn)} past the outer face of what carries it.`;
  }
  if (stability.kind !== 'stands') {
    const cause = stability.kind === 'tips-alone' ? 'under its own weight' : `under ${worst.loadWords}`;
    return `${stability.tied ? 'Even with its ties it' : 'It'} turns over ${cause}.`;
  }
  if (Mo === 0) return 'It cannot tip: every load lies within the outer faces of what carries it.';
  if (worst.ratio > 1) {
    return `It may tip under ${worst.loadWords}: safety factor ${factor}, ${limits.tippingFactor} is wanted of a loose slab.`;
  }
  return `It stays down under ${worst.loadWords}: safety factor ${factor}, ${limits.tippingFactor} is wanted of a loose slab.`;
}

const ENGINE_WORDS: { readonly [K in Stability['kind']]: string } = {
  stands: 'it stays on its supports in every load case',
  'tips-under-load': 'it turns over in a load case',
  'tips-alone': 'it turns over under its own weight',
  'no-support': 'nothing carries it',
};

/** What the plate engine found on its own, for the reader to hold against the statics. */
function engineLine({ kind }: Stability): Line {
  const reading = readingLine({
    symbol: 'turns over',
    label: `The plate engine beside it, on supports that push and do not pull, both soft and stiff: ${ENGINE_WORDS[kind]}`,
    value: kind === 'stands' ? 0 : 1,
    unit: '',
    from: 'plate engine',
  });
  return { ...reading, result: kind === 'stands' ? 'no' : 'yes' };
}
