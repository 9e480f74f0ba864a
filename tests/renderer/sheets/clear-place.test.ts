import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { planBounds } from '../../../src-core/drawing';
import { readJobText } from '../../../src-core/job';
import { clearPlace } from '../../../src-renderer/sheets/clear-place';

function example(id: string) {
  const reading = readJobText(readFileSync(`assets/jobs/${id}.json`, 'utf8'));
  if (!reading.ok) throw new Error(`${id} is sound`);
  return reading.job;
}

describe('clearPlace', () => {
  it('puts a new piece 12 in beside a 96 in ledge, its front in line', () => {
    expect(clearPlace(example('bar-ledge'))).toEqual({ xIn: 108, yIn: 0 });
  });

  it('clears every piece and support of the galley', () => {
    const job = example('boathouse-galley');
    expect(clearPlace(job).xIn).toBeGreaterThanOrEqual(planBounds(job).maxXIn + 12);
  });
});
