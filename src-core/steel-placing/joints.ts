/** Joints as work to do: control joints to cut or form, isolation strip to set, construction joints to pour against. */
import { seamMarks } from '../drawing';
import type { Job, Piece } from '../job';
import type { Point, Region } from '../outline';
import { clipSegmentToRegion, distanceIn, TOUCH_IN } from '../outline';
import type { Trace } from '../trace';
import { printExactLength, printLength } from '../units';
import { controlJointDepth } from './formulas';
import type { Stacked } from './stacking';
import { edgeTrace, jointTrace } from './traces';
import type { PlacedJoint } from './types';

type Line = readonly [Point, Point];

/** A piece in plan with the edge of the drawing on which each of its sides lies. */
interface Plan extends Region {
  readonly edgeOfPoint: readonly number[];
}

/** The drawn joints of a piece, and the strips along its walls and the pieces that it butts against. */
export function placeJoints(job: Job, piece: Piece, plan: Plan, layers: readonly Stacked[]): PlacedJoint[] {
  const drawn = piece.joints.map(({ id, kind, from, to, widthIn }): PlacedJoint => {
    const isLine = distanceIn(from, to) > TOUCH_IN;
    const lines = isLine ? clipSegmentToRegion({ a: from, b: to }, plan).map(({ a, b }): Line => [a, b]) : [];
    const depthIn =
      kind === 'control' ? controlJointDepth.compute({ h: piece.thicknessIn }) : piece.thicknessIn;
    return {
      id: `joint-${id}`,
      trace: jointTrace(piece, id),
      kind,
      along: 'joint',
      lines,
      lengthIn: lengthOf(lines),
      widthIn,
      depthIn,
      words: drawnWords(job, kind, { depthIn, widthIn }),
      caution: kind === 'control' ? cutCaution(job, piece, layers, depthIn) : null,
    };
  });
  return [...drawn, ...edgeStrips(job, piece, plan)];
}

function drawnWords(
  job: Job,
  kind: PlacedJoint['kind'],
  { depthIn, widthIn }: { readonly depthIn: number; readonly widthIn: number },
): string {
  const length = (valueIn: number) => printExactLength(valueIn, { system: job.shownIn });
  switch (kind) {
    case 'control':
      return `Cut or form ${length(depthIn)} deep, ${length(widthIn)} wide, over a support: the slab is weaker there.`;
    case 'isolation':
      return `Set a ${length(widthIn)} strip for the whole thickness. No steel passes it.`;
    case 'construction':
      return 'Pour against the hardened first part; let the steel run through. No dowels are counted.';
  }
}

function cutCaution(job: Job, piece: Piece, layers: readonly Stacked[], depthIn: number): string | null {
  const coverIn = Math.min(...layers.map(({ topIn }) => piece.thicknessIn - topIn));
  if (depthIn < coverIn) return null;
  const { shownIn: system } = job;
  return `A cut ${printExactLength(depthIn, { system })} deep reaches the steel, which has ${printLength(coverIn, { system })} over it.`;
}

/** One strip an edge against a wall or another piece; where both pieces say they butt, the first in the job has it. */
function edgeStrips(job: Job, piece: Piece, plan: Plan): PlacedJoint[] {
  const butted = seamMarks(job, piece).filter(({ kind }) => kind === 'butted');
  return (piece.edges ?? []).flatMap((edge, index): PlacedJoint[] => {
    if (edge.kind === 'free') return [];
    const seam = butted.find(({ key }) => key === `butted-${index}`);
    const lines: Line[] = seam === undefined ? sidesOf(plan, index) : [[seam.from, seam.to]];
    if (edge.kind === 'butted' && isCountedByOther(job, piece, edge.toPieceId)) return [];
    return [
      stripAlong(job, piece, edge, {
        lines,
        trace: edgeTrace(piece, index),
        id: `isolation-edge-${index + 1}`,
      }),
    ];
  });
}

function stripAlong(
  job: Job,
  piece: Piece,
  edge: { readonly kind: 'wall' | 'butted'; readonly gapIn: number },
  { lines, trace, id }: { readonly lines: readonly Line[]; readonly trace: Trace; readonly id: string },
): PlacedJoint {
  const beside = edge.kind === 'wall' ? 'the wall' : 'the next piece';
  const gap = printExactLength(edge.gapIn, { system: job.shownIn });
  return {
    id,
    trace,
    kind: 'isolation',
    along: edge.kind,
    lines,
    lengthIn: lengthOf(lines),
    widthIn: edge.gapIn,
    depthIn: piece.thicknessIn,
    words:
      edge.gapIn > 0
        ? `A ${gap} strip against ${beside}, as high as the slab is thick.`
        : `No gap is drawn against ${beside}.`,
    caution:
      edge.gapIn > 0
        ? null
        : `The slab is drawn hard against ${beside}: as it shrinks and moves it may crack there.`,
  };
}

function isCountedByOther(job: Job, piece: Piece, otherId: string): boolean {
  const order = job.pieces.map(({ id }) => id);
  const other = job.pieces.find(({ id }) => id === otherId);
  const isMutual =
    other?.edges?.some((edge) => edge.kind === 'butted' && edge.toPieceId === piece.id) ?? false;
  return isMutual && order.indexOf(otherId) < order.indexOf(piece.id);
}

function sidesOf({ outer, edgeOfPoint }: Plan, edge: number): Line[] {
  return outer.flatMap((point, k): Line[] =>
    edgeOfPoint[k] === edge ? [[point, outer[(k + 1) % outer.length]!]] : [],
  );
}

function lengthOf(lines: readonly Line[]): number {
  return lines.reduce((sum, [from, to]) => sum + distanceIn(from, to), 0);
}
