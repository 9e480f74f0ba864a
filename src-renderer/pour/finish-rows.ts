/** The steps from screed to trowel as rows to tick off, by the clock. */
import type { FinishKind, Pour } from '../../src-core/pour';
import { tickIdOf } from '../../src-core/pour';
import { clockTime } from './clock-time';
import { castingName } from './pour-choice';

export interface FinishRow {
  readonly id: string;
  readonly tickId: string;
  readonly isDone: boolean;
  /** "08:37". */
  readonly time: string;
  /** "37 to 46 min" from the first water. */
  readonly minutes: string;
  readonly title: string;
  readonly pieceId: string;
  readonly name: string;
  /** How it is done, beside the first of its kind; empty elsewhere. */
  readonly words: string;
}

const TITLES: { readonly [K in FinishKind]: string } = {
  screed: 'Screed',
  fill: 'Fill low spots',
  'screed-again': 'Screed again',
  vibrate: 'Vibrate the edges',
  bleed: 'Wait for the sheen to go',
  float: 'Float',
  trowel: 'Trowel',
};

/** One row a step of each form, those that begin first at the top. */
export function finishRows(pour: Pour, ticks: ReadonlySet<string>, startMinutes: number): FinishRow[] {
  const steps = [...(pour.clock?.finish ?? [])].sort((a, b) => a.fromMinutes - b.fromMinutes);
  const told = new Set<FinishKind>();
  return steps.map((step) => {
    const { id, kind, fromMinutes, toMinutes, pieceId, copy, words } = step;
    const isTold = told.has(kind);
    told.add(kind);
    const tickId = tickIdOf(step);
    return {
      id,
      tickId,
      isDone: ticks.has(tickId),
      time: clockTime(startMinutes, fromMinutes),
      minutes: `${Math.round(fromMinutes)} to ${Math.round(toMinutes)} min`,
      title: TITLES[kind],
      pieceId,
      name: castingName(pour, pieceId, copy),
      words: isTold ? '' : words,
    };
  });
}

/** Where the minutes of the steps come from; empty where there are none. */
export function finishSource({ clock }: Pour): string {
  return clock?.finish[0]?.source ?? '';
}
