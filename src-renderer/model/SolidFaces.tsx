import { useMemo } from 'react';
import type { Solid } from '../../src-core/solid';
import type { Rgb } from './colour-of-share';
import type { Grain } from './grain';
import { useSceneLook } from './scene-look';
import { faceGeometry } from './solid-geometry';
import { useDisposal } from './use-disposal';

interface Props {
  readonly solid: Solid;
  readonly rgb: Rgb;
  readonly roughness: number;
  /** Polished steel is 1, all else 0. */
  readonly metalness?: number;
  readonly grain: Grain | null;
  /** 1 is solid; below, the inside shows and no shadow is cast. */
  readonly opacity?: number;
}

/** The faces of a solid in their material. */
export function SolidFaces({ solid, rgb, roughness, metalness = 0, grain, opacity = 1 }: Props) {
  const { cutPlanes, grainTiles } = useSceneLook();
  const geometry = useMemo(() => faceGeometry(solid), [solid]);
  useDisposal(geometry);
  const isSolid = opacity === 1;
  return (
    <mesh geometry={geometry} castShadow={isSolid} receiveShadow={isSolid}>
      <meshStandardMaterial
        key={`${grain} ${isSolid}`}
        color={`rgb(${rgb.join(', ')})`}
        map={grain === null ? null : grainTiles.of(grain)}
        roughness={roughness}
        metalness={metalness}
        opacity={opacity}
        transparent={!isSolid}
        depthWrite={isSolid}
        clippingPlanes={cutPlanes}
        clipShadows
        polygonOffset
        polygonOffsetFactor={1}
        polygonOffsetUnits={1}
      />
    </mesh>
  );
}
