/** One layer of bars placed: every bar, its mark, its hooks and laps. */
import type { Job, Piece } from '../job';
import type { Point, Region } from '../outline';
import { SHORTEST_BAR_IN } from '../solid';
import { printExactLength, printLength } from '../units';
import { cornersInside } from './arms';
import type { BarRun } from './bar-runs';
import { barRuns } from './bar-runs';
import { HOOK_HEIGHT_BARS, hookAllowance, roundSteelMass } from './formulas';
import type { Frame } from './frame';
import { frameAt, sizeIn } from './frame';
import type { BarLayer } from './lap-lengths';
import { holdOf, holdOfHooks, lapOfBars } from './lap-lengths';
import type { LapPlaces } from './lap-places';
import { lapPlaces } from './lap-places';
import type { PeakSources } from './peaks';
import { bearersOf, peaksAlong, peaksFrom } from './peaks';
import { BESIDE_BAR_IN, STEEL_LB_PER_IN3 } from './practice';
import { barStock } from './stock';
import { steelTrace } from './traces';
import type { BarMark, BarPlacing, BarShape, PlacedBar, SteelLap } from './types';

/** Bars whose cut lengths differ by less than this are one mark, in. */
const SAME_LENGTH_IN = 1 / 32;

export interface BarPlaceOptions {
  readonly peaksAt: readonly Point[];
  /** "A" of "A1": a letter for each layer of bars. */
  readonly letter: string;
}

/** Bars of a layer over a slab in plan. */
export function placeBars(
  job: Job,
  piece: Piece,
  region: Region,
  layer: BarLayer,
  { peaksAt, letter }: BarPlaceOptions,
): BarPlacing {
  const frame = frameAt(layer.angleDeg);
  const hold = holdOf(job, piece);
  const lap = lapOfBars(layer, piece.thicknessIn, hold);
  const stock = barStock(job, layer.barIn);
  const hook = layer.hooked ? hookAllowance({ db: layer.barIn }) : null;
  const peaks: PeakSources = {
    bearers: bearersOf(piece, region.outer, frame),
    points: [
      ...cornersInside(piece, layer.edgeCoverIn, frame).map((at) => ({ at, words: 'inside corner' })),
      ...peaksAt.map((at) => ({ at: frame.into(at), words: 'peak of the load check' })),
    ],
  };
  const { pitchIn, runs } = barRuns(piece, region, layer);
  const long = runs.filter(({ along }) => sizeIn(along) >= SHORTEST_BAR_IN);
  const laid = long.map((run, k) => ({
    run,
    places: runPlaces(run, { mostIn: stock.lengthIn - (hook?.value ?? 0), lapIn: lap.lapIn, peaks }, k),
  }));
  const unmarked: Omit<PlacedBar, 'mark'>[] = [];
  const laps: SteelLap[] = [];
  for (const { run, places } of laid) {
    const first = unmarked.length;
    unmarked.push(...barsOf(piece, layer, run, { places, frame, hookIn: hook?.value ?? 0, before: first }));
    laps.push(
      ...lapsOf(piece, layer, run, {
        places,
        frame,
        lapIn: lap.lapIn,
        bars: unmarked.slice(first),
        before: laps.length,
      }),
    );
  }
  const { bars, marks } = marked(piece, layer, letter, unmarked);
  return {
    id: layer.id,
    trace: steelTrace(piece, layer.id),
    words: layer.label ?? layer.id,
    stock,
    barIn: layer.barIn,
    pitchIn,
    lapIn: lap.lapIn,
    bars,
    marks,
    laps,
    lengthIn: marks.reduce((sum, { cutLengthIn, count }) => sum + cutLengthIn * count, 0),
    massLb: marks.reduce((sum, { massLb }) => sum + massLb, 0),
    workings: [
      ...(hook === null ? [] : [hook.line, ...holdOfHooks(layer, hold).lines]),
      ...(laps.length > 0 ? lap.lines : []),
    ],
    notes: notesOf(job, piece, layer, {
      laps,
      isTooLong: laid.some(({ places }) => places.isTooLong),
      left: runs.length - long.length,
    }),
  };
}

/** Every second line begins with its full lengths at the other end, so that laps do not lie side by side. */
function runPlaces(
  { acrossIn, along }: BarRun,
  { mostIn, lapIn, peaks }: { readonly mostIn: number; readonly lapIn: number; readonly peaks: PeakSources },
  k: number,
): LapPlaces {
  const box = { u: along, v: { fromIn: acrossIn - BESIDE_BAR_IN, toIn: acrossIn + BESIDE_BAR_IN } };
  return lapPlaces({
    spanIn: sizeIn(along),
    mostIn,
    lapIn,
    peaks: peaksFrom(peaksAlong('u', box, peaks), along),
    fullFrom: k % 2 === 0 ? 'start' : 'end',
  });
}

interface RunLaid {
  readonly places: LapPlaces;
  readonly frame: Frame;
  readonly before: number;
}

