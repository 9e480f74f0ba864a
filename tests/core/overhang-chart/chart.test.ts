import { describe, expect, test } from 'vitest';
import type { ChartBasis, ChartProgress, ChartRow } from '../../../src-core/overhang-chart';
import {
  chartProblems,
  chartRowSchema,
  DEFAULT_CHART_BASIS,
  overhangChart,
  ruleOfThumbIn,
  spacingRows,
  thicknessRows,
} from '../../../src-core/overhang-chart';

const QUICK: ChartBasis = { ...DEFAULT_CHART_BASIS, lengthIn: 48, coarseMeshIn: 3, fineMeshIn: 3 };
/** Without a judgement of brackets, so that a row over thickness has little to compute. */
const BLOCK: ChartBasis = { ...QUICK, root: { ...QUICK.root, build: 'block' } };

describe('the overhang chart', () => {
  test('gives each row as soon as it is done, with six entries over thickness', () => {
    const seen: ChartProgress[] = [];
    const rows = overhangChart(BLOCK, thicknessRows([3, 4]), { onProgress: (at) => seen.push(at) });
    const first = rows.next().value as ChartRow;
    expect(first).toMatchObject({ over: 'thickness', thicknessIn: 3, spacingIn: null });
    expect(first.entries.map(({ withSteel, spacingIn }) => [withSteel, spacingIn])).toEqual([
      [false, null],
      [true, null],
      [false, 12],
      [false, 16],
      [false, 24],
      [false, 32],
    ]);
    expect(seen.every(({ asked, total }) => asked.thicknessIn === 3 && total === 12)).toBe(true);
    expect(rows.next().value).toMatchObject({ thicknessIn: 4 });
    expect(rows.next().done).toBe(true);
    expect(seen.at(-1)!.done).toBe(7);
  });

  test('over bracket spacing gives a row a spacing, alone and with steel, that a file can keep', () => {
    const rows = [...overhangChart(QUICK, spacingRows(2).slice(0, 1))];
    expect(rows).toHaveLength(1);
    expect(rows[0]!.entries.map(({ withSteel, spacingIn }) => [withSteel, spacingIn])).toEqual([
      [false, 12],
      [true, 12],
    ]);
    expect(chartRowSchema.parse(JSON.parse(JSON.stringify(rows[0])))).toEqual(rows[0]);
  });

  test('ends early, with the rows that were done, where it is cancelled', () => {
    let entries = 0;
    const hooks = {
      onProgress: ({ done }: ChartProgress) => {
        entries = done;
      },
      isCancelled: () => entries > 6,
    };
    expect([...overhangChart(BLOCK, thicknessRows([3, 4, 2]), hooks)]).toHaveLength(1);
  });

  test('asks for 1 to 4 in, and for brackets 12 to 48 in apart', () => {
    expect(thicknessRows().map(({ thicknessIn }) => thicknessIn)).toEqual([1, 1.5, 2, 2.5, 3, 4]);
    expect(spacingRows(1.5).map(({ spacingIn }) => spacingIn)).toEqual([12, 16, 24, 32, 48]);
  });
});

describe('what a chart cannot be computed for', () => {
  const paths = (basis: Partial<ChartBasis>, rows = thicknessRows()) =>
    chartProblems({ ...DEFAULT_CHART_BASIS, ...basis }, rows).map(({ path }) => path);

  test('nothing is wrong with the default', () => {
    expect(paths({})).toEqual([]);
  });

  test('a mesh, a bar and a bracket that are not in the tables, and a strength that no concrete has', () => {
    expect(paths({ steel: { kind: 'mesh', id: '#3' } })).toEqual(['steel']);
    expect(paths({ steel: { kind: 'bars', id: '#3', spacingIn: Number.NaN } })).toEqual(['steel']);
    expect(paths({ bracket: { armId: 'hook', ratedAtTipLbf: null } })).toEqual(['bracket']);
    expect(paths({ strengthPsi: 30 })).toEqual(['strengthPsi']);
  });

  test('a slab under 1 in or over 6 in is for an engineer', () => {
    expect(paths({}, thicknessRows([1, 6]))).toEqual([]);
    expect(paths({}, thicknessRows([0.99]))).toEqual(['rows']);
    expect(paths({}, thicknessRows([6.01]))).toEqual(['rows']);
  });
});

test('on a 5-1/2 in wall a third of the depth stops a ledge at 2-3/4 in, on a 24 in one the 10 in do', () => {
  expect(ruleOfThumbIn(DEFAULT_CHART_BASIS)).toBeCloseTo(2.75, 12);
  const wide = { ...DEFAULT_CHART_BASIS, root: { ...DEFAULT_CHART_BASIS.root, widthIn: 24 } };
  expect(ruleOfThumbIn(wide)).toBe(10);
});
