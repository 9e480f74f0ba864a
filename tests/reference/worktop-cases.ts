import type { Bound, Face } from '../../src-core/analysis';
import type { Job, JobDraft } from '../../src-core/job';
import type { Point } from '../../src-core/outline';
import { jobOf, rectangle, wallAlongX } from '../support/pieces';

/**
 * `asThin` marks where the plate theory that the engine stands on and a solid slab truly differ by more than the limit: the
 * thin plate has no shear flexibility, and at a free edge it takes twist where the solid slab lets it fade within one
 * thickness. Such a number is held against the slab thinned by 8, and that of the true slab is printed beside it.
 */
interface Marked {
  readonly words: string;
  readonly asThin?: boolean;
}

/** A place whose deflection is compared. */
export type DeflectionMeasure = Marked & { readonly at: Point };

/**
 * A moment averaged over one thickness along the crack it would open: at a place, where the slab bends along `bendingDeg` and
 * the crack runs square to it, or the worst anywhere on one face.
 */
export type MomentMeasure = Marked &
  (
    | { readonly kind: 'place'; readonly at: Point; readonly bendingDeg: number }
    | { readonly kind: 'worst'; readonly face: Face }
  );

/** One worktop, its load and the stiffness of its supports. Compared places are plan positions, never node numbers. */
export interface WorktopCase {
  readonly name: string;
  readonly says: string;
  readonly job: Job;
  readonly bound: Bound;
  readonly meshSizeIn: number;
  /** Middle of the roving patch that is looked at; null where the case brings its load as a fixed one. */
  readonly rovingAt: Point | null;
  readonly alsoThinned: boolean;
  readonly reactionsAsThin?: boolean;
  readonly deflections: readonly DeflectionMeasure[];
  readonly moments: readonly MomentMeasure[];
  /** Bearings that the slab has left in part, or not reached in part. */
  readonly partlyOff: readonly string[];
}

type PieceDraft = JobDraft['pieces'][number];
type SupportDraft = NonNullable<PieceDraft['supports']>[number];

const at = (xIn: number, yIn: number): Point => ({ xIn, yIn });
const worstSagging: MomentMeasure = { words: 'worst sagging', kind: 'worst', face: 'bottom' };
const worstHogging: MomentMeasure = { words: 'worst hogging', kind: 'worst', face: 'top' };

/** A cabinet 24 in deep with panels and rails. */
function cabinet(
  id: string,
  corner: Point,
  widthIn: number,
  more: { angleDeg?: number; backRail?: boolean } = {},
): SupportDraft {
  return { kind: 'cabinet', id, corner, widthIn, depthIn: 24, ...more };
}

/** One weight on a patch and nothing else, at a place that does not depend on where the engine tries its roving load. */
function weightAt(
  centre: Point,
  weightLb: number,
  widthIn: number,
  depthIn: number,
): NonNullable<PieceDraft['loads']> {
  const patch = { id: 'load', name: 'Load', centre, widthIn, depthIn, weightLb };
  return { roving: { setting: 'none' }, spreadPsf: 0, fixed: [patch] };
}

/** A block wall across the slab, from front to back. */
function wallAcross(
  id: string,
  xIn: number,
  widthIn: number,
  depthIn: number,
  more: { gapIn?: number } = {},
): SupportDraft {
  return { kind: 'wall', build: 'block', id, from: at(xIn, 0), to: at(xIn, depthIn), widthIn, ...more };
}

const counter: WorktopCase = {
  name: 'worktop-straight-counter',
  says: 'a straight counter on four cabinets with panels and rails takes 200 lb in the middle between two panels',
  job: jobOf({
    use: 'counter',
    corners: rectangle(84, 25.5),
    thicknessIn: 1.5,
    loads: weightAt(at(31.5, 12), 200, 4, 4),
    supports: [0, 21, 42, 63].map((xIn, i) => cabinet(`B${i + 1}`, at(xIn, 1.5), 21)),
  }),
  bound: 'low',
  meshSizeIn: 1.5,
  rovingAt: null,
  alsoThinned: false,
  deflections: [
    { words: 'behind the load', at: at(31.5, 18) },
    { words: 'front edge before it', at: at(31.5, 0) },
    { words: 'back corner, near', at: at(0, 25.5) },
  ],
  moments: [
    worstSagging,
    worstHogging,
    { words: 'front strip before the load', kind: 'place', at: at(31.5, 1), bendingDeg: 0 },
    { words: 'behind the load', kind: 'place', at: at(31.5, 18), bendingDeg: 0 },
  ],
  partlyOff: [],
};

