import { validateBytes } from 'gltf-validator';
import type { Mesh, MeshStandardMaterial } from 'three';
import { GLTFLoader } from 'three/examples/jsm/loaders/GLTFLoader.js';
import { describe, expect, test } from 'vitest';
import { jobGlb } from '../../../src-core/exports';
import { slabSolid, slabVolumeIn3, supportSolids } from '../../../src-core/solid';
import { jobOf, rectangle } from '../../support/pieces';
import { exampleJobs } from '../solid/closed-shell';
import { SQUARE } from '../solid/pieces';
import { extentOf, volumeOf } from './triangles';

const IN_PER_M = 1 / 0.0254;

interface Read {
  readonly name: string;
  readonly material: string;
  /** Corners of the triangles, inches, still y up. */
  readonly corners: readonly number[];
}

/** The parts, as another program's reader finds them. */
async function partsOf(bytes: Uint8Array<ArrayBuffer>): Promise<Read[]> {
  const { scene } = await new GLTFLoader().parseAsync(bytes.slice().buffer, '');
  return scene.children[0]!.children.map((child) => {
    const { geometry, material, userData } = child as Mesh;
    const place = geometry.getAttribute('position');
    const corners = [...geometry.getIndex()!.array].flatMap((vertex) =>
      [0, 1, 2].map((axis) => place.getComponent(vertex, axis) * IN_PER_M),
    );
    return { name: userData.name as string, material: (material as MeshStandardMaterial).name, corners };
  });
}

describe.each(exampleJobs())('$file', ({ job }) => {
  test('the validator of glTF finds no error and no warning', async () => {
    const { issues, info } = await validateBytes(await jobGlb(job));
    expect(issues.messages).toEqual([]);
    expect(issues.numErrors + issues.numWarnings).toBe(0);
    expect(info.version).toBe('2.0');
    expect(info.drawCallCount).toBeGreaterThanOrEqual(job.pieces.length);
  });

  test('every slab holds its volume, within a thousandth', async () => {
    const parts = await partsOf(await jobGlb(job));
    const slabs = parts.filter(({ material }) => material === 'concrete');
    for (const piece of job.pieces) {
      const slab = slabs.find(({ name }) => name === `${piece.name}, slab`);
      const wanted = slabVolumeIn3(slabSolid(piece));
      expect(Math.abs(volumeOf(slab!.corners) / wanted - 1)).toBeLessThan(1e-3);
    }
  });

  test('what stays under the slabs is there, one mesh a part, with its volume', async () => {
    const wanted = job.pieces.flatMap((piece) =>
      supportSolids(piece).filter(({ supportId }) =>
        piece.supports.every(({ id, lastDay }) => id !== supportId || lastDay === null),
      ),
    );
    const parts = (await partsOf(await jobGlb(job))).filter(({ name }) => !name.endsWith(', slab'));
    expect(parts).toHaveLength(wanted.length);
    wanted.forEach(({ material, solid }, i) => {
      expect(parts[i]!.material).toBe(material);
      expect(Math.abs(volumeOf(parts[i]!.corners) / slabVolumeIn3(solid) - 1)).toBeLessThan(1e-3);
    });
  });

  test('the same job gives the same bytes', async () => {
    expect(await jobGlb(job)).toEqual(await jobGlb(job));
  });
});

describe('a slab in metres with y up', () => {
  const job = jobOf({
    corners: rectangle(60, 25),
    thicknessIn: 1.5,
    topElevationIn: 36,
    edges: Array(4).fill(SQUARE),
    supports: [
      { kind: 'leg', id: 'early', name: 'prop', centre: { xIn: 10, yIn: 10 }, lastDay: 20 },
      { kind: 'leg', id: 'late', centre: { xIn: 40, yIn: 10 }, firstDay: 21 },
    ],
  });
  const namesOn = async (day: number | null) =>
    (await partsOf(await jobGlb(job, day))).map(({ name }) => name);

  test('60 x 25 in with its top at 36 in: x from 0 to 60, y from 34-1/2 to 36, z from -25 at the back to 0 at the front', async () => {
    const [slab] = await partsOf(await jobGlb(job));
    const { least, most } = extentOf(slab!.corners);
    [0, 34.5, -25].forEach((wanted, axis) => {
      expect(least[axis]).toBeCloseTo(wanted, 4);
    });
    [60, 36, 0].forEach((wanted, axis) => {
      expect(most[axis]).toBeCloseTo(wanted, 4);
    });
    expect(volumeOf(slab!.corners)).toBeCloseTo(2250, 1);
  });

  test('parts are named by piece and part, and only what stands on the day is there', async () => {
    expect(await namesOn(null)).toEqual(['Piece, slab', 'Piece, leg, timber']);
    expect(await namesOn(20)).toEqual(['Piece, slab', 'Piece, prop, timber']);
    expect(await namesOn(21)).toEqual(['Piece, slab', 'Piece, leg, timber']);
  });
});

test('a job of one piece that cannot be drawn is still a sound, empty file', async () => {
  const crossed = jobOf({
    corners: [
      { xIn: 0, yIn: 0 },
      { xIn: 10, yIn: 10 },
      { xIn: 10, yIn: 0 },
      { xIn: 0, yIn: 10 },
    ],
    thicknessIn: 2,
  });
  const { issues } = await validateBytes(await jobGlb(crossed));
  expect(issues.numErrors + issues.numWarnings).toBe(0);
});
