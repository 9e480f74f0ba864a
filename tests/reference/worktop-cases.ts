import type { Bound } from '../../src-core/analysis';
import type { Job } from '../../src-core/job';
import type { Point } from '../../src-core/outline';
import { jobOf, rectangle, wallAlongX } from '../support/pieces';

/** A place whose deflection is compared. */
export interface DeflectionPlace {
  readonly words: string;
  readonly at: Point;
}

/** A place whose moment is compared, averaged over one thickness along the crack that it would open. */
export interface MomentPlace {
  readonly words: string;
  readonly at: Point;
  /** Direction in which the slab bends there; the crack runs square to it. */
  readonly bendingDeg: number;
}

/** One worktop under one load with one stiffness of its supports. Compared places are plan positions, never node numbers. */
export interface WorktopCase {
  readonly name: string;
  readonly says: string;
  readonly job: Job;
  readonly bound: Bound;
  readonly meshSizeIn: number;
  /** Middle of the roving patch that is looked at; null for the slab's own weight with what it carries. */
  readonly roving: Point | null;
  readonly deflections: readonly DeflectionPlace[];
  readonly moments: readonly MomentPlace[];
}

const at = (xIn: number, yIn: number): Point => ({ xIn, yIn });
const place = (words: string, xIn: number, yIn: number): DeflectionPlace => ({ words, at: at(xIn, yIn) });
const moment = (words: string, xIn: number, yIn: number, bendingDeg: number): MomentPlace => ({
  words,
  at: at(xIn, yIn),
  bendingDeg,
});

const cabinet = (id: string, xIn: number, yIn: number, widthIn: number, more: Record<string, unknown> = {}) => ({
  kind: 'cabinet' as const,
  id,
  corner: at(xIn, yIn),
  widthIn,
  depthIn: 24,
  ...more,
});

const counter: WorktopCase = {
  name: 'worktop-straight-counter',
  says: 'a straight counter on four cabinets with panels and rails, 200 lb leaning at its front',
  job: jobOf({
    use: 'counter',
    corners: rectangle(96, 25.5),
    thicknessIn: 1.5,
    supports: [0, 24, 48, 72].map((xIn, i) => cabinet(`B${i + 1}`, xIn, 1.5, 24)),
  }),
  bound: 'low',
  meshSizeIn: 1.4,
  roving: at(36, 2),
  deflections: [place('front edge', 36, 0), place('middle', 36, 12)],
  moments: [moment('front edge', 36, 0.75, 0)],
};

const lShape: WorktopCase = {
  name: 'worktop-l-shape-with-sink',
  says: 'an L-shaped counter with a sink',
  job: jobOf({
    use: 'counter',
    corners: [at(0, 0), at(72, 0), at(72, 25.5), at(25.5, 25.5), at(25.5, 60), at(0, 60)],
    thicknessIn: 1.5,
    cutouts: [
      {
        id: 'sink',
        purpose: 'sink',
        shape: { kind: 'rectangle', centre: at(48, 12.5), widthIn: 20, depthIn: 15, radiusIn: 2 },
        sink: { mounting: 'dropped-in' },
      },
    ],
    supports: [
      cabinet('corner', 0, 0, 30),
      cabinet('sink-base', 30, 0, 36, { backRail: false }),
      cabinet('return', 24, 30, 28, { angleDeg: 90 }),
    ],
  }),
  bound: 'high',
  meshSizeIn: 1.5,
  roving: at(48, 2),
  deflections: [place('strip before the sink', 48, 1)],
  moments: [moment('strip before the sink', 48, 2.5, 0)],
};

const ledge: WorktopCase = {
  name: 'worktop-loose-ledge',
  says: 'a loose ledge that lifts off at its back',
  job: jobOf({
    use: 'bar-ledge',
    corners: rectangle(72, 16),
    thicknessIn: 1.5,
    loads: { roving: { setting: 'own', forceLbf: 30, widthIn: 8, depthIn: 6 } },
    supports: [wallAlongX('left', 0, 26, 10.625, 7.25), wallAlongX('right', 46, 72, 10.625, 7.25)],
  }),
  bound: 'high',
  meshSizeIn: 1.25,
  roving: at(30, 3),
  deflections: [place('tip', 30, 0), place('back edge', 30, 16)],
  moments: [moment('over the wall face', 30, 7, 90)],
};

const bracketed: WorktopCase = {
  name: 'worktop-bracketed-ledge',
  says: 'a ledge on a stud wall and three brackets',
  job: jobOf({
    use: 'bar-ledge',
    corners: rectangle(72, 18),
    thicknessIn: 1.5,
    supports: [
      wallAlongX('wall', 0, 72, 15.25, 5.5),
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
  bound: 'low',
  meshSizeIn: 1.2,
  roving: at(24, 4),
  deflections: [place('front edge between brackets', 24, 0)],
  moments: [moment('front edge between brackets', 24, 0.75, 0)],
};

const gap: WorktopCase = {
  name: 'worktop-over-a-gap',
  says: 'a slab over a gap',
  job: jobOf({
    use: 'bench',
    corners: rectangle(72, 20),
    thicknessIn: 2,
    supports: [
      ...[3, 69].map((xIn, i) => ({
        kind: 'wall' as const,
        build: 'block' as const,
        id: `end-${i + 1}`,
        from: at(xIn, 0),
        to: at(xIn, 20),
        widthIn: 6,
      })),
      {
        kind: 'wall' as const,
        build: 'block' as const,
        id: 'low-wall',
        from: at(36, 0),
        to: at(36, 20),
        widthIn: 4,
        gapIn: 0.02,
      },
    ],
  }),
  bound: 'high',
  meshSizeIn: 1.2,
  roving: at(36, 4),
  deflections: [place('middle', 36, 0)],
  moments: [moment('middle of a bay', 20, 10, 0)],
};

const hearth = (bound: Bound): WorktopCase => ({
  name: `worktop-hearth-${bound}`,
  says: 'a hearth on two piers, 250 lb on its free corner',
  job: jobOf({
    use: 'hearth',
    corners: rectangle(56, 22),
    thicknessIn: 2,
    supports: [12, 44].map((xIn, i) => ({
      kind: 'pier' as const,
      build: 'block' as const,
      id: `pier-${i + 1}`,
      footprint: { kind: 'rectangle' as const, centre: at(xIn, 11), widthIn: 8, depthIn: 14 },
    })),
  }),
  bound,
  meshSizeIn: 1.2,
  roving: at(4, 4),
  deflections: [place('loaded corner', 0, 0), place('mid-span front', 28, 0)],
  moments: [moment('over the pier', 8, 6, 0)],
});

export const worktopCases: readonly WorktopCase[] = [
  counter,
  lShape,
  ledge,
  bracketed,
  gap,
  hearth('low'),
  hearth('high'),
];
