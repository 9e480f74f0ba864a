/** The day of the playhead in a sentence, for who does not see the line. */
import type { Job, Piece } from '../../src-core/job';
import type { DayLine, PieceOnDay } from '../../src-core/sequence';
import { standingOn } from '../../src-core/sequence';
import { dayTitle } from './day-words';

const STATES: { readonly [S in PieceOnDay['state']]: string } = {
  nothing: 'nothing is cast',
  formed: 'it is formed and not cast',
  wet: 'the slab is wet',
  hard: 'the slab is hard',
};

/** "Day 40, Sat 5 Jun. Set R1 under Counter. The slab is hard, on 3 supports." */
export function spokenDay(job: Job, line: DayLine, piece: Piece, day: number | null): string {
  if (day === null) return `Finished: ${piece.name} as it stays.`;
  const events = line.events.filter((event) => event.day === day);
  const own = events.filter(({ pieceId }) => pieceId === null || pieceId === piece.id);
  const others = events.length - own.length;
  return [
    `${dayTitle(job.site.calendar, day)}.`,
    ...own.map(({ words }) => `${words}.`),
    ...(others === 0 ? [] : [`${others} ${others === 1 ? 'event' : 'events'} of other pieces.`]),
    `${piece.name}: ${standsWords(job, piece, day)}.`,
  ].join(' ');
}

function standsWords(job: Job, piece: Piece, day: number): string {
  const standing = standingOn(job, day).find(({ pieceId }) => pieceId === piece.id)!;
  return [
    STATES[standing.state],
    ...(standing.formsStand && standing.state !== 'formed' ? ['edge forms round it'] : []),
    `${counted(standing.supports.length, 'support')} under it`,
    ...(standing.sections.length === 0 ? [] : [counted(standing.sections.length, 'falsework section')]),
  ].join(', ');
}

function counted(count: number, name: string): string {
  return count === 0 ? `no ${name}` : `${count} ${name}${count === 1 ? '' : 's'}`;
}
