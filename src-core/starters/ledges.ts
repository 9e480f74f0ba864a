/** Ledges on a stud wall, at bar height and at foot height. Sizes common practice, no source. */
import type { Design } from './drafts';
import { AGAINST_WALL, DRIPPING, EASED, lightMesh, placeIn, rectangle } from './drafts';
import { studArms } from './stud-arms';

/** A 2x4 wall lined on both sides, with its plate under the slab, in. */
const WALL_WIDTH_IN = 5.5;
const LEDGE_LENGTH_IN = 96;
/** Studs at 16 in, with one near either end, from the left of the ledge, in. */
const STUDS_IN = [2, 18, 34, 50, 66, 82, 94];
/** Every second stud is enough under a bar ledge. */
const BAR_STUDS_IN = [2, 34, 66, 94];

/** Bar ledge: 8 in out past a 5-1/2 in wall and 1 in behind it, on arms at every second stud. */
export const barLedge: Design = (setting) => {
  const overhangIn = 8;
  const behindIn = 1;
  const thicknessIn = 2;
  const wallYIn = overhangIn + WALL_WIDTH_IN / 2;
  return {
    id: setting.makeId('bar-ledge'),
    name: 'Bar ledge',
    use: 'bar-ledge',
    corners: rectangle(setting, LEDGE_LENGTH_IN, overhangIn + WALL_WIDTH_IN + behindIn),
    edges: [EASED, EASED, EASED, EASED],
    thicknessIn,
    topElevationIn: 42,
    mixId: setting.mixId,
    reinforcement: [lightMesh(setting, thicknessIn)],
    supports: [
      {
        kind: 'wall',
        id: setting.makeId('wall'),
        name: 'stud wall',
        build: 'stud',
        from: placeIn(setting, 0, wallYIn),
        to: placeIn(setting, LEDGE_LENGTH_IN, wallYIn),
        widthIn: WALL_WIDTH_IN,
        heightIn: 40,
      },
      studArms(setting, { leftsIn: BAR_STUDS_IN, faceIn: overhangIn, reachIn: overhangIn - 1 }),
    ],
  };
};

/** Foot ledge: against the wall on a ledger, its front on an arm at every stud. */
export const footLedge: Design = (setting) => {
  const depthIn = 9.5;
  const thicknessIn = 2;
  const ledgerIn = 1.5;
  const ledgerYIn = depthIn - ledgerIn / 2;
  return {
    id: setting.makeId('foot-ledge'),
    name: 'Foot ledge',
    use: 'foot-ledge',
    corners: rectangle(setting, LEDGE_LENGTH_IN, depthIn),
    edges: [DRIPPING, EASED, AGAINST_WALL, EASED],
    thicknessIn,
    topElevationIn: 9,
    mixId: setting.mixId,
    reinforcement: [lightMesh(setting, thicknessIn)],
    supports: [
      {
        kind: 'ledger',
        id: setting.makeId('ledger'),
        from: placeIn(setting, 0, ledgerYIn),
        to: placeIn(setting, LEDGE_LENGTH_IN, ledgerYIn),
        widthIn: ledgerIn,
      },
      studArms(setting, { leftsIn: STUDS_IN, faceIn: depthIn, reachIn: 8 }),
    ],
  };
};
