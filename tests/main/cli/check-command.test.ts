import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { withValue } from '../../support/small-job';
import { checkContent, runHere } from './run-here';

const CAP = 'assets/jobs/gate-pier-cap.json';
const CAP_JOB: unknown = JSON.parse(readFileSync(new URL(`../../../${CAP}`, import.meta.url), 'utf8'));

const point = z.strictObject({ xIn: z.number(), yIn: z.number() });
const level = z.enum(['holds', 'steel', 'change', 'engineer']);
const quantity = z.strictObject({ value: z.number(), unit: z.string() });
const words = z.string().min(3);
const line = z.strictObject({
  label: words,
  symbol: z.string().min(1),
  formula: z.string(),
  substituted: z.string(),
  result: z.string().min(1),
  unit: z.string(),
  value: z.number(),
  inputs: z.array(z.strictObject({ symbol: z.string(), printed: z.string(), unit: z.string() })),
  source: words,
  fromMemory: z.boolean(),
});
const check = z.strictObject({
  id: z.string().regex(/^[a-z]+(-[a-z]+)*$/),
  title: words,
  pieceId: words,
  where: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('piece') }),
    z.strictObject({ kind: z.literal('point'), at: point }),
    z.strictObject({ kind: z.literal('support'), supportId: words, at: point }),
  ]),
  demand: quantity,
  capacity: quantity,
  ratio: z.number().nonnegative(),
  level,
  words,
  needs: z.array(z.enum(['tie', 'corbel', 'support', 'steel', 'thickness'])),
  workings: z.array(line),
  cautions: z.array(words),
});
const reaction = z.object({
  supportId: words,
  words,
  bound: z.enum(['low', 'high']),
  deadLbf: z.number(),
  mostLbf: z.number(),
  leastLbf: z.number(),
  tieLbf: z.number(),
});
const report = z.object({
  tool: z.literal('ledgewright'),
  version: z.literal('1.2.3'),
  jobId: words,
  name: words,
  day: z.number().int().nullable(),
  verdict: z.object({ level, words }),
  pieces: z
    .array(
      z.object({
        id: words,
        name: words,
        copies: z.number().int().positive(),
        areaFt2: z.number().positive(),
        weightLb: z.number().positive(),
        centroid: point,
        thicknessIn: z.number().positive(),
        verdict: z.object({ level, words, why: words, flags: z.array(words) }),
        checks: z.array(check).min(1),
        reactions: z.array(reaction).min(1),
        governing: z.object({ sagging: point, hogging: point }),
        mesh: z.object({
          nodes: z.number().int().positive(),
          triangles: z.number().int().positive(),
          sizeIn: z.number().positive(),
          contacts: z.number().int().positive(),
          loadCases: z.number().int().positive(),
          factorisations: z.number().int().positive(),
          imbalance: z.number().max(1e-6),
        }),
        worstOnTheWay: z.object({ day: z.number(), level, ratio: z.number(), words }).nullable(),
        changes: z.array(z.object({ title: words, patch: z.array(z.object({ op: words, path: words })) })),
        triedInVain: z.array(words),
        remarks: z.array(words),
        seconds: z.number().positive(),
      }),
    )
    .min(1),
  site: z.array(z.object({ id: words, title: words, level, words, workings: z.array(line), source: words })),
  needsAttention: z.boolean(),
  units: words,
  shownIn: z.enum(['imperial', 'metric']),
  seconds: z.number().positive(),
  notice: words,
});

describe('check', () => {
  test('prints the table of a gate-pier cap that holds, and ends with code 0', async () => {
    const { code, out, err } = await runHere(['check', CAP]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/^Gate-pier cap, finished$/m);
    expect(out).toMatch(/^Gate-pier cap +1-1\/2 in +50\.3 lb .* ● Holds/m);
    expect(out).toMatch(/^● Every piece holds\.$/m);
  });

  test('prints every check of one piece with its workings', async () => {
    const { code, out } = await runHere(['check', CAP, '--piece', 'gate-cap']);
    expect(code).toBe(0);
    expect(out).toContain('      = 7.5 * 1 * sqrt(5000)\n      = 530.3 psi\n');
  });

  test('looks at the day that is asked for, at its strength', async () => {
    const { code, out } = await runHere(['check', CAP, '--day', '7', '--json']);
    const found = report.parse(JSON.parse(out));
    expect({ code, day: found.day }).toEqual({ code: 0, day: 7 });
    expect(found.pieces[0]!.worstOnTheWay).toBeNull();
    const strength = found.pieces[0]!.checks.flatMap(({ workings }) => workings).find(
      ({ symbol }) => symbol === 'fr',
    );
    expect(strength!.value).toBeLessThan(530.3);
  });

  test('gives everything as JSON, the same each time but for the seconds', async () => {
    const [first, second] = [
      await runHere(['check', CAP, '--json']),
      await runHere(['check', CAP, '--json']),
    ];
    const found = report.parse(JSON.parse(first.out));
    expect(found.pieces[0]!.weightLb).toBeCloseTo((20 * 20 * 1.5 * 145) / 1728, 9);
    expect(found.pieces[0]!.centroid).toEqual({ xIn: 10, yIn: 10 });
    const timeless = (text: string) => text.replace(/"seconds": [\d.]+/g, '');
    expect(timeless(second.out)).toBe(timeless(first.out));
  });

  test('ends with code 1 where a piece needs attention: nothing is drawn under it', async () => {
    const floating = withValue(CAP_JOB, 'pieces[0].supports', []);
    const { code, out, err } = await checkContent(JSON.stringify(floating));
    expect({ code, err }).toEqual({ code: 1, err: '' });
    expect(out).toMatch(/[▲⬣] Needs/);
  });
});
