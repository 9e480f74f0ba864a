/** Small maps, boxes and jobs as plain data, for the tests of the model view. */
import type { PieceMap } from '../../../src-core/field-map';
import type { Job } from '../../../src-core/job';
import { readJob } from '../../../src-core/job';
import type { Solid } from '../../../src-core/solid';
import { smallJob } from '../../support/small-job';

/** A 10 x 10 in square of two triangles with a share at each corner, from the origin round to (0, 10). */
export function squareMap(shares: readonly [number, number, number, number]): PieceMap {
  return {
    pieceId: 'square',
    xIn: Float32Array.from([0, 10, 10, 0]),
    yIn: Float32Array.from([0, 0, 10, 10]),
    triangles: Uint32Array.from([0, 1, 2, 0, 2, 3]),
    bendingShare: Float32Array.from(shares),
    topShare: Float32Array.from(shares),
    soffitShare: Float32Array.from(shares),
    limitLbfInPerIn: 200,
  };
}

/** A closed box. Its normals are left at nought where a test asks for none. */
export function boxSolid(least: readonly number[], most: readonly number[]): Solid {
  const corner = (i: number) => [0, 1, 2].map((axis) => ((i >> axis) & 1 ? most[axis]! : least[axis]!));
  const faces = [
    { quad: [0, 2, 3, 1], normal: [0, 0, -1] },
    { quad: [4, 5, 7, 6], normal: [0, 0, 1] },
    { quad: [0, 1, 5, 4], normal: [0, -1, 0] },
    { quad: [2, 6, 7, 3], normal: [0, 1, 0] },
    { quad: [0, 4, 6, 2], normal: [-1, 0, 0] },
    { quad: [1, 3, 7, 5], normal: [1, 0, 0] },
  ];
  return {
    positions: Float32Array.from(faces.flatMap(({ quad }) => quad.flatMap(corner))),
    normals: Float32Array.from(faces.flatMap(({ normal }) => [0, 1, 2, 3].flatMap(() => normal))),
    triangles: Uint32Array.from(
      faces.flatMap((_, face) => [0, 1, 2, 0, 2, 3].map((corner4) => face * 4 + corner4)),
    ),
    inkLines: Float32Array.from([...corner(0), ...corner(1)]),
  };
}

/** The job of the tests, read as a file is. */
export function readSmallJob(): Job {
  const reading = readJob(smallJob());
  if (!reading.ok) throw new Error(reading.problems.map(({ sentence }) => sentence).join(' '));
  return reading.job;
}
