import { useMemo } from 'react';
import type { PieceMap } from '../../src-core/field-map';
import { MapSheet } from './MapSheet';
import { hatchGeometry, hatchTexture, MAP_LIFT_IN } from './map-geometry';
import { trianglesOver } from './over-limit';
import { useSceneLook } from './scene-look';
import { useDisposal } from './use-disposal';

interface Props {
  readonly map: PieceMap;
  /** Height that it is drawn over, in. */
  readonly levelIn: number;
}

/** Bending as a sheet over the slab; where it passes the cracking limit it is hatched. */
export function BendingMap({ map, levelIn }: Props) {
  const { cutPlanes } = useSceneLook();
  const positions = useMemo(() => flatPositions(map, levelIn + MAP_LIFT_IN), [map, levelIn]);
  const hatched = useMemo(
    () => hatchGeometry(trianglesOver(map, 1), levelIn + 2 * MAP_LIFT_IN),
    [map, levelIn],
  );
  const stripes = useMemo(hatchTexture, []);
  useDisposal(hatched);
  useDisposal(stripes);
  return (
    <>
      <MapSheet positions={positions} triangles={map.triangles} shares={map.bendingShare} />
      <mesh geometry={hatched}>
        <meshBasicMaterial
          map={stripes}
          transparent
          depthWrite={false}
          toneMapped={false}
          clippingPlanes={cutPlanes}
        />
      </mesh>
    </>
  );
}

function flatPositions({ xIn, yIn }: PieceMap, zIn: number): Float32Array {
  const positions = new Float32Array(xIn.length * 3);
  for (let node = 0; node < xIn.length; node++) positions.set([xIn[node]!, yIn[node]!, zIn], node * 3);
  return positions;
}
