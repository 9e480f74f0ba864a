/** Saves one job in two sizes over and over until it is killed: `save-in-a-loop.ts FILE USER-FOLDER`. */
import { createHost } from '../../../src-main/host/host';
import { longText } from './long-job';
import { exampleText } from './place-here';

const [path, userFolder] = process.argv.slice(2);
if (path === undefined || userFolder === undefined) throw new Error('say which file, and which user folder');
const host = createHost({
  host: 'browser',
  version: '1.2.3',
  platform: 'linux',
  userFolder,
  jobFolder: userFolder,
  exampleFolder: userFolder,
  manualFolder: userFolder,
  dialogs: null,
  printPdf: async () => ({ ok: false, why: 'no-printer', sentence: 'Nothing is printed here.' }),
  clock: () => new Date(),
});
const texts = [exampleText('hearth'), longText()];
for (let turn = 0; ; turn++) {
  const answer = await host.answer('saveJob', { path, suggestedName: 'a.json', text: texts[turn % 2]! });
  if (!answer.ok) throw new Error(answer.sentence);
  if (turn === 0) process.stdout.write('saving\n');
}
