import { useFrame, useThree } from '@react-three/fiber';
import { useLayoutEffect, useMemo, useRef } from 'react';
import { Object3D, Vector3 } from 'three';
import styles from './SceneLabel.module.css';
import type { Place } from './scene-bounds';

interface Props {
  readonly at: Place;
  readonly words: string;
  /** `off` for a place where the slab has come off. Plain unless told. */
  readonly tone?: 'plain' | 'off';
}

const seen = new Vector3();

/** A word or number beside a place of the drawing; a piece of the page, so that its letters stay sharp. */
export function SceneLabel({ at, words, tone = 'plain' }: Props) {
  const canvas = useThree(({ gl }) => gl.domElement);
  const anchor = useMemo(() => new Object3D(), []);
  const label = useRef<HTMLSpanElement | null>(null);
  useLayoutEffect(() => {
    const span = document.createElement('span');
    span.className = `${styles.label} ${tone === 'off' ? styles.off : ''}`;
    span.textContent = words;
    canvas.parentElement?.append(span);
    label.current = span;
    return () => {
      span.remove();
      label.current = null;
    };
  }, [canvas, words, tone]);
  useFrame(({ camera, size }) => {
    if (label.current === null) return;
    anchor.updateWorldMatrix(true, false);
    const { x, y, z } = seen.setFromMatrixPosition(anchor.matrixWorld).project(camera);
    label.current.hidden = z > 1;
    label.current.style.translate = `calc(${((x + 1) / 2) * size.width}px - 50%) calc(${((1 - y) / 2) * size.height}px - 50%)`;
  });
  return <primitive object={anchor} position={[...at]} />;
}
