import type { Piece } from '../../src-core/job';
import { rovingOf } from '../../src-core/job';
import type { Point } from '../../src-core/outline';
import { Arrow } from './Arrow';
import { useSceneLook } from './scene-look';

interface Props {
  readonly piece: Piece;
  /** Middle of the patch. */
  readonly at: Point;
  /** Height of the surface that it stands on, in. */
  readonly topIn: number;
}

const PATCH_HIGH_IN = 0.6;
const ARROW_IN = 15;

/** The load of one person where the slab bends most under it: its patch, and an arrow down onto it. */
export function RovingLoad({ piece, at, topIn }: Props) {
  const { chalk, cutPlanes } = useSceneLook();
  const patch = rovingOf(piece);
  if (patch === null) return null;
  const { xIn, yIn } = at;
  return (
    <group>
      <mesh position={[xIn, yIn, topIn + PATCH_HIGH_IN / 2]} castShadow>
        <boxGeometry args={[patch.widthIn, patch.depthIn, PATCH_HIGH_IN]} />
        <meshStandardMaterial
          color={chalk}
          roughness={0.9}
          transparent
          opacity={0.82}
          clippingPlanes={cutPlanes}
        />
      </mesh>
      <Arrow
        at={[xIn, yIn, topIn + PATCH_HIGH_IN]}
        lengthIn={ARROW_IN}
        isUp={false}
        color={chalk}
        headIn={1.5}
      />
    </group>
  );
}
