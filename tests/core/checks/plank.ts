import type { Job, JobDraft } from '../../../src-core/job';
import { jobOf, rectangle, wallAlongX } from '../../support/pieces';

type PieceDraft = JobDraft['pieces'][number];
type SteelDraft = NonNullable<PieceDraft['reinforcement']>[number];

/** A plank that rests on two thin walls across its ends: simply supported over `spanIn`, 50 psf and nothing roving. */
export interface Plank {
  readonly spanIn: number;
  readonly thicknessIn: number;
  readonly depthIn?: number;
  readonly strengthPsi?: number;
  readonly spreadPsf?: number;
  readonly steel?: readonly SteelDraft[];
  readonly exposure?: 'indoors' | 'outdoors';
}

/** Bearing walls 3/4 in thick, their centre lines 3/8 in from the ends. */
export function plank(of: Plank): Job {
  const depthIn = of.depthIn ?? 18;
  const strengthPsi = of.strengthPsi ?? 5000;
  const wall = (id: string, xIn: number) => ({
    kind: 'wall' as const,
    build: 'block' as const,
    id,
    from: { xIn, yIn: 0 },
    to: { xIn, yIn: depthIn },
    widthIn: 0.75,
  });
  return jobOf(
    {
      use: 'bench',
      corners: rectangle(of.spanIn + 0.75, depthIn),
      thicknessIn: of.thicknessIn,
      exposure: of.exposure ?? 'indoors',
      reinforcement: [...(of.steel ?? [])],
      loads: { roving: { setting: 'none' }, spreadPsf: of.spreadPsf ?? 50 },
      supports: [wall('left', 0.375), wall('right', of.spanIn + 0.375)],
    },
    { mixes: [{ id: 'mix', name: 'Mix', strengthPsi, strengthFrom: 'tested' }] },
  );
}

/** #3 bars lengthways, or at an angle to it. */
export function bars(
  depthIn: number,
  spacingIn: number,
  more: Partial<Extract<SteelDraft, { kind: 'bars' }>> = {},
): SteelDraft {
  return {
    kind: 'bars',
    id: 'bars',
    label: '#3 bars',
    barIn: 0.375,
    areaIn2: 0.11,
    spacingIn,
    depthIn,
    ...more,
  };
}

/** Mesh of W2.1 wire at 4 in, its lengthways wires with their centre `depthIn` below the top. */
export function lightMesh(depthIn: number): SteelDraft {
  const wireIn = 0.1635;
  return {
    kind: 'mesh',
    id: 'mesh',
    label: '4x4 W2.1 mesh',
    wireIn,
    spacingIn: 4,
    crossWireIn: wireIn,
    crossSpacingIn: 4,
    depthIn: depthIn + wireIn / 2,
  };
}

/** A ledge tied down on a 10 in block wall, `outIn` out to the front. */
export function tiedLedge(
  outIn: number,
  thicknessIn: number,
  steel: readonly SteelDraft[],
  setting: 'sitting' | 'climbing' = 'climbing',
): Job {
  return jobOf({
    use: 'bar-ledge',
    corners: rectangle(72, outIn + 10),
    thicknessIn,
    reinforcement: [...steel],
    loads: { roving: { setting } },
    supports: [
      wallAlongX('wall', 0, 72, outIn + 5, 10, {
        build: 'block',
        hold: { kind: 'tied', spacingIn: 12, stiffness: { low: 20_000, high: 200_000 } },
      }),
    ],
  });
}
