/** Fabric laid in the slab and fibre mixed into it: for the list only, since neither counts for strength. */
import type { Piece } from '../job';
import type { Region } from '../outline';
import { regionAreaIn2 } from '../outline';
import { slabSolid, slabVolumeIn3 } from '../solid';
import { IN3_PER_YD3 } from '../units';
import { steelTrace } from './traces';
import type { OtherSteel } from './types';

/** Fabric by the plan area of the slab; fibre by its dose times the volume, before anything is added for waste. */
export function otherSteel(piece: Piece, region: Region): OtherSteel[] {
  return piece.reinforcement.flatMap((layer): OtherSteel[] => {
    if (layer.kind !== 'fabric' && layer.kind !== 'fibre') return [];
    const isFibre = layer.kind === 'fibre';
    const dosePcy = isFibre ? layer.dosePcy : null;
    return [
      {
        id: layer.id,
        trace: steelTrace(piece, layer.id),
        kind: layer.kind,
        words: layer.label ?? layer.id,
        material: layer.material,
        areaIn2: isFibre ? 0 : regionAreaIn2(region),
        massLb: dosePcy === null ? null : (dosePcy * slabVolumeIn3(slabSolid(piece))) / IN3_PER_YD3,
      },
    ];
  });
}
