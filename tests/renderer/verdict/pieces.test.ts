import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { preparePiece } from '../../../src-core/analysis';
import { readJobText } from '../../../src-core/job';
import { outlineDrawing } from '../../../src-renderer/pieces/outline-drawing';
import { densityOf, factsWords, jobWeightLine, pieceFacts } from '../../../src-renderer/pieces/piece-facts';
import { counter, smallRead } from './sample-checks';

const COARSE_MESH_IN = 6;
const JOBS = ['boathouse-galley', 'bar-ledge', 'gate-pier-cap', 'hearth', 'straight-counter'];

function exampleJob(name: string) {
  const reading = readJobText(readFileSync(`assets/jobs/${name}.json`, 'utf8'));
  if (!reading.ok) throw new Error(`${name} does not read`);
  return reading.job;
}

describe('what the list says of a piece', () => {
  it.each(JOBS)('is the weight and the longest overhang that the checks find, in %s', (name) => {
    const job = exampleJob(name);
    for (const piece of job.pieces) {
      const prepared = preparePiece(job, piece, { day: null, meshSizeIn: COARSE_MESH_IN });
      if (!prepared.ok) throw new Error(prepared.cannot.sentence);
      const { weight, shape } = prepared.prepared;
      const facts = pieceFacts(piece, densityOf(job, piece));
      // the checks leave arcs by 1/32 in, the list by 1/64 in
      expect(facts.weightLb! / weight.slabLb).toBeCloseTo(1, 3);
      expect(Math.abs((facts.overhangIn ?? 0) - (shape.longestOverhang?.overhangIn ?? 0))).toBeLessThan(0.01);
    }
  });

  it('leaves the 20 x 14 in sink and the tap hole out of a 96 x 24 x 2 in counter: about 340 lb at 145 pcf', () => {
    // (96*24 - (20*14 - (4 - pi)*2^2) - pi*0.75^2) * 2 * 145 / 1728
    const { weightLb } = pieceFacts(counter(), 145);
    expect(weightLb).toBeCloseTo(((2304 - (280 - (4 - Math.PI) * 4) - Math.PI * 0.5625) * 290) / 1728, 0);
  });

  it('is read in one glance', () => {
    const facts = { thicknessIn: 1.5, weightLb: 211.46, overhangIn: 11 };
    expect(factsWords(facts, 1, 'imperial')).toEqual({ slab: '1-1/2 in · 211 lb', overhang: '11 in out' });
    expect(factsWords(facts, 3, 'metric')).toEqual({ slab: '38 mm · 95.9 kg each', overhang: '279 mm out' });
  });

  it('says nothing of an overhang that is none, nor of a weight that cannot be worked out', () => {
    expect(factsWords({ thicknessIn: 2, weightLb: null, overhangIn: 0 }, 1, 'imperial')).toEqual({
      slab: '2 in',
      overhang: '',
    });
  });

  it('adds up the whole job with its copies', () => {
    const job = smallRead();
    const [first, second] = job.pieces;
    const one = jobWeightLine({ ...job, pieces: [first!] });
    const three = jobWeightLine({ ...job, pieces: [{ ...first!, copies: 3 }, second!] });
    expect(one).toMatch(/^1 slab, 340 lb of concrete$/);
    // 60 x 16 x 1-1/2 in at 145 pcf is 120.8 lb; three counters and a ledge: 3 x 340 + 120.8
    expect(three).toMatch(/^4 slabs, 1141 lb of concrete$/);
  });
});

describe('a piece drawn small', () => {
  const square = (widthIn: number, depthIn: number) => ({
    ...counter(),
    cutouts: [],
    corners: [
      { xIn: 10, yIn: 20, radiusIn: 0 },
      { xIn: 10 + widthIn, yIn: 20, radiusIn: 0 },
      { xIn: 10 + widthIn, yIn: 20 + depthIn, radiusIn: 0 },
      { xIn: 10, yIn: 20 + depthIn, radiusIn: 0 },
    ],
  });

  it('fits its box with the front at the bottom', () => {
    expect(outlineDrawing(square(40, 20), 40, 32).path).toBe('M0 26L40 26L40 6L0 6Z');
  });

  it('keeps its shape: a square stays one', () => {
    expect(outlineDrawing(square(24, 24), 40, 32).path).toBe('M4 32L36 32L36 0L4 0Z');
  });

  it('is drawn 3 px high at the least', () => {
    expect(outlineDrawing(square(400, 4), 40, 32).path).toBe('M0 17.5L40 17.5L40 14.5L0 14.5Z');
  });

  it('shows its openings', () => {
    expect(
      outlineDrawing(counter(), 40, 32)
        .path.split('Z')
        .filter((loop) => loop !== ''),
    ).toHaveLength(3);
  });
});
