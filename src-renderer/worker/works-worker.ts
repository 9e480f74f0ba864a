/** A worker that takes off and plans the pour: the same functions that the command line calls, off the main thread. */
import { worksAnswers } from './works-answer';
import type { ToWorksWorker } from './works-messages';

const answer = worksAnswers();

self.onmessage = ({ data }: MessageEvent<ToWorksWorker>) => {
  self.postMessage(answer(data));
};
