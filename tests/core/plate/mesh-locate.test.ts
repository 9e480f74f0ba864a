import { describe, expect, test } from 'vitest';
import { meshRegion, type PlateMesh } from '../../../src-core/plate/mesh';
import { boundaryEdges } from '../../../src-core/plate/mesh-adjacency';
import { buildLocator, type MeshPlace } from '../../../src-core/plate/mesh-locate';
import { moveShape, worktopShapes } from '../../support/mesh-shapes';

function meshed(name: string, angleRad: number): PlateMesh {
  const motion = { angleRad, scaleRatio: 1, isMirrored: false, moveXIn: 3, moveYIn: -7 };
  const result = meshRegion({ ...moveShape(worktopShapes[name]!, motion), sizeIn: 2 });
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.mesh;
}

function pointOf(mesh: PlateMesh, place: MeshPlace): [number, number] {
  const corners = Array.from(mesh.triangles.slice(3 * place.triangle, 3 * place.triangle + 3));
  const shares = [place.l1, place.l2, place.l3];
  return [
    corners.reduce((sum, node, k) => sum + shares[k]! * mesh.xIn[node]!, 0),
    corners.reduce((sum, node, k) => sum + shares[k]! * mesh.yIn[node]!, 0),
  ];
}

function expectFound(mesh: PlateMesh, place: MeshPlace | null, x: number, y: number, withinIn: number): void {
  expect(place).not.toBeNull();
  const [px, py] = pointOf(mesh, place!);
  expect(Math.hypot(px - x, py - y)).toBeLessThanOrEqual(withinIn);
  expect(Math.min(place!.l1, place!.l2, place!.l3)).toBeGreaterThanOrEqual(-1e-9);
  expect(place!.l1 + place!.l2 + place!.l3).toBeCloseTo(1, 12);
}

describe('finding the triangle under a point', () => {
  for (const [name, angleRad] of [
    ['with a sink', 0],
    ['with a sink', 0.4],
    ['L shape', 1],
  ] as const) {
    const mesh = meshed(name, angleRad);
    const locate = buildLocator(mesh);

    test(`${name} turned ${angleRad} rad: the middle of each triangle lies in it`, () => {
      for (let t = 0; t < mesh.triangles.length / 3; t++) {
        const [x, y] = pointOf(mesh, { triangle: t, l1: 1 / 3, l2: 1 / 3, l3: 1 / 3 });
        const place = locate(x, y);
        expect(place?.triangle).toBe(t);
        expectFound(mesh, place, x, y, 1e-12);
      }
    });

    test(`${name} turned ${angleRad} rad: every node and every middle of an edge is found`, () => {
      for (let e = 0; e < mesh.triangles.length; e++) {
        const a = mesh.triangles[e]!;
        const b = mesh.triangles[e % 3 === 2 ? e - 2 : e + 1]!;
        expectFound(mesh, locate(mesh.xIn[a]!, mesh.yIn[a]!), mesh.xIn[a]!, mesh.yIn[a]!, 1e-9);
        const x = (mesh.xIn[a]! + mesh.xIn[b]!) / 2;
        const y = (mesh.yIn[a]! + mesh.yIn[b]!) / 2;
        expectFound(mesh, locate(x, y), x, y, 1e-9);
      }
    });

    test(`${name} turned ${angleRad} rad: 5e-7 in off the rim is taken to it, 5e-6 in is outside`, () => {
      const rim = boundaryEdges(mesh);
      for (let i = 0; i < rim.length; i += 2) {
        const a = rim[i]!;
        const b = rim[i + 1]!;
        const dx = mesh.xIn[b]! - mesh.xIn[a]!;
        const dy = mesh.yIn[b]! - mesh.yIn[a]!;
        const lengthIn = Math.hypot(dx, dy);
        const off = (awayIn: number): [number, number] => [
          mesh.xIn[a]! + 0.4 * dx + (awayIn * dy) / lengthIn,
          mesh.yIn[a]! + 0.4 * dy - (awayIn * dx) / lengthIn,
        ];
        const [x, y] = off(5e-7);
        expectFound(mesh, locate(x, y), x, y, 6e-7);
        expect(locate(...off(5e-6))).toBeNull();
      }
    });
  }

  test('the sink hole, the far side of the room and no number at all are outside', () => {
    const locate = buildLocator(meshed('with a sink', 0));
    expect(locate(60, 5)).toBeNull();
    expect(locate(-400, 900)).toBeNull();
    expect(locate(Number.NaN, 5)).toBeNull();
  });
});
