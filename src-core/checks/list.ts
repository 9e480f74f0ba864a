/** The only list of checks, in the order in which a reader meets them. */
import { bendingPlain } from './bending-plain';
import type { CheckRule } from './check';

export const RULES: readonly CheckRule[] = [bendingPlain];
