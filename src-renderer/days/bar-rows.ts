/** What stands from when to when under and round the selected piece, in a few rows of bars. */
import type { Job, Piece } from '../../src-core/job';
import type { DayBar, DayLine } from '../../src-core/sequence';
import { isTemporary, swapSteps } from '../../src-core/sequence';

export type BarRowId = 'temporary' | 'edge-forms' | 'slab' | 'lasting';

/** Days in a row on which the same number of things stand. */
export interface BarSpan {
  readonly fromDay: number;
  /** Last day, included. */
  readonly toDay: number;
  readonly count: number;
  /** Of the most that the row ever holds. */
  readonly share: number;
  readonly isWet: boolean;
}

export interface BarRow {
  readonly id: BarRowId;
  readonly name: string;
  readonly spans: readonly BarSpan[];
  /** What stands in the row from when to when, in words. */
  readonly details: string;
}

/** Rows of a piece, at most four; a row with nothing in it is left out. */
export function barRows(job: Job, piece: Piece, { bars }: Pick<DayLine, 'bars'>): BarRow[] {
  const own = bars.filter(({ pieceId }) => pieceId === piece.id);
  const steps = swapSteps(job, piece);
  const passing = new Set(piece.supports.filter((one) => isTemporary(one, steps)).map(({ id }) => id));
  const isSupport = ({ kind }: DayBar) => kind === 'support' || kind === 'cabinet';
  const sections = own.filter(({ kind }) => kind === 'section');
  const props = own.filter((bar) => isSupport(bar) && passing.has(bar.aboutId ?? ''));
  const stays = own.filter((bar) => isSupport(bar) && !passing.has(bar.aboutId ?? ''));
  const wet = own.filter(({ kind }) => kind === 'slab-wet');
  const hard = own.filter(({ kind }) => kind === 'slab-hard');
  const rows: BarRow[] = [
    row('temporary', sections.length > 0 ? 'Falsework' : 'Temporary supports', [...sections, ...props]),
    row(
      'edge-forms',
      'Edge forms',
      own.filter(({ kind }) => kind === 'edge-forms'),
    ),
    {
      id: 'slab',
      name: 'Slab',
      spans: [...spansOf(wet, true), ...spansOf(hard, false)],
      details: detailsOf([...wet, ...hard]),
    },
    row('lasting', stays.every(({ kind }) => kind === 'cabinet') ? 'Cabinets' : 'What stays', stays),
  ];
  return rows.filter(({ spans }) => spans.length > 0);
}

function row(id: BarRowId, name: string, bars: readonly DayBar[]): BarRow {
  return { id, name, spans: spansOf(bars, false), details: detailsOf(bars) };
}

/** Bars laid over one another, cut where one begins or ends. */
function spansOf(bars: readonly DayBar[], isWet: boolean): BarSpan[] {
  const starts = bars.flatMap(({ fromDay, toDay }) => [fromDay, toDay + 1]);
  const cuts = [...new Set(starts)].sort((a, b) => a - b);
  const counted = cuts.slice(0, -1).map((fromDay, i) => ({
    fromDay,
    toDay: cuts[i + 1]! - 1,
    count: bars.filter((bar) => bar.fromDay <= fromDay && fromDay <= bar.toDay).length,
  }));
  const most = Math.max(1, ...counted.map(({ count }) => count));
  return counted
    .filter(({ count }) => count > 0)
    .map((span) => ({ ...span, share: span.count / most, isWet }));
}

function detailsOf(bars: readonly DayBar[]): string {
  return bars.map(({ words, fromDay, toDay }) => `${words}: day ${fromDay} to ${toDay}`).join('\n');
}
