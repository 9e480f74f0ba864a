/** Bending where the slab cracks: does the steel, at its true depth, carry what the concrete sheds? */
import type { PieceAnalysis, SteelLayer } from '../analysis';
import { layerAcross, printersOf, steelLayers, tensionLayers } from '../analysis';
import type { Line } from '../workings';
import { readingLine } from '../workings';
import { caseWords, round2 } from './case-words';
import type { Check, CheckContext, CheckRule, Need } from './check';
import { sortChecks } from './level';
import { faceWords, placeWords, wayWords } from './place-words';
import type { CarriedDemand } from './steel-demands';
import { carriedDemands } from './steel-demands';
import type { HeldSection, SteelStrength } from './steel-section';
import { heldSection, steelStrength } from './steel-section';

const NEEDS: readonly Need[] = ['steel', 'thickness', 'support', 'corbel'];
/** Steel nearer than this to where it would lie best counts as lying there. */
const SAME_DEPTH_IN = 1 / 16;

/** One check a face and direction of bars, worst first. */
export const bendingReinforced: CheckRule = {
  id: 'bending-reinforced',
  title: 'Bending, with steel',
  run: (context) => {
    const steel = steelLayers(context.analysis.piece);
    if (steel.length === 0) return [];
    return sortChecks(carriedDemands(context.analysis).map((demand) => judge(context, steel, demand)));
  },
};

function judge(context: CheckContext, steel: readonly SteelLayer[], demand: CarriedDemand): Check {
  const { analysis } = context;
  const layers = tensionLayers(steel, demand.face, analysis.piece.thicknessIn, demand.barRad, demand.at);
  const held = heldSection(analysis, layers, demand.face, demand.at);
  const strength = held === null ? null : strengthOf(analysis, held, demand);
  const holds = strength !== null && strength.ratio <= 1;
  const moved = holds ? null : inTensionFace(context, steel, demand);
  return {
    id: bendingReinforced.id,
    title: bendingReinforced.title,
    pieceId: analysis.piece.id,
    where: { kind: 'point', at: demand.at },
    demand: { value: strength?.neededLbfInPerIn ?? demand.factoredLbfInPerIn, unit: 'lbf-in/in' },
    capacity: { value: strength?.capacityLbfInPerIn ?? 0, unit: 'lbf-in/in' },
    // without steel that way the concrete stands alone, and it is that much short
    ratio: strength?.ratio ?? demand.shortOfPlainRatio,
    level: holds ? 'steel' : 'change',
    words: wordsOf(context, demand, held, strength),
    needs: holds ? [] : NEEDS,
    workings: [
      ...readingsOf(analysis, demand),
      ...(held?.lines ?? []),
      ...(strength?.lines ?? []),
      ...(moved?.lines ?? []),
    ],
    cautions: [
      ...cautionsOf(context, held, strength),
      ...(moved === null ? [] : [moved.words]),
      ...(analysis.cracked?.settled === false
        ? [
            'The cracked zone was still growing when the last pass was spent: read these figures with a margin.',
          ]
        : []),
    ],
  };
}

function strengthOf({ concrete }: PieceAnalysis, held: HeldSection, demand: CarriedDemand): SteelStrength {
  return steelStrength(held.section, demand.factoredLbfInPerIn, concrete.crackingMomentLbfInPerIn);
}

function wordsOf(
  context: CheckContext,
  demand: CarriedDemand,
  held: HeldSection | null,
  strength: SteelStrength | null,
): string {
  const { cracked, shape } = context.analysis;
  const way = wayWords(demand.barRad, shape.axisRad);
  const load = caseWords(cracked?.low ?? context.analysis.elastic.low, demand.caseId);
  const place = `${faceWords(demand.face)}, ${placeWords(context, demand.at)}, under ${load}`;
  if (held === null || strength === null) {
    return `It cracks ${place}, and no steel that runs ${way} holds on this side there.`;
  }
  const share = round2(strength.ratio);
  if (strength.ratio <= 1) {
    return `It cracks ${place}, and the steel that runs ${way} carries it, using ${share} of what it can.`;
  }
  const catches = strength.capacityLbfInPerIn >= demand.factoredLbfInPerIn;
  return catches && strength.isTensionControlled
    ? `It cracks ${place}, and the steel that runs ${way} is too weak to catch the crack as it opens: ${share} times what it can carry.`
    : `It cracks ${place}, and the steel that runs ${way} falls short: ${share} times what it can carry.`;
}

