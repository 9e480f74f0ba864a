import { describe, expect, test } from 'vitest';
import type { CutoutTemplate, TemplatePage } from '../../../src-core/exports';
import { cutoutTemplate } from '../../../src-core/exports';
import type { Mark, Paper, PaperPoint } from '../../../src-core/figure';
import type { Job } from '../../../src-core/job';
import { cutoutInPlan } from '../../../src-core/job';
import type { Point, Segment } from '../../../src-core/outline';
import {
  between,
  distanceIn,
  edgesOf,
  nearestOnSegment,
  polygonPerimeterIn,
} from '../../../src-core/outline';
import { jobOf, rectangle } from '../../support/pieces';
import { exampleJobs } from '../solid/closed-shell';

type CutoutDraft = Job['pieces'][number]['cutouts'][number]['shape'];
type Run = Extract<Mark, { kind: 'run' }>;

const SINK: CutoutDraft = {
  kind: 'rectangle',
  centre: { xIn: 40, yIn: 13 },
  widthIn: 33,
  depthIn: 20,
  radiusIn: 3,
  angleDeg: 0,
};

const jobWith = (shape: CutoutDraft): Job =>
  jobOf({ corners: rectangle(400, 300), thicknessIn: 2, cutouts: [{ id: 'cut', purpose: 'sink', shape }] });

function pagesOf(template: CutoutTemplate): readonly TemplatePage[] {
  if (!template.ok) throw new Error(template.sentence);
  return template.pages;
}

const templateOf = (shape: CutoutDraft, paper: Paper = 'letter', seenFrom: 'above' | 'below' = 'above') =>
  cutoutTemplate(jobWith(shape), 'piece', 'cut', paper, seenFrom);

const runsOf = ({ figure }: TemplatePage, pen: string) =>
  figure.marks.filter((mark): mark is Run => mark.kind === 'run' && mark.pen === pen);
const linesOf = ({ figure }: TemplatePage, pen: string) =>
  figure.marks.filter((mark) => mark.kind === 'line' && mark.pen === pen) as Extract<
    Mark,
    { kind: 'line' }
  >[];
const wordsOf = ({ figure }: TemplatePage) =>
  figure.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.words] : []));

/** From the paper back to the drawing, by the frame alone, whose left, lower corner lies at the box's. */
function toPlan(page: TemplatePage): (at: PaperPoint) => Point {
  const [frame] = runsOf(page, 'hidden');
  const left = Math.min(...frame!.points.map(({ x }) => x));
  const foot = Math.max(...frame!.points.map(({ y }) => y));
  return ({ x, y }) => ({ xIn: page.box.minXIn + x - left, yIn: page.box.minYIn + foot - y });
}

function segmentsOf({ points, isClosed }: Run, plan: (at: PaperPoint) => Point): Segment[] {
  const all = edgesOf(points.map(plan));
  return isClosed ? all : all.slice(0, -1);
}

/** Greatest distance of points along an outline from what the pages draw of it, in. */
function farthestIn(outline: readonly Point[], pages: readonly TemplatePage[]): number {
  const drawn = pages.flatMap((page) => runsOf(page, 'cut').flatMap((run) => segmentsOf(run, toPlan(page))));
  const samples = edgesOf(outline).flatMap(({ a, b }) =>
    [0, 0.25, 0.5, 0.75].map((share) => between(a, b, share)),
  );
  return Math.max(
    ...samples.map((at) => Math.min(...drawn.map((side) => distanceIn(at, nearestOnSegment(at, side))))),
  );
}

function exactOutline(job: Job, pieceId: string, cutoutId: string): readonly Point[] {
  const piece = job.pieces.find(({ id }) => id === pieceId)!;
  const index = piece.cutouts.findIndex(({ id }) => id === cutoutId);
  const plan = cutoutInPlan(piece, index, { chordToleranceIn: 1e-4 });
  if (!plan.ok) throw new Error('The opening cannot be drawn');
  return plan.points;
}

const exampleOpenings = exampleJobs().flatMap(({ job }) =>
  job.pieces.flatMap((piece) => piece.cutouts.map(({ id }) => ({ job, pieceId: piece.id, cutoutId: id }))),
);

