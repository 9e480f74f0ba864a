import { useMemo } from 'react';
import type { Solid } from '../../src-core/solid';
import { CutFill } from './CutFill';
import type { Rgb } from './colour-of-share';
import { useSceneLook } from './scene-look';
import { sectionFaces } from './section';

interface Props {
  readonly solids: readonly Solid[];
  readonly rgb: Rgb;
}

/** The faces that the cut lays open, filled and with an ink edge; nothing where the cut misses. */
export function CutFaces({ solids, rgb }: Props) {
  const { cutAtIn } = useSceneLook();
  const faces = useMemo(
    () => (cutAtIn === null ? [] : solids.flatMap((solid) => sectionFaces(solid, cutAtIn))),
    [solids, cutAtIn],
  );
  if (cutAtIn === null || faces.length === 0) return null;
  return <CutFill faces={faces} xIn={cutAtIn} rgb={rgb} />;
}
