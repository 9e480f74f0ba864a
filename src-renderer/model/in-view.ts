import type { Camera } from 'three';
import { Vector3 } from 'three';
import type { Place } from './scene-bounds';

const seen = new Vector3();

/** Whether a place lies well within the picture. */
export function isInView(camera: Camera, place: Place): boolean {
  camera.updateMatrixWorld();
  const { x, y, z } = seen.set(...place).project(camera);
  return Math.abs(x) < 0.85 && Math.abs(y) < 0.85 && z < 1;
}
