/** Reads the words after a command, and says in a plain line what is wrong with them. */
import { parseArgs } from 'node:util';

/** Options by name; `takes` says what the value is, or null for a switch. */
export interface OptionSpec {
  readonly takes: string | null;
  readonly short?: string;
}

export type Arguments =
  | {
      readonly ok: true;
      /** Switches that were given. */
      readonly given: ReadonlySet<string>;
      readonly values: ReadonlyMap<string, string>;
      readonly rest: readonly string[];
    }
  | { readonly ok: false; readonly faults: readonly string[] };

/** Sorts `args` into options and the rest. Faults come all at once. */
export function readArguments(
  args: readonly string[],
  options: { readonly [name: string]: OptionSpec },
): Arguments {
  const { tokens } = parseArgs({
    args: [...args],
    options: Object.fromEntries(
      Object.entries(options).map(([name, { takes, short }]) => [
        name,
        {
          type: takes === null ? ('boolean' as const) : ('string' as const),
          ...(short === undefined ? {} : { short }),
        },
      ]),
    ),
    // Faults are worded here rather than thrown there.
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const faults: string[] = [];
  const given = new Set<string>();
  const values = new Map<string, string>();
  const rest: string[] = [];
  for (const token of tokens) {
    if (token.kind === 'positional') rest.push(token.value);
    if (token.kind !== 'option') continue;
    const { name, rawName, value } = token;
    const spec = Object.hasOwn(options, name) ? options[name] : undefined;
    if (spec === undefined) faults.push(`There is no option ${rawName}.`);
    else if (given.has(name) || values.has(name)) faults.push(`${rawName} is given twice.`);
    else if (spec.takes === null && value !== undefined) faults.push(`${rawName} takes no value.`);
    else if (spec.takes === null) given.add(name);
    else if (value === undefined || value === '' || value.startsWith('--')) {
      faults.push(`${rawName} needs a value: ${spec.takes}.`);
    } else values.set(name, value);
  }
  return faults.length > 0 ? { ok: false, faults } : { ok: true, given, values, rest };
}
