/** Whether a cabinet passes a sink bowl that hangs below the slab, and what must come off it for that. */
import type { CabinetSupport, Cutout, Job, Piece } from '../job';
import { cutoutInPlan } from '../job';
import type { Point } from '../outline';
import { directionAt, leftOf } from '../outline';
import { printLength } from '../units';
import { cabinetPlan, shareFloor } from './bays';
import type { SwapFinding } from './finding';

export type RemovablePart = CabinetSupport['removableParts'][number];

/** Parts of a cabinet by name in a sentence. */
const PART_WORDS: { readonly [P in RemovablePart]: string } = {
  front: 'front',
  back: 'back',
  'left-side': 'left side',
  'right-side': 'right side',
  'sub-top': 'sub-top',
  'toe-kick': 'toe kick',
};

/** One finding for every sink over a cabinet that comes in. */
export function sinkPassages(job: Job, piece: Piece, cabinet: CabinetSupport, stepId: string): SwapFinding[] {
  return piece.cutouts.flatMap((cutout, index) => {
    const plan = cutoutInPlan(piece, index);
    if (cutout.sink === null || !plan.ok || !shareFloor(plan.points, cabinetPlan(cabinet))) return [];
    return [passage(job, piece, cabinet, cutout, plan.points, stepId)];
  });
}

function passage(
  job: Job,
  piece: Piece,
  cabinet: CabinetSupport,
  cutout: Cutout,
  opening: readonly Point[],
  stepId: string,
): SwapFinding {
  const { mounting, carriedBySlab, bowlDepthIn } = cutout.sink!;
  const needed = partsInTheWay(cabinet, opening);
  const fixed = needed.filter((part) => !cabinet.removableParts.includes(part));
  const name = cabinet.name ?? cabinet.id;
  const sink = cutout.name ?? cutout.id;
  const drop = printLength(bowlDepthIn, { system: job.shownIn });
  const goesInAfter = mounting === 'dropped-in' || (mounting === 'under-rim' && !carriedBySlab);
  const off = `take its ${listed(needed)} off to pass the bowl, and put ${needed.length === 1 ? 'it' : 'them'} back after`;
  const hangs = `"${sink}" hangs ${drop} below the slab over ${name}`;
  const words =
    mounting === 'dropped-in'
      ? `Set "${sink}" after ${name} is in: it drops in from above, and nothing hangs in the way.`
      : goesInAfter
        ? `Hang "${sink}" after ${name} is in${fixed.length === 0 ? `; if its bowl is up before, ${off}` : ''}.`
        : fixed.length === 0
          ? `${hangs}: ${off}.`
          : `${hangs}, and its ${listed(fixed)} ${fixed.length === 1 ? 'does' : 'do'} not come off to pass the bowl. Order it with a loose ${listed(fixed)}, or fix the bowl once the cabinet is in.`;
  return {
    id: 'sink-passage',
    pieceId: piece.id,
    stepId,
    aboutId: cabinet.id,
    level: goesInAfter || fixed.length === 0 ? 'holds' : 'change',
    title: 'Passing the sink bowl',
    words: `${words} Its trap and pipes are fitted after.`,
    source: 'plan geometry: the cabinet slips in from its front, straight back',
  };
}

/**
 * What of a cabinet would meet the bowl on the way in: the back goes all the way under it, a sub-top lies over all of it, a side or the
 * front only where the opening reaches over it.
 */
export function partsInTheWay(cabinet: CabinetSupport, opening: readonly Point[]): RemovablePart[] {
  const along = directionAt((cabinet.angleDeg * Math.PI) / 180);
  const back = leftOf(along);
  const at = (p: Point, way: { readonly x: number; readonly y: number }) =>
    (p.xIn - cabinet.corner.xIn) * way.x + (p.yIn - cabinet.corner.yIn) * way.y;
  const x = opening.map((p) => at(p, along));
  const y = opening.map((p) => at(p, back));
  const parts: RemovablePart[] = ['back'];
  if (cabinet.subTop) parts.push('sub-top');
  if (Math.min(...x) < cabinet.panelIn) parts.push('left-side');
  if (Math.max(...x) > cabinet.widthIn - cabinet.panelIn) parts.push('right-side');
  if (Math.min(...y) < cabinet.panelIn) parts.push('front');
  return parts;
}

function listed(parts: readonly RemovablePart[]): string {
  const words = parts.map((part) => PART_WORDS[part]);
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
