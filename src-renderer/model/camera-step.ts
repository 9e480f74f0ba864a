/** What a key or the view menu asks of the camera. */
import type { CameraPose, View } from './camera-pose';
import { orbited, panned, zoomed } from './camera-pose';

export type CameraStep =
  | { readonly kind: 'view'; readonly view: View }
  | { readonly kind: 'fit-all' }
  | { readonly kind: 'orbit'; readonly rightRad: number; readonly upRad: number }
  | { readonly kind: 'pan'; readonly rightShare: number; readonly upShare: number }
  | { readonly kind: 'zoom'; readonly factor: number };

/** A view, its key and its name in the menu, in the order of the keys. */
export interface NamedStep {
  readonly key: string;
  readonly words: string;
  readonly step: CameraStep;
}

export const NAMED_STEPS: readonly NamedStep[] = [
  { key: '0', words: 'Fit all', step: { kind: 'fit-all' } },
  { key: '1', words: 'Front', step: { kind: 'view', view: 'front' } },
  { key: '2', words: 'Back', step: { kind: 'view', view: 'back' } },
  { key: '3', words: 'Left', step: { kind: 'view', view: 'left' } },
  { key: '4', words: 'Right', step: { kind: 'view', view: 'right' } },
  { key: '5', words: 'From above', step: { kind: 'view', view: 'above' } },
  { key: '6', words: 'From below', step: { kind: 'view', view: 'below' } },
  { key: '7', words: 'Corner view', step: { kind: 'view', view: 'corner' } },
];

const TURN_RAD = Math.PI / 24;
const PAN_SHARE = 0.05;
const ZOOM_FACTOR = 1.15;

const ARROWS: { readonly [key: string]: readonly [right: number, up: number] } = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** What a key asks for, by its name in a keyboard event; null for a key that is not the camera's. */
export function stepOfKey(key: string, isShifted: boolean): CameraStep | null {
  const named = NAMED_STEPS.find((one) => one.key === key);
  if (named !== undefined) return named.step;
  if (key === '+' || key === '=') return { kind: 'zoom', factor: 1 / ZOOM_FACTOR };
  if (key === '-' || key === '_') return { kind: 'zoom', factor: ZOOM_FACTOR };
  const arrow = ARROWS[key];
  if (arrow === undefined) return null;
  const [right, up] = arrow;
  return isShifted
    ? { kind: 'pan', rightShare: right * PAN_SHARE, upShare: up * PAN_SHARE }
    : { kind: 'orbit', rightRad: right * TURN_RAD, upRad: up * TURN_RAD };
}

/** The pose after a step about the target; null for the steps that need to know what is drawn. */
export function stepped(pose: CameraPose, step: CameraStep): CameraPose | null {
  switch (step.kind) {
    case 'orbit':
      return orbited(pose, step.rightRad, step.upRad);
    case 'pan':
      return panned(pose, step.rightShare, step.upShare);
    case 'zoom':
      return zoomed(pose, step.factor);
    case 'view':
    case 'fit-all':
      return null;
  }
}
