/** What the bag says makes sense: least water is not above most, and its yield weighs like concrete. */
import { printDensity, printMass } from '../figures';
import type { JobInPlan } from '../in-plan';
import type { JobProblem } from '../problem';
import { jobProblem } from './problem-at';

/** Wet concrete, lightweight to heavy, stays well within these. Common practice, no source. */
const LIGHTEST_PCF = 60;
const HEAVIEST_PCF = 220;

/** Names water ranges the wrong way round and yields that no concrete has. */
export function mixes({ job }: JobInPlan): JobProblem[] {
  const system = job.shownIn;
  return job.mixes.flatMap(({ name, bag }, i) => {
    if (bag === null) return [];
    const problems: JobProblem[] = [];
    if (bag.waterLeastLb > bag.waterMostLb) {
      const [least, most] = [bag.waterLeastLb, bag.waterMostLb].map((waterLb) =>
        printMass(waterLb, { system }),
      );
      const sentence = `A bag of "${name}" takes at least ${least} of water but at most ${most}.`;
      problems.push(jobProblem('water-reversed', ['mixes', i, 'bag', 'waterLeastLb'], sentence));
    }
    const pcf = (bag.weightLb + bag.waterMostLb) / bag.yieldFt3;
    if (pcf < LIGHTEST_PCF || pcf > HEAVIEST_PCF) {
      const sentence = `A bag of "${name}" with its water would weigh ${printDensity(pcf, { system, digits: 3 })}; check its weight and yield.`;
      problems.push(jobProblem('yield-unlikely', ['mixes', i, 'bag', 'yieldFt3'], sentence));
    }
    return problems;
  });
}
