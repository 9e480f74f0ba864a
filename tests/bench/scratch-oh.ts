import { jobOf, rectangle, wallAlongX } from '../support/pieces';
import { analysePiece } from '../../src-core/analysis';
import { checkAnalysis, DEFAULT_LIMITS } from '../../src-core/checks';
const job = (a: number, h: number, more: any = {}) => jobOf({ use: 'bar-ledge', corners: rectangle(96, a + 5.5), thicknessIn: h,
  supports: [wallAlongX('wall', 0, 96, a + 2.75, 5.5, { build: 'stud', hold: { kind: 'tied', spacingIn: 16, ratingLbf: 50000 } })], ...more } as any);
for (const h of [1, 1.5, 2, 3, 4]) for (const a of [6, 10, 15]) for (const mesh of [3, 2, 1]) {
  const j = job(a, h);
  const t = performance.now();
  const r = analysePiece(j, j.pieces[0]!, { day: null, meshSizeIn: mesh });
  const t1 = performance.now();
  if (!r.ok) { console.log(h, a, mesh, r.cannot); continue; }
  const c = checkAnalysis(j, r.analysis, DEFAULT_LIMITS);
  const t2 = performance.now();
  console.log(h, a, mesh, (t1 - t).toFixed(0), (t2 - t1).toFixed(0), r.analysis.mesh.xIn.length, r.analysis.contacts.length, r.analysis.elastic.low.cases.length, c.filter(x => x.ratio > 0).map(x => `${x.id} ${x.ratio.toFixed(2)}`).join(', '));
}
