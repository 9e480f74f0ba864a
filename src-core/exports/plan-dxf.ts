/** The plan as a drawing exchange file. */
import type { DxfWriter as Writer } from '@tarikjabiri/dxf';
import {
  DxfWriter,
  LWPolylineFlags,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  Units,
} from '@tarikjabiri/dxf';
import type { Pen } from '../figure';
import type { Job } from '../job';
import type { Point } from '../outline';
import { MM_PER_IN } from '../units';
import { PLAN_LAYERS } from './plan-layers';
import type { PlanShape } from './plan-shape';
import { planShapes } from './plan-shapes';

/** Colour number 7: black on white paper, white on a black screen. Source: DXF Reference, colour index. */
const BLACK_OR_WHITE = 7;
/** Dashes and gaps of line types, in; a negative length is a gap. Common practice, no source. */
const DASHED = { name: 'Dashed', words: 'Dashes', patternIn: [0.5, -0.25] };
const CHAIN = { name: 'Chain', words: 'Long and short dashes', patternIn: [1.25, -0.25, 0.25, -0.25] };
const LINE_TYPES: Partial<Record<Pen, string>> = { hidden: DASHED.name, centre: CHAIN.name };
/** Decimals that coordinates keep; what is smaller than the last line is nothing. */
const DECIMALS = 1e9;
const NOTHING = 1e-6;

/**
 * Every piece in plan at true scale: inches, or millimetres where the job is shown in metric, as $INSUNITS and $MEASUREMENT say.
 * The outline and the openings are closed polylines with true arcs, or circles. Text, UTF-8 (release AC1021).
 * Source: DXF Reference; group codes by the writing library.
 */
export function planDxf(job: Job): string {
  const isMetric = job.shownIn === 'metric';
  const scale = isMetric ? MM_PER_IN : 1;
  const writer = new DxfWriter();
  writer.setVariable('$LASTSAVEDBY', { 1: 'Ledgewright' });
  writer.setUnits(isMetric ? Units.Millimeters : Units.Inches);
  writer.setVariable('$MEASUREMENT', { 70: isMetric ? 1 : 0 });
  for (const { name, words, patternIn } of [DASHED, CHAIN]) {
    writer.addLType(
      name,
      words,
      patternIn.map((partIn) => partIn * scale),
    );
  }
  for (const { name, pen } of PLAN_LAYERS) writer.addLayer(name, BLACK_OR_WHITE, LINE_TYPES[pen]);
  const shapes = planShapes(job);
  for (const { layer, name } of PLAN_LAYERS) {
    for (const shape of shapes) if (shape.layer === layer) addShape(writer, shape, name, scale);
  }
  return `${writer.stringify()}\n`;
}

function addShape(writer: Writer, shape: PlanShape, layerName: string, scale: number): void {
  const at = ({ xIn, yIn }: Point) => ({ x: tidy(xIn * scale), y: tidy(yIn * scale), z: 0 });
  switch (shape.kind) {
    case 'loop':
      writer.addLWPolyline(
        shape.vertices.map((vertex) => {
          const { x, y } = at(vertex);
          return vertex.bulge === 0 ? { point: { x, y } } : { point: { x, y }, bulge: tidy(vertex.bulge) };
        }),
        { flags: LWPolylineFlags.Closed, layerName },
      );
      return;
    case 'circle':
      writer.addCircle(at(shape.centre), tidy(shape.radiusIn * scale), { layerName });
      return;
    case 'line':
      writer.addLine(at(shape.from), at(shape.to), { layerName });
      return;
    case 'words':
      writer.addText(at(shape.at), tidy(shape.heightIn * scale), oneLine(shape.words), {
        layerName,
        rotation: tidy(shape.turnDeg),
        horizontalAlignment: TextHorizontalAlignment.Center,
        verticalAlignment: TextVerticalAlignment.Middle,
        secondAlignmentPoint: at(shape.at),
      });
  }
}

/** Never in powers of ten, which some readers do not take. */
function tidy(value: number): number {
  return Math.abs(value) < NOTHING ? 0 : Math.round(value * DECIMALS) / DECIMALS;
}

/** Group values end with their line, and two percent signs or a caret begin a code. Source: DXF Reference, from memory. */
function oneLine(words: string): string {
  return words
    .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
    .replace(/%{2,}/g, '%')
    .replaceAll('^', '^ ');
}
