import { useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { Object3D } from 'three';
import type { Place } from './scene-bounds';
import { useSceneLook } from './scene-look';

interface Props {
  readonly middle: Place;
  readonly radiusIn: number;
  /** Whatever changes what throws a shadow; a new value has the shadows drawn anew. */
  readonly shadowsOf: string;
  readonly job: object;
}

const SHADOW_PX = 1024;

/** Soft daylight from the sky and one sun from the front left, whose shadows are drawn only when something moved. */
export function Daylight({ middle, radiusIn, shadowsOf, job }: Props) {
  const { isDark } = useSceneLook();
  const gl = useThree(({ gl: renderer }) => renderer);
  const invalidate = useThree(({ invalidate: draw }) => draw);
  const target = useMemo(() => new Object3D(), []);

  useEffect(() => {
    gl.shadowMap.autoUpdate = false;
  }, [gl]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each of these moves a shadow though none is read here
  useEffect(() => {
    gl.shadowMap.needsUpdate = true;
    invalidate();
  }, [gl, invalidate, shadowsOf, job, middle, radiusIn]);

  const [x, y, z] = middle;
  const away = radiusIn * 2;
  return (
    <>
      <hemisphereLight
        args={['#ffffff', isDark ? '#6f7278' : '#e4dccb', isDark ? 1.5 : 2.1]}
        position={[0, 0, 1]}
      />
      <primitive object={target} position={[x, y, z]} />
      <directionalLight
        position={[x - 0.42 * away, y - 0.55 * away, z + 0.9 * away]}
        target={target}
        intensity={isDark ? 1.3 : 1.7}
        castShadow
        shadow-mapSize={[SHADOW_PX, SHADOW_PX]}
        shadow-bias={-0.0004}
        shadow-normalBias={radiusIn / 400}
        shadow-radius={5}
      >
        <orthographicCamera
          attach="shadow-camera"
          args={[-radiusIn, radiusIn, radiusIn, -radiusIn, 1, away * 2]}
        />
      </directionalLight>
    </>
  );
}
