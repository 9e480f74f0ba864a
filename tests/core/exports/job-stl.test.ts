import { STLLoader } from 'three/examples/jsm/loaders/STLLoader.js';
import { describe, expect, test } from 'vitest';
import { jobStl } from '../../../src-core/exports';
import { slabSolid, slabVolumeIn3 } from '../../../src-core/solid';
import { jobOf, rectangle } from '../../support/pieces';
import { exampleJobs } from '../solid/closed-shell';
import { SQUARE } from '../solid/pieces';
import { extentOf, volumeOf } from './triangles';

const MM3_PER_IN3 = 25.4 ** 3;

/** Corners of the triangles, as another program's reader finds them. */
function cornersOf(bytes: Uint8Array<ArrayBuffer>): ArrayLike<number> {
  return new STLLoader().parse(bytes.buffer).getAttribute('position').array;
}

describe('slabs as STL', () => {
  const box = jobOf({ corners: rectangle(60, 25), thicknessIn: 1.5, edges: Array(4).fill(SQUARE) });

  test('a plain 60 x 25 x 1-1/2 in slab is 12 triangles: 84 + 12 x 50 bytes, 1524 x 635 x 38.1 mm', () => {
    const bytes = jobStl(box);
    expect(bytes).toHaveLength(684);
    expect(new DataView(bytes.buffer).getUint32(80, true)).toBe(12);
    const { least, most } = extentOf(cornersOf(bytes));
    [1524, 635, 38.1].forEach((sizeMm, axis) => {
      expect(most[axis]! - least[axis]!).toBeCloseTo(sizeMm, 3);
    });
    expect(volumeOf(cornersOf(bytes)) / (1524 * 635 * 38.1)).toBeCloseTo(1, 5);
  });

  test('it does not begin with the word by which readers know the text form', () => {
    expect(new TextDecoder().decode(jobStl(box).slice(0, 5))).not.toBe('solid');
  });

  test('every normal is a unit vector, along its triangle by the right-hand rule', () => {
    const view = new DataView(jobStl(box).buffer);
    for (let t = 0; t < 12; t++) {
      const float = (i: number) => view.getFloat32(84 + 50 * t + 4 * i, true);
      const [n, a, b, c] = [0, 3, 6, 9].map((i) => [float(i), float(i + 1), float(i + 2)]) as number[][];
      const [u, v] = [b, c].map((p) => p!.map((x, k) => x - a![k]!)) as [number[], number[]];
      const cross = [0, 1, 2].map(
        (k) => u[(k + 1) % 3]! * v[(k + 2) % 3]! - u[(k + 2) % 3]! * v[(k + 1) % 3]!,
      );
      const length = Math.hypot(...cross);
      cross.forEach((x, k) => {
        expect(n![k]).toBeCloseTo(x / length, 5);
      });
      expect(view.getUint16(84 + 50 * t + 48, true)).toBe(0);
    }
  });

  test.each(exampleJobs())('$file holds the volume of its slabs, within a thousandth', ({ job }) => {
    const wanted = job.pieces.reduce((sum, piece) => sum + slabVolumeIn3(slabSolid(piece)), 0);
    expect(wanted).toBeGreaterThan(0);
    expect(Math.abs(volumeOf(cornersOf(jobStl(job))) / MM3_PER_IN3 / wanted - 1)).toBeLessThan(1e-3);
    for (const piece of job.pieces) {
      const alone = volumeOf(cornersOf(jobStl(job, piece.id))) / MM3_PER_IN3;
      expect(Math.abs(alone / slabVolumeIn3(slabSolid(piece)) - 1)).toBeLessThan(1e-3);
    }
  });

  test('a piece that cannot be drawn is an empty file, and one that is not there a fault of ours', () => {
    const crossed = jobOf({
      corners: [
        { xIn: 0, yIn: 0 },
        { xIn: 10, yIn: 10 },
        { xIn: 10, yIn: 0 },
        { xIn: 0, yIn: 10 },
      ],
      thicknessIn: 2,
    });
    expect(jobStl(crossed)).toHaveLength(84);
    expect(() => jobStl(box, 'elsewhere')).toThrow('No piece elsewhere');
  });
});
