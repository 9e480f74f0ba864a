import type { Support, SupportKind } from '../job';

const KINDS: Readonly<Record<SupportKind, string>> = {
  cabinet: 'cabinet',
  wall: 'wall',
  ledger: 'ledger',
  pier: 'pier',
  leg: 'leg',
  bracket: 'bracket',
  'full-bed': 'mortar bed',
};

/** What a support is called on a drawing: its name, else its kind. */
export function supportWords({ name, kind }: Support): string {
  return name ?? KINDS[kind];
}
