/** Protection and tools: what each is for, how many where the job says, and what goes wrong without. */
import type { Job } from '../job';
import type { PourPlan } from '../pour';
import { IN_PER_FT, printLength } from '../units';
import type { PieceTakeoff } from './piece-takeoff';
import { KNEELING_BOARDS_EACH } from './practice';
import { counted } from './words';

export interface Tool {
  /** Stable. */
  readonly id: string;
  readonly kind: 'protection' | 'tool';
  readonly name: string;
  readonly why: string;
  /** null where the job does not say how many. */
  readonly count: number | null;
  readonly countWords: string;
  readonly caution: string | null;
  readonly source: string;
}

const COMMON = 'common practice, no source';

/** What protects people, then what the work is done with. */
export function toolsOf(job: Job, pieces: readonly PieceTakeoff[], plan: PourPlan): Tool[] {
  return [...protection(job, pieces), ...tools(job, pieces, plan)];
}

/** Said with every list of tools. */
export const DUST_CAUTION =
  'Cutting, grinding or drilling hardened concrete dry is the hazard: the dust scars the lungs for good. Cut wet or with a shroud and a vacuum made for such dust, sweep nothing dry. OSHA 29 CFR 1926.1153 Table 1 names the tool, the water or shroud, and the respirator that go together; from memory, look it up.';

function protection({ crew }: Job, pieces: readonly PieceTakeoff[]): Tool[] {
  const forEach = {
    kind: 'protection',
    count: crew.people,
    countWords: `one for each of ${crew.people}`,
  } as const;
  const hasSteel = pieces.some(({ steel }) => steel !== null && steel.meshes.length + steel.bars.length > 0);
  return [
    {
      ...forEach,
      id: 'respirator',
      name: 'Respirator against silica dust, fitted',
      why: 'For tipping bags, cutting and grinding. Dry mix and the dust of hardened concrete hold silica.',
      caution: DUST_CAUTION,
      source: 'OSHA 29 CFR 1926.1153, from memory',
    },
    {
      ...forEach,
      id: 'gloves',
      name: 'Alkali-resistant waterproof gloves, pair',
      why: 'Wet concrete is caustic and its burns begin without pain.',
      caution: 'Take them off and rinse as soon as any gets in: concrete held against the skin burns worst.',
      source: 'the caution of ASTM C1074',
    },
    {
      ...forEach,
      id: 'boots',
      name: 'Alkali-resistant rubber boots, pair',
      why: 'For all who may step in mix or wash water. Trousers go over them, so that none runs in.',
      caution: null,
      source: 'the caution of ASTM C1074',
    },
    {
      ...forEach,
      id: 'eyes',
      name: 'Eye protection that closes at the sides',
      why: 'Mix splashes, and ends of mesh spring back as they are cut.',
      caution: 'Rinse an eye at once and for long with clean water, and have a doctor see it.',
      source: 'OSHA 29 CFR 1926.102, from memory',
    },
    {
      ...forEach,
      id: 'hearing',
      name: 'Hearing protection',
      why: 'For sawing, mixing and vibrating.',
      caution: null,
      source: 'OSHA 29 CFR 1926.52 and 1926.101, from memory',
    },
    {
      id: 'knee-pads',
      kind: 'protection',
      name: 'Knee pads, waterproof, pair',
      why: 'For whoever levels, floats and undoes screws from below.',
      count: null,
      countWords: 'one for each who kneels',
      caution: 'Never kneel in wet concrete or its water, pads or not: it soaks through and burns.',
      source: COMMON,
    },
    {
      id: 'eye-rinse',
      kind: 'protection',
      name: 'Clean water for rinsing eyes and skin, within reach',
      why: 'A burn is stopped by rinsing at once.',
      count: null,
      countWords: 'one place',
      caution: null,
      source: 'ANSI/ISEA Z358.1, from memory',
    },
    ...(hasSteel
      ? [
          {
            id: 'end-caps',
            kind: 'protection' as const,
            name: 'Caps for ends of steel that stick out',
            why: 'Ends of mesh and bars cut whoever falls or reaches across.',
            count: null,
            countWords: 'one for each end that sticks out',
            caution: null,
            source: 'OSHA 29 CFR 1926.701(b)',
          },
        ]
      : []),
  ];
}

