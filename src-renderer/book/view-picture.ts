/** Pictures of what the window shows. */
import type { Job } from '../../src-core/job';

/** The canvas of the model, where it is shown and drawn. */
const MODEL_CANVAS = '[role="application"] canvas';
/** Longer side of the picture of a plan, pixels: a page in a report at 200 dots an inch. */
const PLAN_PX = 2000;
const PNG = 'image/png';

/** Whether the model is in view, so that there is a picture of it to take. */
export function showsModel(): boolean {
  return modelCanvas() !== null;
}

/**
 * The model as it is seen. What was drawn is gone once the screen has it, so it is drawn once more and read in the same breath.
 */
export async function modelPicture(): Promise<Uint8Array<ArrayBuffer>> {
  const { advance } = await import('@react-three/fiber');
  const canvas = modelCanvas();
  if (canvas === null) throw new Error('the model is not in view');
  advance(performance.now());
  return bytesOfPicture(canvas);
}

/** The plan in black on white. */
export async function planPicture(job: Job): Promise<Uint8Array<ArrayBuffer>> {
  const { planSvg } = await import('../../src-core/exports');
  const address = URL.createObjectURL(new Blob([planSvg(job)], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const scale = PLAN_PX / Math.max(image.naturalWidth, image.naturalHeight);
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(image.naturalWidth * scale);
    canvas.height = Math.round(image.naturalHeight * scale);
    const context = canvas.getContext('2d');
    if (context === null) throw new Error('this computer cannot draw a picture');
    context.fillStyle = '#fff';
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await bytesOfPicture(canvas);
  } finally {
    URL.revokeObjectURL(address);
  }
}

function modelCanvas(): HTMLCanvasElement | null {
  return document.querySelector<HTMLCanvasElement>(MODEL_CANVAS);
}

function bytesOfPicture(canvas: HTMLCanvasElement): Promise<Uint8Array<ArrayBuffer>> {
  return new Promise((resolve, reject) => {
    canvas.toBlob((picture) => {
      if (picture === null) reject(new Error('the picture could not be taken'));
      else picture.arrayBuffer().then((buffer) => resolve(new Uint8Array(buffer)), reject);
    }, PNG);
  });
}
