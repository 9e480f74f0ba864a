import { useMemo } from 'react';
import type { DeflectedShape, PieceMap } from '../../src-core/field-map';
import { InkLines } from './InkLines';
import { MapSheet } from './MapSheet';
import { outerSides, sagPositions } from './sag';
import { useSceneLook } from './scene-look';

interface Props {
  readonly map: PieceMap;
  readonly shape: DeflectedShape;
  readonly topIn: number;
  readonly exaggeration: number;
}

/** The top of the slab as it bends, drawn larger and coloured by how far each point goes down. */
export function SagShape({ map, shape, topIn, exaggeration }: Props) {
  const { ink } = useSceneLook();
  const positions = useMemo(
    () => sagPositions(map, shape, topIn, exaggeration),
    [map, shape, topIn, exaggeration],
  );
  const shares = useMemo(
    () => shape.wIn.map((w) => (shape.mostIn > 0 ? Math.max(0, w) / shape.mostIn : 0)),
    [shape],
  );
  const edge = useMemo(() => {
    const sides = outerSides(map.triangles);
    return Float32Array.from([...sides].flatMap((node) => [...positions.subarray(node * 3, node * 3 + 3)]));
  }, [map, positions]);
  return (
    <>
      <MapSheet positions={positions} triangles={map.triangles} shares={shares} />
      <InkLines lines={edge} color={ink} />
    </>
  );
}
