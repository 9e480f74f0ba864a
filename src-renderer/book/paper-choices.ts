import type { Paper } from '../../src-core/figure';

/** Papers that a person may print on. */
export const PAPER_CHOICES: readonly { readonly id: Paper; readonly label: string }[] = [
  { id: 'letter', label: 'Letter' },
  { id: 'a4', label: 'A4' },
];
