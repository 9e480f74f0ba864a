import { useSceneLook } from './scene-look';

interface Props {
  /** Where its head ends. */
  readonly at: readonly [number, number, number];
  readonly lengthIn: number;
  readonly isUp: boolean;
  readonly color: string;
  /** Radius of the head, in. */
  readonly headIn: number;
  /** Whether it shows through whatever stands before it. False unless told. */
  readonly isOnTop?: boolean;
}

/** Drawn after everything else. */
const ON_TOP = 10;

/** An upright arrow that ends at a point. */
export function Arrow({ at, lengthIn, isUp, color, headIn, isOnTop = false }: Props) {
  const { cutPlanes } = useSceneLook();
  const tallIn = Math.min(headIn * 2.6, lengthIn * 0.6);
  // Drawn hanging below its point with the head up; for a downward arrow turned over.
  return (
    <group position={[...at]} rotation-x={isUp ? Math.PI / 2 : -Math.PI / 2}>
      <mesh position-y={-tallIn / 2} renderOrder={isOnTop ? ON_TOP : 0}>
        <coneGeometry args={[headIn, tallIn, 14]} />
        <meshBasicMaterial
          color={color}
          clippingPlanes={cutPlanes}
          depthTest={!isOnTop}
          transparent={isOnTop}
        />
      </mesh>
      <mesh position-y={-(tallIn + lengthIn) / 2} renderOrder={isOnTop ? ON_TOP : 0}>
        <cylinderGeometry args={[headIn * 0.24, headIn * 0.24, lengthIn - tallIn, 8]} />
        <meshBasicMaterial
          color={color}
          clippingPlanes={cutPlanes}
          depthTest={!isOnTop}
          transparent={isOnTop}
        />
      </mesh>
    </group>
  );
}
