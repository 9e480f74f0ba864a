/** What hangs in a slab's openings or stands on its top: sinks, hobs, fixed loads. */
import type { Cutout, Piece } from '../job';
import { cutoutInPlan } from '../job';
import type { Point } from '../outline';
import { offsetPolygon, patchOutline, polygonAreaIn2 } from '../outline';
import { addPrism, levelFrame } from './extrusion';
import { solidBuilder } from './solid-builder';
import type { SupportPart } from './support-part';
import type { Solid } from './types';

type Sink = NonNullable<Cutout['sink']>;

/** Thickness that a bowl's sheet and rim are drawn with, and the room round a bowl let into its opening, in. */
const SHEET_IN = 1 / 8;
const ROOM_IN = 1 / 8;
/** Height of equipment that the job gives only a plan and a weight, and of a hob's plate. Common practice, no source. */
const EQUIPMENT_HEIGHT_IN = 10;
const HOB_PLATE_IN = 1 / 4;
const HOB_RIM_IN = 1 / 2;

/** Bowls, appliances and fixed loads of a piece. */
export function carriedParts(piece: Piece): SupportPart[] {
  const topIn = piece.topElevationIn;
  const inOpenings = piece.cutouts.flatMap((cutout, index): SupportPart[] => {
    const plan = cutoutInPlan(piece, index);
    if (!plan.ok) return [];
    if (cutout.sink !== null) {
      return [
        { material: 'sink', solid: sinkSolid(plan.points, cutout.sink, topIn, topIn - piece.thicknessIn) },
      ];
    }
    if (cutout.purpose !== 'hob') return [];
    return [{ material: 'equipment', solid: slabOf(outward(plan.points, HOB_RIM_IN), topIn, HOB_PLATE_IN) }];
  });
  const onTop = piece.loads.fixed.map(({ centre, widthIn, depthIn, angleDeg }): SupportPart => {
    const plan = patchOutline(centre, widthIn, depthIn, (angleDeg * Math.PI) / 180);
    return { material: 'equipment', solid: slabOf(plan, topIn, EQUIPMENT_HEIGHT_IN) };
  });
  return [...inOpenings, ...onTop];
}

/**
 * A bowl of sheet: dropped in, its rim lies on the top; under-rim, it hangs from the soffit with its sides in line with
 * the opening; cast over, its rim lies in the soffit. The depth is counted from the rim.
 */
function sinkSolid(opening: readonly Point[], sink: Sink, topIn: number, soffitIn: number): Solid {
  const isDropped = sink.mounting === 'dropped-in';
  const rimIn = isDropped ? topIn : soffitIn - SHEET_IN;
  const inner = isDropped ? outward(opening, -ROOM_IN - SHEET_IN) : opening;
  const sides = outward(inner, SHEET_IN);
  const rim = outward(sides, Math.max(sink.rimIn, SHEET_IN));
  const floorIn = rimIn - sink.bowlDepthIn;
  const builder = solidBuilder();
  addPrism(builder, levelFrame(rimIn), [rim, inner], SHEET_IN);
  addPrism(builder, levelFrame(floorIn), [sides, inner], rimIn - floorIn);
  addPrism(builder, levelFrame(floorIn - SHEET_IN), [sides], SHEET_IN);
  return builder.finish();
}

function slabOf(plan: readonly Point[], fromIn: number, heightIn: number): Solid {
  const builder = solidBuilder();
  addPrism(builder, levelFrame(fromIn), [plan], heightIn);
  return builder.finish();
}

/** The outline moved outward; as it was where it would vanish, and the largest part where it falls apart. */
function outward(points: readonly Point[], byIn: number): readonly Point[] {
  const parts = offsetPolygon(points, byIn, 'mitre').sort((p, q) => polygonAreaIn2(q) - polygonAreaIn2(p));
  return parts[0] ?? points;
}
