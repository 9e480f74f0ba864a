/** The plan as an SVG file at true scale. */
import { planBounds } from '../drawing';
import type { Job } from '../job';
import type { BoundingBox, Point } from '../outline';
import { boundingBox, directionAt, distanceIn, moved } from '../outline';
import { MM_PER_IN } from '../units';
import type { ArcVertex } from './arc-loops';
import { strokeAttributes } from './pens';
import { PLAN_LAYERS } from './plan-layers';
import type { PlanShape } from './plan-shape';
import { planShapes } from './plan-shapes';
import { LETTER_RATIO, PLAN_MARGIN_IN } from './practice';
import { xmlNumber, xmlText } from './xml-text';

/** A plan in the unit of the file, y down from the top left. */
interface Sheet {
  readonly x: (point: Point) => string;
  readonly y: (point: Point) => string;
  readonly length: (valueIn: number) => string;
  readonly mmPerUnit: number;
}

/** A baseline lies this share of the letters' height below their middle. Common practice, no source. */
const MIDDLE_RATIO = 0.36;

/**
 * Every piece in plan at true scale, a group a layer, arcs as arcs: inches, or millimetres where the job is shown in metric. One unit
 * of the drawing is one unit of its size on paper. Lines keep their width in millimetres. Presentation attributes alone.
 */
export function planSvg(job: Job): string {
  const isMetric = job.shownIn === 'metric';
  const scale = isMetric ? MM_PER_IN : 1;
  const shapes = planShapes(job);
  const box = boundsOf(job, shapes);
  const length = (valueIn: number) => xmlNumber(valueIn * scale);
  const sheet: Sheet = {
    x: ({ xIn }) => length(xIn - box.minXIn),
    y: ({ yIn }) => length(box.maxYIn - yIn),
    length,
    mmPerUnit: isMetric ? 1 : MM_PER_IN,
  };
  const unit = isMetric ? 'mm' : 'in';
  const [width, height] = [length(box.maxXIn - box.minXIn), length(box.maxYIn - box.minYIn)];
  const layers = PLAN_LAYERS.map(({ layer, name, pen }) => {
    const marks = shapes.filter((shape) => shape.layer === layer).map((shape) => markupOf(shape, sheet));
    return `<g id="${layer}" ${strokeAttributes(pen, sheet.mmPerUnit)}><title>${name}</title>${marks.join('')}</g>`;
  });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>\n',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}${unit}" height="${height}${unit}" viewBox="0 0 ${width} ${height}"`,
    ' role="img" font-family="sans-serif" fill="none">',
    `<title>${xmlText(job.name)}, plan at true scale</title>`,
    ...layers,
    '</svg>\n',
  ].join('');
}

function boundsOf(job: Job, shapes: readonly PlanShape[]): BoundingBox {
  const plan = planBounds(job);
  const { minXIn, minYIn, maxXIn, maxYIn } = boundingBox([
    { xIn: plan.minXIn, yIn: plan.minYIn },
    { xIn: plan.maxXIn, yIn: plan.maxYIn },
    ...shapes.flatMap(reachOf),
  ]);
  return {
    minXIn: minXIn - PLAN_MARGIN_IN,
    minYIn: minYIn - PLAN_MARGIN_IN,
    maxXIn: maxXIn + PLAN_MARGIN_IN,
    maxYIn: maxYIn + PLAN_MARGIN_IN,
  };
}

/** Points that must lie on the sheet; outlines and openings lie within the bounds of the plan. */
function reachOf(shape: PlanShape): Point[] {
  switch (shape.kind) {
    case 'line':
      return [shape.from, shape.to];
    case 'words': {
      const halfIn = (shape.words.length * LETTER_RATIO * shape.heightIn) / 2;
      const along = directionAt((shape.turnDeg * Math.PI) / 180);
      return [moved(shape.at, along, -halfIn), moved(shape.at, along, halfIn)];
    }
    case 'loop':
    case 'circle':
      return [];
  }
}

function markupOf(shape: PlanShape, sheet: Sheet): string {
  const { x, y, length } = sheet;
  switch (shape.kind) {
    case 'loop':
      return `<path d="${loopPath(shape.vertices, sheet)}"/>`;
    case 'circle':
      return `<circle cx="${x(shape.centre)}" cy="${y(shape.centre)}" r="${length(shape.radiusIn)}"/>`;
    case 'line':
      return `<path d="M${x(shape.from)} ${y(shape.from)}L${x(shape.to)} ${y(shape.to)}"/>`;
    case 'words': {
      const [atX, atY] = [x(shape.at), y(shape.at)];
      const turn =
        shape.turnDeg === 0 ? '' : ` transform="rotate(${xmlNumber(-shape.turnDeg)} ${atX} ${atY})"`;
      const size = `font-size="${length(shape.heightIn)}" dy="${length(shape.heightIn * MIDDLE_RATIO)}"`;
      return `<text x="${atX}" y="${atY}" ${size} text-anchor="middle" fill="#000" stroke="none"${turn}>${xmlText(shape.words)}</text>`;
    }
  }
}

function loopPath(vertices: readonly ArcVertex[], sheet: Sheet): string {
  const { x, y, length } = sheet;
  const ways = vertices.map((vertex, i) => {
    const next = vertices[(i + 1) % vertices.length]!;
    if (vertex.bulge === 0) return `L${x(next)} ${y(next)}`;
    const radius = length(arcRadiusIn(distanceIn(vertex, next), vertex.bulge));
    // To the left in plan is against the clock on the sheet as well, which SVG calls sweep 0. No corner turns by half a turn.
    return `A${radius} ${radius} 0 0 ${vertex.bulge > 0 ? 0 : 1} ${x(next)} ${y(next)}`;
  });
  return `M${x(vertices[0]!)} ${y(vertices[0]!)}${ways.join('')}Z`;
}

/** Radius of an arc from its chord and bulge, in: c (1 + b^2) / (4 |b|). Plane geometry. */
function arcRadiusIn(chordIn: number, bulge: number): number {
  return (chordIn * (1 + bulge ** 2)) / (4 * Math.abs(bulge));
}
