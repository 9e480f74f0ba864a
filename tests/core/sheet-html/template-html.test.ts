import { describe, expect, test } from 'vitest';
import { cutoutTemplate } from '../../../src-core/exports';
import { templateHtml } from '../../../src-core/sheet-html';
import { exampleJob } from '../book/books';

const galley = exampleJob('boathouse-galley');
const piece = galley.pieces.find(({ cutouts }) => cutouts.length > 0)!;
const template = cutoutTemplate(galley, piece.id, piece.cutouts[0]!.id, 'letter');
const figures = template.ok ? template.pages.map(({ figure }) => figure) : [];
const html = templateHtml(figures, 'letter', { title: 'Sink & tap', language: 'en' });

describe('full-size templates as a document', () => {
  test('have a sheet a page, as large as the paper, at 1 : 1', () => {
    expect(figures.length).toBeGreaterThan(1);
    expect(html.match(/<section class="sheet"><svg /g)).toHaveLength(figures.length);
    expect(html).toContain('@page { size: 8.5in 11in; margin: 0; }');
    // 8.5 by 11 in are 215.9 by 279.4 mm, and a millimetre of the drawing is a millimetre of the sheet
    expect(html).toContain('width="215.9mm" height="279.4mm" viewBox="0 0 215.9 279.4"');
  });

  test('need nothing besides themselves, and their title ends nothing', () => {
    expect(html).toContain('<title>Sink &amp; tap</title>');
    expect(html.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(
      /<script|<link|https?:|\s(style|on\w+)=/,
    );
  });
});