// Pairs of panels .8 in apart on stiff supports form a couple whose lever is shorter than the slab is thick: shear flexibility,
// which the thin plate has not, shifts up to 4 % of the lesser reactions and 2 % of the drop of the strip.
const lShape: WorktopCase = {
  name: 'worktop-l-shape-with-sink',
  says: 'an L-shaped counter with a full sink takes 200 lb on the strip before the sink',
  job: jobOf({
    use: 'counter',
    corners: [at(0, 0), at(66, 0), at(66, 25.5), at(25.5, 25.5), at(25.5, 54), at(0, 54)],
    thicknessIn: 1.5,
    cutouts: [
      {
        id: 'sink',
        purpose: 'sink',
        shape: { kind: 'rectangle', centre: at(48, 12.5), widthIn: 20, depthIn: 15, radiusIn: 2 },
        sink: { mounting: 'dropped-in' },
      },
    ],
    loads: weightAt(at(48, 2), 200, 4, 4),
    supports: [
      cabinet('corner', at(0, 0), 30),
      cabinet('sink-base', at(30, 0), 36, { backRail: false }),
      cabinet('return', at(24, 26), 28, { angleDeg: 90 }),
    ],
  }),
  bound: 'high',
  meshSizeIn: 1.5,
  rovingAt: null,
  alsoThinned: true,
  reactionsAsThin: true,
  deflections: [
    { words: 'strip before the sink', at: at(48, 1), asThin: true },
    { words: 'strip behind the sink', at: at(48, 22), asThin: true },
    { words: 'far end of the return', at: at(12, 54), asThin: true },
  ],
  moments: [
    worstSagging,
    worstHogging,
    { words: 'strip before the sink', kind: 'place', at: at(48, 2), bendingDeg: 0 },
    { words: 'strip behind the sink', kind: 'place', at: at(48, 23), bendingDeg: 0 },
  ],
  partlyOff: ['left side of corner'],
};

const looseLedge: WorktopCase = {
  name: 'worktop-loose-ledge',
  says: 'a loose ledge 7 in out on two lengths of wall lifts off their backs under 30 lb over the opening',
  job: jobOf({
    use: 'bar-ledge',
    corners: rectangle(72, 16),
    thicknessIn: 1.5,
    loads: weightAt(at(32, 3), 30, 8, 6),
    supports: [wallAlongX('left', 0, 26, 10.625, 7.25), wallAlongX('right', 46, 72, 10.625, 7.25)],
  }),
  bound: 'low',
  meshSizeIn: 1.4,
  rovingAt: null,
  alsoThinned: false,
  deflections: [
    { words: 'front edge over the opening', at: at(36, 0) },
    { words: 'front edge at its end', at: at(0, 0) },
    { words: 'back edge, lifted', at: at(36, 16) },
    { words: 'back corner, lifted', at: at(72, 16) },
  ],
  moments: [
    worstSagging,
    { words: 'over the wall face', kind: 'place', at: at(14, 7), bendingDeg: 90 },
    { words: 'middle of the opening', kind: 'place', at: at(36, 2), bendingDeg: 0 },
  ],
  partlyOff: ['stud wall left', 'stud wall right'],
};

