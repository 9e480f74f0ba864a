import { useFrame } from '@react-three/fiber';
import { useMemo, useRef } from 'react';
import type { Group } from 'three';
import { DoubleSide, Shape, ShapeGeometry, Vector2 } from 'three';
import type { Point } from '../../src-core/outline';
import { personOutline } from './person';
import { useSceneLook } from './scene-look';
import { useDisposal } from './use-disposal';

interface Props {
  readonly at: Point;
}

/** A flat figure to read sizes by; it turns to face the eye. */
export function Person({ at }: Props) {
  const { soft } = useSceneLook();
  const group = useRef<Group>(null);
  const geometry = useMemo(
    () => new ShapeGeometry(new Shape(personOutline().map(([across, up]) => new Vector2(across, up)))),
    [],
  );
  useDisposal(geometry);
  useFrame(({ camera }) => {
    const { position } = camera;
    group.current?.rotation.set(0, 0, Math.atan2(position.y - at.yIn, position.x - at.xIn) + Math.PI / 2);
  });
  return (
    <group ref={group} position={[at.xIn, at.yIn, 0]}>
      <mesh geometry={geometry} rotation-x={Math.PI / 2}>
        <meshBasicMaterial color={soft} transparent opacity={0.22} depthWrite={false} side={DoubleSide} />
      </mesh>
    </group>
  );
}
