import { useMemo } from 'react';
import { BufferAttribute, RingGeometry } from 'three';
import type { Place } from './scene-bounds';
import { useSceneLook } from './scene-look';
import { useDisposal } from './use-disposal';

interface Props {
  readonly middle: Place;
  readonly radiusIn: number;
}

const RINGS = 24;
/** Just below the floor, so that what stands on it does not flicker. */
const FLOOR_IN = -0.05;
/** How far the paper reaches beyond the drawing, in radii of it, before it has faded into the page. */
const REACH = 2.4;

/** Paper that the drawing stands on: lightest in the middle and without an edge, with the shadows on it. Not seen from below. */
export function Ground({ middle, radiusIn }: Props) {
  const { paper, isDark } = useSceneLook();
  const disc = useMemo(() => fadingDisc(radiusIn * REACH, isDark ? 0.35 : 0.8), [radiusIn, isDark]);
  useDisposal(disc);
  return (
    <group position={[middle[0], middle[1], FLOOR_IN]}>
      <mesh geometry={disc} renderOrder={-2}>
        <meshBasicMaterial
          color={isDark ? '#43474d' : paper}
          vertexColors
          transparent
          depthWrite={false}
          dithering
        />
      </mesh>
      <mesh position-z={0.02} renderOrder={-1} receiveShadow>
        <circleGeometry args={[radiusIn * REACH, 48]} />
        <shadowMaterial opacity={isDark ? 0.42 : 0.16} depthWrite={false} />
      </mesh>
    </group>
  );
}

/** A disc whose opacity falls from `opacity` in the middle to nothing at the rim, with no kink at either end. */
function fadingDisc(radiusIn: number, opacity: number): RingGeometry {
  const disc = new RingGeometry(0, radiusIn, 64, RINGS);
  const positions = disc.getAttribute('position');
  const colours = new Float32Array(positions.count * 4);
  for (let v = 0; v < positions.count; v++) {
    const t = Math.min(1, Math.hypot(positions.getX(v), positions.getY(v)) / radiusIn);
    colours.set([1, 1, 1, opacity * (1 - t * t * (3 - 2 * t))], v * 4);
  }
  disc.setAttribute('color', new BufferAttribute(colours, 4));
  return disc;
}
