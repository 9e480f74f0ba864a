import { Canvas } from '@react-three/fiber';
import { useId, useMemo, useRef, useState } from 'react';
import { useJob, usePiece, useStore, useWindow } from '../state/store-context';
import { useVerdict, useVerdicts } from '../state/verdict-store';
import type { CameraHandle } from './CameraRig';
import { LENS_DEG } from './camera-pose';
import { stepOfKey } from './camera-step';
import { canDraw } from './can-draw';
import { ModelControls } from './ModelControls';
import { ModelLegend } from './ModelLegend';
import { ModelScene } from './ModelScene';
import styles from './ModelView.module.css';
import { describeModel } from './model-words';
import { useDeflectedShape } from './use-deflected';

/** Sharper than this costs more time a frame than it shows. */
const SHARPEST = 1.5;

/** The job in three dimensions, with what is known of the chosen piece drawn on it. */
export function ModelView() {
  const [isDrawn] = useState(canDraw);
  const store = useStore();
  const job = useJob();
  const piece = usePiece();
  const options = useWindow(({ model }) => model);
  const day = useWindow((state) => state.day);
  const result = useVerdict(piece.id)?.result ?? null;
  const deflected = useVerdicts(({ deflected: shape }) => shape);
  const stage = useRef<HTMLDivElement>(null);
  const camera = useRef<CameraHandle>(null);
  const wordsId = useId();
  const words = useMemo(
    () =>
      describeModel({
        job,
        piece,
        result,
        deflected: deflected?.pieceId === piece.id ? deflected : null,
        options,
      }),
    [job, piece, result, deflected, options],
  );
  useDeflectedShape();

  if (!isDrawn) {
    return (
      <section className={styles.model} aria-label="Model">
        <p className={styles.cannot}>
          This computer cannot draw in three dimensions here. The plan shows the same job, and the checks do
          not need the model. {words}
        </p>
      </section>
    );
  }
  return (
    <section className={styles.model} aria-label="Model">
      <div
        ref={stage}
        className={styles.stage}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: arrows and figures move the eye while the drawing has the focus
        tabIndex={0}
        aria-label="The job in three dimensions"
        aria-describedby={wordsId}
        onKeyDown={(event) => {
          if (event.ctrlKey || event.metaKey || event.altKey) return;
          const step = stepOfKey(event.key, event.shiftKey);
          if (step === null) return;
          event.preventDefault();
          event.stopPropagation();
          camera.current?.perform(step);
        }}
        onPointerLeave={() => store.getState().setHover(null)}
      >
        <Canvas
          flat
          frameloop="demand"
          shadows="percentage"
          dpr={[1, SHARPEST]}
          camera={{ fov: LENS_DEG, up: [0, 0, 1], position: [200, -400, 250], near: 5, far: 8000 }}
          onCreated={({ gl }) => {
            gl.localClippingEnabled = true;
          }}
        >
          <ModelScene stage={stage} camera={camera} />
        </Canvas>
      </div>
      <p id={wordsId} className={styles.words}>
        {words}
      </p>
      <ModelControls onStep={(step) => camera.current?.perform(step)} />
      <div className={styles.legend}>{day === null && <ModelLegend />}</div>
    </section>
  );
}
