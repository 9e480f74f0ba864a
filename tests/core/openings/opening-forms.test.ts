import { describe, expect, test } from 'vitest';
import { edgeForms } from '../../../src-core/edge-forms';
import { openingForms } from '../../../src-core/openings';
import { polygonAreaIn2, signedAreaIn2 } from '../../../src-core/outline';
import type { Trace } from '../../../src-core/trace';
import { rectangle } from '../../support/pieces';
import { recompute, recomputeTolerance } from '../../support/recompute';
import { counterWith, findingOf, formsOf, roundOf, sinkOf } from './pieces';

const DROPPED = sinkOf({ widthIn: 33, depthIn: 20 }, { mounting: 'dropped-in' });
const TAP = roundOf('tap', 1.5, { xIn: 20, yIn: 20 });

describe('a plug', () => {
  const [plug] = formsOf(counterWith([TAP]));

  test('in a 2 in slab on 1/2 in board stands 2-1/2 in high and is 5/64 in wider on each side at its foot', () => {
    const { form, heightIn } = plug!;
    if (form.kind !== 'plug') throw new Error('no plug');
    expect(heightIn).toBe(2.5);
    expect(form.taperIn).toBeCloseTo(5 / 64, 12);
    // Frustum of a cone, within what chords leave out: pi h / 3 (R^2 + R r + r^2), r = 0.75, R = 0.828125.
    const [r, R] = [0.75, 0.75 + 5 / 64];
    const frustumIn3 = ((Math.PI * 2.5) / 3) * (R * R + R * r + r * r);
    expect(form.volumeIn3).toBeLessThan(frustumIn3);
    expect(form.volumeIn3).toBeGreaterThan(0.95 * frustumIn3);
  });

  test('with straight sides has the volume of a truncated pyramid', () => {
    const job = counterWith([
      {
        id: 'hole',
        purpose: 'other',
        shape: { kind: 'rectangle', centre: { xIn: 30, yIn: 12 }, widthIn: 4, depthIn: 3 },
      },
    ]);
    const { form } = formsOf(job)[0]!;
    if (form.kind !== 'plug') throw new Error('no plug');
    // Prismatoid h / 6 (A1 + 4 Am + A2) with 4 x 3 at the top, 5/64 in more on each side at the foot.
    const t = 2 * (5 / 64);
    const sidesIn2 = [0, t / 2, t].map((wider) => (4 + wider) * (3 + wider));
    const volumeIn3 = (2.5 / 6) * (sidesIn2[0]! + 4 * sidesIn2[1]! + sidesIn2[2]!);
    expect(form.volumeIn3).toBeCloseTo(volumeIn3, 6);
    expect(form.weightLb).toBeCloseTo((volumeIn3 * 35) / 1728, 6);
  });

  test('narrower than 2 in takes one screw, a 4 in one two', () => {
    const drain = roundOf('drain', 3.5, { xIn: 60, yIn: 12 });
    const counts = formsOf(counterWith([TAP, drain])).map(({ holdDown }) =>
      holdDown.kind === 'screws' ? holdDown.count : null,
    );
    expect(counts).toEqual([1, 2]);
  });
});

