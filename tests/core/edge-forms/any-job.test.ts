import { expect, test } from 'vitest';
import type { EdgeForms } from '../../../src-core/edge-forms';
import { cutEdgeForms, edgeForms, stripsOf } from '../../../src-core/edge-forms';
import { jobSchema } from '../../../src-core/job';
import { roundedPerimeterIn } from '../../../src-core/outline';
import { randomJob } from '../../support/random-job';
import { seededRandom } from '../../support/seeded-random';

const JOBS = 80;

/** Every number in plain data. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (value === null || typeof value !== 'object') return [];
  return Object.values(value).flatMap(numbersIn);
}

test(`in ${JOBS} jobs of any shape the forms go all the way round, in parts that the stock holds, each id once`, () => {
  let pieces = 0;
  let whole = 0;
  for (let seed = 1; seed <= JOBS; seed++) {
    const job = jobSchema.parse(randomJob(seededRandom(seed), 2));
    const all: EdgeForms[] = [];
    for (const piece of job.pieces) {
      const result = edgeForms(job, piece);
      if (!result.ok) continue;
      pieces++;
      all.push(result.forms);
      const { forms, junctions, plugs, cautions } = result.forms;
      const where = `job ${seed}, ${piece.id}`;
      expect(numbersIn(result.forms).every(Number.isFinite), where).toBe(true);
      const ids = [...forms, ...junctions, ...plugs, ...forms.flatMap(({ parts }) => parts)].map(
        ({ id }) => id,
      );
      expect(new Set(ids).size, where).toBe(ids.length);
      const round = forms.filter(({ trace }) => trace.part.kind !== 'cutout');
      // A strip in a gap of nothing is none, and between two slabs of one day the first has it.
      const isWhole = (piece.edges ?? []).every(
        (edge) => edge.kind === 'free' || (edge.gapIn > 0 && (edge.kind === 'wall' || all.length === 1)),
      );
      const roundIn = round.reduce((sum, { slabFaceIn }) => sum + slabFaceIn, 0);
      const perimeterIn = roundedPerimeterIn(piece.corners);
      if (isWhole) {
        whole++;
        expect(roundIn, where).toBeCloseTo(perimeterIn, 1);
      }
      for (const { parts, slabFaceIn } of forms) {
        expect(parts[0]!.fromIn).toBe(0);
        expect(parts.at(-1)!.toIn).toBeCloseTo(slabFaceIn, 9);
        if (cautions.length === 0) {
          expect(Math.max(...parts.map(({ longIn }) => longIn)), where).toBeLessThan(96 + 1e-6);
        }
      }
    }
    const { lists, blocks } = cutEdgeForms(job, all);
    const cut = lists.flatMap(({ sticks, notCut }) => [
      ...sticks.flatMap(({ cuts }) => cuts.map(({ strip }) => strip)),
      ...notCut,
    ]);
    expect([...cut, ...blocks].map(({ id }) => id).sort()).toEqual(
      all
        .flatMap(stripsOf)
        .map(({ id }) => id)
        .sort(),
    );
  }
  expect(pieces).toBeGreaterThan(JOBS);
  expect(whole).toBeGreaterThan(JOBS);
});