function tools(job: Job, pieces: readonly PieceTakeoff[], plan: PourPlan): Tool[] {
  const { crew, shownIn: system } = job;
  const forms = pieces.flatMap((piece) => piece.forms?.forms ?? []);
  const hasMitres = forms.some(({ parts }) =>
    parts.some(({ start, end }) => start.cutRad !== 0 || end.cutRad !== 0),
  );
  const hasMesh = pieces.some(({ steel }) => (steel?.meshes.length ?? 0) > 0);
  const hasBars = pieces.some(({ steel }) => (steel?.bars.length ?? 0) > 0);
  const hasPigment = plan.pours.some(({ colour }) => colour !== null);
  return [
    tool(
      'saw',
      `Saw with a ${printLength(job.forms.kerfIn, { system, roundToIn: 1 / 32 })} kerf${hasMitres ? ' that cuts mitres' : ''}`,
      'The cut lists count that kerf.',
    ),
    tool(
      'driver',
      'Drill and driver',
      'Every screw that must come out is driven from below or from the side.',
    ),
    tool('levels', 'Level, tape, square and string', 'Rims to the datum, corners square by their diagonals.'),
    ...straightedgeTool(job, plan),
    tool('mixer', 'Mixer', 'A mixer that takes the batch of the plan.', {
      count: crew.mixers,
      countWords: `${counted(crew.mixers, 'mixer', 'mixers')} for ${counted(crew.mixerBags, 'bag', 'bags')} each`,
    }),
    ...bucketTool(job, plan),
    tool(
      'water-measure',
      'Measure for water, marked',
      'The same water in every batch: colour and strength follow it.',
    ),
    ...(hasPigment
      ? [tool('scale', 'Scale for pigment', 'Pigment goes by weight, weighed out for each batch beforehand.')]
      : []),
    tool(
      'vibrating-tool',
      'Tool that vibrates, or a sander without paper',
      'Held to the outside of the forms it brings air up from the face.',
      {
        caution: 'Do not hold it in one place: the form walks and the mix parts.',
      },
    ),
    tool(
      'floats',
      'Float, steel trowel and edging tool',
      'Float when the sheen is gone, trowel when a thumb leaves hardly a mark.',
    ),
    tool(
      'kneeling-boards',
      'Kneeling boards',
      'To reach the middle of a wide slab beside it, never on fresh concrete.',
      {
        count: KNEELING_BOARDS_EACH,
        countWords: `${KNEELING_BOARDS_EACH} for each who finishes`,
      },
    ),
    ...(hasMesh || hasBars
      ? [
          tool(
            'cutters',
            `${hasBars ? 'Bolt cutters or a bar cutter' : 'Cutters for mesh'}, tie wire and pliers`,
            'Laps and crossings are tied, so that they stay where they are drawn.',
          ),
        ]
      : []),
    tool('mallet', 'Mallet and flat bar', 'Forms, wedges and plugs come out without a lever on the slab.'),
  ];
}

function tool(
  id: string,
  name: string,
  why: string,
  more: Partial<Pick<Tool, 'count' | 'countWords' | 'caution'>> = {},
): Tool {
  return {
    id,
    kind: 'tool',
    name,
    why,
    count: null,
    countWords: 'one',
    caution: null,
    source: COMMON,
    ...more,
  };
}

/** The longest straightedge that any part of any slab asks for. */
function straightedgeTool({ shownIn: system }: Job, { pours }: PourPlan): Tool[] {
  const lengthsIn = pours.flatMap(({ screed }) =>
    screed.flatMap(({ runs }) => runs.map(({ straightedgeIn }) => straightedgeIn)),
  );
  if (lengthsIn.length === 0) return [];
  const longestIn = Math.max(...lengthsIn);
  const wholeIn = Math.ceil(longestIn / IN_PER_FT - 1e-9) * IN_PER_FT;
  const length = printLength(system === 'imperial' ? wholeIn : longestIn, { system, style: 'feet-inches' });
  return [
    tool(
      'straightedge',
      `Straightedge, ${length}`,
      'Long enough for the widest strike-off; true, or the top will not be.',
      {
        countWords: 'one, and shorter ones for narrow strips',
      },
    ),
  ];
}

/** Buckets that hold the largest batch of one mixer, filled as far as the job says. */
function bucketTool({ crew }: Job, { pours, bucket }: PourPlan): Tool[] {
  const largestFt3 = Math.max(0, ...pours.flatMap(({ batches }) => batches.map(({ yieldFt3 }) => yieldFt3)));
  if (largestFt3 === 0) return [];
  const count = Math.ceil(largestFt3 / bucket.volumeFt3 - 1e-9) * crew.mixers;
  return [
    tool('buckets', 'Buckets', 'To carry one batch of each mixer away at once.', {
      count,
      countWords: `${counted(count, 'bucket', 'buckets')}, ${Number((100 * crew.bucketFill).toPrecision(3))} % full`,
      caution: bucket.findings[0]?.words ?? null,
    }),
  ];
}
