import type { Check } from '../../../src-core/checks';
import type { Piece } from '../../../src-core/job';
import { readJob } from '../../../src-core/job';
import { smallJob } from '../../support/small-job';

/** A bending check that holds with 0.8, changed as asked. */
export function sampleCheck(change: Partial<Check> = {}): Check {
  return {
    id: 'bending-plain',
    title: 'Bending, on concrete alone',
    pieceId: 'counter',
    where: { kind: 'point', at: { xIn: 12.5, yIn: 4 } },
    demand: { value: 106.1, unit: 'lbf-in/in' },
    capacity: { value: 132.6, unit: 'lbf-in/in' },
    ratio: 0.8,
    level: 'holds',
    words: 'It bends most underneath.',
    needs: [],
    workings: [],
    cautions: [],
    ...change,
  };
}

/** The small job, read as a file is. */
export function smallRead() {
  const reading = readJob(smallJob());
  if (!reading.ok) throw new Error(reading.problems.map(({ sentence }) => sentence).join(' '));
  return reading.job;
}

/** Its counter on two piers and a leg. */
export function counter(): Piece {
  return smallRead().pieces[0]!;
}
