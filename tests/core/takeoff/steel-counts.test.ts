import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { steelLayers } from '../../../src-core/analysis';
import type { Job, Piece } from '../../../src-core/job';
import { readJob, readJobText, steelSets } from '../../../src-core/job';
import { clipSegmentToRegion, turned } from '../../../src-core/outline';
import type { SteelRun } from '../../../src-core/solid';
import { barsOver, steelRuns } from '../../../src-core/solid';
import type { MeshPlacing } from '../../../src-core/steel-placing';
import { jobTakeoff } from '../../../src-core/takeoff';
import { jobOf, rectangle } from '../../support/pieces';
import { randomJob } from '../../support/random-job';
import { seededRandom } from '../../support/seeded-random';
import { BARS, LIGHT_MESH } from '../steel-placing/cases';

const FOLDER = new URL('../../../assets/jobs/', import.meta.url);
const EXAMPLES = readdirSync(FOLDER).filter((file) => file.endsWith('.json'));

function example(file: string): Job {
  const reading = readJobText(readFileSync(new URL(file, FOLDER), 'utf8'));
  if (!reading.ok) throw new Error(file);
  return reading.job;
}

/** Bars drawn in the model against those cut, for one copy of a piece: a line in lapped lengths is drawn once. */
function expectBarsAlike(job: Job): number {
  const { pieces, barCuts } = jobTakeoff(job, null);
  const cut = barCuts
    .flatMap((cuts) => cuts.pieces)
    .filter(({ isTrimmer, copy }) => !isTrimmer && copy === 1);
  let bars = 0;
  for (const { pieceId, steel } of pieces) {
    const piece = job.pieces.find(({ id }) => id === pieceId)!;
    const runs = steelRuns(piece);
    for (const placing of steel?.bars ?? []) {
      const drawn = runs.filter(({ layerId }) => layerId === placing.id).length;
      const id = `${pieceId}/${placing.id}-bar-`;
      const listed = cut.filter((each) => each.id.startsWith(id)).length;
      expect({ id, lines: listed - placing.laps.length }).toEqual({ id, lines: drawn });
      bars += drawn;
    }
  }
  return bars;
}

const dotAlong = ({ from, to }: SteelRun, angleDeg: number) => {
  const [x, y] = [Math.cos((angleDeg * Math.PI) / 180), Math.sin((angleDeg * Math.PI) / 180)];
  return Math.abs(
    ((to[0] - from[0]) * x + (to[1] - from[1]) * y) / Math.hypot(to[0] - from[0], to[1] - from[1]),
  );
};

/** Wires of the model on a line across each strip, each way, against what the strip takes there at their spacing. */
function expectWiresAlike(piece: Piece, placing: MeshPlacing): number {
  const layer = piece.reinforcement.find(({ id }) => id === placing.id)!;
  const runs = steelRuns(piece).filter(({ layerId }) => layerId === placing.id);
  let wires = 0;
  for (const { shape, id } of placing.strips) {
    for (const { angleDeg, spacingIn } of steelSets(layer)) {
      const turnRad = (-angleDeg * Math.PI) / 180;
      const flat = shape.outer.map((point) => turned(point, turnRad));
      // a line across the strip an inch in from its end
      const atIn = Math.min(...flat.map(({ xIn }) => xIn)) + 1;
      const line = { a: { xIn: atIn, yIn: -1e3 }, b: { xIn: atIn, yIn: 1e3 } };
      const holes = shape.holes.map((hole) => hole.map((point) => turned(point, turnRad)));
      for (const { a, b } of clipSegmentToRegion(line, { outer: flat, holes })) {
        const [low, high] = [Math.min(a.yIn, b.yIn), Math.max(a.yIn, b.yIn)];
        const met = runs
          .filter((run) => dotAlong(run, angleDeg) > 0.999)
          .map(({ from, to }) =>
            [from, to].map(([xIn, yIn]) => turned({ xIn, yIn }, turnRad)).sort((p, q) => p.xIn - q.xIn),
          )
          .filter(([from, to]) => from!.xIn <= atIn && atIn <= to!.xIn)
          .filter(([from]) => from!.yIn >= low - 1e-6 && from!.yIn <= high + 1e-6).length;
        const takes = Math.floor((high - low) / spacingIn + 1e-9) + 1;
        // a strip beside another begins where that one's wires have it begin
        const least = placing.strips.length === 1 ? takes : takes - 1;
        expect({ id, angleDeg, met, least: Math.min(met, least) }).toEqual({ id, angleDeg, met, least });
        expect({ id, angleDeg, met, most: Math.max(met, takes) }).toEqual({ id, angleDeg, met, most: takes });
        wires += met;
      }
    }
  }
  return wires;
}

