/** A small sound job as plain data, for tests that break one thing in it. */

export type Draft = Record<string, unknown> & { pieces: Record<string, unknown>[] };

/** A 96 x 24 x 2 in counter with a sink on two piers, and a bar ledge beside it. A new copy each time. */
export function smallJob(): Draft {
  return {
    format: 'ledgewright-job',
    version: 1,
    id: 'small',
    name: 'Small job',
    site: {
      calendar: { startsOn: '2027-04-26', handOverDay: 40 },
      levels: { readings: [{ id: 'a', xIn: 0, yIn: 0, valueIn: 0 }] },
    },
    mixes: [
      { id: 'mix', name: 'Mix', bag: { weightLb: 80, yieldFt3: 0.6, waterLeastLb: 6, waterMostLb: 7 } },
    ],
    pieces: [
      {
        id: 'counter',
        name: 'Counter',
        use: 'counter',
        corners: rectangle(0, 0, 96, 24),
        edges: [
          {
            kind: 'free',
            profile: {
              kind: 'own',
              points: [
                { outIn: 0, upIn: 0 },
                { outIn: 0.5, upIn: 2 },
              ],
            },
          },
          { kind: 'free', dripGroove: { widthIn: 0.25, depthIn: 0.25, setbackIn: 1 } },
          { kind: 'wall' },
          { kind: 'butted', toPieceId: 'ledge' },
        ],
        thicknessIn: 2,
        mixId: 'mix',
        joints: [{ id: 'joint', kind: 'control', from: { xIn: 70, yIn: 0 }, to: { xIn: 70, yIn: 24 } }],
        cutouts: [
          {
            id: 'sink',
            purpose: 'sink',
            shape: { kind: 'rectangle', centre: { xIn: 48, yIn: 12 }, widthIn: 20, depthIn: 14, radiusIn: 2 },
            sink: { mounting: 'under-rim' },
          },
          {
            id: 'tap',
            purpose: 'tap',
            shape: { kind: 'circle', centre: { xIn: 48, yIn: 21.5 }, diameterIn: 1.5 },
          },
        ],
        reinforcement: [
          {
            kind: 'mesh',
            id: 'mesh',
            wireIn: 0.1,
            spacingIn: 2,
            crossWireIn: 0.1,
            crossSpacingIn: 2,
            depthIn: 1,
          },
          {
            kind: 'bars',
            id: 'bars',
            barIn: 0.375,
            areaIn2: 0.11,
            spacingIn: 4,
            depthIn: 0.7,
            corners: rectangle(1, 1, 95, 4),
          },
        ],
        supports: [
          { kind: 'pier', id: 'pier-left', build: 'block', footprint: pierPlan(8) },
          {
            kind: 'pier',
            id: 'pier-right',
            build: 'block',
            footprint: pierPlan(88),
            firstDay: 2,
            lastDay: 30,
          },
          { kind: 'leg', id: 'leg', centre: { xIn: 48, yIn: 2 }, stiffness: { low: 1000, high: 2000 } },
        ],
        loads: {
          fixed: [
            { id: 'urn', name: 'Urn', centre: { xIn: 20, yIn: 12 }, widthIn: 10, depthIn: 10, weightLb: 40 },
          ],
        },
      },
      {
        id: 'ledge',
        name: 'Ledge',
        use: 'bar-ledge',
        corners: rectangle(0, 40, 60, 56),
        thicknessIn: 1.5,
        mixId: 'mix',
        supports: [
          {
            kind: 'wall',
            id: 'wall',
            build: 'stud',
            from: { xIn: 0, yIn: 44 },
            to: { xIn: 60, yIn: 44 },
            widthIn: 5.5,
          },
          {
            kind: 'bracket',
            id: 'arms',
            roots: [
              { xIn: 20, yIn: 46.75 },
              { xIn: 40, yIn: 46.75 },
            ],
            directionDeg: 90,
            reachIn: 8,
            seatWidthIn: 2,
            heelIn: 8,
            arm: { kind: 'tube', widthIn: 1.5, depthIn: 1.5, wallIn: 0.125, yieldPsi: 46000 },
            backing: 'timber-stud',
            fixing: {
              kind: 'lags',
              diameterIn: 0.375,
              threadIn: 3,
              topCount: 2,
              totalCount: 4,
              leverIn: 7,
              specificGravity: 0.42,
            },
          },
        ],
      },
    ],
    falsework: {
      sections: [
        { id: 'fw', pieceId: 'counter', corners: rectangle(0, 0, 96, 24), firstDay: 0, lastDay: 20 },
      ],
    },
    swap: {
      steps: [{ id: 'step', day: 20, sectionsOut: ['fw'], supportsOut: ['leg'], supportsIn: ['pier-right'] }],
    },
  };
}

/** Corners of an upright rectangle, counter-clockwise. */
export function rectangle(
  left: number,
  front: number,
  right: number,
  back: number,
): { xIn: number; yIn: number }[] {
  return [
    { xIn: left, yIn: front },
    { xIn: right, yIn: front },
    { xIn: right, yIn: back },
    { xIn: left, yIn: back },
  ];
}

function pierPlan(xIn: number): object {
  return { kind: 'rectangle', centre: { xIn, yIn: 12 }, widthIn: 8, depthIn: 20 };
}

/** A copy of `job` with the value at a path such as `pieces[0].cutouts[1].shape` replaced; undefined takes it away. */
export function withValue(job: unknown, path: string, value: unknown): unknown {
  const copy = structuredClone(job);
  const steps = path.split(/[.[\]]+/).filter((step) => step !== '');
  const last = steps.pop();
  if (last === undefined) return value;
  let holder = copy as Record<string, unknown>;
  for (const step of steps) {
    const next = holder[step];
    if (typeof next !== 'object' || next === null) throw new Error(`No ${step} on the way to ${path}`);
    holder = next as Record<string, unknown>;
  }
  if (value === undefined) delete holder[last];
  else holder[last] = value;
  return copy;
}
