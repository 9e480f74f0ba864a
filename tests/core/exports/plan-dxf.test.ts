import type { ICircleEntity, IEntity, ILwpolylineEntity, ITextEntity } from 'dxf-parser';
import DxfParser from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import { planDxf } from '../../../src-core/exports';
import type { Job, Piece } from '../../../src-core/job';
import { pieceRegion } from '../../../src-core/job';
import {
  distanceIn,
  polygonAreaIn2,
  regionAreaIn2,
  roundedAreaIn2,
  roundedPerimeterIn,
} from '../../../src-core/outline';
import { jobOf, rectangle } from '../../support/pieces';
import { exampleJobs } from '../solid/closed-shell';
import { corners } from '../solid/pieces';
import { areaOf, perimeterOf } from './bulged';

interface Plan {
  readonly unit: unknown;
  readonly measurement: unknown;
  readonly layers: readonly string[];
  readonly on: (layer: string) => readonly IEntity[];
}

function readPlan(job: Job): Plan {
  const dxf = new DxfParser().parseSync(planDxf(job));
  if (dxf === null) throw new Error('The file cannot be read');
  return {
    unit: dxf.header.$INSUNITS,
    measurement: dxf.header.$MEASUREMENT,
    layers: Object.keys(dxf.tables.layer.layers),
    on: (layer) => dxf.entities.filter((entity) => entity.layer === layer),
  };
}

const loopsOn = (plan: Plan, layer: string) =>
  plan.on(layer).filter((entity): entity is ILwpolylineEntity => entity.type === 'LWPOLYLINE');
const circlesOn = (plan: Plan, layer: string) =>
  plan.on(layer).filter((entity): entity is ICircleEntity => entity.type === 'CIRCLE');
const wordsOn = (plan: Plan, layer: string) =>
  plan
    .on(layer)
    .filter((entity): entity is ITextEntity => entity.type === 'TEXT')
    .map(({ text }) => text);

const planOf = (shape: ReturnType<typeof corners>, more: Partial<Job['pieces'][number]> = {}) =>
  readPlan(jobOf({ corners: shape, thicknessIn: 2, ...more }));

function openingAreaIn2(piece: Piece): number {
  const region = pieceRegion(piece);
  return region.ok ? region.holes.reduce((sum, hole) => sum + polygonAreaIn2(hole), 0) : Number.NaN;
}

function expectWithin(got: number, wanted: number, share: number): void {
  expect(Math.abs(got / wanted - 1)).toBeLessThan(share);
}

describe('the outline of a slab in a drawing file, read back by another program', () => {
  test('40 x 20 in with 3 in corners is one closed loop with eight corners, bulges of tan 22.5 degrees, 800 - (4 - pi) 9 in2', () => {
    const loops = loopsOn(planOf(corners([0, 0, 3], [40, 0, 3], [40, 20, 3], [0, 20, 3])), 'Slab outline');
    expect(loops).toHaveLength(1);
    expect(loops[0]!.shape).toBe(true);
    expect(loops[0]!.vertices).toHaveLength(8);
    const bulges = loops[0]!.vertices.map(({ bulge }) => bulge ?? 0).filter((bulge) => bulge !== 0);
    expect(bulges).toHaveLength(4);
    for (const bulge of bulges) expect(bulge).toBeCloseTo(Math.SQRT2 - 1, 8);
    expect(areaOf(loops[0]!.vertices)).toBeCloseTo(800 - (4 - Math.PI) * 9, 6);
    expect(perimeterOf(loops[0]!.vertices)).toBeCloseTo(2 * (34 + 14) + 6 * Math.PI, 6);
  });

  test('a round hearth of 20 in is four arcs without straights between, pi 100 in2', () => {
    const [loop] = loopsOn(
      planOf(corners([0, 0, 10], [20, 0, 10], [20, 20, 10], [0, 20, 10])),
      'Slab outline',
    );
    expect(loop!.vertices).toHaveLength(4);
    expect(areaOf(loop!.vertices)).toBeCloseTo(100 * Math.PI, 6);
  });

  test('the rounded inside corner of an L turns the other way, and adds (1 - pi/4) r2', () => {
    const [loop] = loopsOn(
      planOf(corners([0, 0], [60, 0], [60, 25], [25, 25, 4], [25, 60], [0, 60])),
      'Slab outline',
    );
    expect(loop!.vertices.some(({ bulge }) => (bulge ?? 0) < 0)).toBe(true);
    expect(areaOf(loop!.vertices)).toBeCloseTo(60 * 25 + 35 * 25 + (1 - Math.PI / 4) * 16, 6);
  });

  test('an outline drawn clockwise leaves counter-clockwise', () => {
    const [loop] = loopsOn(planOf(corners([0, 0, 2], [0, 20], [40, 20], [40, 0])), 'Slab outline');
    expect(areaOf(loop!.vertices)).toBeCloseTo(800 - (1 - Math.PI / 4) * 4, 6);
  });

  test('radii that do not fit leave the corners sharp, as the plan shows them', () => {
    const [loop] = loopsOn(planOf(corners([0, 0, 30], [40, 0], [40, 20], [0, 20])), 'Slab outline');
    expect(areaOf(loop!.vertices)).toBeCloseTo(800, 6);
  });
});

