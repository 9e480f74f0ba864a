import { useMemo } from 'react';
import type { Piece } from '../../src-core/job';
import { steelRuns } from '../../src-core/solid';
import { useSceneLook } from './scene-look';
import { crossings } from './section';
import { pointGeometry } from './solid-geometry';
import { useDisposal } from './use-disposal';

interface Props {
  readonly piece: Piece;
}

/** Wide enough to find; a wire at its true size would be narrower than a pixel. */
const DOT_PX = 4;
/** Before the face of the cut, so that it is not lost in it. */
const BEFORE_IN = 0.02;

/** The steel that the cut goes through, as dots on its face. */
export function CutSteel({ piece }: Props) {
  const { ink, cutAtIn } = useSceneLook();
  const geometry = useMemo(() => {
    const met = cutAtIn === null ? [] : crossings(steelRuns(piece), cutAtIn);
    return pointGeometry(Float32Array.from(met.flatMap(([y, z]) => [(cutAtIn ?? 0) + BEFORE_IN, y, z])));
  }, [piece, cutAtIn]);
  useDisposal(geometry);
  return (
    <points geometry={geometry}>
      <pointsMaterial color={ink} size={DOT_PX} sizeAttenuation={false} />
    </points>
  );
}