describe.each(['letter', 'a4'] as const)('on %s', (paper) => {
  test('the example jobs have openings', () => {
    expect(exampleOpenings.length).toBeGreaterThan(2);
  });

  test.each(exampleOpenings)(
    'the pages of $pieceId, $cutoutId show the whole outline, within 1/500 in',
    ({ job, pieceId, cutoutId }) => {
      const pages = pagesOf(cutoutTemplate(job, pieceId, cutoutId, paper));
      expect(farthestIn(exactOutline(job, pieceId, cutoutId), pages)).toBeLessThan(1 / 500);
    },
  );

  test('a 33 x 20 in sink is covered wholly, seen from above and mirrored', () => {
    const outline = exactOutline(jobWith(SINK), 'piece', 'cut');
    expect(farthestIn(outline, pagesOf(templateOf(SINK, paper)))).toBeLessThan(1 / 500);
    const mirrored = outline.map(({ xIn, yIn }) => ({ xIn: 80 - xIn, yIn }));
    expect(farthestIn(mirrored, pagesOf(templateOf(SINK, paper, 'below')))).toBeLessThan(1 / 500);
  });

  test('a page less, and the outline is not covered', () => {
    const pages = pagesOf(templateOf(SINK, paper));
    const outline = exactOutline(jobWith(SINK), 'piece', 'cut');
    for (const left of pages) {
      expect(
        farthestIn(
          outline,
          pages.filter((page) => page !== left),
        ),
      ).toBeGreaterThan(0.1);
    }
  });

  test('the check square of every page is 100 mm each way, to 1e-9 mm, square and on the page', () => {
    for (const page of [...pagesOf(templateOf(SINK, paper)), ...pagesOf(templateOf(SINK, paper, 'below'))]) {
      const [square, ...others] = runsOf(page, 'thin');
      expect(others).toEqual([]);
      const corners = square!.points;
      expect(corners).toHaveLength(4);
      corners.forEach((p, i) => {
        const [q, r] = [corners[(i + 1) % 4]!, corners[(i + 2) % 4]!];
        expect(Math.abs(Math.hypot(q.x - p.x, q.y - p.y) * 25.4 - 100)).toBeLessThan(1e-9);
        expect(Math.abs(Math.hypot(r.x - p.x, r.y - p.y) * 25.4 - 100 * Math.SQRT2)).toBeLessThan(1e-9);
        expect(p.x).toBeGreaterThan(0.5);
        expect(p.x).toBeLessThan(page.figure.widthIn - 0.5);
        expect(p.y).toBeGreaterThan(0.5);
        expect(p.y).toBeLessThan(page.figure.heightIn - 0.5);
      });
    }
  });

  test('every page is a whole sheet of its paper at 1 : 1 and drawn within half an inch of its edge', () => {
    const [widthIn, heightIn] = paper === 'letter' ? [8.5, 11] : [210 / 25.4, 297 / 25.4];
    for (const { figure } of pagesOf(templateOf(SINK, paper))) {
      expect([figure.widthIn, figure.heightIn]).toEqual([widthIn, heightIn]);
      expect(figure.scaleWords).toBe('1 : 1');
      const points = figure.marks.flatMap((mark) =>
        mark.kind === 'line' ? [mark.from, mark.to] : mark.kind === 'run' ? mark.points : [],
      );
      for (const { x, y } of points) {
        expect(x).toBeGreaterThan(0.5 - 1e-9);
        expect(x).toBeLessThan(widthIn! - 0.5 + 1e-9);
        expect(y).toBeGreaterThan(0.5 - 1e-9);
        expect(y).toBeLessThan(heightIn! - 0.5 + 1e-9);
      }
    }
  });

  test('each cross is printed on two pages at least at the same place of the drawing, and each page has some', () => {
    const pages = pagesOf(templateOf(SINK, paper));
    const middles = pages.map((page) => {
      const plan = toPlan(page);
      // The two strokes of a cross follow one another, the level one first.
      return linesOf(page, 'thin')
        .filter(({ from, to }) => from.y === to.y)
        .map(({ from, to }) => between(plan(from), plan(to), 0.5));
    });
    for (const own of middles) expect(own.length).toBeGreaterThanOrEqual(2);
    middles.forEach((own, i) => {
      for (const at of own) {
        const shared = middles.some(
          (other, k) => k !== i && other.some((there) => distanceIn(at, there) < 1e-9),
        );
        expect(shared).toBe(true);
      }
    });
  });
});