function barsOf(
  piece: Piece,
  layer: BarLayer,
  run: BarRun,
  { places, frame, hookIn, before }: RunLaid & { readonly hookIn: number },
): Omit<PlacedBar, 'mark'>[] {
  return places.lengths.map(({ fromIn, toIn }, k) => {
    const isHookedAtFrom = layer.hooked && k === 0;
    const isHookedAtTo = layer.hooked && k === places.lengths.length - 1;
    const hooks = Number(isHookedAtFrom) + Number(isHookedAtTo);
    return {
      id: `${layer.id}-bar-${before + k + 1}`,
      trace: steelTrace(piece, layer.id),
      layerId: layer.id,
      shape: SHAPES[hooks]!,
      from: onRun(run, fromIn, frame),
      to: onRun(run, toIn, frame),
      isHookedAtFrom,
      isHookedAtTo,
      cutLengthIn: toIn - fromIn + hooks * hookIn,
    };
  });
}

const SHAPES: readonly BarShape[] = ['straight', 'one-hook', 'two-hooks'];

function lapsOf(
  piece: Piece,
  layer: BarLayer,
  run: BarRun,
  {
    places,
    frame,
    lapIn,
    bars,
    before,
  }: RunLaid & { readonly lapIn: number; readonly bars: readonly { readonly id: string }[] },
): SteelLap[] {
  return places.laps.map(({ atIn, clearIn, nearestPeak }, k) => ({
    id: `${layer.id}-lap-${before + k + 1}`,
    trace: steelTrace(piece, layer.id),
    layerId: layer.id,
    joins: [bars[k]!.id, bars[k + 1]!.id],
    overlapIn: lapIn,
    zones: [[onRun(run, atIn, frame), onRun(run, atIn + lapIn, frame)]],
    clearIn,
    nearestPeak,
  }));
}

function onRun({ acrossIn, along }: BarRun, atIn: number, frame: Frame): Point {
  return frame.outOf({ xIn: along.fromIn + atIn, yIn: acrossIn });
}

/** Bars alike in shape and length share a mark; the longest is number 1. */
function marked(
  piece: Piece,
  layer: BarLayer,
  letter: string,
  unmarked: readonly Omit<PlacedBar, 'mark'>[],
): { readonly bars: readonly PlacedBar[]; readonly marks: readonly BarMark[] } {
  const groups: Omit<PlacedBar, 'mark'>[][] = [];
  for (const bar of [...unmarked].sort((a, b) => b.cutLengthIn - a.cutLengthIn)) {
    const group = groups.find(
      ([first]) => first!.shape === bar.shape && first!.cutLengthIn - bar.cutLengthIn < SAME_LENGTH_IN,
    );
    if (group === undefined) groups.push([bar]);
    else group.push(bar);
  }
  const markOf = new Map<string, string>();
  const marks = groups.map((group, k): BarMark => {
    const mark = `${letter}${k + 1}`;
    for (const { id } of group) markOf.set(id, mark);
    const { shape, cutLengthIn } = group[0]!;
    const count = group.length;
    const massLb = roundSteelMass.compute({ rho: STEEL_LB_PER_IN3, db: layer.barIn, L: cutLengthIn * count });
    const trace = steelTrace(piece, layer.id);
    return {
      id: `${layer.id}-mark-${k + 1}`,
      trace,
      mark,
      layerId: layer.id,
      shape,
      barIn: layer.barIn,
      cutLengthIn,
      count,
      massLb,
    };
  });
  return { bars: unmarked.map((bar) => ({ ...bar, mark: markOf.get(bar.id)! })), marks };
}

function notesOf(
  job: Job,
  piece: Piece,
  layer: BarLayer,
  {
    laps,
    isTooLong,
    left,
  }: { readonly laps: readonly SteelLap[]; readonly isTooLong: boolean; readonly left: number },
): string[] {
  const system = job.shownIn;
  const notes: string[] = [];
  const tallIn = HOOK_HEIGHT_BARS * layer.barIn;
  if (layer.hooked && tallIn > piece.thicknessIn) {
    const apart = tallIn > layer.spacingIn ? ' They reach past the next bar: turn them all one way.' : '';
    notes.push(
      `A 90 degree hook stands ${printExactLength(tallIn, { system })} over its bar, more than the slab is thick: bend the hooks and lay them flat.${apart}`,
    );
  }
  const over = laps.filter(({ clearIn }) => clearIn !== null && clearIn < 0);
  if (over.length > 0) {
    const peaks = [...new Set(over.map(({ nearestPeak }) => nearestPeak))].join(', ');
    notes.push(
      `${over.length} of ${laps.length} laps of ${printLength(over[0]!.overlapIn, { system })} lie where bending peaks (${peaks}): no place was found clear of all peaks.`,
    );
  }
  if (isTooLong)
    notes.push('The bars are too short to lap: some are drawn in one length, longer than the stock.');
  if (left > 0) {
    notes.push(
      `${left === 1 ? '1 length' : `${left} lengths`} under ${printLength(SHORTEST_BAR_IN, { system })} left out: too short to hold.`,
    );
  }
  if (piece.joints.some(({ kind }) => kind === 'isolation')) {
    notes.push('The bars stop at isolation joints, which part the slab for its whole thickness.');
  }
  return notes;
}
