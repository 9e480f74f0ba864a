/** The job in time: what happens on which day, and what stands from when to when. Plain data for a window, a calendar or a sheet. */
import type { SectionReuse } from '../falsework';
import type { Job, Piece } from '../job';
import { dateOfDay, isRestDay, workDayFrom, workDayUntil } from './calendar';
import { earliestDays, earliestStripDay } from './earliest-days';
import type { StrengthAt } from './strength-by-day';
import { strengthLookup } from './strength-by-day';
import { swapSteps } from './swap-steps';

export type DayEventKind =
  | 'build'
  | 'form'
  | 'reinforce'
  | 'pour'
  | 'float'
  | 'trowel'
  | 'strip'
  | 'cure-end'
  | 'strength-75'
  | 'age-28'
  | 'swap'
  | 'seal'
  | 'hand-over';

export interface DayEvent {
  readonly id: string;
  readonly kind: DayEventKind;
  readonly pieceId: string | null;
  readonly stepId: string | null;
  readonly day: number;
  /** ISO date; null where the job has no start date. */
  readonly date: string | null;
  readonly words: string;
  /** True where the job itself puts work on a day on which nobody works. */
  readonly isOnRestDay: boolean;
}

export interface DayBar {
  readonly id: string;
  readonly kind: 'section' | 'edge-forms' | 'slab-wet' | 'slab-hard' | 'cabinet' | 'support';
  readonly pieceId: string;
  /** Support or section; null for forms and slab. */
  readonly aboutId: string | null;
  readonly words: string;
  readonly fromDay: number;
  /** Last day, included. */
  readonly toDay: number;
  readonly fromDate: string | null;
  readonly toDate: string | null;
}

export interface DayLine {
  readonly firstDay: number;
  readonly lastDay: number;
  /** By day; those of one day in the order in which they are done. */
  readonly events: readonly DayEvent[];
  readonly bars: readonly DayBar[];
}

/** Days of moist curing. ACI 308R-16, from memory. */
export const MOIST_CURE_DAYS = 7;
/** Working days before the pour on which forms are set and steel is laid. Common practice, no source. */
const FORM_DAYS_BEFORE = 2;
const STEEL_DAYS_BEFORE = 1;
/** The line goes on for a few days after the last event. */
const AFTER_DAYS = 2;
const ORDER: readonly DayEventKind[] = [
  'build',
  'form',
  'reinforce',
  'pour',
  'float',
  'trowel',
  'strip',
  'cure-end',
  'strength-75',
  'age-28',
  'swap',
  'seal',
  'hand-over',
];

interface FormDays {
  readonly form: number;
  readonly reinforce: number;
  readonly strip: number;
}

/** Days of one piece on which forms are set, steel is laid and edge forms come off; work falls on days on which somebody works. */
export function formDays(
  job: Job,
  piece: Piece,
  strengthAt: StrengthAt = strengthLookup(job, piece),
): FormDays {
  const { calendar } = job.site;
  const before = (workDays: number, day: number): number => {
    let at = day;
    for (let i = 0; i < workDays; i++) at = workDayUntil(calendar, at - 1);
    return Math.max(0, at);
  };
  const reinforce = before(STEEL_DAYS_BEFORE, piece.pourDay);
  const form = Math.min(reinforce, before(FORM_DAYS_BEFORE - STEEL_DAYS_BEFORE, reinforce));
  const earliest = earliestStripDay(job, piece, strengthAt) ?? piece.pourDay + MOIST_CURE_DAYS;
  return { form, reinforce, strip: workDayFrom(calendar, earliest) };
}

/**
 * Every event and bar of a job. `uses` is what of its falsework is used again, as the design of that falsework finds it: the day on
 * which a later piece's falsework is built then says from which piece it comes.
 */
export function dayLine(job: Job, uses: readonly SectionReuse[] = []): DayLine {
  const { calendar } = job.site;
  const timed = timedPieces(job);
  const events = timed.flatMap((each) => eventsOf(job, each, uses));
  if (calendar.handOverDay !== null) {
    events.push(event(job, 'hand-over', null, calendar.handOverDay, 'Hand over'));
  }
  events.sort((a, b) => a.day - b.day || ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind));
  const lastDay =
    Math.max(0, ...events.map(({ day }) => day)) + (calendar.handOverDay === null ? AFTER_DAYS : 0);
  return {
    firstDay: 0,
    lastDay,
    events,
    bars: timed.flatMap((each) => barsOf(job, each, lastDay)),
  };
}

interface TimedPiece {
  readonly piece: Piece;
  readonly strengthAt: StrengthAt;
  readonly days: FormDays;
}

/** Pieces of one mix poured on one day have the same concrete at every age. */
function timedPieces(job: Job): TimedPiece[] {
  const known = new Map<string, StrengthAt>();
  return job.pieces.map((piece) => {
    const concrete = `${piece.pourDay} ${piece.mixId}`;
    const strengthAt = known.get(concrete) ?? strengthLookup(job, piece);
    known.set(concrete, strengthAt);
    return { piece, strengthAt, days: formDays(job, piece, strengthAt) };
  });
}

