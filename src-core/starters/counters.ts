/** Worktops on base cabinets, straight and round a corner. Sizes common practice, no source. */
import type { Design, Setting, SupportDraft } from './drafts';
import { AGAINST_WALL, cabinetRow, EASED, lightMesh, placeIn, rectangle } from './drafts';

/** Depth of a worktop over 24 in cabinets, which it passes by 1-1/2 in at the front. */
const DEPTH_IN = 25.5;
const CABINET_DEPTH_IN = 24;
const FRONT_IN = 1.5;

/** Straight counter: 8 ft on three cabinets along a wall. */
export const straightCounter: Design = (setting) => {
  const widthsIn = [36, 24, 36];
  const thicknessIn = 1.5;
  return {
    id: setting.makeId('counter'),
    name: 'Counter',
    use: 'counter',
    corners: rectangle(setting, 96, DEPTH_IN),
    edges: [EASED, EASED, AGAINST_WALL, EASED],
    thicknessIn,
    mixId: setting.mixId,
    reinforcement: [lightMesh(setting, thicknessIn)],
    supports: cabinetRow(setting, { widthsIn, frontIn: FRONT_IN, depthIn: CABINET_DEPTH_IN }),
  };
};

/** Length of the leg of the corner counter that runs to the front, to its inside corner, in. */
const LEG_IN = 60;
/** Length of the corner counter along the back wall: 96 in of cabinets and 1-1/2 in past the last. */
const RUN_IN = 97.5;
const SINK_MIDDLE_IN = 54;

/** Corner counter: a leg along the left wall and a run along the back wall, with a sink hung under its rim. */
export const cornerCounter: Design = (setting) => {
  const thicknessIn = 2;
  const place = (leftIn: number, frontIn: number) => placeIn(setting, leftIn, frontIn);
  return {
    id: setting.makeId('corner-counter'),
    name: 'Corner counter',
    use: 'counter',
    corners: [
      place(0, 0),
      place(DEPTH_IN, 0),
      { ...place(DEPTH_IN, LEG_IN), radiusIn: 1.5 },
      place(RUN_IN, LEG_IN),
      place(RUN_IN, LEG_IN + DEPTH_IN),
      place(0, LEG_IN + DEPTH_IN),
    ],
    edges: [EASED, EASED, EASED, EASED, AGAINST_WALL, AGAINST_WALL],
    thicknessIn,
    mixId: setting.mixId,
    cutouts: [
      {
        id: setting.makeId('sink'),
        name: 'Sink',
        purpose: 'sink',
        shape: {
          kind: 'rectangle',
          centre: place(SINK_MIDDLE_IN, LEG_IN + 11.5),
          widthIn: 26,
          depthIn: 14,
          radiusIn: 2,
        },
        sink: { mounting: 'under-rim', bowlDepthIn: 9, emptyWeightLb: 22, carriedBySlab: false },
      },
      {
        id: setting.makeId('tap'),
        name: 'Tap',
        purpose: 'tap',
        shape: { kind: 'circle', centre: place(SINK_MIDDLE_IN, LEG_IN + 21.5), diameterIn: 1.375 },
      },
    ],
    reinforcement: [lightMesh(setting, thicknessIn)],
    supports: [...legCabinets(setting), ...runCabinets(setting)],
  };
};

/** Two cabinets along the left wall; seen from their fronts they run toward the back. */
function legCabinets(setting: Setting): SupportDraft[] {
  return [FRONT_IN, FRONT_IN + 30].map((frontIn, i) => ({
    kind: 'cabinet',
    id: setting.makeId('cabinet-1'),
    name: `L${i + 1}`,
    corner: placeIn(setting, CABINET_DEPTH_IN, frontIn),
    angleDeg: 90,
    widthIn: 30,
    depthIn: CABINET_DEPTH_IN,
    weightLb: 70,
  }));
}

function runCabinets(setting: Setting): SupportDraft[] {
  return cabinetRow(setting, {
    widthsIn: [36, 36, 24],
    frontIn: LEG_IN + FRONT_IN,
    depthIn: CABINET_DEPTH_IN,
  });
}
