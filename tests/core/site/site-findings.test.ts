import { describe, expect, test } from 'vitest';
import type { JobDraft } from '../../../src-core/job';
import { siteFindings } from '../../../src-core/site';
import { jobOf, rectangle } from '../../support/pieces';

function idsOf(site: JobDraft['site'], use: 'counter' | 'hearth' = 'counter'): string[] {
  return siteFindings(jobOf({ use, corners: rectangle(48, 24), thicknessIn: 2 }, { site }), []).map(
    ({ id }) => id,
  );
}

describe('findings about the site', () => {
  test('a plain counter has the load on its floor to look at, nothing else', () => {
    expect(idsOf({})).toEqual(['floor-load']);
  });

  test('hearth, guard, earthquakes and permit each add a finding of their own', () => {
    expect(idsOf({ actsAsGuard: true, seismicAnchorage: true, permitBound: true }, 'hearth')).toEqual([
      'floor-load',
      'combustibles',
      'guard',
      'seismic',
      'permits',
    ]);
  });

  test('guard, earthquakes and permit are never decided here', () => {
    const job = jobOf(
      { corners: rectangle(48, 24), thicknessIn: 2 },
      { site: { actsAsGuard: true, seismicAnchorage: true, permitBound: true } },
    );
    const levels = siteFindings(job, []).map(({ id, level }) => `${id} ${level}`);
    expect(levels).toEqual(['floor-load holds', 'guard engineer', 'seismic engineer', 'permits engineer']);
  });
});
