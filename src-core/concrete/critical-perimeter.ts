import type { Worked } from '../workings';
import { formula } from '../workings';
import type { Symbols } from './symbols';

/** Perimeter d/2 from a patch inside the slab, in. x, y: sides of the patch, in; d: in. ACI 318-19 22.6.4.1. */
export const interiorPerimeter = formula<Symbols<'x' | 'y' | 'd'>>({
  symbol: 'bo',
  label: 'critical perimeter of a patch inside the slab',
  formula: '2 * (x + d) + 2 * (y + d)',
  units: { x: 'in', y: 'in', d: 'in' },
  unit: 'in',
  source: 'ACI 318-19 22.6.4.1',
  compute: ({ x, y, d }) => 2 * (x + d) + 2 * (y + d),
});

/**
 * Perimeter of a patch near one free edge, in: two legs to the edge and one side along it.
 * x: side of the patch square to the edge; y: side along it; g: clear distance from patch to edge; d: all in.
 * ACI 318-19 22.6.4.1 (the least perimeter governs).
 */
export const edgePerimeter = formula<Symbols<'x' | 'y' | 'g' | 'd'>>({
  symbol: 'bo',
  label: 'critical perimeter of a patch near an edge',
  formula: '2 * (x + d / 2 + g) + (y + d)',
  units: { x: 'in', y: 'in', g: 'in', d: 'in' },
  unit: 'in',
  source: 'ACI 318-19 22.6.4.1',
  compute: ({ x, y, g, d }) => 2 * (x + d / 2 + g) + (y + d),
});

/**
 * Perimeter of a patch near a free corner, in: one leg to each edge. x, y: sides; gx, gy: clear distances to the
 * two edges; d: all in. ACI 318-19 22.6.4.1 (the least perimeter governs).
 */
export const cornerPerimeter = formula<Symbols<'x' | 'y' | 'gx' | 'gy' | 'd'>>({
  symbol: 'bo',
  label: 'critical perimeter of a patch near a corner',
  formula: '(x + d / 2 + gx) + (y + d / 2 + gy)',
  units: { x: 'in', y: 'in', gx: 'in', gy: 'in', d: 'in' },
  unit: 'in',
  source: 'ACI 318-19 22.6.4.1',
  compute: ({ x, y, gx, gy, d }) => x + d / 2 + gx + (y + d / 2 + gy),
});

export interface PunchingPatch {
  readonly sideXIn: number;
  readonly sideYIn: number;
  /** Depth to the steel; for plain concrete the whole thickness. */
  readonly depthIn: number;
  /** Clear distance from the patch to the nearest free edge in each direction; null where there is none. */
  readonly gapXIn: number | null;
  readonly gapYIn: number | null;
}

export interface CriticalPerimeter {
  readonly place: 'inside' | 'edge' | 'corner';
  readonly perimeter: Worked;
  /** 40 inside, 30 at an edge, 20 at a corner (a count). ACI 318-19 22.6.5.3. */
  readonly alphasRatio: number;
  /** Long over short side of the patch. */
  readonly betaRatio: number;
}

/** The least perimeter along which a patch can punch, with the factors that belong to it. ACI 318-19 22.6.4, 22.6.5.3. */
export function criticalPerimeter(patch: PunchingPatch): CriticalPerimeter {
  const { sideXIn: x, sideYIn: y, depthIn: d, gapXIn: gx, gapYIn: gy } = patch;
  const betaRatio = Math.max(x, y) / Math.min(x, y);
  const candidates: CriticalPerimeter[] = [
    { place: 'inside', perimeter: interiorPerimeter({ x, y, d }), alphasRatio: 40, betaRatio },
  ];
  if (gx !== null) {
    candidates.push({
      place: 'edge',
      perimeter: edgePerimeter({ x, y, g: gx, d }),
      alphasRatio: 30,
      betaRatio,
    });
  }
  if (gy !== null) {
    candidates.push({
      place: 'edge',
      perimeter: edgePerimeter({ x: y, y: x, g: gy, d }),
      alphasRatio: 30,
      betaRatio,
    });
  }
  if (gx !== null && gy !== null) {
    const perimeter = cornerPerimeter({ x, y, gx, gy, d });
    candidates.push({ place: 'corner', perimeter, alphasRatio: 20, betaRatio });
  }
  return candidates.reduce((least, next) => (next.perimeter.value < least.perimeter.value ? next : least));
}