describe('what a page says', () => {
  const pages = pagesOf(templateOf(SINK));

  test('a 33 x 20 in sink takes 5 x 3 letter sheets less the 3 in its middle, which hold no outline', () => {
    // by hand: 7 in and 8.7 in a page beyond the overlap; (34 - 0.5) / 7 = 4.8, (21 - 0.5) / 8.7 = 2.4
    expect(pages.map(({ label }) => label)).toEqual([
      ...['A1', 'B1', 'C1', 'D1', 'E1'],
      ...['A2', 'E2'],
      ...['A3', 'B3', 'C3', 'D3', 'E3'],
    ]);
  });

  test('its place, the face, the front edge and the square', () => {
    expect(wordsOf(pages[1]!)).toEqual(
      expect.arrayContaining([
        'B1 of 5x3',
        'This face up',
        'This edge front',
        'Measure this square: 100 mm each side;',
        'if it is not, print at 100 %.',
      ]),
    );
  });

  test('the mirrored template says so, and its words are not mirrored', () => {
    const [page] = pagesOf(templateOf(SINK, 'letter', 'below'));
    expect(wordsOf(page!)).toContain('Mirrored: this face down');
    expect(wordsOf(page!)).not.toContain('This face up');
  });

  test('ids tell every page and both faces apart', () => {
    const all = [...pages, ...pagesOf(templateOf(SINK, 'letter', 'below'))].map(({ figure }) => figure.id);
    expect(new Set(all).size).toBe(all.length);
    expect(all[0]).toBe('template-piece-cut-from-above-a1');
  });
});

describe('a tap hole of 1-3/8 in', () => {
  const tap: CutoutDraft = { kind: 'circle', centre: { xIn: 54, yIn: 21.5 }, diameterIn: 1.375 };
  const pages = pagesOf(templateOf(tap));
  const [page] = pages;

  test('fits one page, a closed circle of pi 1.375 in', () => {
    expect(pages).toHaveLength(1);
    const [hole, ...others] = runsOf(page!, 'cut');
    expect(others).toEqual([]);
    expect(hole!.isClosed).toBe(true);
    const lengthIn = polygonPerimeterIn(hole!.points.map(toPlan(page!)));
    expect(Math.abs(lengthIn / (Math.PI * 1.375) - 1)).toBeLessThan(5e-3);
  });

  test('its centre lines cross in its centre', () => {
    const [along, across] = linesOf(page!, 'centre');
    const plan = toPlan(page!);
    for (const { from, to } of [along!, across!]) {
      expect(distanceIn(between(plan(from), plan(to), 0.5), tap.centre)).toBeLessThan(1e-9);
      expect(distanceIn(plan(from), plan(to))).toBeCloseTo(2.375, 2);
    }
  });

  test('the square keeps clear of it', () => {
    const [square] = runsOf(page!, 'thin');
    const [hole] = runsOf(page!, 'cut');
    const lowest = Math.max(...square!.points.map(({ y }) => y));
    expect(Math.min(...hole!.points.map(({ y }) => y))).toBeGreaterThan(lowest);
  });
});

describe('shapes', () => {
  const turned: CutoutDraft = { ...SINK, kind: 'rectangle', angleDeg: 35 } as CutoutDraft;
  const free: CutoutDraft = {
    kind: 'polygon',
    corners: [
      { xIn: 10, yIn: 5, radiusIn: 0 },
      { xIn: 30, yIn: 5, radiusIn: 2 },
      { xIn: 22, yIn: 20, radiusIn: 0 },
      { xIn: 10, yIn: 16, radiusIn: 1 },
    ],
  };

  test.each([
    { of: 'a turned sink', shape: turned },
    { of: 'a free shape', shape: free },
  ])('$of is covered wholly', ({ shape }) => {
    const outline = exactOutline(jobWith(shape), 'piece', 'cut');
    expect(farthestIn(outline, pagesOf(templateOf(shape)))).toBeLessThan(1 / 500);
  });

  test('the centre lines of a turned sink run along its own sides', () => {
    const directions = pagesOf(templateOf(turned)).flatMap((page) =>
      linesOf(page, 'centre').map(({ from, to }) => {
        const [p, q] = [from, to].map(toPlan(page)) as [Point, Point];
        return (((Math.atan2(q.yIn - p.yIn, q.xIn - p.xIn) * 180) / Math.PI + 360) % 180).toFixed(6);
      }),
    );
    expect(new Set(directions)).toEqual(new Set(['35.000000', '125.000000']));
  });

  test('an opening of 20 ft asks to be marked out from its dimensions', () => {
    const template = templateOf({
      ...SINK,
      kind: 'rectangle',
      widthIn: 240,
      centre: { xIn: 200, yIn: 100 },
    } as CutoutDraft);
    expect(template).toEqual({
      ok: false,
      sentence:
        'Sink of Piece is too large for a paper template: it would take more than 26 pages in a row. Mark it out from its dimensions.',
    });
  });

  test('a radius that does not fit is said, in the units of the job', () => {
    const template = templateOf({ ...SINK, kind: 'rectangle', radiusIn: 15 } as CutoutDraft);
    expect(template.ok).toBe(false);
    expect(!template.ok && template.sentence).toContain('the corner radius does not fit the cutout.');
  });

  test('an opening that is not in the job is a fault of ours', () => {
    expect(() => cutoutTemplate(jobWith(SINK), 'piece', 'other', 'a4')).toThrow('No opening other in piece');
  });
});
