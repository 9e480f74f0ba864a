import { describe, expect, test } from 'vitest';
import type { JobFalsework } from '../../../src-core/falsework';
import { designJob } from '../../../src-core/falsework';
import type { Job } from '../../../src-core/job';
import { jobSchema, pieceRegion } from '../../../src-core/job';
import { regionAreaIn2 } from '../../../src-core/outline';
import { pourPlan } from '../../../src-core/pour';
import type { JobTakeoff, ListLine } from '../../../src-core/takeoff';
import { jobTakeoff, linesOf } from '../../../src-core/takeoff';
import { randomJob } from '../../support/random-job';
import { seededRandom } from '../../support/seeded-random';
import { EXAMPLES, exampleJob, isInJob, sinkJob } from './cases';

const RANDOM_JOBS = 60;

/** What is wrong with the sources of a list, in sentences. */
function faultsOf(job: Job, takeoff: JobTakeoff): string[] {
  const lines = linesOf(takeoff.list);
  const ids = lines.map(({ id }) => id);
  return [
    ...ids.filter((id, k) => ids.indexOf(id) !== k).map((id) => `${id} is there twice`),
    ...lines.flatMap((line) => lineFaults(job, line)),
  ];
}

function lineFaults(job: Job, { id, needed, buy, cost, priceEach, sources }: ListLine): string[] {
  const sum = sources.reduce((total, { amount }) => total + amount, 0);
  const own = sources.map((source) => source.id);
  return [
    ...(sources.length === 0 ? [`${id} has no source`] : []),
    ...(Math.abs(sum - needed) <= 1e-9 * needed ? [] : [`${id} needs ${needed}, its sources come to ${sum}`]),
    ...(sources.every(({ amount }) => Number.isFinite(amount) && amount > 0)
      ? []
      : [`${id} has a source of nothing`]),
    ...sources
      .filter(({ trace }) => !isInJob(job, trace))
      .map(({ trace }) => `${id} names ${JSON.stringify(trace)}, which the job does not have`),
    ...own.filter((source, k) => own.indexOf(source) !== k).map((source) => `${id} has ${source} twice`),
    ...(Number.isInteger(buy) && buy > 0 ? [] : [`${id} buys ${buy}`]),
    ...(cost === (priceEach === null ? null : buy * priceEach) ? [] : [`${id} costs ${cost}`]),
  ];
}

/** What lines of these ids need together. */
function needed(takeoff: JobTakeoff, begins: string): number {
  return linesOf(takeoff.list)
    .filter(({ id }) => id.startsWith(begins))
    .reduce((sum, line) => sum + line.needed, 0);
}

/** The list beside what the rooms themselves count, in another way. */
function expectTotals(job: Job, takeoff: JobTakeoff, where: string): void {
  const { formCuts, pieces } = takeoff;
  const over = (amount: (piece: JobTakeoff['pieces'][number]) => number) =>
    pieces.reduce((sum, piece) => sum + piece.copies * amount(piece), 0);
  const strips = formCuts.lists.flatMap(({ sticks }) =>
    sticks.flatMap(({ cuts }) => cuts.map(({ strip }) => strip)),
  );
  expect(needed(takeoff, 'strip/'), where).toBeCloseTo(
    strips.reduce((sum, { longIn }) => sum + longIn, 0),
    6,
  );
  expect(needed(takeoff, 'sealant'), where).toBeCloseTo(formCuts.sealant.beadIn, 6);
  const seamTapeIn = over(({ boards }) => boards?.tapeIn ?? 0);
  expect(needed(takeoff, 'tape'), where).toBeCloseTo(
    formCuts.cornerTapeIn + formCuts.jointTapeIn + seamTapeIn,
    6,
  );
  const slabsIn2 = job.pieces.reduce((sum, piece) => {
    const region = pieceRegion(piece);
    return region.ok ? sum + piece.copies * regionAreaIn2(region) : sum;
  }, 0);
  expect(needed(takeoff, 'board/') / slabsIn2, where).toBeCloseTo(1, 6);
  // The pour takes arcs in finer chords.
  expect(needed(takeoff, 'protection/sheeting') / slabsIn2, where).toBeCloseTo(1, 2);
  expect(needed(takeoff, 'standoffs/'), where).toBe(over(({ steel }) => steel?.standoffs.length ?? 0));
  expect(needed(takeoff, 'mesh/'), where).toBeCloseTo(
    over(({ steel }) => (steel?.meshes ?? []).reduce((sum, { cutAreaIn2 }) => sum + cutAreaIn2, 0)),
    4,
  );
  const drawnFt3 = pourPlan(job).pours.reduce((sum, { volumes }) => sum + volumes.drawnFt3, 0);
  const mixes = new Set(job.mixes.map(({ id }) => `mix/${id}`));
  const mixFt3 = linesOf(takeoff.list)
    .filter(({ id }) => mixes.has(id))
    .reduce((sum, line) => sum + line.needed, 0);
  expect(mixFt3, where).toBeCloseTo(drawnFt3, 6);
}

