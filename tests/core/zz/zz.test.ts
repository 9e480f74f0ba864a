import { expect, test } from 'vitest';
import { analysePiece } from '../../../src-core/analysis';
import { DEFAULT_LIMITS } from '../../../src-core/checks';
import { jobSchema } from '../../../src-core/job';
import { siteFindings } from '../../../src-core/site';
import { randomJob } from '../../support/random-job';
import { seededRandom } from '../../support/seeded-random';
import { assertSoundCheck } from '../../support/check-harness';
import { weight } from '../../../src-core/checks/weight';
import { supportLoad } from '../../../src-core/checks/support-load';
import { overhang } from '../../../src-core/checks/overhang';
import { span } from '../../../src-core/checks/span';
import { tipping } from '../../../src-core/checks/tipping';
import { tieForce } from '../../../src-core/checks/tie-force';
import { bearingStress } from '../../../src-core/checks/bearing-stress';
import { shrinkage } from '../../../src-core/checks/shrinkage';
test('fuzz', () => {
  const seen: Record<string, number> = {};
  const bad: string[] = [];
  for (let s = 1; s <= 150; s++) {
    const job = jobSchema.parse(randomJob(seededRandom(s), 1));
    siteFindings(job);
    const r = analysePiece(job, job.pieces[0]!, { day: null, meshSizeIn: 3 });
    if (!r.ok) { seen[r.cannot.reason] = (seen[r.cannot.reason] ?? 0) + 1; continue; }
    for (const rule of [weight, supportLoad, overhang, span, tipping, tieForce, bearingStress, shrinkage])
      for (const c of rule.run({ job, analysis: r.analysis, limits: DEFAULT_LIMITS })) {
        try { assertSoundCheck(rule.id, c); } catch (e) { bad.push(`${s} ${rule.id} ${String(e).slice(0, 300)} ${JSON.stringify(c.workings.filter(l=>l.formula).map(l=>l.substituted+'='+l.result))}`); }
        const k = `${c.id} ${c.level}`; seen[k] = (seen[k] ?? 0) + 1;
        if (c.level !== 'holds' && (seen[k] ?? 0) < 4) console.log(s, c.id, c.level, c.ratio.toFixed(2), c.words);
        if (c.id === 'tipping' && r.analysis.stability.kind !== 'stands' && c.ratio < 1.6) console.log('ENGINE', s, c.ratio, c.words, c.workings.map(l => l.symbol + '=' + l.result).join(' '));
        if (c.id === 'tipping' && r.analysis.stability.kind === 'stands' && c.ratio > 1.5 ) console.log('STATICS', s, c.ratio, c.words, c.workings.map(l => l.symbol + '=' + l.result).join(' '));
      }
  }
  console.log(seen, bad.slice(0, 5));
  expect(bad).toEqual([]);
}, 600_000);
