import { describe, expect, test } from 'vitest';
import { planSvg } from '../../../src-core/exports';
import type { Job } from '../../../src-core/job';
import { roundedAreaIn2, roundedPerimeterIn } from '../../../src-core/outline';
import { jobOf, rectangle } from '../../support/pieces';
import { exampleJobs } from '../solid/closed-shell';
import { areaOf, perimeterOf } from './bulged';
import type { Tag } from './svg-reader';
import { loopOf, readSvg } from './svg-reader';

const outlinesOf = (tags: readonly Tag[]) =>
  tags
    .filter(({ name, within }) => name === 'path' && within.includes('slab-outline'))
    .map(({ attributes }) => loopOf(attributes.get('d')!));

/** Inches of paper that one unit of the drawing is printed at. */
function inPerUnit({ attributes }: Tag): { readonly x: number; readonly y: number } {
  const [, , wide, high] = attributes.get('viewBox')!.split(' ').map(Number) as [
    number,
    number,
    number,
    number,
  ];
  const size = (name: string) => {
    const [, value, unit] = /^([\d.]+)(in|mm)$/.exec(attributes.get(name)!)!;
    return Number(value) / (unit === 'mm' ? 25.4 : 1);
  };
  return { x: size('width') / wide, y: size('height') / high };
}

describe.each(exampleJobs())('$file', ({ job }) => {
  test.each(['imperial', 'metric'] as const)(
    'in %s every outline has its area and boundary at true scale',
    (shownIn) => {
      const tags = readSvg(planSvg({ ...job, shownIn }));
      const scale = inPerUnit(tags[0]!);
      expect(scale.x).toBeCloseTo(shownIn === 'metric' ? 1 / 25.4 : 1, 9);
      expect(scale.y).toBeCloseTo(scale.x, 9);
      const outlines = outlinesOf(tags);
      expect(outlines).toHaveLength(job.pieces.length);
      job.pieces.forEach((piece, i) => {
        const areaIn2 = areaOf(outlines[i]!) * scale.x ** 2;
        expect(Math.abs(areaIn2 / roundedAreaIn2(piece.corners) - 1)).toBeLessThan(1e-4);
        const lengthIn = perimeterOf(outlines[i]!) * scale.x;
        expect(Math.abs(lengthIn / roundedPerimeterIn(piece.corners) - 1)).toBeLessThan(1e-4);
      });
    },
  );

  test('everything lies on the sheet', () => {
    const tags = readSvg(planSvg(job));
    const [, , wide, high] = tags[0]!.attributes.get('viewBox')!.split(' ').map(Number) as number[];
    for (const { name, attributes } of tags) {
      const points =
        name === 'path'
          ? loopOf(attributes.get('d')!).map(({ x, y }) => [x, -y] as const)
          : name === 'text'
            ? [[Number(attributes.get('x')), Number(attributes.get('y'))] as const]
            : [];
      for (const [x, y] of points) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(wide!);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(high!);
      }
    }
  });

  test('no style leaves with it', () => {
    expect(planSvg(job)).not.toMatch(/<style|style=|<script|\bon\w+=/);
  });
});

describe('a plan at true scale', () => {
  const job: Job = jobOf({ corners: rectangle(40, 20), thicknessIn: 2, name: 'Bench <1> & "2"' });

  test('lines keep 0.7 mm for what is cut: 0.7 in millimetres, 0.0276 in inches', () => {
    const width = (shown: Job) =>
      readSvg(planSvg(shown))
        .find(({ attributes }) => attributes.get('id') === 'slab-outline')!
        .attributes.get('stroke-width');
    expect(width({ ...job, shownIn: 'metric' })).toBe('0.7');
    expect(width(job)).toBe('0.0276');
  });

  test('names with marks of the markup in them read back as they were', () => {
    const words = readSvg(planSvg(job)).map(({ text }) => text);
    expect(words).toContain('Bench <1> & "2", 2 in thick');
  });

  test('the front of the plan is at the foot of the sheet', () => {
    const ell = jobOf({
      corners: [
        { xIn: 0, yIn: 0 },
        { xIn: 40, yIn: 0 },
        { xIn: 0, yIn: 20 },
      ],
      thicknessIn: 2,
    });
    const [outline] = outlinesOf(readSvg(planSvg(ell)));
    const [first, second, third] = outline!;
    expect(first!.y).toBe(second!.y);
    expect(third!.y - first!.y).toBe(20);
    expect(second!.x - first!.x).toBe(40);
  });
});
