/** Slabs on block piers: a hearth, a bench and a pier cap. Sizes common practice, no source. */
import type { Design } from './drafts';
import { blockPier, DRIPPING, EASED, lightMesh, rectangle } from './drafts';

/** Hearth: 46 x 20 in, its piers as deep as itself. */
export const hearth: Design = (setting) => {
  const [lengthIn, depthIn, thicknessIn] = [46, 20, 2];
  const pier = { frontIn: depthIn / 2, widthIn: 8, depthIn, heightIn: 12 };
  return {
    id: setting.makeId('hearth'),
    name: 'Hearth',
    use: 'hearth',
    corners: rectangle(setting, lengthIn, depthIn),
    edges: [EASED, EASED, EASED, EASED],
    thicknessIn,
    topElevationIn: 14,
    mixId: setting.mixId,
    reinforcement: [lightMesh(setting, thicknessIn)],
    supports: [4, lengthIn - 4].map((leftIn) => blockPier(setting, { ...pier, leftIn })),
  };
};

/** Bench: 54 x 16 in outdoors, 5 in past its piers at either end. */
export const bench: Design = (setting) => {
  const [lengthIn, depthIn, thicknessIn] = [54, 16, 2.5];
  const pier = { frontIn: depthIn / 2, widthIn: 8, depthIn: 12, heightIn: 15 };
  return {
    id: setting.makeId('bench'),
    name: 'Bench',
    use: 'bench',
    corners: rectangle(setting, lengthIn, depthIn).map((corner) => ({ ...corner, radiusIn: 1 })),
    edges: [EASED, EASED, EASED, EASED],
    thicknessIn,
    topElevationIn: 17.5,
    exposure: 'outdoors',
    mixId: setting.mixId,
    reinforcement: [lightMesh(setting, thicknessIn)],
    supports: [9, lengthIn - 9].map((leftIn) => blockPier(setting, { ...pier, leftIn })),
  };
};

/** Pier cap: 20 x 20 in, 2 in past a 16 in pier all round, with drips. */
export const pierCap: Design = (setting) => ({
  id: setting.makeId('pier-cap'),
  name: 'Pier cap',
  use: 'cap',
  corners: rectangle(setting, 20, 20),
  edges: [DRIPPING, DRIPPING, DRIPPING, DRIPPING],
  thicknessIn: 2,
  topElevationIn: 50,
  exposure: 'outdoors',
  mixId: setting.mixId,
  supports: [blockPier(setting, { leftIn: 10, frontIn: 10, widthIn: 16, depthIn: 16, heightIn: 48 })],
});
