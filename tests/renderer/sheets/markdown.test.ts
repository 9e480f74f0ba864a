import { readdirSync, readFileSync } from 'node:fs';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { Markdown } from '../../../src-renderer/sheets/Markdown';
import { readMarkdown } from '../../../src-renderer/sheets/markdown-page';

const html = (text: string) =>
  renderToStaticMarkup(createElement(Markdown, { tokens: readMarkdown(text).body }))
    .replace(/^<div[^>]*>/, '')
    .replace(/<\/div>$/, '');

describe('readMarkdown', () => {
  it('takes the first heading for the title and leaves it out of the body', () => {
    const { title, body } = readMarkdown('# Tipping\n\nDoes it stay down?\n');
    expect(title).toBe('Tipping');
    expect(body.map(({ type }) => type)).toEqual(['paragraph']);
  });

  it('has no title where the page begins with something else', () => {
    expect(readMarkdown('## What it asks\n').title).toBeNull();
    expect(readMarkdown('').body).toEqual([]);
  });
});

describe('Markdown', () => {
  it('makes headings, emphasis and code', () => {
    expect(html('## Sources\n\nIn the **top**, see _Bearing_ and `Mcr`.')).toContain(
      '<h2>Sources</h2><p>In the <strong>top</strong>, see <em>Bearing</em> and <code>Mcr</code>.</p>',
    );
  });

  it('makes lists, one in another, and numbers from where they begin', () => {
    expect(html('- a\n  - b\n')).toBe('<ul><li>a<ul><li>b</li></ul></li></ul>');
    expect(html('3. strip\n4. swap\n')).toContain('<ol start="3">');
  });

  it('makes a table with the side that a column leans to', () => {
    const table = html('| bar | lb |\n| --- | ---: |\n| #3 | 0.376 |\n');
    expect(table).toContain('<th scope="col" style="text-align:right">lb</th>');
    expect(table).toContain('<td style="text-align:right">0.376</td>');
  });

  it('shows markup as text and follows no link and no picture', () => {
    const page = html(
      '<script>alert(1)</script>\n\nA <b onclick="x()">b</b> [go](javascript:x) ![p](http://a/b.png)',
    );
    expect(page).toContain('&lt;script&gt;');
    expect(page).not.toMatch(/<(script|b|a|img)\b/);
    expect(page).not.toMatch(/\b(href|src)=/);
  });

  it('renders every page of the manual whole, under its title', () => {
    const folder = 'assets/manual';
    for (const file of readdirSync(folder)) {
      const text = readFileSync(`${folder}/${file}`, 'utf8');
      const { title } = readMarkdown(text);
      expect(title, file).not.toBeNull();
      const words = (part: string) => part.replace(/[^\p{L}\p{N}]+/gu, '');
      const shown = html(text)
        .replace(/<[^>]+>/g, '')
        .replace(/&(amp|lt|gt|quot|#x27);/g, '');
      const written = text.replace(/^# .*\n/, '').replace(/^\d+\. /gm, '');
      expect(words(shown), file).toBe(words(written));
    }
  });
});
