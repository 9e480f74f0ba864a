/** What to mind while a slab stands on falsework and while it is swapped; common practice, no source. */
export const SWAP_CAUTIONS: readonly string[] = [
  'Nobody under the slab while it is fresh or while a bay is open, and nothing of you between slab and cabinet while feet are wound.',
  'Nobody and no load on the slab beyond the working load until it has its full strength.',
  'Falsework comes out on or after its earliest day, in the order of the steps, and never by knocking it out. If in doubt leave the props in.',
  'Shoot the levels again before the legs are cut, on the morning of the pour, and under the slab before each cabinet goes in: floors and timber move.',
  'Wind a foot up until it touches, then stop. What it may be wound beyond that stands beside each step.',
  'Cover the top and its front edge before the swap; keep plastic off a slab that is still drying.',
];
