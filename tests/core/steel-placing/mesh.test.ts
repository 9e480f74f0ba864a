import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src-core/job';
import type { MeshPlacing, SteelPlacing } from '../../../src-core/steel-placing';
import { wallAlongX } from '../../support/pieces';
import {
  box,
  caseOf,
  corners,
  gridIn,
  isIn,
  L_SHAPE,
  LIGHT_MESH,
  placed,
  regionOf,
  sink,
  toSideIn,
} from './cases';

const PLAIN_SHEET = { id: 'sheet', name: 'Mesh', kind: 'mesh-sheet', lengthIn: 96, widthIn: 48 } as const;

function meshOf(job: Job): MeshPlacing {
  return placed(job).meshes[0]!;
}

/** Every point of the slab that is clear of the edges and openings by the cover lies in a strip, and no strip in the cover. */
function expectCovered(job: Job, placing: SteelPlacing = placed(job)): void {
  const region = regionOf(job.pieces[0]!);
  const strips = placing.meshes[0]!.strips;
  for (const { xIn, yIn } of gridIn(region, 0.75)) {
    const fromSideIn = toSideIn(region, xIn, yIn);
    const isMeshed = strips.some(({ shape }) => isIn(shape, xIn, yIn));
    // at an inside corner the cover is kept square, not round: up to 1.41 in from the corner itself
    if (fromSideIn > 1.42) expect(isMeshed, `(${xIn}, ${yIn})`).toBe(true);
    if (fromSideIn < 0.99) expect(isMeshed, `(${xIn}, ${yIn})`).toBe(false);
  }
}

describe('mesh in a rectangle', () => {
  test('a 96 x 25-1/2 in counter takes one strip of 94 x 23-1/2 in, 3.15 lb', () => {
    const mesh = meshOf(caseOf(box(96, 25.5)));
    expect(mesh.strips).toHaveLength(1);
    expect(mesh.strips[0]).toMatchObject({
      label: 'M1',
      id: 'mesh-strip-1',
      layerId: 'mesh',
      isTurned: false,
    });
    expect(mesh.strips[0]!.lengthIn).toBeCloseTo(94, 6);
    expect(mesh.strips[0]!.widthIn).toBeCloseTo(23.5, 6);
    expect(mesh.areaIn2).toBeCloseTo(94 * 23.5, 4);
    // 2 x 2 mesh has an inch of wire to the square inch: 2209 in of .08 in wire
    expect(mesh.massLb).toBeCloseTo(2209 * (Math.PI / 4) * 0.08 ** 2 * 0.2836, 4);
    expect(mesh.massLb).toBeCloseTo(3.149, 3);
    expect(mesh.stock).toEqual({ stockId: null, lengthIn: 96, widthIn: 48 });
  });

  test('a 120 in one takes two with a 6 in lap, the least of ACI 318-19 25.5.4.1', () => {
    const mesh = meshOf(caseOf(box(120, 25.5)));
    // by strength 1.5 x 0.62 in and a spacing with 2 in are 0.9 and 4 in
    expect(mesh.lapAlongIn).toBe(6);
    expect(mesh.strips.map(({ lengthIn }) => Math.round(lengthIn * 1e6) / 1e6)).toEqual([96, 28]);
    expect(mesh.laps).toHaveLength(1);
    expect(mesh.laps[0]).toMatchObject({ overlapIn: 6, joins: ['mesh-strip-1', 'mesh-strip-2'] });
    expect(mesh.areaIn2).toBeCloseTo((118 + 6) * 23.5, 3);
  });

  test('W1.4 wire at 6 in laps a spacing and 2 in: 8 in (ACI 318-19 25.5.4.1)', () => {
    const wire = { ...LIGHT_MESH, wireIn: 0.1335, crossWireIn: 0.1335, spacingIn: 6, crossSpacingIn: 6 };
    expect(meshOf(caseOf(box(120, 25.5), { reinforcement: [wire] })).lapAlongIn).toBe(8);
  });

  test('unlike wires lap each by their own: cross wires 8 in apart ask 10 in along, wires 2 in apart 6 in across', () => {
    const unlike = { ...LIGHT_MESH, crossSpacingIn: 8 };
    const mesh = meshOf(caseOf(box(120, 90), { reinforcement: [unlike] }));
    expect([mesh.lapAlongIn, mesh.lapAcrossIn]).toEqual([10, 6]);
    expect(mesh.strips).toHaveLength(4);
    expect(mesh.laps.map(({ overlapIn }) => overlapIn).sort()).toEqual([10, 10, 6, 6].sort());
  });

  test('a sheet of the stock is taken, and a roll reaches the whole way', () => {
    const mesh = meshOf(
      caseOf(box(300, 25.5), {}, { stock: [{ ...PLAIN_SHEET, lengthIn: 600, widthIn: 36 }] }),
    );
    expect(mesh.stock).toEqual({ stockId: 'sheet', lengthIn: 600, widthIn: 36 });
    expect(mesh.strips).toHaveLength(1);
  });

  test('mesh alike both ways is turned where that saves a strip; unlike mesh is not', () => {
    const tall = box(30, 90);
    const square = meshOf(caseOf(tall));
    expect(square.strips).toHaveLength(1);
    expect(square.strips[0]!.isTurned).toBe(true);
    expect(square.strips[0]!.lengthIn).toBeCloseTo(88, 6);
    const unlike = meshOf(caseOf(tall, { reinforcement: [{ ...LIGHT_MESH, crossWireIn: 0.1 }] }));
    expect(unlike.strips).toHaveLength(2);
    expect(unlike.strips.some(({ isTurned }) => isTurned)).toBe(false);
  });

  test('mesh at 30 degrees is cut to the same slab', () => {
    const job = caseOf(box(96, 25.5), { reinforcement: [{ ...LIGHT_MESH, angleDeg: 30 }] });
    expectCovered(job);
  });

  test('a cover that takes the whole slab leaves no mesh and says so', () => {
    const mesh = meshOf(caseOf(box(96, 5), { reinforcement: [{ ...LIGHT_MESH, edgeCoverIn: 3 }] }));
    expect(mesh.strips).toEqual([]);
    expect(mesh.notes.join()).toContain('no room');
  });
});

