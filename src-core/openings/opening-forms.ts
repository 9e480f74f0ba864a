/** The form of every opening of a piece: what keeps it free, what holds that down, and the sink that fits it. */
import { openingStand, shapeSize, takesPlug } from '../edge-forms';
import type { Cutout, CutoutShape, Job, Piece } from '../job';
import { pieceRegion } from '../job';
import type { Point } from '../outline';
import { boundingBox, polygonAreaIn2, polygonPerimeterIn } from '../outline';
import type { Trace } from '../trace';
import { traceWord } from '../trace';
import { printForce } from '../units';
import type { Line } from '../workings';
import type { BowlInfill } from './bowl-infill';
import { bowlInfill } from './bowl-infill';
import type { Neighbour } from './check-sink';
import { checkSink } from './check-sink';
import type { OpeningFinding } from './finding';
import type { FrameForm } from './frame-form';
import { frameForm } from './frame-form';
import type { HoldDown } from './hold-down';
import { holdDown } from './hold-down';
import { mirrored, mirroredPoints } from './mirrored';
import type { PlugForm } from './plug-form';
import { plugForm } from './plug-form';
import type { OpeningPractice } from './practice';
import { DEFAULT_OPENING_PRACTICE, TIMBER_PCF } from './practice';
import type { SinkFit } from './sink-fit';
import { sinkFit } from './sink-fit';
import { formUplift, UPLIFT_WORDS } from './uplift';

export interface Template {
  /** The shape as it looks from below, and its outline left for right about its own middle. */
  readonly fromBelow: CutoutShape;
  readonly outlineFromBelow: readonly Point[];
}

export interface OpeningForm {
  readonly id: string;
  readonly trace: Trace;
  readonly called: string;
  readonly purpose: Cutout['purpose'];
  /** The hole in the concrete, seen from above, counter-clockwise. */
  readonly opening: readonly Point[];
  readonly areaIn2: number;
  readonly form: PlugForm | FrameForm;
  /** From what it stands on to its top, in: through the backing board from the deck, or from the rim of a bowl. */
  readonly heightIn: number;
  readonly standsOn: 'deck' | 'bowl';
  /** Concrete against it, in. */
  readonly concreteIn: number;
  readonly sink: SinkFit | null;
  readonly infill: BowlInfill | null;
  /** Form, and bowl full of sand where one is cast in: what the falsework carries here, lb. */
  readonly weightOnFalseworkLb: number;
  readonly uplift: { readonly upliftLbf: number; readonly words: string; readonly line: Line };
  readonly holdDown: HoldDown;
  readonly template: Template;
  readonly findings: readonly OpeningFinding[];
}

/**
 * One form a cutout, in the drawing's order. Empty where the outline or a cutout cannot be built as drawn, which the
 * job's own problems say.
 */
export function openingForms(
  job: Job,
  piece: Piece,
  practice: OpeningPractice = DEFAULT_OPENING_PRACTICE,
): readonly OpeningForm[] {
  const region = pieceRegion(piece);
  if (!region.ok) return [];
  const neighbours = piece.cutouts.map(
    (cutout, i): Neighbour => ({
      called: calledOf(cutout),
      opening: region.holes[i]!,
      sink: sinkFit(cutout, region.holes[i]!, practice),
    }),
  );
  return piece.cutouts.flatMap((cutout, i) => {
    const { opening, sink } = neighbours[i]!;
    const form = formOf(job, piece, cutout, { opening, sink }, practice);
    if (form === null) return [];
    if (sink === null || cutout.sink === null) return [form];
    const { trace, called } = form;
    const others = neighbours.filter((_, k) => k !== i);
    const around = {
      job,
      trace,
      called,
      rimIn: cutout.sink.rimIn,
      outer: region.outer,
      neighbours: others,
      practice,
    };
    return [{ ...form, findings: [...checkSink(sink, around), ...form.findings] }];
  });
}

