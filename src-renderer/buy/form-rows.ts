/** Edge forms as they are cut: each kind of strip with its sticks, and on each stick the cuts in order. */
import type {
  CutEdgeForms,
  EdgeForms,
  FormCut,
  FormStick,
  Reuse,
  Strip,
  StripCutList,
} from '../../src-core/edge-forms';
import { stripsOf } from '../../src-core/edge-forms';
import type { Job } from '../../src-core/job';
import { placeWords, stripName } from '../../src-core/takeoff';
import type { Trace } from '../../src-core/trace';
import { printLength } from '../../src-core/units';

export interface CutRow {
  readonly key: string;
  /** Counted on its stick from 1. */
  readonly number: string;
  /** Long point to long point. */
  readonly length: string;
  /** "45° both ends", "45° left, square right"; left and right as it lies on the stick. */
  readonly ends: string;
  /** "Serving counter, edge 3, copy 2". */
  readonly place: string;
  readonly trace: Trace;
}

export interface StickRow {
  readonly id: string;
  /** "Stick 2 of 96 in". */
  readonly title: string;
  readonly stick: FormStick;
  readonly cuts: readonly CutRow[];
  /** "18-3/8 in left". */
  readonly left: string;
}

export interface StripRows {
  readonly id: string;
  /** "Edge form, eased 1/8 in, 1-1/2 in high, 1-1/2 in thick". */
  readonly title: string;
  /** "3 sticks: fewest sticks, proved". */
  readonly words: string;
  /** Whether the mitres are cut after the strips are cut square apart. */
  readonly isMitredAfter: boolean;
  readonly longestIn: number;
  readonly sticks: readonly StickRow[];
  /** A sentence for each strip that no stick yields. */
  readonly notCut: readonly string[];
}

/** Every kind of strip of a job. */
export function stripRows(job: Job, { lists }: CutEdgeForms): StripRows[] {
  return lists.map((list) => stripRow(job, list));
}

/** A strip that is not cut, because one that came off elsewhere takes its place. */
export interface AgainRow {
  readonly id: string;
  readonly words: string;
  readonly trace: Trace;
}

/** What is used again: "Foot ledge, edge 1: 48 in, off Bar ledge, edge 1 on day 12, poured again on day 20". */
export function againRows(job: Job, reuses: readonly Reuse[], forms: readonly EdgeForms[]): AgainRow[] {
  const byId = new Map(forms.flatMap(stripsOf).map((strip) => [strip.id, strip]));
  return reuses.flatMap(({ id, fromId, toId, strippedDay, pourDay }) => {
    const [from, to] = [byId.get(fromId), byId.get(toId)];
    if (from === undefined || to === undefined) return [];
    const length = printLength(to.longIn, { system: job.shownIn });
    return [
      {
        id,
        words: `${stripPlace(job, to)}: ${length}, off ${stripPlace(job, from)} on day ${strippedDay}, poured against again on day ${pourDay}`,
        trace: to.trace,
      },
    ];
  });
}

/** "Gate-pier cap, edge 2, copy 3". */
function stripPlace(job: Job, { trace, copy }: Strip): string {
  return copy === 1 ? placeWords(job, trace) : `${placeWords(job, trace)}, copy ${copy}`;
}

function stripRow(job: Job, { id, of, sticks, proof, notCut }: StripCutList): StripRows {
  const system = job.shownIn;
  const length = (valueIn: number) => printLength(valueIn, { system });
  const count = sticks.length === 1 ? '1 stick' : `${sticks.length} sticks`;
  const isMitred = sticks.some(({ cuts }) =>
    cuts.some(({ strip }) => strip.startRad !== 0 || strip.endRad !== 0),
  );
  return {
    id,
    title: stripName(job, of),
    words: `${count}: ${proof.words}`,
    isMitredAfter: isMitred && sticks.every(({ saws }) => saws.length === 0),
    longestIn: Math.max(0, ...sticks.map(({ stockLengthIn }) => stockLengthIn)),
    sticks: sticks.map((stick, i) => ({
      id: stick.id,
      title: `Stick ${i + 1}, ${length(stick.stockLengthIn)}`,
      stick,
      cuts: stick.cuts.map((cut, k) => cutRow(job, cut, k)),
      left: stick.offcutIn > 0 ? `${length(stick.offcutIn)} left` : 'nothing left',
    })),
    notCut: notCut.map(
      (strip) =>
        `${placeWords(job, strip.trace)} takes a strip of ${length(strip.longIn)}, which no stick in stock yields.`,
    ),
  };
}

function cutRow(job: Job, cut: FormCut, index: number): CutRow {
  const { strip } = cut;
  return {
    key: strip.id,
    number: String(index + 1),
    length: printLength(strip.longIn, { system: job.shownIn }),
    ends: endWords(cut),
    place: stripPlace(job, strip),
    trace: strip.trace,
  };
}

/** The two ends as they lie, left to right on the stick. */
export function endWords({ strip: { startRad, endRad, made }, isTurned }: FormCut): string {
  if (made === 'bent') return 'bent round a corner';
  if (made === 'kerfed') return 'kerfed and bent round a corner';
  const [left, right] = isTurned
    ? [angleWords(endRad), angleWords(startRad)]
    : [angleWords(startRad), angleWords(endRad)];
  return left === right ? `${left} both ends` : `${left} left, ${right} right`;
}

/** "45°" of a mitre whose long point is on the outer face, "45° back" where the slab face is the longer, as at an inside corner. */
function angleWords(rad: number): string {
  const tenths = Math.round((Math.abs(rad) * 1800) / Math.PI);
  if (tenths === 0) return 'square';
  return `${tenths / 10}°${rad < 0 ? ' back' : ''}`;
}