describe('laps and bending peaks', () => {
  // Panel lines 24 in apart from 0.375 in on, 3/4 in thick
  const lines = [0.375, 24.375, 48.375, 72.375, 96.375, 119.625];
  const panels = lines.map((xIn) => ({
    kind: 'wall' as const,
    build: 'stud' as const,
    id: `panel-${Math.round(xIn)}`,
    from: { xIn, yIn: 1 },
    to: { xIn, yIn: 25 },
    widthIn: 0.75,
  }));

  test('a lap lies off the panel lines and the midspans between them', () => {
    const mesh = meshOf(caseOf(box(120, 25.5), { supports: panels }));
    const [zone] = mesh.laps[0]!.zones;
    const xs = zone!.map(({ xIn }) => xIn);
    const midspans = lines.slice(1).map((xIn, k) => (xIn + lines[k]!) / 2);
    const gaps = [
      ...lines.map((xIn) => [xIn, 0.375] as const),
      ...midspans.map((xIn) => [xIn, 0] as const),
    ].map(([xIn, halfIn]) => Math.max(xIn - halfIn - Math.max(...xs), Math.min(...xs) - xIn - halfIn));
    // 12 in from peak to peak leave a 6 in lap with the support's half thickness some 2-3/4 in
    expect(Math.min(...gaps)).toBeGreaterThan(2);
    expect(mesh.laps[0]!.clearIn).toBeCloseTo(Math.min(...gaps), 6);
  });

  test('a wall below the whole length peaks nowhere along it; across it does', () => {
    const wall = wallAlongX('wall', 0, 120, 12, 5.5);
    const along = meshOf(caseOf(box(120, 25.5), { supports: [wall] }));
    expect(along.laps[0]!.clearIn).toBeNull();
    const unlike = { ...LIGHT_MESH, crossWireIn: 0.1 };
    const supports = [wallAlongX('wall', 0, 90, 45, 5.5)];
    const [lap] = meshOf(caseOf(box(90, 60), { supports, reinforcement: [unlike] })).laps;
    expect(lap!.nearestPeak).toBe('over wall');
    expect(lap!.clearIn).toBeGreaterThanOrEqual(6);
  });

  test('legs that come out again do not count while others stay', () => {
    const leg = { kind: 'leg' as const, id: 'leg', centre: { xIn: 93, yIn: 12 }, lastDay: 7 };
    const stays = { kind: 'leg' as const, id: 'stays', centre: { xIn: 30, yIn: 12 } };
    const [lap] = meshOf(caseOf(box(120, 25.5), { supports: [leg, stays] })).laps;
    expect(lap!.nearestPeak).toBe('over stays');
  });

  test('a peak that the load check gives at 94 in moves the lap off it', () => {
    const job = caseOf(box(120, 25.5));
    const [before] = placed(job).meshes[0]!.laps;
    const [after] = placed(job, { peaksAt: [{ xIn: 94, yIn: 10 }] }).meshes[0]!.laps;
    expect(before!.clearIn).toBeNull();
    expect(after!.clearIn).toBe(6);
    expect(after!.nearestPeak).toBe('peak of the load check');
  });
});

