/** Readings of the floor, and the sheet on which they are shot again. */
import type { Block } from '../sheet';
import { columns, heading, list, paragraph, table } from './blocks';
import type { BookContext } from './context';
import { HOLD_UP_LEVELS } from './practice';

/** When the levels are shot again, what was read, and boxes for what will be. */
export function levelBlocks({ job, facts, print }: BookContext): Block[] {
  const { readings, convention } = job.site.levels;
  const again = [...new Set(facts.falsework.designs.flatMap(({ levelAgain }) => levelAgain))];
  return [
    heading(HOLD_UP_LEVELS, 'Levels'),
    paragraph('Shoot the levels again:'),
    ...list(again),
    ...(readings.length === 0
      ? [paragraph('No reading of the floor is in the job yet.')]
      : table(
          `${HOLD_UP_LEVELS}-table`,
          `Readings, as ${convention === 'rod' ? 'read on the rod: a larger one lies lower' : 'heights: a larger one lies higher'}. Places are those of the drawing`,
          columns(
            ['Reading', 1.2],
            ['x', 1, 'end'],
            ['y', 1, 'end'],
            ['First', 1.1, 'end'],
            ['Before the pour', 1.3],
            ['Loaded', 1.1],
            ['Before the swap', 1.3],
          ),
          readings.map(({ id, xIn, yIn, valueIn }) => [
            id,
            print.length(xIn),
            print.length(yIn),
            print.fine(valueIn),
            '',
            '',
            '',
          ]),
          { isForPen: true },
        )),
  ];
}
