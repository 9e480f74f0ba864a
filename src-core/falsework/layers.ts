/** What lies between joists and slab, what of it stays, and whether cabinet, layers and gap come to the soffit. */
import type { Job, Piece } from '../job';
import { printExactLength } from '../units';
import type { Line } from '../workings';
import { formula } from '../workings';
import type { Section } from './section';
import type { FormStack } from './stack';

export interface FormLayer {
  readonly what: string;
  readonly thicknessIn: number;
  readonly stays: boolean;
}

export interface LayerCheck {
  readonly sectionId: string;
  /** From the slab down to the joists. */
  readonly layers: readonly FormLayer[];
  readonly isMet: boolean;
  readonly words: string;
  readonly lines: readonly Line[];
}

/** Height to which a cabinet comes with what stays on it, in. hc: cabinet, tb: board that stays, g: gap, in. Arithmetic. */
export const cabinetTop = formula<Readonly<Record<'hc' | 'tb' | 'g', number>>>({
  symbol: 'hcab',
  label: 'cabinet, board that stays, and gap',
  formula: 'hc + tb + g',
  units: { hc: 'in', tb: 'in', g: 'in' },
  unit: 'in',
  source: 'arithmetic',
  compute: ({ hc, tb, g }) => hc + tb + g,
});

/** A stack that misses the soffit by this is still right, in. Common practice, no source. */
const FIT_IN = 1 / 16;

/** The layers of a section, and whether the cabinet that comes fits below them. */
export function checkLayers(job: Job, piece: Piece, stack: FormStack, section: Section): LayerCheck {
  const cabinet = piece.supports.find(({ id }) => id === section.cabinetId);
  const board = cabinet?.kind === 'cabinet' ? cabinet.backingBoardIn : null;
  const layers: FormLayer[] = [
    ...(stack.boardIn > 0
      ? [{ what: 'backing board', thicknessIn: stack.boardIn, stays: board !== null }]
      : []),
    { what: 'deck panel', thicknessIn: stack.panelIn, stays: false },
  ];
  const base = { sectionId: section.id, layers };
  if (cabinet?.kind !== 'cabinet') {
    return { ...base, isMet: true, words: 'All of it comes out.', lines: [] };
  }
  const length = (valueIn: number) => printExactLength(valueIn, { system: job.shownIn });
  if (board !== null && Math.abs(board - stack.boardIn) > 1e-6) {
    return {
      ...base,
      isMet: false,
      words: `The board that stays on "${cabinet.name ?? cabinet.id}" is ${length(board)} thick, the falsework's ${length(stack.boardIn)}. Use one thickness.`,
      lines: [],
    };
  }
  const top = cabinetTop({ hc: cabinet.heightIn, tb: board ?? 0, g: cabinet.gapIn });
  const missIn = stack.highestSoffitIn - top.value;
  const feetIn = cabinet.feet === null ? 0 : cabinet.feet.longestIn - cabinet.feet.shortestIn;
  const isMet = Math.abs(missIn) <= FIT_IN + feetIn + 1e-9;
  return { ...base, isMet, words: fitWords(missIn, feetIn, length), lines: [top.line] };
}

function fitWords(missIn: number, feetIn: number, length: (valueIn: number) => string): string {
  if (Math.abs(missIn) <= FIT_IN + 1e-9) return 'Cabinet, layers and gap come to the soffit.';
  const by = length(Math.abs(missIn));
  const side = missIn > 0 ? 'short of' : 'above';
  if (Math.abs(missIn) <= FIT_IN + feetIn + 1e-9) {
    return `Cabinet, layers and gap come ${by} ${side} the soffit; its feet take that up.`;
  }
  return `Cabinet, layers and gap come ${by} ${side} the soffit, and its feet cannot take that up.`;
}
