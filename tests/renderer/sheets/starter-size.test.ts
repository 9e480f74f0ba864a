import { describe, expect, it } from 'vitest';
import { starterJob } from '../../../src-core/starters';
import { starterSize } from '../../../src-renderer/sheets/starter-size';

describe('starterSize', () => {
  it('gives a straight counter 96 in long as 96 in or 2438 mm', () => {
    const counter = starterJob('straight-counter').pieces[0]!;
    expect(starterSize(counter, 'imperial')).toBe('96 in by 25-1/2 in, 1-1/2 in thick');
    expect(starterSize(counter, 'metric')).toBe('2438 mm by 648 mm, 38 mm thick');
  });

  it('measures a corner counter over all, legs and run together', () => {
    const corner = starterJob('corner-counter').pieces[0]!;
    expect(starterSize(corner, 'imperial')).toBe('97-1/2 in by 85-1/2 in, 2 in thick');
  });
});
