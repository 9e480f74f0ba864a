import { useMemo } from 'react';
import { BufferAttribute, BufferGeometry, DoubleSide, ShapeUtils, Vector2 } from 'three';
import type { Rgb } from './colour-of-share';
import { InkLines } from './InkLines';
import { useSceneLook } from './scene-look';
import type { CutFace, CutPoint } from './section';
import { useDisposal } from './use-disposal';

interface Props {
  readonly faces: readonly CutFace[];
  readonly xIn: number;
  readonly rgb: Rgb;
}

/** Cut faces in one colour with an ink edge. */
export function CutFill({ faces, xIn, rgb }: Props) {
  const { ink } = useSceneLook();
  const geometry = useMemo(() => filled(faces, xIn), [faces, xIn]);
  const edges = useMemo(() => edgesOf(faces, xIn), [faces, xIn]);
  useDisposal(geometry);
  return (
    <>
      <mesh geometry={geometry}>
        <meshBasicMaterial color={`rgb(${rgb.join(', ')})`} side={DoubleSide} />
      </mesh>
      <InkLines lines={edges} color={ink} />
    </>
  );
}

/** A hair before the cut, so that the clipped surfaces behind do not shine through. */
const HAIR_IN = 0.01;

function filled(faces: readonly CutFace[], xIn: number): BufferGeometry {
  const positions: number[] = [];
  const flat = (loop: readonly CutPoint[]) => loop.map(([y, z]) => new Vector2(y, z));
  for (const { outer, holes } of faces) {
    const points = [...outer, ...holes.flat()];
    for (const triangle of ShapeUtils.triangulateShape(flat(outer), holes.map(flat))) {
      for (const index of triangle) positions.push(xIn - HAIR_IN, ...points[index]!);
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(Float32Array.from(positions), 3));
  return geometry;
}

function edgesOf(faces: readonly CutFace[], xIn: number): Float32Array {
  const ends: number[] = [];
  for (const { outer, holes } of faces) {
    for (const loop of [outer, ...holes]) {
      for (const [k, point] of loop.entries()) {
        ends.push(xIn - HAIR_IN / 2, ...point, xIn - HAIR_IN / 2, ...loop[(k + 1) % loop.length]!);
      }
    }
  }
  return Float32Array.from(ends);
}