function formOf(
  job: Job,
  piece: Piece,
  cutout: Cutout,
  at: { readonly opening: readonly Point[]; readonly sink: SinkFit | null },
  practice: OpeningPractice,
): OpeningForm | null {
  const { opening, sink } = at;
  const trace: Trace = { pieceId: piece.id, part: { kind: 'cutout', id: cutout.id } };
  const { falsework } = job;
  const concreteIn = piece.thicknessIn;
  const { standsOn, heightIn } = openingStand(job, piece, cutout, practice.proudIn);
  const size = shapeSize(cutout.shape);
  const { stripWidthIn } = job.forms;
  const load = { heightIn, concreteIn, stripIn: stripWidthIn, wetDensityPcf: falsework.wetDensityPcf };
  const isFrame = !takesPlug(size, stripWidthIn, practice.mostPlugIn);
  const form = isFrame ? frameForm(cutout.shape, load, practice) : plugForm(opening, heightIn, practice);
  if (form === null) return null;
  const areaIn2 = polygonAreaIn2(opening);
  // A plug counts no heavier than straight sides make it: its wider foot lies in the board or on the deck.
  const ownLb = Math.min(form.weightLb, (areaIn2 * heightIn * TIMBER_PCF) / 1728);
  const uplift = formUplift({ w: falsework.wetDensityPcf, V: areaIn2 * concreteIn, Wo: ownLb });
  const held = holdDown(
    job,
    {
      heightIn,
      roundIn: polygonPerimeterIn(opening),
      size,
      isFrame,
      isOnBowl: standsOn === 'bowl',
      upliftLbf: uplift.value,
    },
    practice,
  );
  const infill = bowlInfill(cutout, sink, practice);
  const called = calledOf(cutout);
  const inBowlLb = infill === null ? 0 : infill.bowlWeightLb + infill.sandWeightLb;
  return {
    id: `${traceWord(trace)}/form`,
    trace,
    called,
    purpose: cutout.purpose,
    opening,
    areaIn2,
    form,
    heightIn,
    standsOn,
    concreteIn,
    sink,
    infill,
    weightOnFalseworkLb: form.weightLb + inBowlLb,
    uplift: { upliftLbf: uplift.value, words: UPLIFT_WORDS, line: uplift.line },
    holdDown: held,
    template: templateOf(cutout.shape, opening),
    findings: [heldFinding(job, trace, called, uplift, held)],
  };
}

function templateOf(shape: CutoutShape, opening: readonly Point[]): Template {
  const { minXIn, maxXIn } = boundingBox(shape.kind === 'polygon' ? shape.corners : opening);
  return {
    fromBelow: mirrored(shape),
    outlineFromBelow: mirroredPoints(opening, (minXIn + maxXIn) / 2),
  };
}

function heldFinding(
  job: Job,
  trace: Trace,
  called: string,
  uplift: { readonly value: number; readonly line: Line },
  held: HoldDown,
): OpeningFinding {
  const print = (forceLbf: number) => printForce(forceLbf, { system: job.shownIn });
  const isHeld = held.kind !== 'none' && held.capacityLbf >= uplift.value;
  const pull = print(Math.max(0, uplift.value));
  const words = isHeld
    ? `The form of ${called} is held against ${pull} of uplift by what takes ${print(held.capacityLbf)}. ${held.words}`
    : held.kind === 'none'
      ? `The form of ${called} would lift with ${pull} once mix gets under it. ${held.words}`
      : `The form of ${called} would lift with ${pull} once mix gets under it, and one rod takes ${print(held.capacityLbf)}: weight it as well, with a bar across it.`;
  return {
    id: `${traceWord(trace)}/held-down`,
    check: 'held-down',
    trace,
    level: isHeld ? 'ok' : 'attention',
    words,
    value: held.capacityLbf,
    limit: Math.max(0, uplift.value),
    unit: 'lbf',
    lines: [uplift.line, ...held.lines],
    source: held.kind === 'screws' ? 'NDS 2018 12.2.2, screws in side grain' : 'common practice, no source',
  };
}

/** The cutout's own name in quotation marks, or what it is for. */
function calledOf({ name, purpose, id }: Cutout): string {
  if (name !== undefined) return `"${name}"`;
  const what = purpose === 'other' ? 'opening' : purpose;
  return id === purpose ? `the ${what}` : `the ${what} "${id}"`;
}
