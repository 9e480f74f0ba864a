import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { ChartBasis, ChartRow, ChartRowRequest } from '../../../src-core/overhang-chart';
import { DEFAULT_CHART_BASIS, overhangChart, thicknessRows } from '../../../src-core/overhang-chart';
import { cacheFolder } from '../../../src-main/overhang-cache/cache-folder';
import { engineVersion } from '../../../src-main/overhang-cache/engine-version';
import { keptChart } from '../../../src-main/overhang-cache/kept-chart';
import { openRowCache } from '../../../src-main/overhang-cache/row-cache';

/** A thick ledge on a block wall: two runs of the engine an entry, and no brackets to judge. */
const BASIS: ChartBasis = {
  ...DEFAULT_CHART_BASIS,
  lengthIn: 48,
  coarseMeshIn: 3,
  fineMeshIn: 3,
  root: { ...DEFAULT_CHART_BASIS.root, build: 'block' },
};
const [REQUEST, OTHER] = thicknessRows([3, 4]) as [ChartRowRequest, ChartRowRequest];
const ROW = overhangChart(BASIS, [REQUEST]).next().value as ChartRow;

function inFolder(use: (folder: string) => void): void {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-cache-'));
  try {
    use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

describe('rows that are kept', () => {
  test('are found again by another run of the same engine, number for number', () => {
    inFolder((folder) => {
      expect(openRowCache(folder, 'one').find(BASIS, REQUEST)).toBeNull();
      expect(openRowCache(folder, 'one').keep(BASIS, REQUEST, ROW)).toBeNull();
      expect(openRowCache(folder, 'one').find(BASIS, REQUEST)).toEqual(ROW);
      expect(readdirSync(folder)).toEqual(['overhang-chart.json']);
    });
  });

  test('are not those of another engine, basis or thickness', () => {
    inFolder((folder) => {
      openRowCache(folder, 'one').keep(BASIS, REQUEST, ROW);
      expect(openRowCache(folder, 'two').find(BASIS, REQUEST)).toBeNull();
      const cache = openRowCache(folder, 'one');
      expect(cache.find({ ...BASIS, strengthPsi: 5000 }, REQUEST)).toBeNull();
      expect(cache.find({ ...BASIS, limits: { ...BASIS.limits, tieFactor: 2 } }, REQUEST)).toBeNull();
      expect(cache.find(BASIS, OTHER)).toBeNull();
    });
  });

  test('are the same whichever way round their inputs are written', () => {
    inFolder((folder) => {
      openRowCache(folder, 'one').keep(BASIS, REQUEST, ROW);
      const turned = Object.fromEntries(Object.entries(BASIS).reverse()) as unknown as ChartBasis;
      expect(openRowCache(folder, 'one').find(turned, REQUEST)).toEqual(ROW);
    });
  });

  test('of two runs at once are both kept', () => {
    inFolder((folder) => {
      const [one, two] = [openRowCache(folder, 'one'), openRowCache(folder, 'one')];
      one.keep(BASIS, REQUEST, ROW);
      two.keep(BASIS, OTHER, { ...ROW, thicknessIn: 4 });
      const later = openRowCache(folder, 'one');
      expect(later.find(BASIS, REQUEST)).toEqual(ROW);
      expect(later.find(BASIS, OTHER)?.thicknessIn).toBe(4);
    });
  });

  test.each([
    ['nothing', ''],
    ['half a file', '{"engine":"one","rows":[{"key"'],
    ['a file of something else', '{"engine":"one","rows":[{"key":"a","row":{"over":"night"}}]}'],
  ])('count as none where the file holds %s, and are kept again', (_, text) => {
    inFolder((folder) => {
      writeFileSync(join(folder, 'overhang-chart.json'), text);
      expect(openRowCache(folder, 'one').find(BASIS, REQUEST)).toBeNull();
      openRowCache(folder, 'one').keep(BASIS, REQUEST, ROW);
      expect(openRowCache(folder, 'one').find(BASIS, REQUEST)).toEqual(ROW);
    });
  });

  test('cannot be kept where a file stands in place of the folder, and that is said', () => {
    inFolder((folder) => {
      const taken = join(folder, 'taken');
      writeFileSync(taken, '');
      expect(openRowCache(taken, 'one').keep(BASIS, REQUEST, ROW)).toMatch(/EEXIST|ENOTDIR/);
    });
  });

  test('are no more than 400: the first go first', () => {
    inFolder((folder) => {
      const keyOf = (i: number) => ({ ...REQUEST, thicknessIn: 1 + i / 1000 });
      const cache = openRowCache(folder, 'one');
      for (let i = 0; i <= 400; i++) cache.keep(BASIS, keyOf(i), ROW);
      const { rows } = JSON.parse(readFileSync(join(folder, 'overhang-chart.json'), 'utf8')) as {
        rows: readonly unknown[];
      };
      expect(rows).toHaveLength(400);
      expect(cache.find(BASIS, keyOf(0))).toBeNull();
      expect(cache.find(BASIS, keyOf(400))).toEqual(ROW);
    });
  });
});

describe('the chart with a cache', () => {
  test('runs the engine only for rows that are not kept, in the order asked for, and for all when fresh', () => {
    inFolder((folder) => {
      const cache = openRowCache(folder, 'one');
      cache.keep(BASIS, OTHER, { ...ROW, thicknessIn: 4 });
      const run = (fresh: boolean) => {
        const tried = new Set<number>();
        const onProgress = ({ asked }: { asked: { thicknessIn: number } }) => tried.add(asked.thicknessIn);
        const rows = [...keptChart(BASIS, [REQUEST, OTHER], cache, { onProgress, fresh })];
        return { tried: [...tried], rows };
      };
      const first = run(false);
      expect(first.tried).toEqual([3]);
      expect(first.rows.map(({ isFromCache, row }) => [isFromCache, row.thicknessIn])).toEqual([
        [false, 3],
        [true, 4],
      ]);
      const second = run(false);
      expect(second.tried).toEqual([]);
      expect(second.rows[0]!.row).toEqual(ROW);
      expect(run(true).tried).toEqual([3, 4]);
    });
  });
});

describe('the cache folder', () => {
  test('is the one that each system has for it', () => {
    expect(cacheFolder({ XDG_CACHE_HOME: '/x' }, 'linux', '/h')).toBe(join('/x', 'ledgewright'));
    expect(cacheFolder({ XDG_CACHE_HOME: '' }, 'linux', '/h')).toBe(join('/h', '.cache', 'ledgewright'));
    expect(cacheFolder({}, 'darwin', '/h')).toBe(join('/h', 'Library', 'Caches', 'ledgewright'));
    expect(cacheFolder({ LOCALAPPDATA: '/l' }, 'win32', '/h')).toBe(join('/l', 'ledgewright'));
  });
});

describe('the engine whose rows are kept', () => {
  test('has another name once a source of the core changes', () => {
    inFolder((folder) => {
      const core = join(folder, 'core');
      mkdirSync(join(core, 'plate'), { recursive: true });
      writeFileSync(join(core, 'plate', 'mesh.ts'), 'export const a = 1;\n');
      const before = engineVersion('0.1.0', core);
      expect(before).toMatch(/^0\.1\.0\+[0-9a-f]{16}$/);
      expect(engineVersion('0.1.0', core)).toBe(before);
      writeFileSync(join(core, 'plate', 'mesh.ts'), 'export const a = 2;\n');
      expect(engineVersion('0.1.0', core)).not.toBe(before);
    });
  });

  test('goes by its version alone where there are no sources', () => {
    expect(engineVersion('0.1.0', join(tmpdir(), 'no-such-core'))).toBe('0.1.0');
  });
});
