/** The clock of a pour: when water meets each batch, when it is ready, when the last of it is placed. */
import { PEOPLE_A_MIXER } from './practice';

export interface Pace {
  /** Mixers that run. */
  readonly mixers: number;
  /** People who carry and place. */
  readonly placers: number;
  /** One person mixes and places in turn. */
  readonly isAlone: boolean;
  readonly minutesABatch: number;
  readonly placingFt3AnHour: number;
}

export interface CrewSize {
  readonly people: number;
  readonly mixers: number;
}

/** Minutes from the first water. */
export interface BatchTime {
  readonly waterMinutes: number;
  readonly readyMinutes: number;
  readonly placedMinutes: number;
}

/** How the crew of a job works: a person to each mixer that runs, the others place at the rate that the job states. */
export function paceOf(
  crew: CrewSize & { readonly minutesABatch: number; readonly placingFt3AnHour: number },
): Pace {
  const { minutesABatch, placingFt3AnHour } = crew;
  return { ...sharesOf(crew), minutesABatch, placingFt3AnHour };
}

/** The pace of another crew: each who places does as much as each of the first crew. */
export function paceWith(pace: Pace, crew: CrewSize): Pace {
  const shares = sharesOf(crew);
  const placingFt3AnHour = (pace.placingFt3AnHour * shares.placers) / pace.placers;
  return { ...shares, minutesABatch: pace.minutesABatch, placingFt3AnHour };
}

function sharesOf({ people, mixers }: CrewSize): Pick<Pace, 'mixers' | 'placers' | 'isAlone'> {
  const manned = Math.floor((people - 1) / PEOPLE_A_MIXER);
  const running = Math.max(1, Math.min(mixers, manned));
  return {
    mixers: running,
    placers: Math.max(1, people - running * PEOPLE_A_MIXER),
    isAlone: manned < 1,
  };
}

/** Minutes that it takes to place a volume, ft3. */
export function placingMinutes(pace: Pace, volumeFt3: number): number {
  return (60 * volumeFt3) / pace.placingFt3AnHour;
}

/**
 * Mixers begin in turn, a part of a batch's time after one another, and none so early that its batch waits for the one
 * before it to be placed. Batches are placed in order, each from the moment it is ready. Common practice, no source.
 */
export function batchTimes(placedFt3: readonly number[], pace: Pace): BatchTime[] {
  const { mixers, minutesABatch, isAlone } = pace;
  const times: BatchTime[] = [];
  for (const volumeFt3 of placedFt3) {
    const last = times.at(-1);
    const waterMinutes =
      last === undefined
        ? 0
        : isAlone
          ? last.placedMinutes
          : Math.max(last.waterMinutes + minutesABatch / mixers, last.placedMinutes - minutesABatch);
    const readyMinutes = waterMinutes + minutesABatch;
    times.push({
      waterMinutes,
      readyMinutes,
      placedMinutes: readyMinutes + placingMinutes(pace, volumeFt3),
    });
  }
  return times;
}
