/** Timber and the like near a hearth or stove. */
import type { Job } from '../job';
import { printLength } from '../units';
import type { SiteFinding } from './finding';

/** Clear distance from an unlisted solid-fuel stove to anything that burns, in. NFPA 211 Table 13.6.1, from memory. */
export const STOVE_CLEARANCE_IN = 36;
/** Hearth in front of and beside a fireplace's opening, in, and with an opening of 6 ft2 or more. IRC R1001.10, from memory. */
const HEARTH_FRONT_IN = { small: 16, large: 20 };
const HEARTH_SIDE_IN = { small: 8, large: 12 };

/** Concerns a job with a hearth or with a distance to combustibles. Clearances rule there, not strength. */
export function combustibles(job: Job): SiteFinding | null {
  const hearths = job.pieces.filter(({ use }) => use === 'hearth');
  const { combustiblesAtIn } = job.site;
  if (hearths.length === 0 && combustiblesAtIn === null) return null;
  const length = (valueIn: number) => printLength(valueIn, { system: job.shownIn });
  const isNear = combustiblesAtIn !== null && combustiblesAtIn < STOVE_CLEARANCE_IN;
  const wanted = length(STOVE_CLEARANCE_IN);
  const words =
    combustiblesAtIn === null
      ? 'No fire is stated for this hearth. Where a stove or fireplace will stand on it, state how far the nearest timber is.'
      : isNear
        ? `The nearest thing that burns is ${length(combustiblesAtIn)} from the fire, nearer than the ${wanted} that a stove without a listing of its own asks for.`
        : `The nearest thing that burns is ${length(combustiblesAtIn)} from the fire; ${wanted} is asked for a stove without a listing of its own.`;
  return {
    id: 'combustibles',
    title: 'Timber near the fire',
    level: isNear ? 'engineer' : 'holds',
    words,
    demand: combustiblesAtIn === null ? null : { value: combustiblesAtIn, unit: 'in' },
    capacity: combustiblesAtIn === null ? null : { value: STOVE_CLEARANCE_IN, unit: 'in' },
    workings: [],
    source: 'NFPA 211 and IRC R1001.10, R1001.11, from memory, verify; the maker and the local code rule',
    cautions: [
      "The stove's own label rules over any figure here, more or less.",
      `Hearth in front of a fireplace ${length(HEARTH_FRONT_IN.small)} and beside it ${length(HEARTH_SIDE_IN.small)}; ${length(HEARTH_FRONT_IN.large)} and ${length(HEARTH_SIDE_IN.large)} where its opening is 6 sq ft or more (IRC R1001.10, from memory).`,
      'Concrete passes heat on and can spall when it is heated damp: no timber directly under a hearth, and let it dry for weeks before the first fire.',
    ],
  };
}
