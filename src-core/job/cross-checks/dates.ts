/** Days run forward, and the date of day 0 is in the calendar. */
import type { JobInPlan } from '../in-plan';
import type { JobProblem } from '../problem';
import { jobProblem, pieceProblem, supportWords } from './problem-at';

/** Names last days before first ones, a hand-over before the last pour, and dates such as 30 February. */
export function dates({ job, pieces }: JobInPlan): JobProblem[] {
  const { startsOn, handOverDay } = job.site.calendar;
  const problems: JobProblem[] = [];
  if (startsOn !== null && !isCalendarDate(startsOn)) {
    const sentence = `There is no ${startsOn} in the calendar; check the date of the first day.`;
    problems.push(jobProblem('date-impossible', ['site', 'calendar', 'startsOn'], sentence));
  }
  const late = job.pieces.find(({ pourDay }) => handOverDay !== null && handOverDay < pourDay);
  if (late !== undefined) {
    const sentence = `The job is handed over on day ${handOverDay}, before "${late.name}" is poured on day ${late.pourDay}.`;
    problems.push(jobProblem('hand-over-too-early', ['site', 'calendar', 'handOverDay'], sentence));
  }
  for (const at of pieces) {
    at.piece.supports.forEach((support, i) => {
      if (support.lastDay === null || support.lastDay >= support.firstDay) return;
      const sentence = `The ${supportWords(support)} goes on day ${support.lastDay}, before it comes on day ${support.firstDay}.`;
      problems.push(pieceProblem(at, 'days-reversed', ['supports', i, 'lastDay'], sentence));
    });
  }
  job.falsework.sections.forEach((section, i) => {
    if (section.lastDay === null || section.lastDay >= section.firstDay) return;
    const sentence = `Falsework section "${section.id}" goes on day ${section.lastDay}, before it comes on day ${section.firstDay}.`;
    problems.push(jobProblem('days-reversed', ['falsework', 'sections', i, 'lastDay'], sentence));
  });
  return problems;
}

/** Days of each month in a common year. */
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** Whether a text such as 2027-04-30 is a day of the Gregorian calendar. */
function isCalendarDate(text: string): boolean {
  const [year, month, day] = text.split('-').map(Number) as [number, number, number];
  const isLeap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const days = month === 2 && isLeap ? 29 : (MONTH_DAYS[month - 1] ?? 0);
  return day >= 1 && day <= days;
}