describe('an outline that cannot be built', () => {
  test.each([
    { of: 'a corner twice', shape: corners([0, 0], [40, 0], [40, 0], [40, 20], [0, 20]) },
    { of: 'edges that cross', shape: corners([0, 0], [40, 20], [40, 0], [0, 20]) },
  ])('with $of leaves as its bare corners', ({ shape }) => {
    const [loop] = loopsOn(planOf(shape), 'Slab outline');
    expect(loop!.vertices).toEqual(shape.map(({ xIn, yIn }) => ({ x: xIn, y: yIn })));
  });
});

describe('openings', () => {
  const shapes = [
    { kind: 'circle', centre: { xIn: 8, yIn: 10 }, diameterIn: 3.5 },
    {
      kind: 'rectangle',
      centre: { xIn: 24, yIn: 10 },
      widthIn: 12,
      depthIn: 8,
      radiusIn: 2,
      angleDeg: 30,
    },
  ] as const;
  const plan = planOf(corners([0, 0], [40, 0], [40, 20], [0, 20]), {
    cutouts: shapes.map((shape, i) => ({ id: `c${i}`, purpose: 'other', shape, sink: null, applianceLb: 0 })),
  });

  test('a drain of 3-1/2 in is a circle of 1-3/4 in', () => {
    const [drain] = circlesOn(plan, 'Openings');
    expect(drain!.radius).toBe(1.75);
    expect(drain!.center).toMatchObject({ x: 8, y: 10 });
  });

  test('a turned 12 x 8 in opening with 2 in corners is a loop of 96 - (4 - pi) 4 in2 with true arcs', () => {
    const [loop] = loopsOn(plan, 'Openings');
    expect(areaOf(loop!.vertices)).toBeCloseTo(96 - (4 - Math.PI) * 4, 6);
    expect(perimeterOf(loop!.vertices)).toBeCloseTo(2 * (8 + 4) + 4 * Math.PI, 6);
  });
});

describe('units', () => {
  const imperial = jobOf({ corners: rectangle(40, 20), thicknessIn: 2 });
  const metric: Job = { ...imperial, shownIn: 'metric' };

  test('a job shown in inches leaves in inches: $INSUNITS 1, $MEASUREMENT 0', () => {
    expect(readPlan(imperial)).toMatchObject({ unit: 1, measurement: 0 });
  });

  test('a job shown in metric leaves in millimetres, 25.4 to the inch: $INSUNITS 4, $MEASUREMENT 1', () => {
    const plan = readPlan(metric);
    expect(plan).toMatchObject({ unit: 4, measurement: 1 });
    const [loop] = loopsOn(plan, 'Slab outline');
    expect(areaOf(loop!.vertices)).toBeCloseTo(40 * 20 * 25.4 ** 2, 3);
    expect(wordsOn(plan, 'Edge dims')).toEqual(expect.arrayContaining(['1016 mm', '508 mm']));
    expect(wordsOn(plan, 'Names')).toContain('Piece, 51 mm thick');
  });
});

