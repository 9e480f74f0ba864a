import { useMemo } from 'react';
import type { FalseworkSection, Piece } from '../../src-core/job';
import { edgeForms, sectionPanel } from './edge-forms';
import { InkLines } from './InkLines';
import { SolidFaces } from './SolidFaces';
import { useSceneLook } from './scene-look';
import { mergedSolid } from './solid-arrays';
import { MATERIAL_LOOKS } from './support-look';

interface Props {
  readonly piece: Piece;
  readonly hasEdgeForms: boolean;
  /** Falsework sections that stand. */
  readonly sections: readonly FalseworkSection[];
}

/** What holds the wet concrete in shape: boards round the edges, panels under the soffit. */
export function Formwork({ piece, hasEdgeForms, sections }: Props) {
  const { ink, isDark } = useSceneLook();
  const solid = useMemo(() => {
    const boards = hasEdgeForms ? edgeForms(piece) : null;
    const panels = sections.map((section) => sectionPanel(section, piece.topElevationIn - piece.thicknessIn));
    return mergedSolid([...(boards === null ? [] : [boards]), ...panels]);
  }, [piece, hasEdgeForms, sections]);
  if (solid.triangles.length === 0) return null;
  const { rgb, roughness, grain } = MATERIAL_LOOKS.timber;
  return (
    <>
      <SolidFaces solid={solid} rgb={rgb} roughness={roughness} grain={grain} />
      <InkLines lines={solid.inkLines} color={ink} opacity={isDark ? 0.45 : 0.7} />
    </>
  );
}
