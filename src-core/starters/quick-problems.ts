/** Answers of a quick check that cannot be built, each beside its field. */
import type { UnitSystem } from '../units';
import { printExactLength } from '../units';
import { PIER_IN } from './quick-bearings';
import type { QuickFields } from './quick-fields';
import { QUICK_BEARINGS, QUICK_HELD } from './quick-fields';

export interface QuickProblem {
  readonly field: keyof QuickFields;
  readonly sentence: string;
}

type SizeField = 'lengthIn' | 'depthIn' | 'thicknessIn' | 'overhangIn';

/** Sizes beyond which an answer is a slip of the pen, in. Common practice, no source. */
const SIZES: {
  readonly [F in SizeField]: { readonly words: string; readonly least: number; readonly most: number };
} = {
  lengthIn: { words: 'The length', least: 6, most: 240 },
  depthIn: { words: 'The depth', least: 4, most: 60 },
  thicknessIn: { words: 'The thickness', least: 0.75, most: 6 },
  overhangIn: { words: 'The overhang', least: 0, most: 36 },
};

/** Least bearing of a slab on a wall or a cabinet, and least side of a cap's pier, in. Common practice, no source. */
const LEAST_BEARING_IN = { wall: 1.5, cabinet: 12, capPier: 4 } as const;

/** Everything that keeps the answers from being a piece; none where they are one. */
export function quickProblems(fields: QuickFields, system: UnitSystem): QuickProblem[] {
  const print = (valueIn: number) => printExactLength(valueIn, { system });
  const problems = [...sizeProblems(fields, print), ...choiceProblems(fields)];
  // Whether the overhang leaves a bearing makes no sense of sizes or choices that are themselves wrong.
  return problems.length > 0 ? problems : overhangProblems(fields, print);
}

function sizeProblems(fields: QuickFields, print: (valueIn: number) => string): QuickProblem[] {
  return (Object.keys(SIZES) as SizeField[]).flatMap((field) => {
    const { words, least, most } = SIZES[field];
    const valueIn = fields[field];
    if (valueIn >= least && valueIn <= most) return [];
    return [{ field, sentence: `${words} must be between ${print(least)} and ${print(most)}.` }];
  });
}

function choiceProblems({ kind, bearing, held }: QuickFields): QuickProblem[] {
  const problems: QuickProblem[] = [];
  if (!QUICK_BEARINGS[kind].includes(bearing)) {
    const sentence = `A ${KIND_WORDS[kind]} is not asked about on ${BEARING_WORDS[bearing]} here; draw it instead.`;
    problems.push({ field: 'bearing', sentence });
  }
  if (!QUICK_HELD[bearing].includes(held)) {
    const sentence = 'Base cabinets are too light to tie a slab down to; let it lie loose.';
    problems.push({ field: 'held', sentence });
  }
  return problems;
}

function overhangProblems(fields: QuickFields, print: (valueIn: number) => string): QuickProblem[] {
  const { kind, bearing, lengthIn, depthIn, overhangIn } = fields;
  const refuse = (sentence: string): QuickProblem[] => [{ field: 'overhangIn', sentence }];
  if (bearing !== 'piers') {
    const leftIn = depthIn - overhangIn;
    const leastIn = bearing === 'cabinets' ? LEAST_BEARING_IN.cabinet : LEAST_BEARING_IN.wall;
    if (leftIn >= leastIn) return [];
    const has = leftIn > 0 ? `only ${print(leftIn)} of the depth` : 'nothing';
    return refuse(
      `This overhang leaves ${has} on ${BEARING_WORDS[bearing]}; leave at least ${print(leastIn)}.`,
    );
  }
  const leftIn = (kind === 'cap' ? Math.min(lengthIn, depthIn) : lengthIn) - 2 * overhangIn;
  const leastIn = kind === 'cap' ? LEAST_BEARING_IN.capPier : 2 * PIER_IN;
  if (leftIn >= leastIn) return [];
  const what = kind === 'cap' ? 'a pier' : 'two piers';
  return refuse(
    `This overhang leaves no room for ${what}, which ${kind === 'cap' ? 'needs' : 'need'} ${print(leastIn)}.`,
  );
}

const KIND_WORDS: { readonly [K in QuickFields['kind']]: string } = {
  'bar-ledge': 'bar ledge',
  counter: 'counter',
  hearth: 'hearth',
  bench: 'bench',
  cap: 'cap',
};

const BEARING_WORDS: { readonly [B in QuickFields['bearing']]: string } = {
  'stud-wall': 'a stud wall',
  'block-wall': 'a block wall',
  cabinets: 'base cabinets',
  piers: 'piers',
};
