/** Steel where the slab cracks: what is there moved to the stretched face, welded mesh, or bars both ways. */
import type { Face, PieceAnalysis } from '../analysis';
import type { Piece, Reinforcement } from '../job';
import { boundingBox, turned } from '../outline';
import type { SteelChoice } from './steel-choices';
import { barChoices, meshChoices } from './steel-choices';
import { depthRange, overlaps } from './steel-depth';
import type { Ladder, LadderContext, Step, StepWords } from './step';
import { counted, freshId, ladder } from './step';

/** Least concrete left beyond the far side of a layer, in. Common practice, no source. */
const LEAST_BEYOND_IN = 0.25;
/** Size in which welded mesh is sold, ft2: 5 by 10 ft. Common practice, no source. */
const SHEET_IN2 = 50 * 144;

/** Moved steel, mesh, straight bars, hooked bars in the face that cracks; then mesh and bars in both faces. */
export function steelLadder(context: LadderContext): Ladder {
  const { analysis } = context;
  if (analysis === null) return ladder('steel', [], 0, 'It cannot be judged before something carries it.');
  const faces = crackedFaces(analysis);
  const system = context.job.shownIn;
  const one = [
    [movedRun(context, faces)],
    [runOf(context, faces, meshChoices(system))],
    [runOf(context, faces, barChoices(system, false))],
    [runOf(context, faces, barChoices(system, true))],
  ];
  const both: readonly Face[] = ['top', 'bottom'];
  const two =
    faces.length === 2
      ? []
      : [[runOf(context, both, meshChoices(system))], [runOf(context, both, barChoices(system, true))]];
  const leastParts = one[0]![0]!.length > 0 ? 0 : faces.length;
  return ladder('steel', [...one, ...two], leastParts, 'The slab is too thin to hold steel with cover.');
}

/** Faces where a service moment, whole or cracked, passes the cracking limit; the harder pressed where none does. */
export function crackedFaces({ elastic, cracked, concrete }: PieceAnalysis): Face[] {
  const states = [elastic.low, elastic.high, ...(cracked === null ? [] : [cracked.low, cracked.high])];
  const most = (face: Face) =>
    Math.max(...states.map((s) => (face === 'top' ? s.hogging : s.sagging).momentLbfInPerIn));
  const limit = concrete.crackingLimitLbfInPerIn;
  const faces = (['top', 'bottom'] as const).filter((face) => most(face) > limit);
  if (faces.length > 0) return faces;
  return most('top') > most('bottom') ? ['top'] : ['bottom'];
}

function runOf(context: LadderContext, faces: readonly Face[], choices: readonly SteelChoice[]): Step[] {
  return choices.flatMap((choice) => steelStep(context, faces, choice) ?? []);
}

function steelStep(context: LadderContext, faces: readonly Face[], choice: SteelChoice): Step | null {
  const { job, piece, analysis } = context;
  let changed = piece;
  for (const face of faces) {
    const coverIn = coverOf(context, face);
    const layers = choice.layers({
      face,
      coverIn,
      thicknessIn: piece.thicknessIn,
      mainDeg: mainDeg(analysis!, face),
      id: (stem) => freshId(job, changed, stem),
    });
    const own = layers.map(depthRange);
    const added = changed.reinforcement.slice(piece.reinforcement.length);
    const hasRoom = own.every(
      ({ fromIn, toIn }) =>
        fromIn >= LEAST_BEYOND_IN - 1e-9 && toIn <= piece.thicknessIn - LEAST_BEYOND_IN + 1e-9,
    );
    if (!hasRoom || added.some((other) => own.some((range) => overlaps(range, depthRange(other)))))
      return null;
    changed = { ...changed, reinforcement: [...changed.reinforcement, ...layers] };
  }
  const added = changed.reinforcement.slice(piece.reinforcement.length);
  const inTheWay = piece.reinforcement.filter(
    (steel) => isMetal(steel) && added.some((own) => overlaps(depthRange(own), depthRange(steel))),
  );
  const place = `${choice.title}, ${faces.map((face) => placeWords(context, face)).join(' and ')}`;
  const instead = inTheWay.map((steel) => steel.label ?? steel.id).join(', ');
  const title = instead === '' ? place : `${place}, in place of ${instead}`;
  const words: StepWords = {
    title: `${choice.isBars ? 'Bars' : 'Mesh'}: ${title}`,
    ...partsOf(context, choice, faces.length),
  };
  return {
    kind: 'steel',
    piece: { ...changed, reinforcement: changed.reinforcement.filter((steel) => !inTheWay.includes(steel)) },
    ratedSupportIds: [],
    words: () => words,
    givesLess: false,
    shortTitle: title,
  };
}

