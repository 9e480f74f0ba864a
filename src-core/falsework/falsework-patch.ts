/** Writes a design into the job, so that the load check and the swap see what stands. */
import type { Job, Piece, Support, SwapStep } from '../job';
import { pieceRegion } from '../job';
import { isPointOnSlab } from '../outline';
import type { PatchOperation } from '../remedies';
import type { DesignedSection, PieceDesign } from './design-falsework';
import { placeInPlan, sectionCorners } from './frame';
import { turnedPlace } from './framing';
import { goesAgain } from './standing';

/**
 * A patch that puts the sections of a design and its legs and ledgers into the job, each from the day it is built to the day its
 * cabinet comes. Temporary legs and ledgers that the piece had at its pour give way to them; props that are set later stay. Steps of
 * the swap that bring in a cabinet take out its section. RFC 6902; apply it with `applyPatch`.
 */
export function falseworkPatch(job: Job, design: PieceDesign): PatchOperation[] {
  const index = job.pieces.findIndex(({ id }) => id === design.pieceId);
  const piece = job.pieces[index];
  if (piece === undefined) throw new Error(`job ${job.id} has no piece ${design.pieceId}`);
  const gone = new Set(
    piece.supports
      .filter(
        (support) =>
          (support.kind === 'leg' || support.kind === 'ledger') &&
          support.firstDay <= piece.pourDay &&
          goesAgain(job, support),
      )
      .map(({ id }) => id),
  );
  const oldSections = new Set(
    job.falsework.sections.filter(({ pieceId }) => pieceId === piece.id).map(({ id }) => id),
  );
  const supports = design.sections.map((designed) => ({
    designed,
    supports: supportsOf(piece, designed),
  }));
  const sections = [
    ...job.falsework.sections.filter(({ id }) => !oldSections.has(id)),
    ...design.sections.map(({ section }) => ({
      id: section.id,
      name: section.name.slice(0, 120),
      pieceId: section.pieceId,
      corners: sectionCorners(section.frame),
      firstDay: section.firstDay,
      lastDay: section.lastDay,
    })),
  ];
  const kept = piece.supports.filter(({ id }) => !gone.has(id));
  const steps = job.swap.steps.map((step) => withSections(step, { gone, oldSections, supports }));
  return [
    { op: 'test', path: `/pieces/${index}/id`, value: piece.id },
    { op: 'replace', path: '/falsework/sections', value: sections },
    {
      op: 'replace',
      path: `/pieces/${index}/supports`,
      value: [...kept, ...supports.flatMap((each) => each.supports)],
    },
    { op: 'replace', path: '/swap/steps', value: steps.filter(isNotEmpty) },
  ];
}

interface Replaced {
  readonly gone: ReadonlySet<string>;
  readonly oldSections: ReadonlySet<string>;
  readonly supports: readonly { readonly designed: DesignedSection; readonly supports: readonly Support[] }[];
}

function withSections(step: SwapStep, { gone, oldSections, supports }: Replaced): SwapStep {
  const own = supports.filter(({ designed }) => {
    const { cabinetId } = designed.section;
    return cabinetId !== null && step.supportsIn.includes(cabinetId);
  });
  return {
    ...step,
    sectionsOut: [
      ...step.sectionsOut.filter((id) => !oldSections.has(id)),
      ...own.map(({ designed }) => designed.section.id),
    ],
    supportsOut: [
      ...step.supportsOut.filter((id) => !gone.has(id)),
      ...own.flatMap((each) => each.supports.map(({ id }) => id)),
    ],
    supportsIn: step.supportsIn.filter((id) => !gone.has(id)),
  };
}

function isNotEmpty({ sectionsOut, supportsOut, supportsIn }: SwapStep): boolean {
  return sectionsOut.length + supportsOut.length + supportsIn.length > 0;
}

/** Legs and ledger of a section as supports. What stands beside the slab or under an opening carries none of it and is left out. */
function supportsOf(piece: Piece, { section, legs, worked }: DesignedSection): Support[] {
  const region = pieceRegion(piece);
  const every = {
    firstDay: section.firstDay,
    lastDay: section.lastDay,
    gapIn: 0,
    raisedIn: 0,
    stiffness: null,
    hold: { kind: 'resting' as const },
  };
  const standing = legs
    .filter(({ at }) => !region.ok || isPointOnSlab(at, region))
    .map(
      ({ id, at, widthIn, depthIn, angleDeg }): Support => ({
        ...every,
        kind: 'leg',
        id,
        centre: at,
        widthIn,
        depthIn,
        angleDeg,
      }),
    );
  const { framing } = worked;
  const ledgers = framing.lines
    .filter(({ kind }) => kind === 'ledger')
    .map(({ t }): Support => {
      const endAt = (s: number) => {
        const { p, q } = turnedPlace(s, t, framing.arrangement.joistRun);
        return placeInPlan(section.frame, p, q);
      };
      return {
        ...every,
        kind: 'ledger',
        id: `${section.id}-ledger`,
        from: endAt(0),
        to: endAt(framing.acrossIn),
        widthIn: 1.5,
      };
    });
  return [...standing, ...ledgers];
}
