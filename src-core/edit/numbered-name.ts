/** Names for copies: "Bar ledge" becomes "Bar ledge 2". */

/** Leaves room for a number below the longest name that a job file allows. */
const LONGEST_BASE = 112;

/** The name itself where nothing has it, else the name with the next free number. */
export function numberedName(name: string, taken: readonly string[]): string {
  if (!taken.includes(name)) return name;
  const base = name.replace(/ \d+$/, '').slice(0, LONGEST_BASE);
  let number = 2;
  while (taken.includes(`${base} ${number}`)) number++;
  return `${base} ${number}`;
}
