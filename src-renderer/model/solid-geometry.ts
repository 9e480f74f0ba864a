/** Plain triangles as three.js holds them. */
import { BufferAttribute, BufferGeometry } from 'three';
import type { Solid } from '../../src-core/solid';
import { grainPlaces } from './solid-arrays';

/** Faces of a solid, with places in the grain's tile. */
export function faceGeometry(solid: Solid): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(solid.positions, 3));
  geometry.setAttribute('normal', new BufferAttribute(solid.normals, 3));
  geometry.setAttribute('uv', new BufferAttribute(grainPlaces(solid), 2));
  geometry.setIndex(new BufferAttribute(solid.triangles, 1));
  return geometry;
}

/** Bare points, or ends of lines in pairs. */
export function pointGeometry(positions: Float32Array): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  return geometry;
}
