import { useMemo } from 'react';
import { LineMaterial } from 'three/addons/lines/LineMaterial.js';
import { LineSegments2 } from 'three/addons/lines/LineSegments2.js';
import { LineSegmentsGeometry } from 'three/addons/lines/LineSegmentsGeometry.js';
import { useSceneLook } from './scene-look';
import { useDisposal } from './use-disposal';

interface Props {
  /** Ends of the lines in pairs. */
  readonly lines: Float32Array;
  readonly color: string;
  readonly widthPx: number;
}

/** Steps of depth that bring a line before the map, which would cut it along its middle. */
const BEFORE_SHEET = 120;

/** Lines of a width in pixels, for what is picked out; plain lines are never wider than one. */
export function BoldLines({ lines, color, widthPx }: Props) {
  const { cutPlanes } = useSceneLook();
  const geometry = useMemo(() => new LineSegmentsGeometry().setPositions(lines), [lines]);
  const material = useMemo(() => new LineMaterial(), []);
  const object = useMemo(() => new LineSegments2(geometry, material), [geometry, material]);
  useDisposal(geometry);
  useDisposal(material);
  return (
    <primitive object={object} raycast={() => null}>
      <primitive
        object={material}
        attach="material"
        color={color}
        linewidth={widthPx}
        polygonOffset
        polygonOffsetUnits={-BEFORE_SHEET}
        clippingPlanes={cutPlanes}
      />
    </primitive>
  );
}