function eventsOf(
  job: Job,
  { piece, strengthAt, days }: TimedPiece,
  uses: readonly SectionReuse[],
): DayEvent[] {
  const { calendar } = job.site;
  const { id, name, pourDay } = piece;
  const at = (kind: DayEventKind, day: number, words: string) => event(job, kind, id, day, words);
  const found = [
    at('form', days.form, `Set the edge forms of ${name}`),
    ...(piece.reinforcement.length === 0
      ? []
      : [at('reinforce', days.reinforce, `Lay the steel of ${name}`)]),
    at('pour', pourDay, `Pour ${name}`),
    at('float', pourDay, `Screed and float ${name}`),
    at('trowel', pourDay, `Trowel ${name}`),
    at('strip', days.strip, `Take the edge forms off ${name}`),
    at('cure-end', pourDay + MOIST_CURE_DAYS, `End of moist curing of ${name}`),
  ];
  const again = uses.filter(({ to }) => to.pieceId === id);
  const built = builtDay(job, piece) ?? (again.length === 0 ? null : again[0]!.to.day);
  if (built !== null) found.push(at('build', built, buildWords(piece, again, built)));
  for (const { id: rule, day } of earliestDays(job, piece, strengthAt)) {
    if (day === null) continue;
    if (rule === 'soffit-supports-out')
      found.push(at('strength-75', day, `${name} has 75 % of its strength and a week`));
    if (rule === 'full-strength') found.push(at('age-28', day, `${name} has its 28-day strength`));
    if (rule === 'seal') found.push(at('seal', workDayFrom(calendar, day), `Seal ${name}`));
  }
  for (const step of swapSteps(job, piece)) {
    const words = stepWords(piece, step.supportsIn);
    found.push({ ...at('swap', step.day, words), id: `swap-${id}-${step.id}`, stepId: step.id });
  }
  return found;
}

function event(job: Job, kind: DayEventKind, pieceId: string | null, day: number, words: string): DayEvent {
  const { calendar } = job.site;
  return {
    id: pieceId === null ? kind : `${kind}-${pieceId}`,
    kind,
    pieceId,
    stepId: null,
    day,
    date: dateOfDay(calendar, day),
    words,
    isOnRestDay: IS_WORK[kind] && isRestDay(calendar, day),
  };
}

/** Whether somebody has to be there for it. */
const IS_WORK: { readonly [K in DayEventKind]: boolean } = {
  build: true,
  form: true,
  reinforce: true,
  pour: true,
  float: true,
  trowel: true,
  strip: true,
  'cure-end': false,
  'strength-75': false,
  'age-28': false,
  swap: true,
  seal: true,
  'hand-over': true,
};

/** First day of the falsework under a piece: sections, or temporary supports where no section is drawn. */
function builtDay(job: Job, { id, pourDay, supports }: Piece): number | null {
  const sections = job.falsework.sections.filter(({ pieceId }) => pieceId === id);
  const from = sections.length > 0 ? sections : supports.filter(({ lastDay }) => lastDay !== null);
  const days = from.map(({ firstDay }) => firstDay).filter((day) => day <= pourDay);
  return days.length === 0 ? null : Math.min(...days);
}

/** What of earlier pours it is built with, but for what is not out by then: a job may draw it earlier than it is designed. */
function buildWords({ name }: Piece, again: readonly SectionReuse[], day: number): string {
  const from = again
    .filter((use) => use.from.day <= day)
    .map((use) => `${use.from.pieceName} (out on day ${use.from.day})`);
  const words = `Build the falsework of ${name}`;
  return from.length === 0 ? words : `${words}, parts used again from ${[...new Set(from)].join(' and ')}`;
}

function stepWords({ name, supports }: Piece, supportsIn: readonly string[]): string {
  const names = supportsIn.map((id) => supports.find((support) => support.id === id)?.name ?? id);
  return names.length === 0 ? `Take falsework from under ${name}` : `Set ${names.join(', ')} under ${name}`;
}

function barsOf(job: Job, { piece, days: { form, strip } }: TimedPiece, lastDay: number): DayBar[] {
  const { id, name, pourDay, supports } = piece;
  const { calendar } = job.site;
  const bar = (
    kind: DayBar['kind'],
    aboutId: string | null,
    words: string,
    [fromDay, toDay]: readonly [number, number],
  ): DayBar => ({
    id: aboutId === null ? `${kind}-${id}` : `${kind}-${aboutId}`,
    kind,
    pieceId: id,
    aboutId,
    words,
    fromDay,
    toDay: Math.max(fromDay, toDay),
    fromDate: dateOfDay(calendar, fromDay),
    toDate: dateOfDay(calendar, Math.max(fromDay, toDay)),
  });
  return [
    ...job.falsework.sections
      .filter(({ pieceId }) => pieceId === id)
      .map((section) =>
        bar('section', section.id, section.name ?? section.id, [
          section.firstDay,
          section.lastDay ?? lastDay,
        ]),
      ),
    bar('edge-forms', null, `Edge forms of ${name}`, [form, strip - 1]),
    bar('slab-wet', null, `${name}, wet`, [pourDay, pourDay]),
    bar('slab-hard', null, `${name}, hard`, [pourDay + 1, Math.max(lastDay, pourDay + 1)]),
    ...supports.map((support) =>
      bar(support.kind === 'cabinet' ? 'cabinet' : 'support', support.id, support.name ?? support.id, [
        support.firstDay,
        support.lastDay ?? lastDay,
      ]),
    ),
  ];
}
