import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import DxfParser from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import { readJobText } from '../../../src-core/job';
import { browserPrinter } from '../../../src-main/print/print-with-browser';
import { readPdf } from '../../support/read-pdf';
import { PROJECT, runHere, withFolder } from './run-here';

const job = (id: string) => join(PROJECT, 'assets', 'jobs', `${id}.json`);
const GALLEY = job('boathouse-galley');

interface Cut {
  readonly piece: string;
  readonly cutout: string;
}

/** Every opening of an example, from its file. */
function openings(path: string): Cut[] {
  const reading = readJobText(readFileSync(path, 'utf8'));
  if (!reading.ok) throw new Error(`${path} is no job`);
  return reading.job.pieces.flatMap(({ id: piece, cutouts }) =>
    cutouts.map(({ id: cutout }) => ({ piece, cutout })),
  );
}

describe('export', () => {
  test('writes the plan as a drawing that another program reads, and as SVG', async () => {
    await withFolder(async (folder) => {
      const dxf = await runHere(['export', job('bar-ledge'), '--as', 'dxf', '--out', 'plan.dxf'], { folder });
      expect(dxf).toEqual({ code: 0, out: 'plan.dxf: the plan at true scale\n', err: '' });
      const drawing = new DxfParser().parseSync(readFileSync(join(folder, 'plan.dxf'), 'utf8'));
      // Source: DXF Reference, $INSUNITS: 1 is inches.
      expect(drawing?.header.$INSUNITS).toBe(1);
      expect(drawing?.entities.some(({ type }) => type === 'LWPOLYLINE')).toBe(true);
      const svg = await runHere(['export', job('bar-ledge'), '--as', 'svg', '--out', 'plan.svg'], { folder });
      expect(svg.code).toBe(0);
      expect(readFileSync(join(folder, 'plan.svg'), 'utf8')).toMatch(/^<\?xml .*\n<svg /);
      expect(readdirSync(folder).sort()).toEqual(['plan.dxf', 'plan.svg']);
    });
  });

  test('writes the model as binary glTF, and slabs as binary STL of 84 bytes and 50 a triangle', async () => {
    await withFolder(async (folder) => {
      expect((await runHere(['export', GALLEY, '--as', 'glb', '--out', 'm.glb'], { folder })).code).toBe(0);
      // Source: Khronos glTF 2.0, 4.4.2: magic 0x46546C67, version 2, whole length.
      const glb = readFileSync(join(folder, 'm.glb'));
      expect([glb.readUInt32LE(0), glb.readUInt32LE(4), glb.readUInt32LE(8)]).toEqual([
        0x46546c67,
        2,
        glb.length,
      ]);
      const sizes: number[] = [];
      for (const piece of [[], ['--piece', openings(GALLEY)[0]!.piece]]) {
        await runHere(['export', GALLEY, '--as', 'stl', '--out', 's.stl', ...piece], { folder });
        const stl = readFileSync(join(folder, 's.stl'));
        expect(stl.length).toBe(84 + 50 * stl.readUInt32LE(80));
        sizes.push(stl.length);
      }
      expect(sizes[1]).toBeLessThan(sizes[0]!);
    });
  });

  test('writes every opening of a job as full-size templates in HTML, with its fonts inside', async () => {
    await withFolder(async (folder) => {
      const { code } = await runHere(['export', GALLEY, '--as', 'template', '--out', 't.html'], { folder });
      expect(code).toBe(0);
      const html = readFileSync(join(folder, 't.html'), 'utf8');
      for (const { piece, cutout } of openings(GALLEY)) {
        expect(html).toContain(`id="template-${piece}-${cutout}-from-above-a1-title"`);
      }
      expect(html).toContain("font-family: 'Barlow Condensed'");
      expect(html.match(/url\(data:font\/woff2;base64,/g)).toHaveLength(9);
      expect(html.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|url\((?!data:|#)/);
    });
  });

  test('prints one opening from below on A4: as many pages as sheets, no blank one after them', async () => {
    await withFolder(async (folder) => {
      const { piece, cutout } = openings(GALLEY)[0]!;
      const which = ['--piece', piece, '--cutout', cutout, '--paper', 'a4', '--from-below'];
      const words = ['export', GALLEY, '--as', 'template', ...which];
      await runHere([...words, '--out', 't.html'], { folder });
      const printed = await runHere([...words, '--out', 't.pdf'], { folder, printer: browserPrinter() });
      expect(printed).toMatchObject({ code: 0, err: '' });
      const html = readFileSync(join(folder, 't.html'), 'utf8');
      const { sizesPt, text } = await readPdf(readFileSync(join(folder, 't.pdf')));
      expect(sizesPt).toHaveLength(html.match(/<section class="sheet">/g)!.length);
      // ISO 216 A4 is 210 by 297 mm; a PDF is measured in 1/72 in. Browsers set the sheet in whole pixels, 0.75 pt.
      for (const [width, height] of sizesPt) {
        expect(Math.abs(width! - (210 / 25.4) * 72)).toBeLessThan(0.75);
        expect(Math.abs(height! - (297 / 25.4) * 72)).toBeLessThan(0.75);
      }
      expect(text).toContain('Mirrored: this face down');
    });
  });

  test('says in a sentence that nothing here prints, and how to go on, before it begins', async () => {
    await withFolder(async (folder) => {
      const printer = { ...browserPrinter(), trouble: async () => 'No browser here.' };
      const words = ['export', GALLEY, '--as', 'template', '--out', 't.pdf'];
      const { code, out, err } = await runHere(words, { folder, printer });
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err).toMatch(
        /^No browser here\. A PDF cannot be made without; give --out a name that ends in \.html/,
      );
      expect(existsSync(join(folder, 't.pdf'))).toBe(false);
    });
  });

  test.each([
    [['--out', 'a.dxf'], /--as is missing: say dxf, svg, glb, stl, template/],
    [['--as', 'step', '--out', 'a.step'], /--as step: say dxf/],
    [['--as', 'dxf'], /--out is missing/],
    [['--as', 'dxf', '--out', 'a.svg'], /must end in \.dxf/],
    [['--as', 'template', '--out', 'a.svg'], /must end in \.pdf or \.html/],
    [['--as', 'dxf', '--out', 'a.dxf', '--from-below'], /--from-below is for template only/],
    [['--as', 'glb', '--out', 'a.glb', '--piece', 'bar-ledge'], /--piece is for stl and template only/],
    [['--as', 'template', '--out', 'a.html', '--cutout', 'sink'], /--cutout needs --piece/],
    [['--as', 'template', '--out', 'a.html', '--paper', 'a3'], /--paper a3: say letter or a4/],
    [['--as', 'svg', '--out', 'none/a.svg'], /^none\/a\.svg: The file cannot be written/],
  ])('refuses %j and writes nothing', async (words, sentence) => {
    await withFolder(async (folder) => {
      const { code, out, err } = await runHere(['export', GALLEY, ...words], { folder });
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err).toMatch(sentence);
      expect(readdirSync(folder)).toEqual([]);
    });
  });

  test('refuses an opening that is not there with those that are, a piece without, and the job itself', async () => {
    await withFolder(async (folder) => {
      const { piece, cutout } = openings(GALLEY)[0]!;
      const template = ['export', GALLEY, '--as', 'template', '--out', 'a.html'];
      const { err } = await runHere([...template, '--piece', piece, '--cutout', 'none'], { folder });
      expect(err).toMatch(new RegExp(`There is no opening "none" in ${piece}. Its openings: .*${cutout}`));
      const plain = ['export', job('bar-ledge'), '--as', 'template', '--out', 'a.html'];
      expect((await runHere(plain, { folder })).err).toMatch(/There is no opening/);
      const before = statSync(GALLEY).mtimeMs;
      expect((await runHere(['export', GALLEY, '--as', 'svg', '--out', GALLEY], { folder })).code).toBe(2);
      expect(statSync(GALLEY).mtimeMs).toBe(before);
    });
  });
});
