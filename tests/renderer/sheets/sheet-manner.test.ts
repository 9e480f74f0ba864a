import { describe, expect, it } from 'vitest';
import { sheetManner } from '../../../src-renderer/sheets/sheet-manner';

describe('sheetManner', () => {
  it('lets Escape close every sheet but the one about a draft that would be lost', () => {
    expect(sheetManner('recover').closesByKey).toBe(false);
    for (const kind of ['quick-check', 'unsaved', 'save-file', 'manual', 'keys'] as const) {
      expect(sheetManner(kind).closesByKey, kind).toBe(true);
    }
  });

  it('keeps a sheet with entries in it open when the drawing beside it is pressed', () => {
    expect(sheetManner('quick-check').closesOutside).toBe(false);
    expect(sheetManner('save-file').closesOutside).toBe(false);
    expect(sheetManner('about').closesOutside).toBe(true);
  });
});