// The brackets are given by bounds, so each point of an arm is a spring of its own in both programs.
const bracketedLedge: WorktopCase = {
  name: 'worktop-bracketed-ledge',
  says: 'a ledge on a stud wall and three brackets takes 250 lb between two of them',
  job: jobOf({
    use: 'bar-ledge',
    corners: rectangle(72, 18),
    thicknessIn: 1.5,
    loads: weightAt(at(24, 4), 250, 8, 8),
    supports: [
      wallAlongX('back', 0, 72, 15.25, 5.5),
      {
        kind: 'bracket',
        id: 'arms',
        roots: [at(12, 12.5), at(36, 12.5), at(60, 12.5)],
        directionDeg: 270,
        reachIn: 9,
        seatWidthIn: 2,
        heelIn: 9,
        arm: { kind: 'tube', widthIn: 1.5, depthIn: 1.5, wallIn: 0.125, yieldPsi: 46000 },
        backing: 'timber-stud',
        fixing: { kind: 'rated', ratedLoadLbf: 300, ratedAtIn: 9, ratedBy: 'the maker' },
        stiffness: { low: 1500, high: 8000 },
      },
    ],
  }),
  bound: 'high',
  meshSizeIn: 1.25,
  rovingAt: null,
  alsoThinned: false,
  deflections: [
    { words: 'front edge between brackets', at: at(24, 0) },
    { words: 'front corner, near', at: at(0, 0) },
    { words: 'back corner, far', at: at(72, 18) },
  ],
  moments: [
    worstSagging,
    worstHogging,
    { words: 'front strip between brackets', kind: 'place', at: at(24, 2), bendingDeg: 0 },
    { words: 'over the middle bracket', kind: 'place', at: at(36, 8), bendingDeg: 0 },
  ],
  partlyOff: ['bracket 3 of arms'],
};

const overGap: WorktopCase = {
  name: 'worktop-over-a-gap',
  says: 'a bench slab closes a gap of .02 in over part of its middle wall under 250 lb at the front',
  job: jobOf({
    use: 'bench',
    corners: rectangle(72, 20),
    thicknessIn: 2,
    loads: weightAt(at(36, 4), 250, 8, 8),
    supports: [
      wallAcross('left', 3, 6, 20),
      wallAcross('middle', 36, 4, 20, { gapIn: 0.02 }),
      wallAcross('right', 69, 6, 20),
    ],
  }),
  bound: 'low',
  meshSizeIn: 1.4,
  rovingAt: null,
  alsoThinned: false,
  deflections: [
    { words: 'front edge, middle', at: at(36, 0) },
    { words: 'back edge, middle', at: at(36, 20) },
    { words: 'middle of a bay', at: at(20, 10) },
    { words: 'end, lifted', at: at(0, 10) },
  ],
  moments: [
    worstSagging,
    { words: 'front edge, middle', kind: 'place', at: at(36, 1), bendingDeg: 0 },
    { words: 'middle of a bay', kind: 'place', at: at(20, 10), bendingDeg: 0 },
  ],
  partlyOff: ['block wall left', 'block wall middle', 'block wall right'],
};

// A load on a free corner is carried by twist. The solid slab lets go of twist within about one thickness of its free edges,
// so its corner drops 2 to 4 % more, and the moment across the corner fades towards the edge, where a thin plate keeps it:
// 1 in in from the edge of the 2 in slab it is a fifth less, 3 in in up to a twentieth more.
const acrossCorner = { kind: 'place', bendingDeg: -48, asThin: true } as const;
const hearth = (bound: Bound): WorktopCase => ({
  name: `worktop-hearth-${bound}`,
  says: `a hearth on two piers, stiffness ${bound}, takes 250 lb on its free corner`,
  job: jobOf({
    use: 'hearth',
    corners: rectangle(56, 22),
    thicknessIn: 2,
    supports: [12, 44].map((xIn, i) => ({
      kind: 'pier',
      build: 'block',
      id: `P${i + 1}`,
      footprint: { kind: 'rectangle', centre: at(xIn, 11), widthIn: 8, depthIn: 14 },
    })),
  }),
  bound,
  meshSizeIn: 1.3,
  rovingAt: at(4, 4),
  alsoThinned: true,
  deflections: [
    { words: 'loaded corner', at: at(0, 0), asThin: true },
    { words: 'front edge at the pier', at: at(8, 0), asThin: true },
    { words: 'middle of the loaded end', at: at(0, 11) },
    { words: 'middle of the span, lifted', at: at(28, 22) },
  ],
  moments: [
    worstHogging,
    { ...acrossCorner, words: 'across the corner, 1 in in', at: at(1, 5.5) },
    { ...acrossCorner, words: 'across the corner, 3 in in', at: at(3, 7) },
    { words: 'middle of the span', kind: 'place', at: at(28, 11), bendingDeg: 0 },
  ],
  partlyOff: ['pier P1', 'pier P2'],
});

export const worktopCases: readonly WorktopCase[] = [
  counter,
  lShape,
  looseLedge,
  bracketedLedge,
  overGap,
  hearth('low'),
  hearth('high'),
];