/** What is there, moved to the face that cracks. Only where one face does. */
function movedRun(context: LadderContext, faces: readonly Face[]): Step[] {
  const { piece, print } = context;
  const face = faces[0];
  if (faces.length !== 1 || face === undefined) return [];
  const moved = piece.reinforcement.map((steel) => movedTo(steel, piece, face, coverOf(context, face)));
  const changed = moved.filter((steel, i) => steel !== piece.reinforcement[i]);
  if (changed.length === 0) return [];
  const ranges = moved.filter(isMetal).map(depthRange);
  if (ranges.some((a, i) => ranges.some((b, j) => i < j && overlaps(a, b)))) return [];
  const names = changed.map((steel) => steel.label ?? steel.id).join(', ');
  const title = `Move ${names} to ${print.length(coverOf(context, face))} ${face === 'top' ? 'below the top' : 'above the underside'}`;
  return [
    {
      kind: 'steel',
      piece: { ...piece, reinforcement: moved },
      ratedSupportIds: [],
      words: () => ({ title, parts: 0, partsWords: [] }),
      givesLess: false,
      shortTitle: title,
    },
  ];
}

function movedTo(steel: Reinforcement, piece: Piece, face: Face, coverIn: number): Reinforcement {
  if (!isMetal(steel)) return steel;
  const { fromIn, toIn } = depthRange(steel);
  const byIn = face === 'top' ? coverIn - fromIn : piece.thicknessIn - coverIn - toIn;
  const isTowardFace = face === 'top' ? byIn < -1 / 32 : byIn > 1 / 32;
  return isTowardFace ? { ...steel, depthIn: steel.depthIn + byIn } : steel;
}

function isMetal(steel: Reinforcement): steel is Extract<Reinforcement, { kind: 'bars' | 'mesh' }> {
  return steel.kind === 'bars' || steel.kind === 'mesh';
}

/** Rain reaches the top; the soffit of an outdoor slab stays the drier face. */
function coverOf({ piece, limits }: LadderContext, face: Face): number {
  return piece.exposure === 'outdoors' && face === 'top' ? limits.coverWetFaceIn : limits.coverUnderTopIn;
}

function placeWords(context: LadderContext, face: Face): string {
  const cover = context.print.length(coverOf(context, face));
  return face === 'top' ? `${cover} below the top` : `${cover} above the underside`;
}

/** The slab's own direction, or across it, whichever lies nearer to the bending that governs the face; degrees. */
function mainDeg({ elastic, shape }: PieceAnalysis, face: Face): number {
  const pick = (state: PieceAnalysis['elastic']['low']) => (face === 'top' ? state.hogging : state.sagging);
  const [low, high] = [pick(elastic.low), pick(elastic.high)];
  const worst = high.momentLbfInPerIn > low.momentLbfInPerIn ? high : low;
  const isAlong = Math.abs(Math.cos(worst.bendingRad - shape.axisRad)) >= Math.SQRT1_2;
  const deg = (shape.axisRad * 180) / Math.PI + (isAlong ? 0 : 90);
  return Math.round(deg * 1e6) / 1e6;
}

function partsOf(
  { analysis, piece }: LadderContext,
  choice: SteelChoice,
  faceCount: number,
): { parts: number; partsWords: string[] } {
  if (!choice.isBars) {
    const sheets = faceCount * Math.max(1, Math.ceil((analysis?.weight.areaIn2 ?? 0) / SHEET_IN2));
    return { parts: sheets, partsWords: [`${counted(sheets, 'sheet')} of ${choice.name}`] };
  }
  const box = boundingBox(piece.corners.map((corner) => turned(corner, -(analysis?.shape.axisRad ?? 0))));
  const across = (lengthIn: number) => Math.max(2, Math.ceil(lengthIn / choice.spacingIn));
  const bars = faceCount * (across(box.maxXIn - box.minXIn) + across(box.maxYIn - box.minYIn));
  return { parts: bars, partsWords: [`${counted(bars, 'bar')} ${choice.name}`] };
}
