/** Ids for new things: short, readable, and used nowhere in the job. */
import type { Job } from '../job';

/** Leaves room for a number below the longest id that a job file allows. */
const LONGEST_STEM = 52;

/** Gives an id made of `stem` that nothing has yet, and takes note of it. */
export type IdMaker = (stem: string) => string;

/** A maker of ids that neither a job (or a part of one) nor itself has given before. */
export function idMaker(job: Partial<Job>): IdMaker {
  const taken = new Set<string>();
  collectIds(job, taken);
  return (stem) => {
    const made = unusedId(stem, taken);
    taken.add(made);
    return made;
  };
}

/** An id that is used nowhere in the job: the stem itself, else the stem with the next free number. */
export function newId(job: Job, stem: string): string {
  return idMaker(job)(stem);
}

function unusedId(stem: string, taken: ReadonlySet<string>): string {
  const plain = wellFormed(stem);
  if (!taken.has(plain)) return plain;
  const base = plain.replace(/-\d+$/, '');
  let number = 2;
  while (taken.has(`${base}-${number}`)) number++;
  return `${base}-${number}`;
}

/** Letters, digits and hyphens, beginning with a letter or a digit. */
function wellFormed(stem: string): string {
  const letters = stem.replace(/[^A-Za-z0-9-]+/g, '-').replace(/^-+/, '');
  return letters === '' ? 'part' : letters.slice(0, LONGEST_STEM);
}

function collectIds(value: unknown, into: Set<string>): void {
  if (typeof value !== 'object' || value === null) return;
  for (const [key, member] of Object.entries(value)) {
    if (key === 'id' && typeof member === 'string') into.add(member);
    else collectIds(member, into);
  }
}
