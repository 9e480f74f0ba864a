/** The parts of a form, each cut and set in one piece, and the screws along them. */
import type { Trace } from '../trace';
import { formula } from '../workings';
import { longPastIn, squareEnd } from './form-ends';
import { END_SCREWS_IN, SCREW_SPACING_IN } from './practice';
import type { FormEnd, FormPart } from './types';

interface PartedForm {
  readonly id: string;
  readonly trace: Trace;
  readonly isScrewed: boolean;
  readonly lengthIn: number;
  readonly start: FormEnd;
  readonly end: FormEnd;
}

/** Cuts a form square at its joints. */
export function partsOf(form: PartedForm, jointsIn: readonly number[]): FormPart[] {
  const marksIn = [0, ...jointsIn, form.lengthIn];
  return marksIn.slice(1).map((toIn, k): FormPart => {
    const fromIn = marksIn[k]!;
    const start = k === 0 ? form.start : squareEnd('joint');
    const end = toIn === form.lengthIn ? form.end : squareEnd('joint');
    return {
      id: `${form.id}/${k + 1}`,
      trace: form.trace,
      longIn: toIn - fromIn + longPastIn(start) + longPastIn(end),
      fromIn,
      toIn,
      start,
      end,
      screwsAtIn: form.isScrewed ? screwPlacesIn(toIn - fromIn) : [],
    };
  });
}

/** Screws of a part between the pairs near its ends. L: part, in; e: second screw from its end, in; s: spacing, in. Common practice, no source. */
export const screwsBetween = formula<{ L: number; e: number; s: number }>({
  symbol: 'ns',
  label: 'screws between the pairs near the ends',
  formula: 'max(0, ceil((L - 2 * e) / s - 1e-9) - 1)',
  units: { L: 'in', e: 'in', s: 'in' },
  unit: '',
  source: 'common practice, no source',
  compute: ({ L, e, s }) => Math.max(0, Math.ceil((L - 2 * e) / s - 1e-9) - 1),
});

/**
 * Places of the screws along a part, in from its start: two near each end and evenly between. A part with no room for
 * both pairs takes two screws, at its quarters.
 */
export function screwPlacesIn(lengthIn: number): number[] {
  const [first, second] = END_SCREWS_IN;
  const betweenIn = lengthIn - 2 * second;
  if (betweenIn < second - first) return [lengthIn / 4, (3 * lengthIn) / 4];
  const count = screwsBetween.compute({ L: lengthIn, e: second, s: SCREW_SPACING_IN });
  const inner = Array.from({ length: count + 2 }, (_, k) => second + (betweenIn * k) / (count + 1));
  return [first, ...inner, lengthIn - first];
}
