/** What can be wrong with a typed quantity, and the sentence that says so beside the field. */
import type { QuantitySpec, UnitSystem } from './quantity-specs';

export type ProblemCode =
  | 'empty'
  | 'too-long'
  | 'not-understood'
  | 'no-number'
  | 'unknown-unit'
  | 'no-exponent'
  | 'unclear-comma'
  | 'unclear-minus'
  | 'unclear-division'
  | 'unmarked-inches'
  | 'split-feet'
  | 'improper-fraction'
  | 'divide-by-zero'
  | 'needs-equals'
  | 'no-sums'
  | 'unfinished'
  | 'unmatched-bracket'
  | 'wrong-kind'
  | 'too-large'
  | 'below-absolute-zero';

export interface QuantityProblem {
  readonly code: ProblemCode;
  /** One or two sentences in trade words: which part was not understood, and an example that works. */
  readonly sentence: string;
}

export interface Refusal {
  readonly ok: false;
  readonly problem: QuantityProblem;
}

const LONGEST_PART = 40;

/** Refuses a text: `part` is the piece of it, as typed, that could not be read. */
export function refuse(
  code: ProblemCode,
  part: string,
  reading: { readonly spec: QuantitySpec; readonly system: UnitSystem },
): Refusal {
  const { spec, system } = reading;
  const trimmed = part.trim();
  const shown = trimmed.length > LONGEST_PART ? `${trimmed.slice(0, LONGEST_PART)}...` : trimmed;
  const complaint = describeProblem(code, shown, spec);
  return { ok: false, problem: { code, sentence: `${complaint}. Write ${spec.examples[system]}.` } };
}

function describeProblem(code: ProblemCode, part: string, spec: QuantitySpec): string {
  switch (code) {
    case 'empty':
      return `No ${spec.noun} is given`;
    case 'too-long':
      return `This is too long to be a ${spec.noun}`;
    case 'not-understood':
      return `Not understood: ${part}`;
    case 'no-number':
      return `There is no number before: ${part}`;
    case 'unknown-unit':
      return `Unknown unit for a ${spec.noun}: ${part} (known are ${spec.unitNames})`;
    case 'no-exponent':
      return `Powers of ten are not read here; write the number out: ${part}`;
    case 'unclear-comma':
      return `The comma can be read two ways (thousands or decimal); write it without a comma: ${part}`;
    case 'unclear-minus':
      return `This can be read as one number or as a subtraction: ${part} (for one number leave the hyphen out, 25 1/2; to subtract, start with = and put a space on both sides of the minus)`;
    case 'unclear-division':
      return `This division can be read two ways; put brackets round the part meant, =6 / (1/2): ${part}`;
    case 'unmarked-inches':
      return `In a sum the inches after feet need their mark, =2' 6" + 3": ${part}`;
    case 'split-feet':
      return `Feet with inches after them must be whole feet: ${part}`;
    case 'improper-fraction':
      return `A fraction must be less than one; write a mixed number as 1 1/2, or start a division with =: ${part}`;
    case 'divide-by-zero':
      return `Nothing can be divided by zero: ${part}`;
    case 'needs-equals':
      return `A sum starts with =, such as ${spec.sumExample}; not understood: ${part}`;
    case 'no-sums':
      return `A ${spec.noun} is one plain number, not a sum: ${part}`;
    case 'unfinished':
      return `Something is missing after: ${part}`;
    case 'unmatched-bracket':
      return `A bracket has no partner: ${part}`;
    case 'wrong-kind':
      return `This sum does not give a ${spec.noun}: ${part}`;
    case 'too-large':
      return `The number is too large for a ${spec.noun}: ${part}`;
    case 'below-absolute-zero':
      return `Nothing is colder than -273.15 C (-459.67 F): ${part}`;
    default:
      return assertNever(code);
  }
}

function assertNever(code: never): never {
  throw new Error(`No sentence for problem code ${String(code)}`);
}
