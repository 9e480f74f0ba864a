import { describe, expect, it } from 'vitest';
import { undecidable } from '../../../src-renderer/sheets/about-words';

describe('undecidable', () => {
  it('gives the limits in the units of the job: 24 in or 610 mm out, 8 ft or 2438 mm of span', () => {
    expect(undecidable('imperial')[0]).toContain('24 in');
    expect(undecidable('metric')[0]).toContain('610 mm');
    expect(undecidable('imperial')[1]).toContain('96 in');
    expect(undecidable('metric')[1]).toContain('2438 mm');
    expect(undecidable('imperial').at(-1)).toContain('0.016 in');
    expect(undecidable('metric').at(-1)).toContain('0.41 mm');
  });
});
