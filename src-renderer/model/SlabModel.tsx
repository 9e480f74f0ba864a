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
  /** How far it is: only drawn, or poured and not yet hard, or hard. */
  readonly cast: 'not-yet' | 'wet' | 'hard';
  /** Whether a map lies within it: nothing may then tint the colours of the map. */
  readonly hasMapInside: boolean;
}

const SEEN_THROUGH_OPACITY = 0.22;
const GHOST_OPACITY = 0.08;
/** Fresh concrete is dark and shines with water. */
const WET_SHADE = 0.66;
const WET_ROUGHNESS = 0.16;
/** A cut face is a shade darker than the top. */
const CUT_SHADE = 0.86;

/** A slab as cast: true thickness, edges and openings, in its colour and finish. */
export function SlabModel({
  piece,
  isHovered,
  isSelected,
  isSeeThrough,
  isGhost,
  cast,
  hasMapInside,
}: Props) {
  const { ink, chalk } = useSceneLook();
  const solid = useMemo(() => slabSolid(piece), [piece]);
  const solids = useMemo(() => [solid], [solid]);
  const isWet = cast === 'wet';
  const isOutline = isGhost || cast === 'not-yet';
  const rgb = useMemo(() => {
    const dry = concreteColour(piece.colour, piece.finish);
    return isWet ? shaded(dry, WET_SHADE) : dry;
  }, [piece.colour, piece.finish, isWet]);
  const cutRgb = useMemo(() => shaded(rgb, CUT_SHADE), [rgb]);
  const isEmpty = hasMapInside || cast === 'not-yet';
  const opacity = isEmpty ? 0 : isGhost ? GHOST_OPACITY : isSeeThrough ? SEEN_THROUGH_OPACITY : 1;
  return (
    <>
      <SolidFaces
        solid={solid}
        rgb={rgb}
        roughness={isWet ? WET_ROUGHNESS : concreteRoughness(piece.finish)}
        grain={isWet ? null : piece.finish}
        opacity={opacity}
      />
      <InkLines lines={solid.inkLines} color={isHovered ? chalk : ink} opacity={isOutline ? 0.35 : 1} />
      {isSelected && !isOutline && <BoldLines lines={solid.inkLines} color={chalk} widthPx={2} />}
      {opacity === 1 && <CutFaces solids={solids} rgb={cutRgb} />}
    </>
  );
}

function shaded(rgb: Rgb, by: number): Rgb {
  const [red, green, blue] = rgb;
  return [Math.round(red * by), Math.round(green * by), Math.round(blue * by)];
}
