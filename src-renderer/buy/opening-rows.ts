/** Openings of a piece as they are formed: what keeps each free, what fits it, what holds it down, and what was found. */
import type { OpeningFinding, OpeningForm } from '../../src-core/openings';
import type { Trace } from '../../src-core/trace';
import { printLength, printMass, sentenceCase, type UnitSystem } from '../../src-core/units';

export interface OpeningRow {
  readonly id: string;
  readonly title: string;
  readonly trace: Trace;
  readonly facts: readonly { readonly term: string; readonly words: string }[];
  /** Those that ask for attention first. */
  readonly findings: readonly OpeningFinding[];
}

/** One row an opening, in the drawing's order. */
export function openingRows(openings: readonly OpeningForm[], system: UnitSystem): OpeningRow[] {
  return openings.map((opening) => ({
    id: opening.id,
    title: titleOf(opening),
    trace: opening.trace,
    facts: factsOf(opening, system),
    findings: [...opening.findings].sort((a, b) => Number(a.level === 'ok') - Number(b.level === 'ok')),
  }));
}

/** "Sink", or "The drain": its name without the quotation marks that a sentence puts round it. */
function titleOf({ called }: OpeningForm): string {
  const bare = called.replace(/^"(.*)"$/, '$1');
  return sentenceCase(bare);
}

function factsOf(opening: OpeningForm, system: UnitSystem): { term: string; words: string }[] {
  const length = (valueIn: number) => printLength(valueIn, { system });
  const { form, sink, infill, holdDown } = opening;
  const from = opening.standsOn === 'bowl' ? 'the rim of the bowl' : 'the deck';
  const height = `${length(opening.heightIn)} from ${from}`;
  const facts = [
    {
      term: 'Form',
      words:
        form.kind === 'plug'
          ? `A plug ${height}, ${printLength(form.taperIn, { system, roundToIn: 1 / 32 })} wider on each side at its foot.`
          : `A frame ${height}, ${braceWords(form.braces)}. ${form.words}`,
    },
  ];
  if (sink !== null) {
    facts.push({ term: 'Sink', words: sink.words });
    if (sink.bowl !== null) {
      facts.push({
        term: 'Fits',
        words: `a bowl of ${length(sink.bowl.widthIn)} by ${length(sink.bowl.depthIn)}, ${clearWords(sink.setBackIn, length)}.`,
      });
    }
    facts.push({
      term: 'Rim',
      words: `bears on ${length(sink.bearingIn)} ${sink.rimLies}; ${length(sink.leastBearingIn)} is the least.`,
    });
  }
  if (infill !== null) {
    facts.push({
      term: 'In the bowl',
      words: `${infill.words} ${printMass(infill.sandWeightLb, { system, digits: 3 })} of sand.`,
    });
  }
  facts.push({ term: 'Held down', words: holdDown.words });
  return facts;
}

function braceWords(braces: number): string {
  if (braces === 0) return 'short enough to need no brace';
  return braces === 1 ? 'with 1 brace across' : `with ${braces} braces across`;
}

function clearWords(setBackIn: number, length: (valueIn: number) => string): string {
  if (setBackIn > 0) return `${length(setBackIn)} clear of the concrete`;
  return setBackIn < 0 ? `the slab reaching ${length(-setBackIn)} over it` : 'flush with the concrete';
}
