/** Turns the schema's findings into sentences that name the field, what it says and what it may say. */
import type { z } from 'zod';
import type { UnitSystem } from '../units';
import { sentenceCase } from '../units';
import { describePath, memberOf, pieceIdAt } from './field-words';
import { printFigure } from './figures';
import type { FieldPath, JobProblem, ReadingCode } from './problem';
import { shorten, writePath } from './problem';

type Issue = z.core.$ZodIssue;

/**
 * Given to the schema as its error map: for a field that it does not know, its message lists the names that the
 * object does have, so that `fieldProblem` can suggest the one meant.
 */
export function knownFields(issue: z.core.$ZodRawIssue): string | undefined {
  if (issue.code !== 'unrecognized_keys') return undefined;
  const shape = (issue.inst?._zod.def as { readonly shape?: object } | undefined)?.shape;
  return Object.keys(shape ?? {}).join(' ');
}

/** The schema's findings with one unknown field each. */
export function splitIssues(issues: readonly Issue[]): Issue[] {
  return issues.flatMap((issue): Issue[] =>
    issue.code === 'unrecognized_keys' ? issue.keys.map((key) => ({ ...issue, keys: [key] })) : [issue],
  );
}

/**
 * The problem of one finding, as `splitIssues` gives them, about the job `root`. The sentence fits a file as well as a
 * form; its figures are in the units in which the job is shown.
 */
export function fieldProblem(root: unknown, issue: Issue): JobProblem {
  if (issue.code === 'unrecognized_keys') {
    const key = issue.keys[0]!;
    const sentence = unknownField(root, issue.path, key, issue.message.split(' '));
    return problem(root, [...issue.path, key], 'unknown-field', sentence);
  }
  const value = issue.path.reduce<unknown>(memberOf, root);
  const field = String(issue.path[issue.path.length - 1] ?? '');
  const system = shownIn(root);
  const [code, says] = wording(issue, value, (figure) => printFigure(figure, field, system));
  const place = describePath(root, issue.path);
  return problem(root, issue.path, code, `${sentenceCase(place)} ${says}.`);
}

/** The system in which the job asks to be shown, also where the rest of it cannot be read. */
function shownIn(root: unknown): UnitSystem {
  return memberOf(root, 'shownIn') === 'metric' ? 'metric' : 'imperial';
}

function wording(issue: Issue, value: unknown, print: (figure: number) => string): [ReadingCode, string] {
  switch (issue.code) {
    case 'invalid_type':
      if (value === undefined) return ['missing-field', 'is missing'];
      return ['wrong-type', `must be ${typeWords(issue.expected)}; it is ${show(value)}`];
    case 'too_small':
    case 'too_big': {
      const isLeast = issue.code === 'too_small';
      const limit = Number(isLeast ? issue.minimum : issue.maximum);
      if (issue.origin === 'string') {
        if (isLeast) return ['wrong-length', 'must not be empty'];
        return ['wrong-length', `must be at most ${limit} characters long; it has ${String(value).length}`];
      }
      if (issue.origin === 'array') {
        const has = Array.isArray(value) ? value.length : 0;
        return [
          'wrong-length',
          `must have at ${isLeast ? 'least' : 'most'} ${limit} ${limit === 1 ? 'entry' : 'entries'}; it has ${has}`,
        ];
      }
      const bound = isLeast ? 'at least' : 'at most';
      const figure = typeof value === 'number' && Number.isFinite(value) ? print(value) : show(value);
      const words = issue.inclusive === false ? (isLeast ? 'more than' : 'less than') : bound;
      return ['out-of-range', `must be ${words} ${print(limit)}; it is ${figure}`];
    }
    case 'invalid_value':
      return ['unknown-choice', `must be ${choices(issue.values)}; it is ${show(value)}`];
    case 'invalid_union':
      if (value === undefined)
        return ['missing-field', `is missing; it must be ${choices(issueOptions(issue))}`];
      return ['unknown-choice', `must be ${choices(issueOptions(issue))}; it is ${show(value)}`];
    case 'invalid_format':
      return ['wrong-text', `cannot be ${show(value)}: ${issue.message}`];
    default:
      return ['wrong-type', `is not understood: it is ${show(value)}`];
  }
}

function issueOptions(issue: Extract<Issue, { code: 'invalid_union' }>): readonly unknown[] {
  return 'options' in issue ? (issue.options ?? []) : [];
}

function unknownField(root: unknown, path: FieldPath, key: string, known: readonly string[]): string {
  const place = describePath(root, path);
  const meant = nearestName(key, known);
  const hint = meant === null ? '' : ` Was "${meant}" meant?`;
  return `${sentenceCase(place)} has no field "${shorten(key)}".${hint}`;
}

/** The known name nearest to a mistyped one: the same but for its unit or its case, or at most two slips away. */
function nearestName(key: string, known: readonly string[]): string | null {
  const written = key.slice(0, 60).toLowerCase();
  let best: string | null = null;
  let fewest = 3;
  for (const name of known) {
    const lower = name.toLowerCase();
    const slips = written.length > 3 && lower.startsWith(written) ? 0 : slipsBetween(written, lower);
    if (slips < fewest && slips < lower.length / 2) {
      best = name;
      fewest = slips;
    }
  }
  return best;
}

/** Levenshtein distance: least count of letters to add, drop or change. */
function slipsBetween(first: string, second: string): number {
  let row = Array.from({ length: second.length + 1 }, (_, j) => j);
  for (let i = 1; i <= first.length; i++) {
    const next = [i];
    for (let j = 1; j <= second.length; j++) {
      const change = first[i - 1] === second[j - 1] ? 0 : 1;
      next.push(Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + change));
    }
    row = next;
  }
  return row[second.length]!;
}

function problem(root: unknown, path: FieldPath, code: ReadingCode, sentence: string): JobProblem {
  const pieceId = pieceIdAt(root, path);
  const place = { code, path: writePath(path), sentence };
  return pieceId === undefined ? place : { ...place, pieceId };
}

const TYPES: Readonly<Record<string, string>> = {
  string: 'a text in quotes',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  object: 'an object in braces',
  array: 'a list in brackets',
};

function typeWords(expected: string): string {
  return TYPES[expected] ?? `of the kind ${expected}`;
}

function choices(options: readonly unknown[]): string {
  const shown = options.map(show);
  return shown.length === 1 ? shown[0]! : `one of ${shown.join(', ')}`;
}

function show(value: unknown): string {
  if (typeof value === 'string') return JSON.stringify(shorten(value));
  if (value === null) return 'null';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'an object';
  return shorten(String(value));
}
