/** What is wrong with a job file: a stable code, where it is, and a sentence that a builder can act on. */

/** Codes of the file itself and of single fields. */
export type ReadingCode =
  | 'not-json'
  | 'not-an-object'
  | 'wrong-format'
  | 'newer-version'
  | 'unknown-version'
  | 'too-large'
  | 'missing-field'
  | 'unknown-field'
  | 'wrong-type'
  | 'unknown-choice'
  | 'out-of-range'
  | 'wrong-length'
  | 'wrong-text'
  | 'more-problems';

/** Codes of things that are each well formed but do not fit together. */
export type CrossCheckCode =
  | 'bar-area-wrong'
  | 'bars-outside-slab'
  | 'bounds-reversed'
  | 'butted-to-nothing'
  | 'cutout-near-edge'
  | 'cutout-outside'
  | 'cutouts-overlap'
  | 'date-impossible'
  | 'days-reversed'
  | 'edge-count'
  | 'fixing-count'
  | 'hand-over-too-early'
  | 'id-repeated'
  | 'joint-outside'
  | 'load-outside'
  | 'mix-unknown'
  | 'outline-crossing'
  | 'outline-degenerate'
  | 'profile-points'
  | 'profile-too-tall'
  | 'radius-too-large'
  | 'reference-unknown'
  | 'section-astray'
  | 'sink-data-astray'
  | 'steel-outside-depth'
  | 'support-in-opening'
  | 'support-no-length'
  | 'support-outside'
  | 'wall-too-thick'
  | 'water-reversed'
  | 'yield-unlikely';

export type ProblemCode = ReadingCode | CrossCheckCode;

export interface JobProblem {
  readonly code: ProblemCode;
  /** Place in the file, e.g. `pieces[2].cutouts[0].shape.radiusIn`; empty for the whole file. */
  readonly path: string;
  readonly pieceId?: string;
  readonly sentence: string;
}

/** Longest list of problems that a person is shown at once. */
export const MOST_PROBLEMS = 50;

const LONGEST_SHOWN_TEXT = 40;

export type FieldPath = readonly PropertyKey[];

/** Writes a path as it would be typed: `pieces[2].corners[0].xIn`. A name that is no plain word is quoted. */
export function writePath(path: FieldPath): string {
  let text = '';
  for (const step of path) {
    if (typeof step === 'number') text += `[${step}]`;
    else {
      const name = shorten(String(step));
      if (!/^[A-Za-z_][A-Za-z0-9_]*$/.test(name)) text += `[${JSON.stringify(name)}]`;
      else text += text === '' ? name : `.${name}`;
    }
  }
  return text;
}

/** Cuts a text from the file to a length that fits in a sentence. */
export function shorten(text: string): string {
  return text.length <= LONGEST_SHOWN_TEXT ? text : `${text.slice(0, LONGEST_SHOWN_TEXT - 3)}...`;
}

/** Words the first findings and says how many were left out, so that a ruined file costs no time. */
export function capProblems<Found>(
  found: readonly Found[],
  word: (finding: Found) => JobProblem,
): JobProblem[] {
  if (found.length <= MOST_PROBLEMS) return found.map(word);
  const left = found.length - (MOST_PROBLEMS - 1);
  return [
    ...found.slice(0, MOST_PROBLEMS - 1).map(word),
    { code: 'more-problems', path: '', sentence: `There are ${left} more problems. Mend these first.` },
  ];
}
