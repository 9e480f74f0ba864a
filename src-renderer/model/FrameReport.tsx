import { useThree } from '@react-three/fiber';
import type { RefObject } from 'react';
import { useEffect } from 'react';
import { Matrix4 } from 'three';

interface Props {
  readonly stage: RefObject<HTMLElement | null>;
}

const matrix = new Matrix4();

/**
 * Notes on the stage how many frames were drawn and how the last one looked at the drawing (`data-view-matrix`, for
 * `projectToScreen`), so that a test can find a point of the plan in the picture.
 */
export function FrameReport({ stage }: Props) {
  const scene = useThree(({ scene: drawn }) => drawn);
  useEffect(() => {
    let frames = 0;
    const before = scene.onAfterRender;
    scene.onAfterRender = (_renderer, _scene, camera) => {
      const element = stage.current;
      if (element === null) return;
      frames++;
      matrix.multiplyMatrices(camera.projectionMatrix, camera.matrixWorldInverse);
      element.dataset.drawnFrames = String(frames);
      element.dataset.viewMatrix = matrix.elements.join(' ');
    };
    return () => {
      scene.onAfterRender = before;
    };
  }, [scene, stage]);
  return null;
}
