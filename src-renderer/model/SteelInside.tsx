import { useLayoutEffect, useMemo, useRef } from 'react';
import type { InstancedMesh } from 'three';
import { Matrix4, Quaternion, Vector3 } from 'three';
import type { Piece } from '../../src-core/job';
import type { SteelRun } from '../../src-core/solid';
import { steelRuns } from '../../src-core/solid';
import type { PlacedStandoff } from '../../src-core/steel-placing';
import { standoffsUnder } from '../../src-core/steel-placing';
import { InkLines } from './InkLines';
import { useSceneLook } from './scene-look';

interface Props {
  readonly piece: Piece;
  /** As the job sets it; null leaves it to the steel. */
  readonly standoffSpacingIn: number | null;
}

/** Foot of a standoff, of its height. */
const FOOT_SHARE = 0.45;

const matrix = new Matrix4();
const along = new Vector3();
const middle = new Vector3();
const size = new Vector3();
const turn = new Quaternion();
const ACROSS = new Vector3(0, 1, 0);
const UP = new Vector3(0, 0, 1);

/** Wires, bars and the chairs under them, at their true places and sizes. */
export function SteelInside({ piece, standoffSpacingIn }: Props) {
  const { chalk, ink, cutPlanes } = useSceneLook();
  const runs = useMemo(() => steelRuns(piece), [piece]);
  const chairs = useMemo(() => standoffsUnder(piece, standoffSpacingIn), [piece, standoffSpacingIn]);
  const lines = useMemo(() => Float32Array.from(runs.flatMap(({ from, to }) => [...from, ...to])), [runs]);
  const runMesh = useRef<InstancedMesh>(null);
  const chairMesh = useRef<InstancedMesh>(null);
  useLayoutEffect(() => place(runMesh.current, runs, runMatrix), [runs]);
  const soffitIn = piece.topElevationIn - piece.thicknessIn;
  useLayoutEffect(
    () => place(chairMesh.current, chairs, (chair) => chairMatrix(chair, soffitIn)),
    [chairs, soffitIn],
  );
  return (
    <>
      {runs.length > 0 && (
        <>
          <instancedMesh key={runs.length} ref={runMesh} args={[undefined, undefined, runs.length]}>
            <cylinderGeometry args={[0.5, 0.5, 1, 6, 1]} />
            <meshStandardMaterial color={ink} roughness={0.5} metalness={0.3} clippingPlanes={cutPlanes} />
          </instancedMesh>
          {/* a thin wire seen from far off is narrower than a pixel; its line keeps it in the picture */}
          <InkLines lines={lines} color={ink} opacity={0.7} />
        </>
      )}
      {chairs.length > 0 && (
        <instancedMesh
          key={`chairs ${chairs.length}`}
          ref={chairMesh}
          args={[undefined, undefined, chairs.length]}
        >
          <coneGeometry args={[FOOT_SHARE, 1, 8]} />
          <meshStandardMaterial color={chalk} roughness={0.7} clippingPlanes={cutPlanes} />
        </instancedMesh>
      )}
    </>
  );
}

function place<T>(mesh: InstancedMesh | null, things: readonly T[], set: (thing: T) => void): void {
  if (mesh === null) return;
  for (const [index, thing] of things.entries()) {
    set(thing);
    mesh.setMatrixAt(index, matrix);
  }
  mesh.instanceMatrix.needsUpdate = true;
  mesh.computeBoundingSphere();
}

function runMatrix({ from, to, diameterIn }: SteelRun): void {
  along.set(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
  middle.set((from[0] + to[0]) / 2, (from[1] + to[1]) / 2, (from[2] + to[2]) / 2);
  size.set(diameterIn, along.length(), diameterIn);
  turn.setFromUnitVectors(ACROSS, along.normalize());
  matrix.compose(middle, turn, size);
}

function chairMatrix({ at, heightIn }: PlacedStandoff, soffitIn: number): void {
  middle.set(at.xIn, at.yIn, soffitIn + heightIn / 2);
  size.setScalar(heightIn);
  turn.setFromUnitVectors(ACROSS, UP);
  matrix.compose(middle, turn, size);
}
