import { readFileSync } from 'node:fs';
import { readJobText } from '../../src-core/job';
import { checkJob } from '../../src-core/verdict';
for (const f of process.argv.slice(2)) {
  const r = readJobText(readFileSync('assets/jobs/' + f + '.json', 'utf8')); if (!r.ok) { console.log(r.problems); continue; }
  const t = performance.now();
  const res = checkJob(r.job, { onProgress: (p) => console.log((performance.now() - t).toFixed(0), p.words) });
  console.log(f, (performance.now() - t).toFixed(0), res.verdict);
  for (const p of res.pieces) {
    console.log('-', p.name, p.weightLb.toFixed(0), p.verdict.words, '|', p.verdict.why, p.verdict.flags.join(','));
    for (const c of p.checks.slice(0, 5)) console.log('     ', c.id, c.level, c.ratio.toFixed(2), c.words.slice(0, 140));
    if (p.worstOnTheWay) console.log('   way', p.worstOnTheWay.day, p.worstOnTheWay.level, p.worstOnTheWay.ratio.toFixed(2), p.worstOnTheWay.words.slice(0, 100));
    for (const c of p.changes) console.log('   change', c.title, c.worstRatio.toFixed(2), c.level, JSON.stringify(c.cost));
    for (const c of p.triedInVain) console.log('   vain', c);
  }
  for (const s of res.site) console.log('* site', s.id, s.level, s.words);
}
