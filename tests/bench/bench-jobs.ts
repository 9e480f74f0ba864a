/** The pieces that the bench times. */
import type { Job } from '../../src-core/job';
import { jobOf, rectangle } from '../support/pieces';

/** Counter 12 ft by 25-1/2 in on four cabinets with rails. */
export function counter(thicknessIn: number, more: Parameters<typeof jobOf>[0] | object = {}): Job {
  return jobOf({
    use: 'counter',
    corners: rectangle(144, 25.5),
    thicknessIn,
    supports: [0, 1, 2, 3].map((i) => ({
      kind: 'cabinet',
      id: `cabinet-${i + 1}`,
      corner: { xIn: i * 36, yIn: 1.5 },
      widthIn: 36,
      depthIn: 24,
    })),
    ...more,
  });
}

/** The same, 1 in thick with mesh and without rails: it cracks, and the mesh must carry. */
export function crackedCounter(): Job {
  const job = counter(1, {
    reinforcement: [
      {
        kind: 'mesh',
        id: 'mesh',
        wireIn: 0.1635,
        spacingIn: 4,
        crossWireIn: 0.1635,
        crossSpacingIn: 4,
        depthIn: 0.6,
      },
    ],
  });
  const piece = job.pieces[0]!;
  const supports = piece.supports.map((support) =>
    support.kind === 'cabinet' ? { ...support, frontRail: false, backRail: false } : support,
  );
  return { ...job, pieces: [{ ...piece, supports }] };
}
