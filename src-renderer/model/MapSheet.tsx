import { useMemo } from 'react';
import { DoubleSide } from 'three';
import { sheetGeometry, tableTexture } from './map-geometry';
import { useSceneLook } from './scene-look';
import { useDisposal } from './use-disposal';

interface Props {
  readonly positions: Float32Array;
  readonly triangles: Uint32Array;
  /** Share of the scale at each node. */
  readonly shares: Float32Array;
}

/** A sheet in the colours of the scale. Unlit, so that a colour means the same in sun and shadow. */
export function MapSheet({ positions, triangles, shares }: Props) {
  const { cutPlanes } = useSceneLook();
  const geometry = useMemo(() => sheetGeometry(positions, triangles, shares), [positions, triangles, shares]);
  const table = useMemo(tableTexture, []);
  useDisposal(geometry);
  useDisposal(table);
  return (
    <mesh geometry={geometry}>
      <meshBasicMaterial map={table} toneMapped={false} side={DoubleSide} clippingPlanes={cutPlanes} />
    </mesh>
  );
}
