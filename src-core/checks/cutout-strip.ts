/** The narrow strip of concrete between a cutout and the edge: by hand as a plank, beside what the plate gives. */
import type { PieceAnalysis } from '../analysis';
import { carriedWeights, printersOf, steelLayers } from '../analysis';
import { polygonPerimeterIn } from '../outline';
import type { Worked } from '../workings';
import { formula, readingLine } from '../workings';
import { round2 } from './case-words';
import type { Check, CheckContext, CheckRule } from './check';
import type { NarrowStrip, StripSide } from './narrow-strips';
import { narrowStrips } from './narrow-strips';
import { placeWords } from './place-words';

type Symbols<Name extends string> = Readonly<Record<Name, number>>;

/**
 * Middle moment of a strip that spans the length of a cutout alone, lbf-in in an inch of its width. q: self weight and
 * spread load, psi; b: width, in; W: weight on the cutout's rim, lbf; p: length of the rim, in; P: load at its middle, lbf;
 * L: length of the cutout along the strip, in. Statics, simply supported.
 */
export const cutoutStripMoment = formula<Symbols<'q' | 'b' | 'W' | 'p' | 'P' | 'L'>>({
  symbol: 'Mstrip',
  label:
    'By hand, the strip as a plank as long as the cutout, with its share of the cut load and the whole load on it',
  formula: '((q * b + W / p) * L^2 / 8 + P * L / 4) / b',
  units: { q: 'psi', b: 'in', W: 'lbf', p: 'in', P: 'lbf', L: 'in' },
  unit: 'lbf-in/in',
  source: 'statics, simply supported beam',
  compute: ({ q, b, W, p, P, L }) => (((q * b + W / p) * L ** 2) / 8 + (P * L) / 4) / b,
});

/** Moment in the strip over the cracking limit (a ratio). M, Mlim: lbf-in in an inch of width. ACI 318-19 Table 24.2.3.5. */
export const cutoutStripRatio = formula<Symbols<'M' | 'Mlim'>>({
  symbol: 'ratio',
  label: 'Moment in the strip over the cracking limit',
  formula: 'M / Mlim',
  units: { M: 'lbf-in/in', Mlim: 'lbf-in/in' },
  unit: '',
  source: 'ACI 318-19 Table 24.2.3.5: uncracked while Ma <= (2/3)Mcr',
  compute: ({ M, Mlim }) => M / Mlim,
});

/** One check a cutout that has a narrow strip beside it: the strip that bends most. */
export const cutoutStrip: CheckRule = {
  id: 'cutout-strip',
  title: 'Strip beside a cutout',
  run: (context) => {
    const strips = narrowStrips(context.analysis, context.limits.narrowStripIn);
    const worst = new Map<number, NarrowStrip>();
    for (const strip of strips) {
      const known = worst.get(strip.opening);
      if (known === undefined || strip.momentLbfInPerIn > known.momentLbfInPerIn)
        worst.set(strip.opening, strip);
    }
    return [...worst.values()].map((strip) => judge(context, strip));
  },
};

function judge(context: CheckContext, strip: NarrowStrip): Check {
  const { piece, concrete } = context.analysis;
  const Mlim = concrete.crackingLimitLbfInPerIn;
  const byHand = stripByHand(context.analysis, strip);
  const ratio = cutoutStripRatio({ M: strip.momentLbfInPerIn, Mlim });
  const cracks = ratio.value > 1;
  const hasSteel = steelLayers(piece).length > 0;
  return {
    id: cutoutStrip.id,
    title: cutoutStrip.title,
    pieceId: piece.id,
    where: { kind: 'point', at: strip.at },
    demand: { value: strip.momentLbfInPerIn, unit: 'lbf-in/in' },
    capacity: { value: Mlim, unit: 'lbf-in/in' },
    ratio: ratio.value,
    level: cracks ? (hasSteel ? 'steel' : 'change') : 'holds',
    words: wordsOf(context, strip, ratio.value, byHand.value / Mlim),
    needs: cracks && !hasSteel ? ['steel', 'support', 'thickness'] : [],
    workings: [
      readingLine({
        symbol: 'M',
        label: `Worst moment in the strip, mean over its ${round2(strip.widthIn)} in, worse of both stiffness bounds`,
        value: strip.momentLbfInPerIn,
        unit: 'lbf-in/in',
        from: 'plate engine, Kirchhoff plate on one-sided supports, worst of all cases at each point',
      }),
      ...concrete.workings,
      ratio.line,
      { ...byHand.line, label: `${byHand.line.label}; ${reasonOf(strip, byHand)}` },
    ],
    cautions: [
      ...(strip.widthIn < piece.thicknessIn
        ? [
            'The strip is narrower than the slab is thick: it breaks off easily when the forms come off or the sink goes in.',
          ]
        : []),
      ...(byHand.value > Mlim && !cracks
        ? [
            'Alone the strip would crack: it leans on the slab at its ends and on what lies under it, so keep those as drawn.',
          ]
        : []),
    ],
  };
}

function stripByHand(analysis: PieceAnalysis, strip: NarrowStrip): Worked {
  const { piece, shape, weight, roving, elastic } = analysis;
  const hole = shape.holes[strip.opening] ?? [];
  const W = carriedWeights(piece, shape.holes)
    .filter(({ opening }) => opening === strip.opening)
    .reduce((sum, { lb }) => sum + lb, 0);
  const spread = elastic.low.cases.find(({ live }) => live.kind === 'spread')?.live;
  const spreadPsi = roving.forceLbf > 0 || spread?.kind !== 'spread' ? 0 : spread.psf / IN2_PER_FT2;
  return cutoutStripMoment({
    q: weight.slabLb / weight.areaIn2 + spreadPsi,
    b: strip.widthIn,
    W,
    p: polygonPerimeterIn(hole),
    P: roving.forceLbf,
    L: strip.lengthIn,
  });
}

const IN2_PER_FT2 = 144;

function reasonOf(strip: NarrowStrip, byHand: Worked): string {
  const percent = Math.round(Math.abs(strip.momentLbfInPerIn / byHand.value - 1) * 100);
  return strip.momentLbfInPerIn <= byHand.value
    ? `the plate is ${percent} % below it, because the slab holds the ends of the strip and shares its load, and what lies under it helps`
    : `the plate is ${percent} % above it, because the strip also bends with the whole slab across the cutout`;
}

const SIDE_WORDS: { readonly [S in StripSide]: string } = {
  front: 'in front of',
  back: 'behind',
  left: 'to the left of',
  right: 'to the right of',
};

function wordsOf(context: CheckContext, strip: NarrowStrip, ratio: number, alone: number): string {
  const { length } = printersOf(context.job);
  const cutout = context.analysis.piece.cutouts[strip.opening];
  const name = cutout?.name ?? `cutout ${cutout?.id}`;
  const which = `The ${length(strip.widthIn)} strip ${SIDE_WORDS[strip.side]} ${name}`;
  const place = placeWords(context, strip.at);
  return ratio <= 1
    ? `${which} bends most ${place} and uses ${round2(ratio)} of what plain concrete takes uncracked (${round2(alone)} as a plank on its own).`
    : `${which} will want to crack ${place}: ${round2(ratio)} times what plain concrete takes uncracked (${round2(alone)} as a plank on its own).`;
}
