/** Breaks a job file at random, for tests that reading never throws. Repeatable: same source, same damage. */
import { diceOf } from './seeded-random';

type Container = Record<string, unknown> | unknown[];

interface Place {
  readonly holder: Container;
  readonly key: string | number;
}

export interface MutatedJob {
  readonly value: unknown;
  /** What was done, for a failing test to show. */
  readonly changes: readonly string[];
}

const ODD_VALUES: readonly unknown[] = [
  null,
  true,
  false,
  '',
  'x',
  'a b',
  '12',
  '1/2',
  'rectangle',
  'tied',
  'x'.repeat(5000),
  '2027-02-30',
  0,
  -0,
  -1,
  1,
  2,
  0.1,
  0.25,
  17,
  96,
  1e-9,
  1e-300,
  1e9,
  -1e9,
  1e308,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  [],
  {},
  [[]],
  [null],
  [0, 1],
  { kind: 'resting' },
  { kind: 'circle' },
  { xIn: 0, yIn: 0 },
];

const ODD_FIELDS = [
  'extra',
  'thicknes',
  '__proto__',
  'constructor',
  'toString',
  'length',
  '',
  'kind',
  'id',
  'x y',
  '0',
];

/** A copy of `job` with `count` random changes: fields lost, replaced, retyped, added, doubled, swapped. */
export function mutateJob(job: unknown, random: () => number, count: number): MutatedJob {
  const dice = diceOf(random);
  const value = structuredClone(job);
  const changes: string[] = [];
  for (let i = 0; i < count; i++) {
    const places = placesIn(value);
    if (places.length === 0) break;
    const place = dice.pick(places);
    const other = dice.pick(places);
    const change = dice.pick(CHANGES);
    changes.push(`${change.name} ${String(place.key)}`);
    change.apply(place, other, dice);
  }
  return { value, changes };
}

interface Change {
  readonly name: string;
  readonly apply: (place: Place, other: Place, dice: ReturnType<typeof diceOf>) => void;
}

const CHANGES: readonly Change[] = [
  {
    name: 'delete',
    apply: ({ holder, key }) => {
      if (Array.isArray(holder)) holder.splice(Number(key), 1);
      else delete holder[key];
    },
  },
  { name: 'replace', apply: (place, _, dice) => write(place, structuredClone(dice.pick(ODD_VALUES))) },
  { name: 'copy another value to', apply: (place, other) => write(place, structuredClone(read(other))) },
  {
    name: 'scale',
    apply: (place, _, dice) => {
      const value = read(place);
      if (typeof value === 'number') write(place, value * dice.pick([-1, 0, 0.01, 0.5, 1.01, 2, 10, 1e6]));
    },
  },
  {
    name: 'shift',
    apply: (place, _, dice) => {
      const value = read(place);
      if (typeof value === 'number') write(place, value + dice.sixteenths(-40, 40));
    },
  },
  {
    name: 'retype',
    apply: (place) => {
      const value = read(place);
      write(place, typeof value === 'string' ? value.length : String(value));
    },
  },
  {
    name: 'add a field to',
    apply: (place, other, dice) => {
      const value = read(place);
      if (typeof value !== 'object' || value === null) return;
      if (Array.isArray(value))
        value.push(structuredClone(dice.chance(0.5) ? read(other) : dice.pick(ODD_VALUES)));
      else
        define(
          value as Record<string, unknown>,
          dice.pick(ODD_FIELDS),
          structuredClone(dice.pick(ODD_VALUES)),
        );
    },
  },
  {
    name: 'double',
    apply: ({ holder, key }) => {
      if (Array.isArray(holder)) holder.splice(Number(key), 0, structuredClone(holder[Number(key)]));
    },
  },
  {
    name: 'reverse',
    apply: (place) => {
      const value = read(place);
      if (Array.isArray(value)) value.reverse();
    },
  },
];

function placesIn(root: unknown): Place[] {
  const places: Place[] = [];
  const open: unknown[] = [root];
  while (open.length > 0) {
    const holder = open.pop();
    if (typeof holder !== 'object' || holder === null) continue;
    for (const [key, value] of Object.entries(holder)) {
      places.push({ holder: holder as Container, key: Array.isArray(holder) ? Number(key) : key });
      open.push(value);
    }
  }
  return places;
}

function read({ holder, key }: Place): unknown {
  return (holder as Record<string | number, unknown>)[key];
}

function write({ holder, key }: Place, value: unknown): void {
  define(holder as Record<string, unknown>, String(key), value);
}

/** As JSON.parse does, so that a field called `__proto__` stays a field. */
function define(holder: Record<string, unknown>, key: string, value: unknown): void {
  Object.defineProperty(holder, key, { value, writable: true, enumerable: true, configurable: true });
}