test(`in ${RANDOM_JOBS} jobs of any shape every line adds up from parts that the job has, and to what the rooms count`, () => {
  let lines = 0;
  for (let seed = 1; seed <= RANDOM_JOBS; seed++) {
    const job = jobSchema.parse(randomJob(seededRandom(seed), 1 + (seed % 3)));
    const takeoff = jobTakeoff(job, null);
    const where = `job ${seed}`;
    expect(faultsOf(job, takeoff), where).toEqual([]);
    if (takeoff.pieces.every(({ problems }) => problems.length === 0) && !hasLeftOut(takeoff)) {
      expectTotals(job, takeoff, where);
    }
    lines += linesOf(takeoff.list).length;
  }
  expect(lines).toBeGreaterThan(10 * RANDOM_JOBS);
});

/** Whether the list leaves parts out that no stock yields. */
function hasLeftOut({ meshCuts, barCuts }: JobTakeoff): boolean {
  return (
    meshCuts.some(({ list }) => list.tooLarge.length > 0) ||
    barCuts.some(({ list }) => list.tooLong.length > 0)
  );
}

describe.each(EXAMPLES)('the example job %s', (name) => {
  const job = exampleJob(name);
  const falsework = designJob(job);
  const takeoff = jobTakeoff(job, falsework);

  test('adds up line by line from parts that the job has', () => {
    expect(faultsOf(job, takeoff)).toEqual([]);
    expectTotals(job, takeoff, name);
  });

  test('buys the lumber and panels that the falsework does not use again', () => {
    const { bought } = falsework.reuse;
    const sticksIn = bought.sticks.reduce((sum, { lengthIn, count }) => sum + count * lengthIn, 0);
    expect(needed(takeoff, 'lumber/')).toBeCloseTo(sticksIn, 6);
    const panelsIn2 = bought.panels.reduce((sum, { lengthIn, widthIn }) => sum + lengthIn * widthIn, 0);
    expect(needed(takeoff, 'panel/')).toBeCloseTo(panelsIn2, 6);
    const screws = falsework.designs.reduce((sum, { pieceId, fastenings }) => {
      const { copies } = job.pieces.find(({ id }) => id === pieceId)!;
      return sum + copies * fastenings.reduce((own, { count }) => own + count, 0);
    }, 0);
    expect(needed(takeoff, 'screws/falsework/')).toBe(screws);
  });

  test('gives the same list on every run', () => {
    expect(JSON.stringify(jobTakeoff(job, falsework))).toBe(JSON.stringify(takeoff));
  });
});

test('a list whose source were left out would be seen', () => {
  const job = sinkJob();
  const takeoff = jobTakeoff(job, null);
  const [first, ...rest] = takeoff.list.groups;
  const [line, ...others] = first!.lines;
  const short = { ...line!, sources: line!.sources.slice(1) };
  const strange = {
    ...line!,
    sources: [
      { ...line!.sources[0]!, trace: { pieceId: 'gone', part: { kind: 'piece' as const } } },
      ...line!.sources.slice(1),
    ],
  };
  const withLine = (changed: ListLine): JobTakeoff => ({
    ...takeoff,
    list: { ...takeoff.list, groups: [{ ...first!, lines: [changed, ...others] }, ...rest] },
  });
  expect(faultsOf(job, takeoff)).toEqual([]);
  expect(faultsOf(job, withLine(short))).toEqual([expect.stringContaining('its sources come to')]);
  expect(faultsOf(job, withLine(strange))).toEqual([expect.stringContaining('which the job does not have')]);
});

test('one piece alone is listed with its own share of the falsework', () => {
  const job = exampleJob('boathouse-galley');
  const falsework: JobFalsework = designJob(job);
  const takeoff = jobTakeoff(job, falsework, { pieceId: 'bar-ledge' });
  expect(takeoff.pieces.map(({ pieceId }) => pieceId)).toEqual(['bar-ledge']);
  const sources = linesOf(takeoff.list).flatMap((line) => line.sources);
  expect(new Set(sources.map(({ trace }) => trace.pieceId))).toEqual(new Set(['bar-ledge']));
  const own = falsework.reuse.byPiece.find(({ pieceId }) => pieceId === 'bar-ledge')!.bought;
  expect(needed(takeoff, 'lumber/')).toBeCloseTo(
    own.sticks.reduce((sum, { lengthIn, count }) => sum + count * lengthIn, 0),
    6,
  );
});