describe('a frame', () => {
  test('33 x 22 in leans on 3 braces 11 in apart, each pushed with 1.91 lbf by 2 in of mix', () => {
    const { form } = formsOf(
      counterWith([sinkOf({ widthIn: 33, depthIn: 22 }, { mounting: 'dropped-in' })]),
    )[0]!;
    if (form.kind !== 'frame') throw new Error('no frame');
    expect(form.sides.map(({ lengthIn, braces, bayIn }) => [lengthIn, braces, bayIn])).toEqual([
      [33, 2, 11],
      [22, 1, 11],
      [33, 2, 11],
      [22, 1, 11],
    ]);
    expect(form.braces).toBe(3);
    expect(form.pressurePsf).toBeCloseTo(25, 9);
    // 150 x 2^2 / 3456 = 0.1736 lbf/in, over 11 in 1.91 lbf.
    expect(form.braceForceLbf).toBeCloseTo(1.9097, 4);
    // 110 in round x 1.5 in strip x 2.5 in high x 35 / 1728 = 8.35 lb.
    expect(form.weightLb).toBeCloseTo(8.355, 3);
  });

  test('round, 18 in wide, is bent round 56.5 in round 5 ribs, with 3 braces', () => {
    const { form } = formsOf(counterWith([roundOf('hob', 18, { xIn: 48, yIn: 12.75 })]))[0]!;
    if (form.kind !== 'frame') throw new Error('no frame');
    expect(form.bentIn).toBeCloseTo(18 * Math.PI, 9);
    expect(form.braces).toBe(3);
    expect(form.sides).toEqual([]);
  });

  test('leaves the strips of a narrow opening no room, so that it becomes a plug', () => {
    const slot = (depthIn: number) => ({
      id: 'slot',
      purpose: 'other' as const,
      shape: { kind: 'rectangle' as const, centre: { xIn: 48, yIn: 12 }, widthIn: 20, depthIn },
    });
    expect(formsOf(counterWith([slot(4)]))[0]!.form.kind).toBe('plug');
    expect(formsOf(counterWith([slot(4.5)]))[0]!.form.kind).toBe('frame');
    expect(formsOf(counterWith([slot(4.5)], { forms: { stripWidthIn: 2.5 } }))[0]!.form.kind).toBe('plug');
  });
});

describe('what holds a form down', () => {
  test('a 33 x 20 in frame floats with 106.5 lbf; nine screws of 113 lbf each hold it, driven from below', () => {
    const form = formsOf(counterWith([DROPPED]))[0]!;
    // 150 x 33 x 20 x 2 / 1728 = 114.58 lb displaced; the strips weigh 106 x 1.5 x 2.5 x 35 / 1728 = 8.05 lb.
    expect(form.uplift.upliftLbf).toBeCloseTo(114.583 - 8.051, 2);
    // NDS 2018 12.2.2: 2850 x 0.42^2 x 0.164 = 82.45 lbf/in; thread 2.5 - 0.46875 - 0.328 = 1.703 in; x 1.15 x 0.7.
    const oneLbf = 2850 * 0.42 ** 2 * 0.164 * (2.5 - 0.46875 - 0.328) * 1.15 * 0.7;
    expect(oneLbf).toBeCloseTo(113.04, 1);
    // 106 in round at 12 in: 9 screws.
    expect(form.holdDown).toMatchObject({
      kind: 'screws',
      count: 9,
      lengthIn: 2.5,
      reachedFrom: 'below',
      mustComeOut: true,
    });
    expect(form.holdDown.capacityLbf).toBeCloseTo(9 * oneLbf, 6);
    expect(findingOf(form, 'held-down')).toMatchObject({ level: 'ok', unit: 'lbf' });
  });

  test('more uplift takes more screws: fourteen for a 60 x 20 in opening in a 6 in slab', () => {
    const job = counterWith([sinkOf({ widthIn: 60, depthIn: 20 }, { mounting: 'dropped-in' })], {}, 6);
    const form = formsOf(job)[0]!;
    const { holdDown } = form;
    if (holdDown.kind !== 'screws') throw new Error('no screws');
    expect(holdDown.capacityLbf).toBeGreaterThanOrEqual(form.uplift.upliftLbf);
    expect(holdDown.count).toBe(14);
  });

  test('a 1 in slab without board leaves no wood for a screw', () => {
    const form = formsOf(counterWith([DROPPED], { falsework: { backingBoardIn: 0 } }, 1))[0]!;
    expect(form.holdDown.kind).toBe('none');
    expect(findingOf(form, 'held-down').level).toBe('attention');
  });

  test('a bowl that is cast in is held by a rod through its drain, as far as that goes', () => {
    const cast = (widthIn: number, thicknessIn: number) =>
      formsOf(
        counterWith([sinkOf({ widthIn, depthIn: 20 }, { mounting: 'cast-over' })], {}, thicknessIn),
      )[0]!;
    expect(cast(20, 2).holdDown.kind).toBe('rod');
    expect(findingOf(cast(20, 2), 'held-down').level).toBe('ok');
    // 150 x 40 x 20 x 6 / 1728 = 417 lb displaced, above what one rod is trusted with.
    expect(findingOf(cast(40, 6), 'held-down')).toMatchObject({ level: 'attention', value: 300 });
  });
});

