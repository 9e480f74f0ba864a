import { OrbitControls } from '@react-three/drei';
import { useFrame, useThree } from '@react-three/fiber';
import type { ComponentRef, Ref } from 'react';
import { useCallback, useEffect, useImperativeHandle, useLayoutEffect, useRef } from 'react';
import type { Camera } from 'three';
import { PerspectiveCamera } from 'three';
import type { Piece } from '../../src-core/job';
import { useJob, usePiece, useWindow } from '../state/store-context';
import type { CameraPose } from './camera-pose';
import { between, eyeOf, FARTHEST_IN, fitted, NEAREST_IN, poseForView, poseFrom } from './camera-pose';
import type { CameraStep } from './camera-step';
import { stepped } from './camera-step';
import { isSeenWell, withNeighbours } from './framing';
import type { Bounds, Place } from './scene-bounds';
import { ballRound, united } from './scene-bounds';

export interface CameraHandle {
  readonly perform: (step: CameraStep) => void;
}

interface Props {
  readonly ref: Ref<CameraHandle>;
  /** What "all" is, what the piece that is selected takes up, and each other piece. */
  readonly all: readonly Bounds[];
  readonly selected: readonly Bounds[];
  readonly others: readonly Bounds[];
}

type Orbit = ComponentRef<typeof OrbitControls>;

interface Glide {
  readonly from: CameraPose;
  readonly to: CameraPose;
  /** null until its first frame. */
  startMs: number | null;
}

const GLIDE_MS = 190;
/** How near the eye comes to a point that it is sent to, as a share of the piece's size, and the least, in. */
const CLOSE_SHARE = 1.9;
const CLOSEST_IN = 60;

/** Moves the eye: by hand, by key and menu, to a point that a check names, and to a piece that was picked elsewhere. */
export function CameraRig({ ref, all, selected, others }: Props) {
  const camera = useThree(({ camera: eye }) => eye);
  const invalidate = useThree(({ invalidate: draw }) => draw);
  const aspect = useThree(({ size }) => size.width / size.height);
  const job = useJob();
  const piece = usePiece();
  const flyTo = useWindow(({ flyTo: asked }) => asked);
  const orbit = useRef<Orbit>(null);
  const glide = useRef<Glide | null>(null);
  /** Whether the eye stands where a fit put it, and no hand has moved it since. */
  const isFitted = useRef(true);
  const latest = useRef({ all, selected, others, aspect, piece });
  useLayoutEffect(() => {
    latest.current = { all, selected, others, aspect, piece };
  });

  const stand = useCallback(
    (pose: CameraPose) => {
      camera.position.set(...eyeOf(pose));
      orbit.current?.target.set(...pose.target);
      orbit.current?.update();
      invalidate();
    },
    [camera, invalidate],
  );
  const goTo = useCallback(
    (to: CameraPose) => {
      glide.current = null;
      if (prefersStill()) stand(to);
      else glide.current = { from: poseNow(camera, orbit.current), to, startMs: null };
      invalidate();
    },
    [camera, invalidate, stand],
  );

  useImperativeHandle(
    ref,
    () => ({
      perform: (step) => {
        const now = glide.current?.to ?? poseNow(camera, orbit.current);
        const bounds = latest.current;
        isFitted.current = step.kind === 'fit-all' || step.kind === 'view';
        if (step.kind === 'fit-all') goTo(fitted(now, bounds.all, bounds.aspect));
        else if (step.kind === 'view') goTo(poseForView(step.view, bounds.selected, bounds.aspect));
        else goTo(stepped(now, step)!);
      },
    }),
    [camera, goTo],
  );

  // A job that was just opened is looked at from the corner, its selected piece large among its neighbours.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another job is looked at anew though its id is not read here
  useLayoutEffect(() => {
    const { selected: first, others: near, aspect: now } = latest.current;
    glide.current = null;
    isFitted.current = true;
    const corner = poseForView('corner', first, now);
    stand(fitted(corner, withNeighbours(corner, first, near, now), now));
  }, [job.id, stand]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: only picking another piece moves the eye, not editing it
  useEffect(() => {
    const { selected: picked, others: near, aspect: now } = latest.current;
    const pose = glide.current?.to ?? poseNow(camera, orbit.current);
    if (isSeenWell(pose, picked, now)) return;
    isFitted.current = true;
    goTo(fitted(pose, withNeighbours(pose, picked, near, now), now));
  }, [piece.id, camera, goTo]);

  // Another shape of picture is fitted anew, unless a hand has chosen a view that still holds the piece.
  useEffect(() => {
    const { selected: shown, others: near } = latest.current;
    const pose = glide.current?.to ?? poseNow(camera, orbit.current);
    if (!isFitted.current && isSeenWell(pose, shown, aspect)) return;
    glide.current = null;
    stand(fitted(pose, withNeighbours(pose, shown, near, aspect), aspect));
  }, [aspect, camera, stand]);

  useEffect(() => {
    if (flyTo === null) return;
    const { selected: bounds, aspect: now, piece: lookedAt } = latest.current;
    const pose = poseNow(camera, orbit.current);
    isFitted.current = flyTo.at === null;
    goTo(flyTo.at === null ? fitted(pose, bounds, now) : closeTo(pose, lookedAt, bounds, flyTo.at));
  }, [flyTo, camera, goTo]);

  useFrame(() => {
    const going = glide.current;
    if (going !== null) {
      going.startMs ??= performance.now();
      const share = (performance.now() - going.startMs) / GLIDE_MS;
      if (share >= 1) glide.current = null;
      stand(between(going.from, going.to, share));
    }
    keepDepth(camera, orbit.current);
  });

  return (
    <OrbitControls
      ref={orbit}
      makeDefault
      enableDamping={false}
      minDistance={NEAREST_IN}
      maxDistance={FARTHEST_IN}
      onStart={() => {
        glide.current = null;
        isFitted.current = false;
      }}
    />
  );
}

function prefersStill(): boolean {
  return window.matchMedia('(prefers-reduced-motion: reduce)').matches;
}

function poseNow(camera: Camera, orbit: Orbit | null): CameraPose {
  const target: Place = orbit === null ? [0, 0, 0] : [orbit.target.x, orbit.target.y, orbit.target.z];
  return poseFrom([camera.position.x, camera.position.y, camera.position.z], target);
}

/** Near enough to read the point, from above the slab rather than from under it. */
function closeTo(
  pose: CameraPose,
  piece: Piece,
  bounds: readonly Bounds[],
  at: { xIn: number; yIn: number },
): CameraPose {
  return {
    ...pose,
    target: [at.xIn, at.yIn, piece.topElevationIn],
    elevationRad: Math.max(0.2, pose.elevationRad),
    distanceIn: Math.max(
      CLOSEST_IN,
      Math.min(pose.distanceIn, ballRound(bounds.reduce(united)).radiusIn * CLOSE_SHARE),
    ),
  };
}

/** Keeps the near and the far end of what is drawn in step with the distance, so that close faces do not flicker. */
function keepDepth(camera: Camera, orbit: Orbit | null): void {
  if (!(camera instanceof PerspectiveCamera) || orbit === null) return;
  const distanceIn = camera.position.distanceTo(orbit.target);
  const near = Math.max(0.5, distanceIn / 30);
  if (Math.abs(camera.near - near) < near * 0.01) return;
  camera.near = near;
  camera.far = distanceIn * 6 + 4000;
  camera.updateProjectionMatrix();
}
