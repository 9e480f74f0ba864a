/** `npm test`: from a fresh clone to every test, with what is missing installed first. */
import { prepare } from './project.mjs';
import { installReferencePrograms } from './reference-programs.mjs';
import { runSteps, STEPS, summarise } from './test-steps.mjs';

prepare();
installReferencePrograms();
const { lines, code } = summarise(runSteps(STEPS));
console.log(`\n${lines.join('\n')}`);
process.exitCode = code;
