/** Enough steel, close enough together, and covered: what a slab wants against shrinkage and surprise. */
import type { PieceAnalysis, SteelLayer } from '../analysis';
import { layerAcross, printersOf, steelLayers } from '../analysis';
import { maximumMainSpacing, maximumShrinkageSpacing, minimumSteel } from '../concrete';
import type { Worked } from '../workings';
import { formula, readingLine } from '../workings';
import { round2 } from './case-words';
import type { Check, CheckContext, CheckRule } from './check';
import { wayWords } from './place-words';
import { carriedDemands } from './steel-demands';

/** Steel at hand over the least steel (a ratio). As, Asmin: in2 an inch of width. ACI 318-19 7.6.1.1, 24.4.3.2. */
export const steelShareRatio = formula<{ As: number; Asmin: number }>({
  symbol: 'share',
  label: 'Steel at hand over the least steel',
  formula: 'As / Asmin',
  units: { As: 'in2/in', Asmin: 'in2/in' },
  unit: '',
  source: 'ACI 318-19 7.6.1.1, 24.4.3.2',
  compute: ({ As, Asmin }) => As / Asmin,
});

/** ACI 318-19 Table 20.5.1.3.1, slabs cast in place, #11 and smaller indoors; #5 and smaller to weather. */
const CODE_COVER_IN = { indoors: 0.75, outdoors: 1.5 } as const;
const HALF_TURN_RAD = Math.PI / 2;
/** Bars within this of the bending direction carry. */
const CARRIES_WITHIN_RAD = Math.PI / 4;

/** Only informs: a piece short of it keeps its rung and is told so. */
export const minimumSteelRule: CheckRule = {
  id: 'minimum-steel',
  title: 'Least steel and its spacing',
  run: (context) => {
    const steel = steelLayers(context.analysis.piece);
    return steel.length === 0 ? [] : [judge(context, steel)];
  },
};

interface WaySteel {
  readonly words: string;
  readonly areaIn2PerIn: number;
  readonly share: Worked;
}

function judge(context: CheckContext, steel: readonly SteelLayer[]): Check {
  const { analysis } = context;
  const { piece, shape } = analysis;
  const least = minimumSteel({ h: piece.thicknessIn });
  const firstRad = steel[0]?.barRad ?? 0;
  const ways = [firstRad, firstRad + HALF_TURN_RAD].map((rad): WaySteel => {
    const areaIn2PerIn = steel.reduce(
      (sum, layer) => sum + (layerAcross(layer, rad, null)?.areaIn2PerIn ?? 0),
      0,
    );
    return {
      words: wayWords(rad, shape.axisRad),
      areaIn2PerIn,
      share: steelShareRatio({ As: areaIn2PerIn, Asmin: least.value }),
    };
  });
  const poorest = ways.reduce((a, b) => (b.areaIn2PerIn < a.areaIn2PerIn ? b : a));
  const isShort = poorest.share.value < 1;
  const spacing = spacingOf(context, steel);
  return {
    id: minimumSteelRule.id,
    title: minimumSteelRule.title,
    pieceId: piece.id,
    where: { kind: 'piece' },
    demand: { value: least.value * IN_PER_FT, unit: 'in2/ft' },
    capacity: { value: poorest.areaIn2PerIn * IN_PER_FT, unit: 'in2/ft' },
    ratio: 0,
    level: analysis.cracked === null ? 'holds' : 'steel',
    words: wordsOf(poorest),
    needs: [],
    workings: [
      least.line,
      ...ways.flatMap(({ words, areaIn2PerIn, share }) => [
        readingLine({
          symbol: 'As',
          label: `Steel that runs ${words}, an inch of width`,
          value: areaIn2PerIn,
          unit: 'in2/in',
          from: 'as drawn; steel at an angle counts by the fourth power of its cosine',
        }),
        share.line,
      ]),
      ...spacing.steps.map(({ line }) => line),
    ],
    cautions: [
      ...(isShort
        ? [
            'Less than the least steel of ACI 318-19 24.4.3.2: fine cracks from drying are likelier. It is not refused for that.',
          ]
        : []),
      ...spacing.cautions,
      ...coverCautions(context, steel),
    ],
  };
}

const IN_PER_FT = 12;

function wordsOf({ words, areaIn2PerIn, share }: WaySteel): string {
  if (areaIn2PerIn === 0) return `No steel runs ${words} to hold shrinkage cracks together.`;
  return share.value < 1
    ? `The steel that runs ${words} is ${round2(share.value)} of the least that a slab this thick should have against shrinkage cracks.`
    : `There is steel enough against shrinkage cracks both ways (${round2(share.value)} times the least ${words}).`;
}

function spacingOf(
  { job, analysis }: CheckContext,
  steel: readonly SteelLayer[],
): { readonly steps: readonly Worked[]; readonly cautions: readonly string[] } {
  const { length } = printersOf(job);
  const main = maximumMainSpacing({ h: analysis.piece.thicknessIn });
  const shrinkage = maximumShrinkageSpacing({ h: analysis.piece.thicknessIn });
  const cautions = steel.flatMap((layer) => {
    const apart = `${layer.words}: ${length(layer.spacingIn)} apart`;
    if (layer.spacingIn > shrinkage.value) {
      return [`${apart}; ACI 318-19 24.4.3.3 asks for ${length(shrinkage.value)} or less (5 thicknesses).`];
    }
    if (carries(analysis, layer) && layer.spacingIn > main.value) {
      return [
        `${apart} where it carries; ACI 318-19 7.7.2.3 asks for ${length(main.value)} or less (3 thicknesses).`,
      ];
    }
    return [];
  });
  return { steps: [main, shrinkage], cautions: [...new Set(cautions)] };
}

/** Whether the slab leans on this layer: bars near the direction of a moment that steel must carry. */
function carries(analysis: PieceAnalysis, layer: SteelLayer): boolean {
  return carriedDemands(analysis).some(
    ({ barRad }) => Math.abs(Math.cos(barRad - layer.barRad)) > Math.cos(CARRIES_WITHIN_RAD),
  );
}

function coverCautions({ job, analysis, limits }: CheckContext, steel: readonly SteelLayer[]): string[] {
  const { piece } = analysis;
  const { length } = printersOf(job);
  const coverIn = Math.min(
    ...steel.map(
      ({ depthFromTopIn, barIn }) => Math.min(depthFromTopIn, piece.thicknessIn - depthFromTopIn) - barIn / 2,
    ),
  );
  const leastIn = piece.exposure === 'outdoors' ? limits.coverWetFaceIn : limits.coverUnderTopIn;
  const codeIn = CODE_COVER_IN[piece.exposure];
  if (coverIn < leastIn - 1e-9) {
    return [
      `Only ${length(coverIn)} of concrete covers the steel; ${length(leastIn)} is common practice for a thin top, and ACI 318-19 20.5.1.3.1 asks for ${length(codeIn)}.`,
    ];
  }
  if (coverIn < codeIn - 1e-9) {
    return [
      `The cover of ${length(coverIn)} is common practice for a thin top, below the ${length(codeIn)} of ACI 318-19 20.5.1.3.1.`,
    ];
  }
  return [];
}