describe.each(exampleJobs())('$file', ({ job }) => {
  const inInches: Job = { ...job, shownIn: 'imperial' };
  const plan = readPlan(inInches);
  const outlines = loopsOn(plan, 'Slab outline');

  test('every slab is a closed loop of its exact area and boundary', () => {
    expect(outlines).toHaveLength(job.pieces.length);
    job.pieces.forEach((piece, i) => {
      expect(outlines[i]!.shape).toBe(true);
      expectWithin(areaOf(outlines[i]!.vertices), roundedAreaIn2(piece.corners), 1e-8);
      expectWithin(perimeterOf(outlines[i]!.vertices), roundedPerimeterIn(piece.corners), 1e-8);
    });
  });

  test('outlines less openings hold the area that the load check weighs, within a thousandth', () => {
    const openings =
      loopsOn(plan, 'Openings').reduce((sum, loop) => sum + areaOf(loop.vertices), 0) +
      circlesOn(plan, 'Openings').reduce((sum, { radius }) => sum + Math.PI * radius ** 2, 0);
    const slabs = outlines.reduce((sum, { vertices }) => sum + areaOf(vertices), 0);
    const wanted = job.pieces.reduce((sum, piece) => {
      const region = pieceRegion(piece);
      return sum + (region.ok ? regionAreaIn2(region) : Number.NaN);
    }, 0);
    const wantedOpenings = job.pieces.reduce((sum, piece) => sum + openingAreaIn2(piece), 0);
    expectWithin(slabs - openings, wanted, 1e-3);
    if (wantedOpenings > 0) expectWithin(openings, wantedOpenings, 2e-3);
    else expect(openings).toBe(0);
  });

  test('sharp edges are as long as drawn', () => {
    job.pieces.forEach((piece, i) => {
      if (piece.corners.some(({ radiusIn }) => radiusIn > 0)) return;
      const { vertices } = outlines[i]!;
      const lengths = vertices.map((a, k) => {
        const b = vertices[(k + 1) % vertices.length]!;
        return Math.hypot(b.x - a.x, b.y - a.y);
      });
      const drawn = piece.corners.map((a, k) =>
        distanceIn(a, piece.corners[(k + 1) % piece.corners.length]!),
      );
      const [got, wanted] = [lengths, drawn].map((all) => all.sort((p, q) => p - q)) as [number[], number[]];
      got.forEach((length, k) => {
        expect(length).toBeCloseTo(wanted[k]!, 8);
      });
    });
  });

  test('in metric every number of the outlines is 25.4 times as large', () => {
    const mm = loopsOn(readPlan({ ...job, shownIn: 'metric' }), 'Slab outline');
    outlines.forEach(({ vertices }, i) => {
      vertices.forEach(({ x, y, bulge }, k) => {
        expect(mm[i]!.vertices[k]!.x).toBeCloseTo(25.4 * x, 6);
        expect(mm[i]!.vertices[k]!.y).toBeCloseTo(25.4 * y, 6);
        expect(mm[i]!.vertices[k]!.bulge).toBe(bulge);
      });
    });
  });

  test('the same job gives the same file, and no number in powers of ten', () => {
    expect(planDxf(job)).toBe(planDxf(job));
    expect(planDxf(job)).not.toMatch(/^-?[\d.]+e[+-]?\d+$/m);
  });
});

describe('the Boathouse galley', () => {
  const galley = exampleJobs().find(({ file }) => file === 'boathouse-galley.json')!.job;
  const plan = readPlan(galley);

  test('its layers are named in trade words', () => {
    expect(plan.layers).toEqual([
      '0',
      'Supports',
      'Supports that come out',
      'Slab outline',
      'Openings',
      'Joints',
      'Edge dims',
      'Overhang dims',
      'Opening dims',
      'Support dims',
      'Names',
    ]);
  });

  test('legs that come out stand on a layer of their own, cabinets that stay on another', () => {
    const leaving = galley.pieces.flatMap(({ supports }) => supports).filter((one) => one.lastDay !== null);
    expect(leaving.length).toBeGreaterThan(0);
    expect(plan.on('Supports that come out')).toHaveLength(leaving.length);
    expect(plan.on('Supports').length).toBeGreaterThan(leaving.length);
  });

  test('three gate-pier caps are one outline, and the label says how many', () => {
    expect(wordsOn(plan, 'Names')).toContain('Gate-pier cap, 1-1/2 in thick, 3 of them');
  });

  test('outlines and openings hold closed geometry alone', () => {
    const kinds = ['Slab outline', 'Openings'].flatMap((layer) => plan.on(layer).map(({ type }) => type));
    expect(new Set(kinds)).toEqual(new Set(['LWPOLYLINE', 'CIRCLE']));
  });
});

test('a name over two lines, with codes in it, stays one text and breaks nothing', () => {
  const job = jobOf({ corners: rectangle(40, 20), thicknessIn: 2, name: 'Bench\r\n0\nEOF %%c ^J <é>' });
  expect(wordsOn(readPlan(job), 'Names')).toContain('Bench 0 EOF %c ^ J <é>, 2 in thick');
});
