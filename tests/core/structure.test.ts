import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { RULES } from '../../src-core/checks';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const CORE = join(ROOT, 'src-core');
const ROOMS = readdirSync(CORE, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);
const LIBRARIES = [
  'zod',
  'delaunator',
  'clipper2-ts',
  'earcut',
  'fast-json-patch',
  '@tarikjabiri/dxf',
  '@gltf-transform/core',
];
const HEADINGS = ['## What it asks', '## How it is worked', '## What it does not cover', '## Sources'];

interface Import {
  /** File that imports, and what it names, as written. */
  readonly from: string;
  readonly named: string;
  /** Where a relative import leads, without an extension; null for a library. */
  readonly target: string | null;
}

/** Every file below a folder whose name ends so. */
function filesBelow(folder: string, ending = ''): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(ending))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

const IMPORT = /^(?:import|export)\b[^'"`;]*?\bfrom\s+'([^']+)'|^import\s+'([^']+)'|\bimport\(\s*'([^']+)'/gm;

function importsOf(file: string): Import[] {
  const found = readFileSync(file, 'utf8').matchAll(IMPORT);
  return [...found].map(([, listed, bare, later]) => {
    const named = listed ?? bare ?? later!;
    return { from: file, named, target: named.startsWith('.') ? resolve(dirname(file), named) : null };
  });
}

function importsBelow(folder: string): Import[] {
  return filesBelow(folder)
    .filter((file) => /\.(ts|tsx|mjs)$/.test(file))
    .flatMap(importsOf);
}

/** The core room of a path, or null outside core's rooms. */
function roomOf(path: string): string | null {
  const [room] = relative(CORE, path).split(sep);
  return room !== undefined && ROOMS.includes(room) ? room : null;
}

function words({ from, named }: Import): string {
  return `${relative(ROOT, from)} imports ${named}`;
}

/** A way round that comes back to where it began, or null. */
function cycleIn(graph: ReadonlyMap<string, ReadonlySet<string>>): string[] | null {
  const done = new Set<string>();
  const walk = (room: string, way: readonly string[]): string[] | null => {
    if (way.includes(room)) return [...way.slice(way.indexOf(room)), room];
    if (done.has(room)) return null;
    for (const next of graph.get(room) ?? []) {
      const cycle = walk(next, [...way, room]);
      if (cycle !== null) return cycle;
    }
    done.add(room);
    return null;
  };
  for (const room of graph.keys()) {
    const cycle = walk(room, []);
    if (cycle !== null) return cycle;
  }
  return null;
}

const coreImports = importsBelow(CORE);

describe('rooms of the core', () => {
  test('are found, and their imports with them', () => {
    expect(ROOMS).toEqual(expect.arrayContaining(['units', 'job', 'plate', 'analysis', 'checks', 'verdict']));
    expect(coreImports.length).toBeGreaterThan(200);
  });

  test.each(ROOMS)('%s has a door that lists its names one by one', (room) => {
    const door = readFileSync(join(CORE, room, 'index.ts'), 'utf8');
    expect(door).not.toMatch(/export \*/);
    expect(door).toMatch(/export \{|export type \{/);
  });

  test('are entered by their doors', () => {
    const wrong = coreImports.filter(({ from, target }) => {
      if (target === null) return false;
      const room = roomOf(target);
      return room !== null && room !== roomOf(from) && target !== join(CORE, room);
    });
    expect(wrong.map(words)).toEqual([]);
  });

  test('are not left, but for a few libraries of plain data', () => {
    const wrong = coreImports.filter(({ named, target }) =>
      target === null ? !LIBRARIES.includes(named) : roomOf(target) === null,
    );
    expect(wrong.map(words)).toEqual([]);
  });

  test('depend on each other in one direction', () => {
    const graph = new Map(ROOMS.map((room) => [room, new Set<string>()]));
    for (const { from, target } of coreImports) {
      const to = target === null ? null : roomOf(target);
      const own = roomOf(from);
      if (to !== null && own !== null && to !== own) graph.get(own)!.add(to);
    }
    expect(cycleIn(graph)).toBeNull();
  });

  test('a cycle would be seen', () => {
    const graph = new Map([
      ['a', new Set(['b'])],
      ['b', new Set(['c', 'd'])],
      ['c', new Set<string>()],
      ['d', new Set(['b'])],
    ]);
    expect(cycleIn(graph)).toEqual(['b', 'd', 'b']);
  });
});

describe('hosts and views', () => {
  const outside = ['src-main', 'src-renderer'];

  test('enter the core by its doors', () => {
    const wrong = outside
      .flatMap((folder) => importsBelow(join(ROOT, folder)))
      .filter(({ target }) => {
        const room = target === null ? null : roomOf(target);
        return target !== null && room !== null && target !== join(CORE, room);
      });
    expect(wrong.map(words)).toEqual([]);
  });

  test('do not import each other', () => {
    const wrong = outside.flatMap((folder) =>
      importsBelow(join(ROOT, folder)).filter(({ target }) =>
        outside.some((other) => other !== folder && target?.startsWith(join(ROOT, other) + sep)),
      ),
    );
    expect(wrong.map(words)).toEqual([]);
  });
});

describe('a check is three files of one name', () => {
  const ids = RULES.map(({ id }) => id);
  const stems = (folder: string, ending: string) =>
    filesBelow(join(ROOT, folder), ending).map((file) => basename(file, ending));

  test('no id is used twice', () => {
    expect(ids.length).toBeGreaterThan(0);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test.each(ids)('%s has its source, its test and its page', (id) => {
    for (const file of [
      `src-core/checks/${id}.ts`,
      `tests/core/checks/${id}.test.ts`,
      `assets/manual/${id}.md`,
    ]) {
      expect(existsSync(join(ROOT, file)), file).toBe(true);
    }
    expect(readFileSync(join(CORE, 'checks', `${id}.ts`), 'utf8')).toContain(`'${id}'`);
  });

  test.each(ids)(
    'the page of %s has its title and four headings in order, each with something below it',
    (id) => {
      const lines = readFileSync(join(ROOT, `assets/manual/${id}.md`), 'utf8').split('\n');
      expect(lines[0]).toMatch(/^# \S/);
      expect(lines.filter((line) => HEADINGS.includes(line))).toEqual(HEADINGS);
      for (const heading of HEADINGS) {
        expect(lines.slice(lines.indexOf(heading) + 1).find((line) => line.trim() !== '')).toMatch(/^[^#]/);
      }
    },
  );

  test('no rule is left out of the list, and no page or test is left over', () => {
    const rules = filesBelow(join(CORE, 'checks'), '.ts')
      .filter((file) => /: CheckRule = \{/.test(readFileSync(file, 'utf8')))
      .map((file) => basename(file, '.ts'));
    expect(rules).toEqual([...ids].sort());
    const pages = stems('assets/manual', '.md').filter((stem) => !stem.startsWith('site-'));
    expect(pages).toEqual([...ids].sort());
    const sources = new Set(stems('src-core/checks', '.ts'));
    expect(stems('tests/core/checks', '.test.ts').filter((stem) => !sources.has(stem))).toEqual([]);
  });
});

test('a finding about the site has its source and its page with the four headings', () => {
  const ids = filesBelow(join(CORE, 'site'), '.ts').flatMap((file) =>
    [...readFileSync(file, 'utf8').matchAll(/\bid: '([a-z-]+)'/g)].map((match) => match[1]!),
  );
  const pages = filesBelow(join(ROOT, 'assets/manual'), '.md')
    .map((file) => basename(file, '.md'))
    .filter((stem) => stem.startsWith('site-'));
  expect(pages.length).toBeGreaterThan(4);
  expect(pages).toEqual([...new Set(ids)].map((id) => `site-${id}`).sort());
  for (const page of pages) {
    const lines = readFileSync(join(ROOT, `assets/manual/${page}.md`), 'utf8').split('\n');
    expect(lines.filter((line) => HEADINGS.includes(line))).toEqual(HEADINGS);
  }
});

test('nothing is put off, and nothing names a machine', () => {
  // Put together here, so that this file does not hold what it looks for.
  const forbidden = [
    'TO' + 'DO',
    'FIX' + 'ME',
    '/' + 'work/',
    '/' + 'home/',
    '/' + 'root/',
    'regis' + 'try.',
    'npm' + 'js.org',
  ];
  const files = ['src-core', 'src-main', 'src-renderer', 'tests', 'assets/manual', '.ci'].flatMap((folder) =>
    filesBelow(join(ROOT, folder)),
  );
  const named = ['README.md', 'DEVELOPERS.md', 'package.json', 'package-lock.json'].map((name) =>
    join(ROOT, name),
  );
  const found = [...files, ...named].flatMap((file) => {
    const text = readFileSync(file, 'utf8');
    return forbidden
      .filter((word) => text.includes(word))
      .map((word) => `${relative(ROOT, file)} mentions ${word}`);
  });
  expect(found).toEqual([]);
});
