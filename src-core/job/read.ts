/** Reads a job file: version, fields, then whether its parts fit together. Never throws for bad input. */
import { crossCheck } from './cross-checks';
import { fieldProblem, knownFields, splitIssues } from './field-problems';
import { memberOf } from './field-words';
import type { Job } from './job';
import { JOB_FORMAT, JOB_VERSION, job as jobSchema } from './job';
import { findTextFault } from './json-text';
import { migrateJob } from './migrations';
import type { JobProblem, ReadingCode } from './problem';
import { capProblems, shorten } from './problem';

export type JobReading =
  | {
      readonly ok: true;
      readonly job: Job;
      /** Version that the file was written in, where that is older than the newest. */
      readonly migratedFrom: number | null;
    }
  | { readonly ok: false; readonly problems: readonly JobProblem[] };

/**
 * Most single values in a file, and deepest nesting. The largest job the schema allows to make sense stays far
 * below; beyond it the schema's own machinery could run out of stack.
 */
const MOST_VALUES = 60_000;
const DEEPEST = 40;
/** Longest text in characters that is looked at. */
const LONGEST_TEXT = 8_000_000;

/** Reads the text of a job file. Text that is not JSON gives one problem with its line and column. */
export function readJobText(text: string): JobReading {
  if (text.length > LONGEST_TEXT) return refused('too-large', '', tooLarge());
  // Some editors put a byte order mark before the first character.
  const json = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const parsed = parseJson(json);
  if (parsed.ok) return readJob(parsed.value);
  return refused('not-json', '', parsed.sentence);
}

/** Reads a job as a value, say one that has been parsed or built by a program. */
export function readJob(value: unknown): JobReading {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return refused('not-an-object', '', 'This is no job file: a job is one object in braces.');
  }
  if (isTooLarge(value)) return refused('too-large', '', tooLarge());
  const format = memberOf(value, 'format');
  if (format !== JOB_FORMAT) {
    const has = typeof format === 'string' ? `it is "${shorten(format)}"` : 'it has none';
    return refused(
      'wrong-format',
      'format',
      `This is no job file: its format must be "${JOB_FORMAT}"; ${has}.`,
    );
  }
  const version = memberOf(value, 'version');
  if (typeof version === 'number' && version > JOB_VERSION) {
    const sentence = `This job was made by a newer Ledgewright (version ${version}; this one reads up to ${JOB_VERSION}).`;
    return refused('newer-version', 'version', sentence);
  }
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 0) {
    const sentence = `The version must be a whole number from 0 to ${JOB_VERSION}.`;
    return refused('unknown-version', 'version', sentence);
  }
  const migrated = migrateJob(value as Readonly<Record<string, unknown>>, version);
  if (migrated === null) throw new Error(`No migration leads from version ${version} to ${JOB_VERSION}`);
  return readNewest(migrated, version === JOB_VERSION ? null : version);
}

function readNewest(file: Readonly<Record<string, unknown>>, migratedFrom: number | null): JobReading {
  const parsed = jobSchema.safeParse(file, { error: knownFields });
  if (!parsed.success) {
    const issues = splitIssues(parsed.error.issues);
    return { ok: false, problems: capProblems(issues, (issue) => fieldProblem(file, issue)) };
  }
  const problems = crossCheck(parsed.data);
  if (problems.length > 0) return { ok: false, problems: capProblems(problems, (problem) => problem) };
  return { ok: true, job: parsed.data, migratedFrom };
}

type Parsed =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly sentence: string };

function parseJson(json: string): Parsed {
  try {
    return { ok: true, value: JSON.parse(json) };
  } catch (error) {
    const fault = findTextFault(json);
    if (fault === null) return { ok: false, sentence: `The file cannot be read: ${String(error)}.` };
    const { line, column, sentence } = fault;
    return {
      ok: false,
      sentence: `The file cannot be read: at line ${line}, column ${column}, ${sentence}.`,
    };
  }
}

/** Counts without recursion and stops at the limit, so that depth, size and loops cannot hurt. */
function isTooLarge(value: unknown): boolean {
  let counted = 0;
  let level: unknown[] = [value];
  for (let depth = 0; level.length > 0; depth++) {
    counted += level.length;
    if (depth > DEEPEST || counted > MOST_VALUES) return true;
    const next: unknown[] = [];
    for (const item of level) {
      if (typeof item !== 'object' || item === null) continue;
      for (const member of Object.values(item)) next.push(member);
      if (counted + next.length > MOST_VALUES) return true;
    }
    level = next;
  }
  return false;
}

function tooLarge(): string {
  return `This file is too large for a job: at most ${MOST_VALUES} values, nested at most ${DEEPEST} deep.`;
}

function refused(code: ReadingCode, path: string, sentence: string): JobReading {
  return { ok: false, problems: [{ code, path, sentence }] };
}