describe('mesh round openings and corners', () => {
  test('a sharp 30 x 17 in sink takes 32 x 19 in less its rounded corners out of the mesh', () => {
    const job = caseOf(box(96, 25.5), { cutouts: [sink(48, 12.5, 30, 17)] });
    const mesh = meshOf(job);
    const byHand = 94 * 23.5 - (32 * 19 - (4 - Math.PI));
    expect(Math.abs(mesh.areaIn2 - byHand)).toBeLessThan(0.05);
    expect(mesh.strips[0]!.cutAreaIn2).toBeCloseTo(94 * 23.5, 4);
    expectCovered(job);
  });

  test('a 3-1/2 in drain is cut out 5-1/2 in across', () => {
    const drain = {
      id: 'drain',
      purpose: 'drain',
      shape: { kind: 'circle', centre: { xIn: 46, yIn: 9 }, diameterIn: 3.5 },
    } as const;
    const mesh = meshOf(caseOf(box(92, 27), { cutouts: [drain] }));
    expect(Math.abs(mesh.areaIn2 - (90 * 25 - Math.PI * 2.75 ** 2))).toBeLessThan(0.2);
  });

  test('an L takes three strips; that of the short arm runs through the corner, past the inside corner in one length', () => {
    const job = caseOf(L_SHAPE);
    const mesh = meshOf(job);
    expect(mesh.strips).toHaveLength(3);
    const leg = mesh.strips.find(({ isTurned }) => isTurned)!;
    expect(leg.lengthIn).toBeCloseTo(83.5, 5);
    expect(leg.widthIn).toBeCloseTo(23.5, 5);
    const ys = leg.shape.outer.map(({ yIn }) => yIn);
    expect([Math.min(...ys), Math.max(...ys)].map((yIn) => Math.round(yIn * 1e5) / 1e5)).toEqual([-59, 24.5]);
    // the long arm is 96 in beyond the corner and 6 in of lap into it, in two with a lap of 6 in
    expect(mesh.cutAreaIn2).toBeCloseTo((83.5 + 96 + 6 + 6) * 23.5, 3);
    for (const { overlapIn } of mesh.laps) expect(overlapIn).toBeGreaterThanOrEqual(6);
    const between = mesh.laps.find(({ nearestPeak }) => nearestPeak === 'inside corner');
    expect(between!.clearIn).toBeGreaterThanOrEqual(6);
    expectCovered(job);
  });

  test.each([
    ['a U', corners([0, 0], [120, 0], [120, 60], [96, 60], [96, 25], [24, 25], [24, 60], [0, 60])],
    ['a T', corners([0, 0], [100, 0], [100, 24], [62, 24], [62, 70], [38, 70], [38, 24], [0, 24])],
    [
      'an L with a wide round in its corner',
      corners([0, -60], [25.5, -60], [25.5, 0, 12], [121.5, 0], [121.5, 25.5], [0, 25.5]),
    ],
    ['a round top', corners([0, 0, 20], [40, 0, 20], [40, 40, 20], [0, 40, 20])],
    [
      'a long T of arms wider than a sheet is',
      corners([0, 0], [200, 0], [200, 50], [130, 50], [130, 160], [70, 160], [70, 50], [0, 50]),
    ],
  ])('%s is covered to the cover and no further', (_, shape) => {
    const job = caseOf(shape);
    expectCovered(job);
    for (const { lengthIn, widthIn } of meshOf(job).strips) {
      expect(lengthIn).toBeLessThanOrEqual(96 + 1e-6);
      expect(widthIn).toBeLessThanOrEqual(48 + 1e-6);
    }
  });

  test('a corner rounded 1-1/2 in is not worth a wider strip', () => {
    const rounded = L_SHAPE.map((corner, k) => (k === 2 ? { ...corner, radiusIn: 1.5 } : corner));
    const [sharp, round] = [meshOf(caseOf(L_SHAPE)), meshOf(caseOf(rounded))];
    expect(round.cutAreaIn2).toBeCloseTo(sharp.cutAreaIn2, 6);
  });

  test('a notch for a post does not part the mesh of a counter', () => {
    const notched = corners(
      [0, 0],
      [96, 0],
      [96, 25.5],
      [52, 25.5],
      [52, 21],
      [46, 21],
      [46, 25.5],
      [0, 25.5],
    );
    const job = caseOf(notched);
    expect(meshOf(job).strips).toHaveLength(1);
    expectCovered(job);
  });

  test('mesh stops an inch from an isolation joint on either side, and passes a control joint', () => {
    const joint = { id: 'j', from: { xIn: 40, yIn: 0 }, to: { xIn: 40, yIn: 25.5 }, widthIn: 0.5 };
    const cut = meshOf(caseOf(box(96, 25.5), { joints: [{ ...joint, kind: 'isolation' }] }));
    expect(cut.strips.map(({ lengthIn }) => lengthIn).sort()).toEqual(
      [37.75, 53.75].map((x) => expect.closeTo(x, 5)),
    );
    expect(cut.laps).toEqual([]);
    expect(cut.notes.join()).toContain('isolation joint');
    expect(meshOf(caseOf(box(96, 25.5), { joints: [{ ...joint, kind: 'control' }] })).strips).toHaveLength(1);
  });

  test('a second layer of mesh goes on counting its strips', () => {
    const two = [LIGHT_MESH, { ...LIGHT_MESH, id: 'upper', depthIn: 0.6 }];
    const { meshes } = placed(caseOf(box(120, 25.5), { reinforcement: two }));
    expect(meshes.flatMap(({ strips }) => strips.map(({ label }) => label))).toEqual([
      'M1',
      'M2',
      'M3',
      'M4',
    ]);
  });

  test('a drawing moved, or walked the other way round, is placed alike', () => {
    const plain = meshOf(caseOf(L_SHAPE));
    const moved = meshOf(
      caseOf(L_SHAPE.map(({ xIn, yIn, radiusIn }) => ({ xIn: xIn + 211.3, yIn: yIn - 87.7, radiusIn }))),
    );
    const reversed = meshOf(caseOf([...L_SHAPE].reverse()));
    for (const other of [moved, reversed]) {
      expect(other.strips).toHaveLength(plain.strips.length);
      expect(other.massLb).toBeCloseTo(plain.massLb, 6);
    }
  });
});
