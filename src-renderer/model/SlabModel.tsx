import { useMemo } from 'react';
import type { Piece } from '../../src-core/job';
import { slabSolid } from '../../src-core/solid';
import { BoldLines } from './BoldLines';
import { CutFaces } from './CutFaces';
import type { Rgb } from './colour-of-share';
import { concreteColour, concreteRoughness } from './concrete-colour';
import { InkLines } from './InkLines';
import { SolidFaces } from './SolidFaces';
import { useSceneLook } from './scene-look';

interface Props {
  readonly piece: Piece;
  readonly isHovered: boolean;
  readonly isSelected: boolean;
  /** Whether the inside shows. */
  readonly isSeeThrough: boolean;
  /** Whether only its outline stands, as where the bent slab is drawn in its place. */
  readonly isGhost: boolean;
  /** Whether a map lies within it: nothing may then tint the colours of the map. */
  readonly hasMapInside: boolean;
}

const SEEN_THROUGH_OPACITY = 0.22;
const GHOST_OPACITY = 0.08;
/** A cut face is a shade darker than the top. */
const CUT_SHADE = 0.86;

/** A slab as cast: true thickness, edges and openings, in its colour and finish. */
export function SlabModel({ piece, isHovered, isSelected, isSeeThrough, isGhost, hasMapInside }: Props) {
  const { ink, chalk } = useSceneLook();
  const solid = useMemo(() => slabSolid(piece), [piece]);
  const solids = useMemo(() => [solid], [solid]);
  const rgb = useMemo(() => concreteColour(piece.colour, piece.finish), [piece.colour, piece.finish]);
  const cutRgb = useMemo(() => rgb.map((value) => Math.round(value * CUT_SHADE)), [rgb]) as unknown as Rgb;
  const opacity = hasMapInside ? 0 : isGhost ? GHOST_OPACITY : isSeeThrough ? SEEN_THROUGH_OPACITY : 1;
  return (
    <>
      <SolidFaces
        solid={solid}
        rgb={rgb}
        roughness={concreteRoughness(piece.finish)}
        grain={piece.finish}
        opacity={opacity}
      />
      <InkLines lines={solid.inkLines} color={isHovered ? chalk : ink} opacity={isGhost ? 0.35 : 1} />
      {isSelected && !isGhost && <BoldLines lines={solid.inkLines} color={chalk} widthPx={2} />}
      {opacity === 1 && <CutFaces solids={solids} rgb={cutRgb} />}
    </>
  );
}
