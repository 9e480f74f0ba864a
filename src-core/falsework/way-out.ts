/** Whether a section can come out past what stands when it goes. */
import type { CabinetSupport, Job, Piece, Support } from '../job';
import type { Point } from '../outline';
import { intersectionAreaIn2 } from '../outline';
import { placeInPlan, type SectionFrame } from './frame';
import type { Section } from './section';
import {
  cabinetCorners,
  cabinetsInPlace,
  cabinetsToCome,
  lastDayOf,
  lastingSupports,
  supportPlan,
} from './standing';

export interface WayOut {
  readonly sectionId: string;
  readonly by: 'front' | 'left' | 'right' | null;
  /** Why it is stuck, a sentence; null where it is not. */
  readonly refusal: string | null;
}

/** Less than this is a touch, in2. */
const TOUCH_IN2 = 4;

/** The way by which a section comes out: straight by its front, or sideways into the next bay and out by that one's front. */
export function wayOut(job: Job, piece: Piece, section: Section): WayOut {
  const blockers = blockersOf(job, piece, section);
  const ways = (['front', 'left', 'right'] as const).filter(
    (by) => by === 'front' || !section.wallSides.includes(by),
  );
  for (const by of ways) {
    if (pathOf(section.frame, by).every((floor) => blockers.every((blocker) => !isOn(blocker.plan, floor)))) {
      return { sectionId: section.id, by, refusal: null };
    }
  }
  const straight = pathOf(section.frame, 'front');
  const names = blockers
    .filter(({ plan }) => straight.some((floor) => isOn(plan, floor)))
    .map(({ words }) => words);
  return {
    sectionId: section.id,
    by: null,
    refusal: `"${section.name}" cannot come out past ${names.join(' and ')}, already in place on day ${section.lastDay}.`,
  };
}

interface Blocker {
  readonly words: string;
  readonly plan: readonly Point[];
}

/** Cabinets that stand before the section goes, and walls and piers that stay. */
function blockersOf(job: Job, piece: Piece, section: Section): Blocker[] {
  const earlier = cabinetsToCome(job, piece).filter(
    (cabinet) => cabinet.id !== section.cabinetId && lastDayOf(job, piece, cabinet) < section.lastDay,
  );
  const cabinet = (each: CabinetSupport): Blocker => ({
    words: each.name ?? each.id,
    plan: cabinetCorners(each),
  });
  const standing = lastingSupports(job, piece).filter(standsOnFloor);
  return [
    ...[...cabinetsInPlace(job, piece), ...earlier].map(cabinet),
    ...standing.map((support) => ({
      words: support.name ?? `the ${support.kind} ${support.id}`,
      plan: supportPlan(support, piece.corners),
    })),
  ];
}

function standsOnFloor({ kind }: Support): boolean {
  return kind === 'wall' || kind === 'pier' || kind === 'leg';
}

/** The floor that a section crosses: a rectangle for each leg of its way. */
function pathOf(frame: SectionFrame, by: 'front' | 'left' | 'right'): Point[][] {
  const { widthIn: w, depthIn: d } = frame;
  const rectangle = (p0: number, p1: number, q0: number, q1: number) => [
    placeInPlan(frame, p0, q0),
    placeInPlan(frame, p1, q0),
    placeInPlan(frame, p1, q1),
    placeInPlan(frame, p0, q1),
  ];
  switch (by) {
    case 'front':
      return [rectangle(0, w, -d, 0)];
    case 'left':
      return [rectangle(-w, 0, 0, d), rectangle(-w, 0, -d, 0)];
    case 'right':
      return [rectangle(w, 2 * w, 0, d), rectangle(w, 2 * w, -d, 0)];
  }
}

function isOn(plan: readonly Point[], floor: readonly Point[]): boolean {
  if (plan.length < 3) return false;
  return intersectionAreaIn2({ outer: plan, holes: [] }, { outer: floor, holes: [] }) > TOUCH_IN2;
}
