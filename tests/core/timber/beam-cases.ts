import type { BeamInput } from '../../../src-core/timber';

/** A beam with a uniform load on its whole length. */
export function uniformBeam(given: {
  readonly spansIn: readonly number[];
  readonly leftEndIn?: number;
  readonly rightEndIn?: number;
  readonly loadLbfPerIn: number;
  readonly stiffnessLbfIn2: number;
}): BeamInput {
  const { spansIn, leftEndIn = 0, rightEndIn = 0, loadLbfPerIn, stiffnessLbfIn2 } = given;
  const toIn = leftEndIn + rightEndIn + spansIn.reduce((sum, spanIn) => sum + spanIn, 0);
  return {
    leftEndIn,
    rightEndIn,
    spans: spansIn.map((lengthIn) => ({ lengthIn, stiffnessLbfIn2 })),
    uniform: [{ fromIn: 0, toIn, loadLbfPerIn }],
    points: [],
  };
}

/** All loads of a beam, lbf, and their moment about its left tip, lbf-in. */
export function totals({ uniform, points }: BeamInput): {
  readonly loadLbf: number;
  readonly momentLbfIn: number;
} {
  const spread = uniform.map((u) => {
    const loadLbf = u.loadLbfPerIn * (u.toIn - u.fromIn);
    return { loadLbf, momentLbfIn: (loadLbf * (u.fromIn + u.toIn)) / 2 };
  });
  const single = points.map(({ atIn, loadLbf }) => ({ loadLbf, momentLbfIn: loadLbf * atIn }));
  return [...spread, ...single].reduce(
    (sum, each) => ({
      loadLbf: sum.loadLbf + each.loadLbf,
      momentLbfIn: sum.momentLbfIn + each.momentLbfIn,
    }),
    { loadLbf: 0, momentLbfIn: 0 },
  );
}

/** The same beam seen from the other side. */
export function mirrored(input: BeamInput): BeamInput {
  const lengthIn =
    input.leftEndIn + input.rightEndIn + input.spans.reduce((sum, span) => sum + span.lengthIn, 0);
  return {
    leftEndIn: input.rightEndIn,
    rightEndIn: input.leftEndIn,
    spans: [...input.spans].reverse(),
    uniform: input.uniform.map((u) => ({
      fromIn: lengthIn - u.toIn,
      toIn: lengthIn - u.fromIn,
      loadLbfPerIn: u.loadLbfPerIn,
    })),
    points: input.points.map((p) => ({ atIn: lengthIn - p.atIn, loadLbf: p.loadLbf })),
  };
}