function cautionsOf(
  context: CheckContext,
  held: HeldSection | null,
  strength: SteelStrength | null,
): string[] {
  if (held === null || strength === null) return [];
  const { length } = printersOf(context.job);
  const { shareRatio, atHandIn, neededIn } = held.worst;
  const cautions = [...held.cautions];
  if (shareRatio < 1) {
    cautions.push(
      `The bars end ${length(atHandIn)} from there and need ${length(neededIn)} to take hold, so only ${round2(shareRatio)} of them counts; run them on or hook them.`,
    );
  }
  if (!strength.isTensionControlled) {
    cautions.push(
      'There is so much steel, or it lies so near the middle, that it hardly stretches before the concrete crushes: it counts at 0.65 of its strength and must carry 4/3 of the factored moment. Outside ACI 318-19 7.3.3.1.',
    );
  }
  return cautions;
}

/** What the same bars would do close under the stretched face; null where they lie there already or cannot. */
function inTensionFace(
  { job, limits, analysis }: CheckContext,
  steel: readonly SteelLayer[],
  demand: CarriedDemand,
): { readonly words: string; readonly lines: readonly Line[] } | null {
  const { piece, concrete } = analysis;
  const coverIn = piece.exposure === 'outdoors' ? limits.coverWetFaceIn : limits.coverUnderTopIn;
  const present = steel.flatMap((layer) => layerAcross(layer, demand.barRad, demand.at) ?? []);
  const bestIn = (layer: SteelLayer): number => {
    const fromFaceIn = coverIn + layer.barIn / 2;
    return demand.face === 'top' ? fromFaceIn : piece.thicknessIn - fromFaceIn;
  };
  const isMoved = present.some((layer) => Math.abs(layer.depthFromTopIn - bestIn(layer)) > SAME_DEPTH_IN);
  const fits = present.every((layer) => coverIn + layer.barIn / 2 < piece.thicknessIn / 2);
  if (!isMoved || !fits) return null;
  const moved = present.map((layer) => ({ ...layer, depthFromTopIn: bestIn(layer) }));
  const held = heldSection(analysis, moved, demand.face, demand.at);
  if (held === null) return null;
  const strength = steelStrength(held.section, demand.factoredLbfInPerIn, concrete.crackingMomentLbfInPerIn);
  const place = `${printersOf(job).length(coverIn)} ${demand.face === 'top' ? 'under the top' : 'above the underside'}`;
  const would = strength.ratio <= 1 ? 'would do' : 'would still fall short';
  return {
    words: `The same steel ${place} ${would} here (${round2(strength.ratio)}).`,
    lines: [...held.section.lines.filter(({ symbol }) => symbol === 'Mn'), ...strength.lines].map((line) => ({
      ...line,
      label: `The same steel ${place}: ${line.label}`,
    })),
  };
}

function readingsOf({ cracked }: PieceAnalysis, demand: CarriedDemand): Line[] {
  const from = 'plate engine, cracked zones softened, Wood-Armer moments (Wood 1968, Armer 1968)';
  const bends = demand.face === 'top' ? 'hogging' : 'sagging';
  const over = `averaged over ${round2(demand.averagedOverIn)} in`;
  const states = cracked === null ? [] : [cracked.low, cracked.high];
  return [
    ...states.map((state) =>
      readingLine({
        symbol: 'M',
        label: `Greatest service moment ${bends} once cracked, supports at their ${state.bound} stiffness`,
        value: (demand.face === 'top' ? state.hogging : state.sagging).momentLbfInPerIn,
        unit: 'lbf-in/in',
        from,
      }),
    ),
    readingLine({
      symbol: 'Ms',
      label: `Service moment on the bars, ${over}, worse of both stiffness bounds`,
      value: demand.serviceLbfInPerIn,
      unit: 'lbf-in/in',
      from,
    }),
    readingLine({
      symbol: 'Mu',
      label: `Factored moment on the bars (1.4D; 1.2D + 1.6L), ${over}, worse of both stiffness bounds`,
      value: demand.factoredLbfInPerIn,
      unit: 'lbf-in/in',
      from,
    }),
  ];
}
