/** Timings and sizes of the engine, printed beside one static solve of the same mesh by CalculiX where that is installed. */
import { readFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { analysePiece, preparePiece } from '../../src-core/analysis';
import { checkPiece, DEFAULT_LIMITS } from '../../src-core/checks';
import type { Job } from '../../src-core/job';
import { readJobText } from '../../src-core/job';
import { checkJob, lookAtPiece } from '../../src-core/verdict';
import { QUICK_LOOK } from '../../src-renderer/worker/quick-look';
import { calculixPlate } from '../reference/calculix/plate';
import { ccxVersion } from '../reference/calculix/run';
import { counter, crackedCounter } from './bench-jobs';
import { benchLists } from './bench-lists';

const MESH_IN = 1;
/** Runs before the clock counts: the compiler needs several to reach its best code. */
const WARM_UP_RUNS = 6;
const WARM_RUNS = 9;

interface Timing {
  readonly medianMs: number;
  readonly leastMs: number;
  readonly coldMs: number;
}

function time(run: () => unknown): Timing {
  const ms: number[] = [];
  for (let i = 0; i < WARM_UP_RUNS + WARM_RUNS; i++) {
    const started = performance.now();
    run();
    ms.push(performance.now() - started);
  }
  const warm = ms.slice(WARM_UP_RUNS).sort((a, b) => a - b);
  return { coldMs: ms[0]!, leastMs: warm[0]!, medianMs: warm[Math.floor(warm.length / 2)]! };
}

function full(job: Job): void {
  checkPiece(job, job.pieces[0]!, { day: null, meshSizeIn: MESH_IN }, DEFAULT_LIMITS);
}

function describePiece(title: string, job: Job): string {
  const result = analysePiece(job, job.pieces[0]!, { day: null, meshSizeIn: MESH_IN });
  if (!result.ok) throw new Error(result.cannot.sentence);
  const { mesh, contacts, elastic, cracked } = result.analysis;
  return `${title}: ${mesh.xIn.length} nodes, ${contacts.length} contact points, ${elastic.low.cases.length} load cases at two stiffness bounds, ${cracked?.factorisations ?? 1} factorisation(s)`;
}

function print(title: string, timing: Timing): void {
  const { coldMs, leastMs, medianMs } = timing;
  console.log(
    `  ${title.padEnd(34)} warm median ${medianMs.toFixed(0)} ms, least ${leastMs.toFixed(0)} ms, cold ${coldMs.toFixed(0)} ms`,
  );
}

/** One linear static solve of the same mesh, springs that push and pull, one load case. */
function calculixSeconds(job: Job): number | null {
  if (ccxVersion() === null) return null;
  const result = preparePiece(job, job.pieces[0]!, { day: null, meshSizeIn: MESH_IN });
  if (!result.ok) throw new Error(result.cannot.sentence);
  const { mesh, contacts, loads, concrete } = result.prepared;
  return calculixPlate({
    nodes: Array.from(mesh.xIn, (xIn, i) => ({ xIn, yIn: mesh.yIn[i]! })),
    triangles: Array.from({ length: mesh.triangles.length / 3 }, (_, t) => [
      mesh.triangles[3 * t]!,
      mesh.triangles[3 * t + 1]!,
      mesh.triangles[3 * t + 2]!,
    ]),
    thicknessIn: job.pieces[0]!.thicknessIn,
    modulusPsi: concrete.modulusPsi,
    poissonRatio: concrete.poisson,
    loads: Array.from(loads.dead.node, (node, i) => ({ node, forceLbf: loads.dead.lbf[i]! })),
    supports: contacts.map(({ node, highLbfPerIn }) => ({
      node,
      stiffnessLbfPerIn: highLbfPerIn,
      gapIn: 0,
      kind: 'both' as const,
    })),
    holds: [],
  }).seconds;
}

function main(): void {
  console.log(`Node ${process.version}, ${cpus().length} x ${cpus()[0]?.model ?? 'unknown processor'}`);
  const plain = counter(1.5);
  const steel = crackedCounter();
  console.log(describePiece('Counter 12 ft by 25-1/2 in, 1-1/2 in thick', plain));
  const uncracked = time(() => full(plain));
  print('full check, uncracked', uncracked);
  print(
    'quick look, as during a drag',
    time(() => lookAtPiece(plain, plain.pieces[0]!, QUICK_LOOK)),
  );
  console.log(describePiece('The same 1 in thick, mesh, no rails', steel));
  const cracked = time(() => full(steel));
  print('full check, cracked', cracked);

  const reading = readJobText(
    readFileSync(new URL('../../assets/jobs/boathouse-galley.json', import.meta.url), 'utf8'),
  );
  if (!reading.ok) throw new Error(reading.problems[0]?.sentence);
  for (const [changes, words] of [
    ['none', 'every check, no changes looked for'],
    ['first', 'with the first passing change of each piece that fails'],
  ] as const) {
    const started = performance.now();
    checkJob(reading.job, { changes });
    const ms = (performance.now() - started).toFixed(0);
    console.log(`  the whole Boathouse galley         ${ms} ms, ${words}`);
  }

  benchLists(reading.job);

  const peakMb = process.resourceUsage().maxRSS / 1024;
  console.log(`  peak memory                        ${peakMb.toFixed(0)} MB`);
  const seconds = calculixSeconds(plain);
  if (seconds === null) console.log('  CalculiX is not installed here: no comparison.');
  else {
    console.log(
      `  one linear static CalculiX solve   ${seconds.toFixed(2)} s of the same mesh and springs (one load case): ${(uncracked.medianMs / 1000 / seconds).toFixed(2)} of that is our whole check`,
    );
  }
}

main();
