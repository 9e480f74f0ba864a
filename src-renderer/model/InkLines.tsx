import { useMemo } from 'react';
import { useSceneLook } from './scene-look';
import { pointGeometry } from './solid-geometry';
import { useDisposal } from './use-disposal';

interface Props {
  /** Ends of the lines in pairs. */
  readonly lines: Float32Array;
  readonly color: string;
  /** 1 unless told. */
  readonly opacity?: number;
}

/** Thin lines along the edges of a solid, as drawn with a pen. */
export function InkLines({ lines, color, opacity = 1 }: Props) {
  const { cutPlanes } = useSceneLook();
  const geometry = useMemo(() => pointGeometry(lines), [lines]);
  useDisposal(geometry);
  return (
    <lineSegments geometry={geometry}>
      <lineBasicMaterial
        color={color}
        opacity={opacity}
        transparent={opacity < 1}
        clippingPlanes={cutPlanes}
      />
    </lineSegments>
  );
}
