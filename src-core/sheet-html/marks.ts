/** Small signs drawn beside words: shapes of verdicts, the sign of a warning. Read out by the words beside them. */
import type { Level } from '../checks';

/** Circle, diamond, triangle, octagon: told apart without colour. A bar across the octagon keeps it from a circle where it is small. */
const SHAPES: { readonly [L in Level]: string } = {
  holds: '<circle cx="8" cy="8" r="7"/>',
  steel: '<path d="M8 0.5 15.5 8 8 15.5 0.5 8Z"/>',
  change: '<path d="M8 1 15.5 15H0.5Z"/>',
  engineer: '<path fill-rule="evenodd" d="M5 0.8h6L15.2 5v6L11 15.2H5L0.8 11V5ZM3.6 6.8v2.4h8.8V6.8Z"/>',
};

export function verdictMark(level: Level): string {
  return `<svg class="verdict-mark ${level}" viewBox="0 0 16 16" aria-hidden="true">${SHAPES[level]}</svg>`;
}

/** The general warning sign: a triangle with an exclamation mark (ISO 7010 W001), in outline. */
export const WARNING_SIGN =
  '<svg class="warning-sign" viewBox="0 0 16 16" aria-hidden="true"><path d="M8 1.6 15 14.4H1Z" fill="none" stroke="currentColor" stroke-width="1.5" stroke-linejoin="round"/><path d="M8 5.8v4.4M8 11.6v1.3" fill="none" stroke="currentColor" stroke-width="1.6"/></svg>';
