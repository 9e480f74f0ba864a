/** Whether cabinets slip in and falsework comes out with what stands at that step, and whether the job's days agree with its steps. */
import type { CabinetSupport, FalseworkSection, Job, Piece, Support } from '../job';
import { cabinetPath, cabinetPlan, liesOver, shareFloor, standsIn, sweptFloor, towardFront } from './bays';
import type { SwapFinding } from './finding';
import type { PieceStep, SwapMoment } from './swap-steps';

const SOURCE = 'plan geometry: in and out by the front, straight';

/** What one step does, and what stands while its bay is open. */
export interface OpenStep {
  readonly job: Job;
  readonly piece: Piece;
  readonly step: PieceStep;
  readonly open: SwapMoment;
}

/** The steps with what stands just before each brings its cabinet in, or once it has taken out what it does. */
export function openSteps(
  job: Job,
  piece: Piece,
  steps: readonly PieceStep[],
  moments: readonly SwapMoment[],
): OpenStep[] {
  return steps.flatMap((step) => {
    const first = moments.findIndex(({ stepId }) => stepId === step.id);
    if (first < 0) return [];
    const open = moments[first]!.phase === 'out' ? moments[first]! : moments[first - 1]!;
    return [{ job, piece, step, open }];
  });
}

/** Every cabinet of a step against what stands where it goes and in front of it. */
export function waysIn({ job, piece, step, open }: OpenStep): SwapFinding[] {
  const standing = standingOf(piece, open);
  return cabinetsOf(piece, step.supportsIn).map((cabinet) => {
    const place = cabinetPlan(cabinet);
    const way = cabinetPath(cabinet);
    const inWay = standing.filter(
      (support) => onTheFloor(support) && [place, way].some((floor) => standsIn(support, piece, floor)),
    );
    const over = sectionsOf(job, open).filter((section) =>
      [place, way].some((floor) => liesOver(section, floor)),
    );
    const name = nameOf(cabinet);
    const blocks = [...inWay.map(nameOf), ...over.map((section) => `section ${nameOf(section)}`)];
    const isFree = blocks.length === 0;
    return {
      id: 'way-in',
      pieceId: piece.id,
      stepId: step.id,
      aboutId: cabinet.id,
      level: isFree ? 'holds' : 'change',
      title: 'Way in for the cabinet',
      words: isFree
        ? `${name} slips in from its front: nothing stands in its place or before it.`
        : `${name} cannot slip in from its front: ${listed(blocks)} ${blocks.length === 1 ? 'is' : 'are'} in the way. Bring it in before, or clear its way for the move.`,
      source: SOURCE,
    };
  });
}

/** Every section that a step takes out against the cabinets in place by then. */
export function sectionWaysOut({ job, piece, step, open }: OpenStep): SwapFinding[] {
  const cabinets = standingOf(piece, open).filter((support) => support.kind === 'cabinet');
  const bays = piece.supports.filter((support) => support.kind === 'cabinet');
  return job.falsework.sections.flatMap((section): SwapFinding[] => {
    if (!step.sectionsOut.includes(section.id)) return [];
    const bay = bays.find((cabinet) => liesOver(section, cabinetPlan(cabinet)));
    const floors: (readonly (typeof section.corners)[number][])[] =
      bay === undefined
        ? [section.corners]
        : [section.corners, ...sweptFloor(section.corners, towardFront(bay), bay.depthIn)];
    const inWay = cabinets.filter((cabinet) =>
      floors.some((floor) => shareFloor(cabinetPlan(cabinet), floor)),
    );
    if (inWay.length === 0) return [];
    return [
      {
        id: 'section-way-out',
        pieceId: piece.id,
        stepId: step.id,
        aboutId: section.id,
        level: 'change',
        title: 'Way out for the falsework section',
        words: `Section ${nameOf(section)} cannot come out by the front: ${listed(inWay.map(nameOf))} ${inWay.length === 1 ? 'is' : 'are'} already in place. Take it out before.`,
        source: SOURCE,
      },
    ];
  });
}

/** Legs that stay under a section which a step takes away. */
export function propsLeftBehind({ job, piece, step, open }: OpenStep): SwapFinding[] {
  const legs = standingOf(piece, open).filter(
    (support) => support.kind === 'leg' && support.lastDay !== null,
  );
  return job.falsework.sections
    .filter(({ id }) => step.sectionsOut.includes(id))
    .flatMap((section) =>
      legs
        .filter((leg) => standsIn(leg, piece, section.corners))
        .map((leg) => ({
          id: 'prop-left-behind',
          pieceId: piece.id,
          stepId: step.id,
          aboutId: leg.id,
          level: 'holds',
          title: 'A leg without its section',
          words: `${nameOf(leg)} stands under section ${nameOf(section)}, which goes in this step, but is drawn as staying: set it hard under the slab on a plate of its own, with the deck notched round it so that the section drops past it, or take it out too.`,
          source: 'plan geometry',
        })),
    );
}

/** Supports of a drawn step whose own days say otherwise; the load check of a day goes by those. */
export function daysThatDisagree({ piece, step }: OpenStep): SwapFinding[] {
  if (!step.isDrawn) return [];
  const finding = (support: Support, words: string): SwapFinding => ({
    id: 'days-disagree',
    pieceId: piece.id,
    stepId: step.id,
    aboutId: support.id,
    level: 'holds',
    title: 'Days that disagree',
    words: `${words} The swap goes by its step, the load check of a day by the support's own days.`,
    source: 'the job file',
  });
  return piece.supports.flatMap((support) => {
    const { id, firstDay, lastDay } = support;
    const found: SwapFinding[] = [];
    const isBack = step.supportsOut.includes(id) && step.supportsIn.includes(id);
    if (isBack) return [];
    if (step.supportsIn.includes(id) && firstDay !== step.day) {
      found.push(
        finding(
          support,
          `${nameOf(support)} comes in on day ${step.day} but is drawn as standing from day ${firstDay}.`,
        ),
      );
    }
    if (step.supportsOut.includes(id) && lastDay !== step.day) {
      const until = lastDay === null ? 'for good' : `until day ${lastDay}`;
      found.push(
        finding(support, `${nameOf(support)} goes out on day ${step.day} but is drawn as standing ${until}.`),
      );
    }
    return found;
  });
}

function standingOf(piece: Piece, { standing }: SwapMoment): Support[] {
  return piece.supports.filter(({ id }) => standing.includes(id));
}

function sectionsOf(job: Job, { sections }: SwapMoment): FalseworkSection[] {
  return job.falsework.sections.filter(({ id }) => sections.includes(id));
}

function cabinetsOf(piece: Piece, ids: readonly string[]): CabinetSupport[] {
  return piece.supports.filter(
    (support): support is CabinetSupport => support.kind === 'cabinet' && ids.includes(support.id),
  );
}

/** Ledgers, arms and walls at the back leave the floor before them clear. */
function onTheFloor({ kind }: Support): boolean {
  return kind === 'cabinet' || kind === 'leg' || kind === 'pier';
}

function nameOf({ id, name }: { readonly id: string; readonly name?: string | undefined }): string {
  return name ?? id;
}

function listed(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
