/**
 * Finds where a text stops being JSON. `JSON.parse` decides whether it is; its own words differ from one
 * machine to the next and often leave out the place, so the place is found here.
 */

export interface TextFault {
  /** Both counted from 1. */
  readonly line: number;
  readonly column: number;
  /** What was met there, e.g. "a comma or a closing brace is missing". */
  readonly sentence: string;
}

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
const WORD = /true|false|null/y;
const SPACE = /[ \t\r\n]*/y;

type Expecting = 'value' | 'value-or-end' | 'name' | 'name-or-end' | 'colon' | 'comma-or-end' | 'nothing';

/** The first place at which `text` is not JSON; null where it is. No recursion: depth cannot overflow. */
export function findTextFault(text: string): TextFault | null {
  const open: ('{' | '[')[] = [];
  let expecting: Expecting = 'value';
  let at = 0;
  const fault = (sentence: string): TextFault => ({ ...placeOf(text, at), sentence });
  const afterValue = (): Expecting => (open.length === 0 ? 'nothing' : 'comma-or-end');

  for (;;) {
    at += lengthOf(SPACE, text, at);
    if (at >= text.length) {
      if (expecting === 'nothing') return null;
      if (open.length === 0) return fault('the file is empty');
      return fault(`the file ends too early; ${open.length} brackets or braces are still open`);
    }
    const char = text[at]!;
    const innermost = open[open.length - 1];

    if (expecting === 'nothing') return fault('there is more text after the end of the job');
    if (expecting === 'colon') {
      if (char !== ':') return fault('a colon is missing after a field name');
      at += 1;
      expecting = 'value';
      continue;
    }
    if (expecting === 'comma-or-end') {
      if (char === ',') expecting = innermost === '{' ? 'name' : 'value';
      else if (char === (innermost === '{' ? '}' : ']')) {
        open.pop();
        expecting = afterValue();
      } else return fault(`a comma or a closing ${innermost === '{' ? 'brace' : 'bracket'} is missing`);
      at += 1;
      continue;
    }
    const mayEnd = expecting === 'value-or-end' || expecting === 'name-or-end';
    if (mayEnd && char === (innermost === '{' ? '}' : ']')) {
      open.pop();
      expecting = afterValue();
      at += 1;
      continue;
    }
    if (expecting === 'name' || expecting === 'name-or-end') {
      if (char === '}') return fault('there is a comma too many before a closing brace');
      const length = stringLength(text, at);
      if (length === 0) return fault('a field name in double quotes is missing');
      at += length;
      expecting = 'colon';
      continue;
    }
    if (char === '{' || char === '[') {
      open.push(char);
      expecting = char === '{' ? 'name-or-end' : 'value-or-end';
      at += 1;
      continue;
    }
    if (char === ']' && innermost === '[') return fault('there is a comma too many before a closing bracket');
    const length = stringLength(text, at) + lengthOf(NUMBER, text, at) + lengthOf(WORD, text, at);
    if (length === 0) return fault(valueFault(char));
    at += length;
    expecting = afterValue();
  }
}

function valueFault(char: string): string {
  if (char === '"') return 'a text has no closing quote, or holds a character that must be escaped';
  if (char === "'") return 'texts need double quotes';
  return 'a value is missing or is neither a number, a text in quotes, true, false nor null';
}

function lengthOf(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0].length ?? 0;
}

/** Length of the quoted text that starts at `from`, or 0. A loop, for one pattern overflows on a text of megabytes. */
function stringLength(text: string, from: number): number {
  if (text[from] !== '"') return 0;
  let at = from + 1;
  while (at < text.length) {
    const char = text[at]!;
    if (char === '"') return at + 1 - from;
    if (char < ' ') return 0;
    const step = char === '\\' ? lengthOf(ESCAPE, text, at) : 1;
    if (step === 0) return 0;
    at += step;
  }
  return 0;
}

function placeOf(text: string, at: number): { line: number; column: number } {
  const before = text.slice(0, at);
  const line = before.split('\n').length;
  return { line, column: at - before.lastIndexOf('\n') };
}
