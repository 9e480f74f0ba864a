import { describe, expect, test } from 'vitest';
import { combustibles } from '../../../src-core/site/combustibles';
import { jobOf, rectangle } from '../../support/pieces';

function finding(combustiblesAtIn: number | null, use: 'hearth' | 'counter' = 'hearth') {
  return combustibles(
    jobOf({ use, corners: rectangle(46, 20), thicknessIn: 2 }, { site: { combustiblesAtIn } }),
  );
}

describe('timber near the fire', () => {
  // NFPA 211, from memory: 36 in to an unlisted solid-fuel stove.
  test('36 in from the fire holds, 35 in is for an engineer', () => {
    expect(finding(36)?.level).toBe('holds');
    const near = finding(35);
    expect(near?.level).toBe('engineer');
    expect(near?.words).toContain('35 in from the fire, nearer than the 36 in');
    expect(near?.source).toContain('from memory');
  });

  test('a hearth without a stated fire holds and asks for the distance', () => {
    const found = finding(null);
    expect(found?.level).toBe('holds');
    expect(found?.words).toContain('state how far the nearest timber is');
  });

  test('a counter far from any fire has no such finding', () => {
    expect(finding(null, 'counter')).toBeNull();
    expect(finding(40, 'counter')?.level).toBe('holds');
  });
});
