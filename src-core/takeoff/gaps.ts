/** What a list leaves out or does not know, and what is used again, in sentences. */
import type { CutEdgeForms } from '../edge-forms';
import type { CutList, JobFalsework } from '../falsework';
import type { Job } from '../job';
import type { PourFindingId, PourPlan } from '../pour';
import { printLength } from '../units';
import type { PieceTakeoff } from './piece-takeoff';
import type { BarCuts, MeshCuts } from './steel-cuts';
import { counted, placeWords } from './words';

interface Found {
  readonly pieces: readonly PieceTakeoff[];
  readonly formCuts: CutEdgeForms;
  readonly meshCuts: readonly MeshCuts[];
  readonly barCuts: readonly BarCuts[];
  readonly falsework: JobFalsework | null;
  readonly falseworkCuts: CutList | null;
  readonly plan: PourPlan;
}

/** Pieces that cannot be drawn, parts that no stock yields, falsework left out or refused, mixes without numbers. */
export function gapsOf(job: Job, found: Found): string[] {
  const { pieces, formCuts, meshCuts, barCuts, falsework, falseworkCuts, plan } = found;
  const pieceIds = pieces.map(({ pieceId }) => pieceId);
  return [
    ...undrawnGaps(job, pieces),
    ...uncutGaps(job, formCuts, meshCuts, barCuts),
    ...falseworkGaps(falsework, falseworkCuts, pieceIds),
    ...pourGaps(plan),
    ...fibreGaps(job, pieces),
  ];
}

function undrawnGaps({ pieces: drawn }: Job, pieces: readonly PieceTakeoff[]): string[] {
  return pieces.flatMap(({ pieceId, problems }) => {
    const name = drawn.find(({ id }) => id === pieceId)?.name ?? pieceId;
    return problems.map(({ sentence }) => `"${name}" cannot be drawn and is left out: ${sentence}`);
  });
}

function uncutGaps(
  job: Job,
  { lists }: CutEdgeForms,
  meshCuts: readonly MeshCuts[],
  barCuts: readonly BarCuts[],
): string[] {
  const length = (valueIn: number) => printLength(valueIn, { system: job.shownIn });
  return [
    ...lists.flatMap(({ notCut }) =>
      notCut.map(
        ({ trace, longIn }) =>
          `No stick yields the strip of ${length(longIn)} at ${placeWords(job, trace)}; make it up on site.`,
      ),
    ),
    ...meshCuts.flatMap(({ list }) =>
      list.tooLarge.map(
        ({ trace, label }) => `No sheet holds mesh ${label} of ${placeWords(job, trace)}; it is left out.`,
      ),
    ),
    ...barCuts.flatMap(({ list }) =>
      list.tooLong.map(
        ({ trace, label, lengthIn }) =>
          `No bar in stock is ${length(lengthIn)} long, as ${label} of ${placeWords(job, trace)} is; it is left out.`,
      ),
    ),
  ];
}

function falseworkGaps(
  falsework: JobFalsework | null,
  cuts: CutList | null,
  pieceIds: readonly string[],
): string[] {
  if (falsework === null || cuts === null) {
    return ['The falsework is left out: lumber, panels and screws that hold the wet slabs up come on top.'];
  }
  return [
    ...falsework.designs
      .filter(({ pieceId, refusals }) => pieceIds.includes(pieceId) && refusals.length > 0)
      .map(
        ({ pieceName, refusals }) =>
          `The falsework of "${pieceName}" cannot be built as designed, and the list of it may be short: ${refusals[0]}`,
      ),
    ...cuts.bySize.flatMap(({ size, tooLong }) =>
      tooLong.length === 0
        ? []
        : [
            `${counted(tooLong.length, 'part', 'parts')} of ${size} are longer than any stock and are left out.`,
          ],
    ),
  ];
}

const GAP_FINDINGS: readonly PourFindingId[] = [
  'no-bag-data',
  'water-outside',
  'pigment-over',
  'cement-unknown',
];

function pourGaps({ pours }: PourPlan): string[] {
  const words = pours.flatMap(({ findings }) =>
    findings.filter(({ kind }) => GAP_FINDINGS.includes(kind)).map((finding) => finding.words),
  );
  return [...new Set(words)];
}

function fibreGaps(job: Job, pieces: readonly PieceTakeoff[]): string[] {
  return pieces.flatMap(({ steel }) =>
    (steel?.others ?? [])
      .filter(({ kind, massLb }) => kind === 'fibre' && massLb === null)
      .map(({ trace }) => `No dose is stated for the fibre of ${placeWords(job, trace)}, so none is listed.`),
  );
}

/** What is used again and so not bought twice. */
export function remarksOf(
  pieces: readonly PieceTakeoff[],
  { reuses }: CutEdgeForms,
  falsework: JobFalsework | null,
): string[] {
  const pieceIds = pieces.map(({ pieceId }) => pieceId);
  const usedAgain = (falsework?.reuse.uses ?? []).filter(({ to }) => pieceIds.includes(to.pieceId)).length;
  return [
    ...(reuses.length === 0
      ? []
      : [
          `${counted(reuses.length, 'form strip is', 'form strips are')} used again for a later pour and not bought twice: scrape and oil each one.`,
        ]),
    ...(usedAgain === 0
      ? []
      : ['Falsework that comes out in time is used again for later pours and not bought twice.']),
  ];
}
