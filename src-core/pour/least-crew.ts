/** The smallest crew that leaves time to spare. */
import type { CrewSize, Pace } from './batch-clock';
import { batchTimes, paceWith } from './batch-clock';
import type { Casting } from './cold-joints';
import { batchJoints, leastSlackMinutes } from './cold-joints';
import { LEAST_SLACK_MINUTES, MOST_MIXERS, MOST_PEOPLE } from './practice';

export interface LeastCrew extends CrewSize {
  readonly slackMinutes: number;
}

/**
 * Fewest people, and with them fewest mixers, that pour the castings in this order with ten minutes to spare; null
 * where no crew of up to ten people with four mixers does.
 */
export function leastCrew(
  castings: readonly Casting[],
  placedFt3: readonly number[],
  pace: Pace,
  workingMinutes: number,
): LeastCrew | null {
  for (let people = 2; people <= MOST_PEOPLE; people++) {
    for (let mixers = 1; mixers <= Math.min(MOST_MIXERS, people - 1); mixers++) {
      const times = batchTimes(placedFt3, paceWith(pace, { people, mixers }));
      const joints = batchJoints(castings, placedFt3, times, workingMinutes);
      const slackMinutes = leastSlackMinutes(joints, times, workingMinutes);
      if (slackMinutes >= LEAST_SLACK_MINUTES) return { people, mixers, slackMinutes };
    }
  }
  return null;
}