describe('forms of a piece', () => {
  const job = counterWith([DROPPED, { ...TAP, name: 'Tap' }, roundOf('drain', 3.5, { xIn: 80, yIn: 12 })]);

  test('are one a cutout, each with its own id and the cutout it comes from', () => {
    const forms = formsOf(job);
    expect(forms.map(({ id }) => id)).toEqual([
      'piece/cutout/sink/form',
      'piece/cutout/tap/form',
      'piece/cutout/drain/form',
    ]);
    expect(forms.map(({ trace }) => trace.part)).toEqual(
      ['sink', 'tap', 'drain'].map((id) => ({ kind: 'cutout', id })),
    );
    const ids = forms.flatMap(({ findings }) => findings.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('are alike on every call, and leave the job as it was', () => {
    const before = JSON.stringify(job);
    expect(formsOf(job)).toEqual(formsOf(job));
    expect(JSON.stringify(job)).toBe(before);
  });

  test('show workings that can be worked again by hand', () => {
    for (const form of formsOf(job)) {
      const lines = [
        form.uplift.line,
        ...form.form.lines,
        ...form.holdDown.lines,
        ...(form.infill?.lines ?? []),
      ];
      expect(lines.length).toBeGreaterThan(3);
      for (const line of lines) {
        expect(Math.abs(recompute(line) - line.value)).toBeLessThanOrEqual(recomputeTolerance(line));
      }
    }
  });

  test('are none where the outline cannot be built', () => {
    const corners = rectangle(96, 25.5).map((corner) => ({ ...corner, radiusIn: 40 }));
    const broken = { ...job.pieces[0]!, corners };
    expect(openingForms(job, broken)).toEqual([]);
  });

  test('have a template that runs the other way round and has the same area', () => {
    for (const { opening, template } of formsOf(job)) {
      expect(signedAreaIn2(opening)).toBeGreaterThan(0);
      expect(signedAreaIn2(template.outlineFromBelow)).toBeCloseTo(-polygonAreaIn2(opening), 9);
    }
  });
});

test('the strips and plugs of the edge forms are as high as the forms of openings, and only those on a bowl take no screw', () => {
  const job = counterWith([
    TAP,
    sinkOf({ widthIn: 20, depthIn: 14 }, { mounting: 'dropped-in' }, { id: 'on-deck', xIn: 40 }),
    sinkOf({ widthIn: 20, depthIn: 14 }, { mounting: 'cast-over' }, { id: 'on-bowl', xIn: 75 }),
  ]);
  const result = edgeForms(job, job.pieces[0]!);
  if (!result.ok) throw new Error('cannot be drawn');
  const { forms, plugs, screws } = result.forms;
  const isOf = (id: string) => (item: { readonly trace: Trace }) =>
    item.trace.part.kind === 'cutout' && item.trace.part.id === id;
  const heights = formsOf(job).map(({ trace, heightIn, standsOn, form }) => {
    const id = trace.part.kind === 'cutout' ? trace.part.id : '';
    const strips = [...forms, ...plugs].filter(isOf(id));
    expect(strips.every((strip) => strip.heightIn === heightIn)).toBe(true);
    expect(plugs.some(isOf(id))).toBe(form.kind === 'plug');
    expect(screws.some(isOf(id))).toBe(standsOn === 'deck');
    return [id, heightIn, strips.length];
  });
  // 2 in of slab, and 1/2 in of board where they stand on the deck
  expect(heights).toEqual([
    ['tap', 2.5, 1],
    ['on-deck', 2.5, 4],
    ['on-bowl', 2, 4],
  ]);
});
