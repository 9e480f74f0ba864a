/** A frame of strips that keeps a large opening free, braced inside against the push of the mix. */
import { bracePush, formPressure, formResultant } from '../edge-forms';
import type { CutoutShape } from '../job';
import type { Corner } from '../outline';
import { cutoutOutline, distanceIn, polygonPerimeterIn, roundCorners } from '../outline';
import type { Line } from '../workings';
import { fillWeight } from './plug-form';
import type { OpeningPractice } from './practice';
import { TIMBER_PCF } from './practice';

/** Chords of a rounded corner or a round opening, in. */
const CHORD_IN = 1 / 64;
const ROUNDING = 1e-9;

/** A straight side of the frame, counted as the opening's edges are drawn. */
export interface FrameSide {
  readonly index: number;
  /** Along the face of the concrete, between rounded corners, in. */
  readonly lengthIn: number;
  /** Braces that it leans on between its ends, and their distance, in. */
  readonly braces: number;
  readonly bayIn: number;
}

export interface FrameForm {
  readonly kind: 'frame';
  readonly sides: readonly FrameSide[];
  /** Strip bent round ribs, in: the whole way round a round opening, 0 for one with straight sides. */
  readonly bentIn: number;
  /** Braces across, each between two sides. */
  readonly braces: number;
  /** Pressure at the foot, psf; push on a running foot, lbf/ft; the largest push on a brace, lbf. */
  readonly pressurePsf: number;
  readonly pushLbfPerFt: number;
  readonly braceForceLbf: number;
  readonly weightLb: number;
  readonly words: string;
  readonly lines: readonly Line[];
}

export interface FrameLoad {
  /** Height of the frame, of the wet concrete against it, and thickness of its strips, in. */
  readonly heightIn: number;
  readonly concreteIn: number;
  readonly stripIn: number;
  readonly wetDensityPcf: number;
}

/** The frame of an opening; null where its corners cannot be rounded as drawn. */
export function frameForm(shape: CutoutShape, load: FrameLoad, practice: OpeningPractice): FrameForm | null {
  const run = shape.kind === 'circle' ? roundRun(shape.diameterIn) : straightRun(shape);
  if (run === null) return null;
  const { heightIn, concreteIn, stripIn, wetDensityPcf: w } = load;
  const sides = run.straightIn.map((lengthIn, index): FrameSide => {
    const bays = Math.max(1, Math.ceil(lengthIn / practice.braceSpacingIn - ROUNDING));
    return { index, lengthIn, braces: bays - 1, bayIn: lengthIn / bays };
  });
  const ribs = Math.ceil(run.bentIn / practice.braceSpacingIn - ROUNDING);
  const pressure = formPressure({ w, h: concreteIn });
  const push = formResultant({ w, h: concreteIn });
  const bayIn = Math.max(...sides.map((side) => side.bayIn), ribs === 0 ? 0 : run.bentIn / ribs);
  const brace = bracePush({ R: push.value, s: bayIn });
  const weight = fillWeight({ V: run.roundIn * stripIn * heightIn, g: TIMBER_PCF });
  return {
    kind: 'frame',
    sides,
    bentIn: run.bentIn,
    braces: Math.ceil((sides.reduce((sum, { braces }) => sum + braces, 0) + ribs) / 2),
    pressurePsf: pressure.value,
    pushLbfPerFt: push.value,
    braceForceLbf: brace.value,
    weightLb: weight.value,
    words:
      shape.kind === 'circle'
        ? 'A strip bent round ribs, which are braced across.'
        : 'Strips along the sides, one of them sawn through aslant so that the frame folds inward when it comes out.',
    lines: [pressure.line, push.line, brace.line, weight.line],
  };
}

/** The way round an opening, in: its straight edges, what is bent, and all of it. */
interface FrameRun {
  readonly straightIn: readonly number[];
  readonly bentIn: number;
  readonly roundIn: number;
}

function roundRun(diameterIn: number): FrameRun {
  const roundIn = Math.PI * diameterIn;
  return { straightIn: [], bentIn: roundIn, roundIn };
}

function straightRun(shape: Exclude<CutoutShape, { kind: 'circle' }>): FrameRun | null {
  const corners = shapeCorners(shape);
  const rounding = corners === null ? null : roundCorners(corners, CHORD_IN);
  if (rounding === null || !rounding.ok) return null;
  const { points, arcCorners } = rounding.outline;
  const lengthsIn = points.map((point, k) => distanceIn(point, points[(k + 1) % points.length]!));
  return {
    straightIn: lengthsIn.filter((_, k) => arcCorners[k] === null),
    bentIn: 0,
    roundIn: polygonPerimeterIn(points),
  };
}

/** Corners as drawn, with their radii. */
function shapeCorners(shape: Exclude<CutoutShape, { kind: 'circle' }>): readonly Corner[] | null {
  if (shape.kind === 'polygon') return shape.corners;
  const sharp = cutoutOutline({ ...shape, radiusIn: 0 }, CHORD_IN);
  return sharp.ok ? sharp.points.map((point) => ({ ...point, radiusIn: shape.radiusIn })) : null;
}
