/** A small repeatable source of random numbers for generators of test cases. */

/** Numbers from 0 up to 1, the same for the same seed (mulberry32, public domain). */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Picks with a random source: numbers on a sixteenth, whole numbers, choices, chances. */
export interface Dice {
  readonly sixteenths: (least: number, most: number) => number;
  readonly whole: (least: number, most: number) => number;
  readonly pick: <T>(choices: readonly T[]) => T;
  readonly chance: (share: number) => boolean;
}

/** Dice that roll on `random`, which gives numbers from 0 up to 1. */
export function diceOf(random: () => number): Dice {
  const whole = (least: number, most: number): number => least + Math.floor(random() * (most - least + 1));
  return {
    whole,
    sixteenths: (least, most) => least + whole(0, Math.max(0, Math.floor((most - least) * 16))) / 16,
    pick: (choices) => choices[Math.floor(random() * choices.length)]!,
    chance: (share) => random() < share,
  };
}
