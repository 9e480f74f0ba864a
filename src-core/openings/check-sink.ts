/** Whether a sink's rim bears enough, and clears the edges of the piece and its neighbours. */
import type { Job } from '../job';
import type { Point } from '../outline';
import { cutoutClearance, cutoutGaps } from '../outline';
import type { Trace } from '../trace';
import { traceWord } from '../trace';
import { printExactLength, printLength } from '../units';
import type { OpeningFinding } from './finding';
import { PRACTICE_SOURCE } from './finding';
import type { OpeningPractice } from './practice';
import type { SinkFit } from './sink-fit';

/** Keeps a distance of exactly the least on the right side of rounding, in. */
const ROUNDING_IN = 1e-6;

/** An opening beside the sink: by its rim where that lies on the same face, else by its own outline. */
export interface Neighbour {
  readonly called: string;
  readonly opening: readonly Point[];
  readonly sink: SinkFit | null;
}

export interface SinkSurroundings {
  readonly job: Job;
  readonly trace: Trace;
  readonly called: string;
  readonly rimIn: number;
  readonly outer: readonly Point[];
  readonly neighbours: readonly Neighbour[];
  readonly practice: OpeningPractice;
}

/** Findings about one sink. */
export function checkSink(sink: SinkFit, around: SinkSurroundings): OpeningFinding[] {
  const { rim, bowl } = sink;
  if (rim === null || bowl === null) return [noBowl(around)];
  return [
    bearingFinding(sink, around),
    edgeFinding(rim.outline, around),
    ...neighbourFindings(sink, rim.outline, around),
  ];
}

function noBowl(around: SinkSurroundings): OpeningFinding {
  const words = `No bowl is left inside ${around.called}: the opening is too small for its clearance.`;
  return finding(around, 'bowl-size', { value: 0, limit: 0, isMet: false, words });
}

function bearingFinding(sink: SinkFit, around: SinkSurroundings): OpeningFinding {
  const { bearingIn, leastBearingIn, narrowestRimIn, setBackIn, mounting } = sink;
  const { job, called, rimIn } = around;
  const exact = (valueIn: number) => printExactLength(valueIn, { system: job.shownIn });
  const isMet = bearingIn >= leastBearingIn - ROUNDING_IN;
  const beside = mounting === 'dropped-in' ? `, with ${exact(setBackIn)} of clearance beside the bowl` : '';
  const words = isMet
    ? `The rim of ${called} bears on ${exact(bearingIn)}${beside}; at least ${exact(leastBearingIn)} is wanted.`
    : `The rim of ${called} is ${exact(rimIn)} wide and bears on ${exact(bearingIn)}${beside}. It needs to be at least ${exact(narrowestRimIn)} wide: choose another sink or another mounting.`;
  return {
    ...finding(around, 'sink-bearing', { value: bearingIn, limit: leastBearingIn, isMet, words }),
    lines: sink.lines,
  };
}

function edgeFinding(rim: readonly Point[], around: SinkSurroundings): OpeningFinding {
  const { job, called, outer, practice } = around;
  const { isInside, clearanceIn } = cutoutClearance(outer, rim);
  const limit = practice.rimToEdgeIn;
  const leftIn = isInside ? clearanceIn : 0;
  const isMet = leftIn >= limit - ROUNDING_IN;
  const least = printExactLength(limit, { system: job.shownIn });
  const left = printLength(leftIn, { system: job.shownIn });
  const words = isMet
    ? `The rim of ${called} stays ${left} inside the edge of the piece; at least ${least} is wanted.`
    : isInside
      ? `The rim of ${called} comes within ${left} of the edge of the piece; keep at least ${least}.`
      : `The rim of ${called} reaches the edge of the piece; keep it at least ${least} inside.`;
  return finding(around, 'rim-to-edge', { value: leftIn, limit, isMet, words });
}

/** One finding about the nearest neighbour, where there is one. */
function neighbourFindings(sink: SinkFit, rim: readonly Point[], around: SinkSurroundings): OpeningFinding[] {
  const { job, called, neighbours, practice } = around;
  const gaps = neighbours.map((other) => {
    const beside = other.sink?.rimLies === sink.rimLies ? other.sink.rim : null;
    const gapIn = cutoutGaps([rim, beside?.outline ?? other.opening])[0]!.gapIn;
    return { words: beside === null ? other.called : `the rim of ${other.called}`, gapIn };
  });
  const nearest = gaps.sort((p, q) => p.gapIn - q.gapIn)[0];
  if (nearest === undefined) return [];
  const limit = practice.rimToOpeningIn;
  const isMet = nearest.gapIn >= limit - ROUNDING_IN;
  const gap = printLength(nearest.gapIn, { system: job.shownIn });
  const least = printExactLength(limit, { system: job.shownIn });
  const words = isMet
    ? `The rim of ${called} stays ${gap} clear of ${nearest.words}; at least ${least} is wanted.`
    : nearest.gapIn > 0
      ? `The rim of ${called} comes within ${gap} of ${nearest.words}; keep at least ${least}.`
      : `The rim of ${called} lies over ${nearest.words}; keep them at least ${least} apart.`;
  return [finding(around, 'rim-to-opening', { value: nearest.gapIn, limit, isMet, words })];
}

function finding(
  { trace }: SinkSurroundings,
  check: OpeningFinding['check'],
  read: { readonly value: number; readonly limit: number; readonly isMet: boolean; readonly words: string },
): OpeningFinding {
  const { value, limit, isMet, words } = read;
  return {
    id: `${traceWord(trace)}/${check}`,
    check,
    trace,
    level: isMet ? 'ok' : 'attention',
    words,
    value,
    limit,
    unit: 'in',
    lines: [],
    source: PRACTICE_SOURCE,
  };
}