describe('the model shows what the cut list has', () => {
  test('as many bars in every example job', () => {
    expect(EXAMPLES.map((file) => expectBarsAlike(example(file))).some((bars) => bars > 10)).toBe(true);
  });

  test('as many wires over every strip in every example job', () => {
    let wires = 0;
    for (const file of EXAMPLES) {
      const job = example(file);
      for (const { pieceId, steel } of jobTakeoff(job, null).pieces) {
        const piece = job.pieces.find(({ id }) => id === pieceId)!;
        for (const mesh of steel?.meshes ?? []) wires += expectWiresAlike(piece, mesh);
      }
    }
    expect(wires).toBeGreaterThan(200);
  });

  test('as many bars in 40 random jobs, round openings and in fields of their own', () => {
    let bars = 0;
    for (let seed = 1; seed <= 40; seed++) {
      const reading = readJob(randomJob(seededRandom(seed)));
      if (reading.ok) bars += expectBarsAlike(reading.job);
    }
    expect(bars).toBeGreaterThan(50);
  });

  test('mesh 94 in by 23-1/2 in has 48 wires one way and 12 the other', () => {
    const job = jobOf({ corners: rectangle(96, 25.5), thicknessIn: 2, reinforcement: [LIGHT_MESH] });
    const runs = steelRuns(job.pieces[0]!);
    expect([0, 90].map((deg) => runs.filter((run) => dotAlong(run, deg) > 0.999).length)).toEqual([12, 48]);
  });
});

describe('what is cut is no less steel than the load check counts', () => {
  // As = n A / W against A / s: the check counts a bar every spacing (ACI 318-19 R2.1, area per width)
  test.each([
    [25.5, 6, 5],
    [24, 5, 5],
    [26, 5, 6],
    [27, 5, 6],
    [30, 6, 5],
    [96, 12, 8],
  ])('%d in of slab with #3 at %d in takes %d', (depthIn, spacingIn, count) => {
    const job = jobOf({
      corners: rectangle(60, depthIn),
      thicknessIn: 2,
      reinforcement: [{ ...BARS, spacingIn }],
    });
    const piece = job.pieces[0]!;
    const placing = jobTakeoff(job, null).pieces[0]!.steel!.bars[0]!;
    expect(placing.bars).toHaveLength(count);
    const [counted] = steelLayers(piece);
    expect((placing.bars.length * 0.11) / depthIn).toBeGreaterThanOrEqual(counted!.areaIn2PerIn - 1e-9);
    // and the outer bars keep their cover to the surface
    const ys = placing.bars.map(({ from }) => from.yIn);
    expect(Math.min(...ys)).toBeGreaterThanOrEqual(1.1875 - 1e-6);
    expect(Math.max(...ys)).toBeLessThanOrEqual(depthIn - 1.1875 + 1e-6);
  });

  test('every layer of bars over a whole rectangle of every example job', () => {
    let layers = 0;
    for (const file of EXAMPLES) {
      for (const piece of example(file).pieces.filter(({ corners }) => corners.length === 4)) {
        const runs = steelRuns(piece);
        for (const { reinforcementId, barRad, areaIn2PerIn, spacingIn } of steelLayers(piece)) {
          if (piece.reinforcement.find(({ id }) => id === reinforcementId)?.kind !== 'bars') continue;
          const across = (xIn: number, yIn: number) => yIn * Math.cos(barRad) - xIn * Math.sin(barRad);
          const own = runs.filter(({ layerId }) => layerId === reinforcementId);
          // a line cut in two by an opening is one line
          const lines = new Set(own.map(({ from }) => across(from[0], from[1]).toFixed(3))).size;
          const corners = piece.corners.map(({ xIn, yIn }) => across(xIn, yIn));
          const widthIn = Math.max(...corners) - Math.min(...corners);
          expect(lines * areaIn2PerIn * spacingIn).toBeGreaterThanOrEqual(areaIn2PerIn * widthIn - 1e-6);
          layers++;
        }
      }
    }
    expect(layers).toBeGreaterThan(1);
  });

  test('a strip too narrow for one more bar an inch clear of the next keeps what fits', () => {
    // cover leaves 1 in for the bars of a 3-3/8 in strip: a second one would lie 5/8 in clear (ACI 318-19 25.2.1)
    expect(barsOver(1, { widthIn: 3.375, spacingIn: 2, barIn: 0.375 })).toEqual({ count: 1, pitchIn: 2 });
    expect(barsOver(1.5, { widthIn: 3.875, spacingIn: 2, barIn: 0.375 })).toEqual({ count: 2, pitchIn: 1.5 });
  });
});
