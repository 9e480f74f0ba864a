import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ccxVersion } from './run';

/** The numbers a test keeps of a run, by name with unit. A list is compared against its own largest value. */
export type ReferenceNumbers = Readonly<Record<string, number | readonly number[]>>;

/** What a recording holds. */
export type Recording = { readonly version: string; readonly numbers: ReferenceNumbers };

/** Numbers to test against and where they come from, in words. */
export type Reference = { readonly numbers: ReferenceNumbers; readonly source: string };

/**
 * Where the recordings lie, which `ccx` there is (null for none), and whether to record anew. `driftRatio` is the share
 * by which a run may differ from its recording, 0.1 % if not given; cases on a mesh that may change need more.
 */
export type ReferenceSettings = {
  readonly directory: string;
  readonly version: string | null;
  readonly record: boolean;
  readonly driftRatio?: number;
};

/** A run on the same mesh may differ from its recording by this share: another build's order of adding. */
const usualDriftRatio = 1e-3;
/** Recordings keep this many significant digits. */
const keptDigits = 8;

/** The settings of a test run: recordings in tests/fixtures/calculix, made anew with RECORD=1. */
export const here: ReferenceSettings = {
  directory: join(dirname(fileURLToPath(import.meta.url)), '../../fixtures/calculix'),
  version: ccxVersion(),
  record: process.env.RECORD === '1',
};

/**
 * Numbers of a CalculiX run called `name`. Where `ccx` is installed, `compute` runs and must agree with
 * tests/fixtures/calculix/<name>.json within 0.1 %, or replaces it when RECORD=1. Where it is not, the recording
 * stands in. Throws when they differ or there is no recording. Run `npm run fix` after recording, to lay the file out.
 */
export function reference(
  name: string,
  compute: () => ReferenceNumbers,
  settings: ReferenceSettings = here,
): Reference {
  const file = join(settings.directory, `${name}.json`);
  const { version } = settings;
  if (version === null) {
    const recording = readRecording(file);
    const source = referenceSource(name, settings);
    console.warn(`${name}: ${source}`);
    return { numbers: recording.numbers, source };
  }
  const numbers = compute();
  if (settings.record) {
    mkdirSync(settings.directory, { recursive: true });
    const recording: Recording = { version, numbers: mapNumbers(numbers, shorten) };
    writeFileSync(file, `${JSON.stringify(recording, null, 2)}\n`);
  } else {
    const differences = differencesFrom(
      readRecording(file).numbers,
      numbers,
      settings.driftRatio ?? usualDriftRatio,
    );
    if (differences.length > 0) {
      throw new Error(`${name}: CalculiX ${version} differs from its recording:\n${differences.join('\n')}`);
    }
  }
  return { numbers, source: referenceSource(name, settings) };
}

/** Says for a test's title whether its numbers come from a run or from a recording, and of which version. */
export function referenceSource(name: string, settings: ReferenceSettings = here): string {
  if (settings.version !== null) return `run with CalculiX ${settings.version}`;
  const { version } = readRecording(join(settings.directory, `${name}.json`));
  return `recorded with CalculiX ${version}; ccx is not installed here`;
}

/** One number of a reference; throws when it is a list or missing. */
export function oneOf({ numbers }: Reference, key: string): number {
  const value = numbers[key];
  if (typeof value !== 'number') throw new Error(`${key} is not one number: ${JSON.stringify(value)}`);
  return value;
}

/** A list of a reference; throws when it is one number or missing. */
export function listOf({ numbers }: Reference, key: string): readonly number[] {
  const value = numbers[key];
  if (value === undefined || typeof value === 'number') throw new Error(`${key} is not a list: ${value}`);
  return value;
}

function readRecording(file: string): Recording {
  if (!existsSync(file))
    throw new Error(`no recording ${file}; make it with RECORD=1 where ccx is installed`);
  return JSON.parse(readFileSync(file, 'utf8')) as Recording;
}

/** Sentences about every number that is missing, new, or further than the allowed share from its recording. */
function differencesFrom(recorded: ReferenceNumbers, live: ReferenceNumbers, driftRatio: number): string[] {
  const keys = [...new Set([...Object.keys(recorded), ...Object.keys(live)])];
  return keys.flatMap((key) => {
    const before = [recorded[key] ?? []].flat();
    const now = [live[key] ?? []].flat();
    if (before.length !== now.length) return [`${key}: ${before.length} recorded, ${now.length} now`];
    const scale = before.reduce((largest, value) => Math.max(largest, Math.abs(value)), 0);
    const off = now.findIndex((value, index) => !(Math.abs(value - before[index]!) <= driftRatio * scale));
    return off < 0 ? [] : [`${key}[${off}]: recorded ${before[off]}, now ${now[off]}`];
  });
}

function mapNumbers(numbers: ReferenceNumbers, change: (value: number) => number): ReferenceNumbers {
  return Object.fromEntries(
    Object.entries(numbers).map(([key, value]) => [
      key,
      typeof value === 'number' ? change(value) : value.map(change),
    ]),
  );
}

function shorten(value: number): number {
  return Number(value.toPrecision(keptDigits));
}
