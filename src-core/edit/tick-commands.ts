/** Ticks that a person sets on the day: a batch that is mixed, a thing that is bought. */
import type { Command } from './command';
import { settle } from './settle';

/** Sets or takes away the tick of a thing by its id. A tick that is taken away leaves nothing in the job. */
export const setTick: Command<{ id: string; done: boolean; words: string }> = {
  id: 'set-tick',
  perform: (job, { id, done, words }) => {
    const others = job.ticks.filter((tick) => tick.id !== id);
    const ticks = done ? [...others, { id, done }] : others;
    return settle(job, { ...job, ticks }, `${done ? 'Tick' : 'Untick'} ${words}`);
  },
};
