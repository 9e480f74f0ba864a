import { test } from 'vitest';
import { caseField, preparePiece, analysePiece } from '../../src-core/analysis';
import { startGoverning, addCase } from '../../src-core/analysis/governing';
import { worktopCases } from './worktop-cases';
import { calculixPlate } from './calculix/plate';
import { nodeMoments } from './calculix/moments';
import type { PlateInput } from './calculix/plate-input';

const f = (v: number, d = 5) => v.toPrecision(d).padStart(11);
for (const c of worktopCases.filter((c) => !process.env.ONLY || c.name.includes(process.env.ONLY))) for (const bound of (process.env.BOTH ? ['low','high'] as const : [c.bound]))
  test(c.name, () => {
    const piece = c.job.pieces[0]!;
    const t0 = Date.now();
    const r = preparePiece(c.job, piece, { day: null, meshSizeIn: Number(process.env.MESH ?? c.meshSizeIn) });
    if (!r.ok) throw new Error(r.cannot.sentence);
    const p = r.prepared;
    let best = 0, bd = 1e9;
    p.labels.forEach((l, i) => { if (l.live.kind !== 'roving' || !c.roving) return; const d = Math.hypot(l.live.centre.xIn - c.roving.xIn, l.live.centre.yIn - c.roving.yIn); if (d < bd) { bd = d; best = i; } });
    const live = p.labels[best]!;
    const ours = caseField(p, bound, best);
    console.log(`\n=== ${c.name} ${bound}: nodes ${p.mesh.xIn.length} contacts ${p.contacts.length} case ${best} ${JSON.stringify(live.live)} held ${ours.asIfHeld} ms ${Date.now() - t0}`);
    const load = new Map<number, number>();
    for (const l of best > 0 ? [p.loads.dead, p.loads.live[best - 1]!] : [p.loads.dead]) l.node.forEach((n, i) => load.set(n, (load.get(n) ?? 0) + l.lbf[i]!));
    const run = (ratio: number) => {
      const input: PlateInput = {
        nodes: Array.from(p.mesh.xIn, (xIn, i) => ({ xIn, yIn: p.mesh.yIn[i]! })),
        triangles: Array.from({ length: p.mesh.triangles.length / 3 }, (_, t) => [0, 1, 2].map((k) => p.mesh.triangles[3 * t + k]!) as unknown as [number, number, number]),
        thicknessIn: piece.thicknessIn, modulusPsi: p.concrete.modulusPsi, poissonRatio: p.concrete.poisson,
        loads: [...load].map(([node, forceLbf]) => ({ node, forceLbf })),
        supports: p.contacts.map((k) => ({ node: k.node, stiffnessLbfPerIn: bound === 'low' ? k.lowLbfPerIn : k.highLbfPerIn, gapIn: k.gapIn, kind: k.acts })),
        holds: [], thinningRatio: ratio,
      };
      const res = calculixPlate(input);
      const nm = nodeMoments(input, res.points);
      return { w: Float64Array.from(res.downIn), r: Float64Array.from(res.supportLbf), m: { mx: Float64Array.from(nm, (m) => m.mxLbfInPerIn), my: Float64Array.from(nm, (m) => m.myLbfInPerIn), mxy: Float64Array.from(nm, (m) => m.mxyLbfInPerIn) }, s: res.seconds, it: res.iterations };
    };
    const all = [{ name: 'ours', w: ours.wIn, r: ours.contactLbf, m: ours.moments, s: 0, it: 0 }, ...(process.env.RATIOS ?? '1,4').split(',').map((x) => ({ name: `ccx/${x}`, ...run(Number(x)) }))];
    const settle = all.map(({ w, r }) => { let s = 0, t = 0; p.contacts.forEach((k, i) => { if (k.acts === 'push' && r[i]! > 0) { s += r[i]! * w[k.node]!; t += r[i]!; } }); return s / t; });
    const row = (words: string, v: number[]) => console.log(words.padEnd(44), ...v.map((x, i) => f(x) + (i ? ` (${((v[0]! / x - 1) * 100).toFixed(2)}%)`.padStart(10) : '')));
    console.log(all.map((a) => `${a.name} ${a.s.toFixed(1)}s it ${a.it} total ${a.r.reduce((x, y) => x + y, 0).toFixed(4)} lifted ${p.contacts.filter((k, i) => Math.abs(a.r[i]!) < 1e-3).length}`).join(' | '));
    row('settlement', settle);
    const maxAt = all[0]!.w.reduce((b, v, i, arr) => (v > arr[b]! ? i : b), 0), minAt = all[0]!.w.reduce((b, v, i, arr) => (v < arr[b]! ? i : b), 0);
    console.log(p.labels.map((l, i) => l.live.kind === 'roving' ? `${i}:(${l.live.centre.xIn.toFixed(2)},${l.live.centre.yIn.toFixed(2)})` : '').join(' '));
    row(`max w at ${p.mesh.xIn[maxAt]!.toFixed(1)},${p.mesh.yIn[maxAt]!.toFixed(1)}`, all.map((a, i) => a.w[maxAt]! ));
    row(`max w-s`, all.map((a, i) => a.w[maxAt]! - settle[i]!));
    row(`min w at ${p.mesh.xIn[minAt]!.toFixed(1)},${p.mesh.yIn[minAt]!.toFixed(1)}`, all.map((a, i) => a.w[minAt]! ));
    row(`min w-s`, all.map((a, i) => a.w[minAt]! - settle[i]!));
    p.bearings.forEach((b) => (row(`R ${b.words}`, all.map((a) => b.contacts.reduce((s, k) => s + a.r[k]!, 0))), console.log('     lifted', ...all.map((a) => `${b.contacts.filter((k) => Math.abs(a.r[k]!) < 1e-4).length}/${b.contacts.length}`)));
    const govs = all.map((a) => { const g = startGoverning(p.mesh, p.locate, piece.thicknessIn); addCase(g, a.m, 0); return g; });
    for (const face of ['bottom', 'top'] as const) {
      const k = govs.map((g) => g.faces[face].peak);
      row(`gov ${face} at ${p.mesh.xIn[k[0]!.node]!.toFixed(2)},${p.mesh.yIn[k[0]!.node]!.toFixed(2)} dir ${(k[0]!.bendingRad * 180 / Math.PI).toFixed(0)}`, k.map((x) => x.momentLbfInPerIn));
      console.log('   ccx at', ...k.slice(1).map((x) => `${p.mesh.xIn[x.node]!.toFixed(2)},${p.mesh.yIn[x.node]!.toFixed(2)} dir ${(x.bendingRad * 180 / Math.PI).toFixed(0)}`));
    }
  }, 600000);
