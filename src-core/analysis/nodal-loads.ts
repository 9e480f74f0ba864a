/** Loads of a piece as forces on the nodes of its mesh. */
import type { Point, Region } from '../outline';
import { directionBetween, distanceIn, leftOf, moved, signedAreaIn2 } from '../outline';
import type { Locate, PlateMesh } from '../plate';
import { addPatchLoad, addPointLoad, addPressure } from '../plate';
import type { NodalLoad } from './plate-state';
import type { LiveLoad } from './types';
import type { CarriedWeight } from './weight';

const IN2_PER_FT2 = 144;
/** A weight on a rim is set down this far in from the lip, at this spacing. */
const RIM_INSET_IN = 0.25;
const RIM_STEP_IN = 1;

/** Self weight (lb per in2 of plan) and every carried weight. */
export function deadLoad(
  mesh: PlateMesh,
  locate: Locate,
  region: Region,
  slabPsi: number,
  carried: readonly CarriedWeight[],
): NodalLoad {
  const dense = new Float64Array(3 * mesh.xIn.length);
  addPressure(mesh, slabPsi, dense);
  for (const weight of carried) {
    if (weight.opening !== null) addRim(mesh, locate, region.holes[weight.opening]!, weight.lb, dense);
    else if (weight.patch !== null) {
      const { widthIn, depthIn, angleRad } = weight.patch;
      const patch = { ...weight.centre, lengthIn: widthIn, widthIn: depthIn, angleRad };
      addWhole((into, lb) => addPatchLoad(mesh, locate, { ...patch, loadLbf: lb }, into), weight.lb, dense);
    }
  }
  return sparse(dense);
}

/** One live load. */
export function liveLoad(mesh: PlateMesh, locate: Locate, live: LiveLoad, axisRad: number): NodalLoad {
  const dense = new Float64Array(3 * mesh.xIn.length);
  switch (live.kind) {
    case 'none':
      break;
    case 'spread':
      addPressure(mesh, live.psf / IN2_PER_FT2, dense);
      break;
    case 'roving':
      addWhole(
        (into, lbf) =>
          addPatchLoad(
            mesh,
            locate,
            {
              xIn: live.centre.xIn,
              yIn: live.centre.yIn,
              loadLbf: lbf,
              lengthIn: live.widthIn,
              widthIn: live.depthIn,
              angleRad: axisRad,
            },
            into,
          ),
        live.forceLbf,
        dense,
      );
      break;
  }
  return sparse(dense);
}

/** Spreads a weight along the lip of an opening, just in from it. */
function addRim(
  mesh: PlateMesh,
  locate: Locate,
  lip: readonly Point[],
  lb: number,
  into: Float64Array,
): void {
  const outward = signedAreaIn2(lip) > 0 ? -1 : 1;
  const points: Point[] = [];
  lip.forEach((a, i) => {
    const b = lip[(i + 1) % lip.length]!;
    const lengthIn = distanceIn(a, b);
    if (lengthIn < 1e-6) return;
    const u = directionBetween(a, b);
    const n = leftOf(u);
    const count = Math.max(1, Math.round(lengthIn / RIM_STEP_IN));
    for (let k = 0; k < count; k++) {
      points.push(moved(moved(a, u, (lengthIn * (k + 0.5)) / count), n, outward * RIM_INSET_IN));
    }
  });
  addWhole(
    (target, total) =>
      points.reduce(
        (landed, { xIn, yIn }) =>
          landed + addPointLoad(mesh, locate, { xIn, yIn, loadLbf: total / points.length }, target),
        0,
      ),
    lb,
    into,
  );
}

/** Adds a load so that all of it lands: what would hang over an edge goes to the part that does not. */
function addWhole(add: (into: Float64Array, lbf: number) => number, lbf: number, into: Float64Array): void {
  const trial = new Float64Array(into.length);
  const landed = add(trial, lbf);
  if (landed <= 0) return;
  const scale = lbf / landed;
  for (let i = 0; i < into.length; i++) into[i] = into[i]! + scale * trial[i]!;
}

function sparse(dense: Float64Array): NodalLoad {
  const node: number[] = [];
  const lbf: number[] = [];
  for (let i = 0; i < dense.length; i += 3) {
    if (dense[i] === 0) continue;
    node.push(i / 3);
    lbf.push(dense[i]!);
  }
  return { node: Int32Array.from(node), lbf: Float64Array.from(lbf) };
}
