import { type Job, readJob } from '../../../src-core/job';
import { rectangle } from '../../support/small-job';

type Parts = Record<string, unknown>;

/** A job of one counter with its corner at the origin, and what is said about it; throws where the reader refuses it. */
export function formJob(widthIn: number, depthIn: number, piece: Parts = {}, job: Parts = {}): Job {
  const reading = readJob({
    format: 'ledgewright-job',
    version: 1,
    id: 'form',
    name: 'Form',
    mixes: [
      { id: 'mix', name: 'Mix', bag: { weightLb: 80, yieldFt3: 0.6, waterLeastLb: 6, waterMostLb: 7 } },
    ],
    site: { standsOn: { kind: 'slab-on-ground' } },
    pieces: [
      {
        id: 'counter',
        name: 'Counter',
        use: 'counter',
        corners: rectangle(0, 0, widthIn, depthIn),
        thicknessIn: 2,
        mixId: 'mix',
        pourDay: 2,
        ...piece,
      },
    ],
    ...job,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.job;
}

/** Free in front and at the sides, a wall at the back. */
export const WALL_BEHIND = [{ kind: 'free' }, { kind: 'free' }, { kind: 'wall' }, { kind: 'free' }];

/** A cabinet 24 in deep, 1-1/2 in behind the front, that comes on a day. */
export function cabinet(id: string, xIn: number, widthIn: number, firstDay: number, more: Parts = {}): Parts {
  return {
    kind: 'cabinet',
    id,
    corner: { xIn, yIn: 1.5 },
    widthIn,
    depthIn: 24,
    heightIn: 34,
    firstDay,
    ...more,
  };
}

/** An opening for a sink 20 by 14 in about a place. */
export function sink(xIn: number, yIn: number): Parts {
  return {
    id: 'sink',
    purpose: 'sink',
    shape: { kind: 'rectangle', centre: { xIn, yIn }, widthIn: 20, depthIn: 14, radiusIn: 1 },
    sink: { mounting: 'under-rim', bowlDepthIn: 8, emptyWeightLb: 20 },
  };
}
