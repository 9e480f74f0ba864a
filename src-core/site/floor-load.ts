/** What the job puts on its floor or deck, per area, against what that may carry. */
import { carriedWeights } from '../analysis';
import type { Level } from '../checks';
import type { Job, Piece } from '../job';
import { pieceRegion } from '../job';
import { polygonAreaIn2, regionAreaIn2 } from '../outline';
import { printArea, printMass, printSpreadLoad } from '../units';
import type { Line } from '../workings';
import { formula } from '../workings';
import type { SiteFinding } from './finding';

/** Weight of form panel, joists and legs over the footprint, psf. Common practice, no source. */
export const FORM_PSF = 5;

/** Load of a fresh pour on its footprint, lb. An: net plan area, in2; h: in; w: wet density, lb/ft3; A: footprint, in2; f, p: forms and people, psf. Arithmetic. */
export const pourLoad = formula<{ An: number; h: number; w: number; A: number; f: number; p: number }>({
  symbol: 'Qw',
  label: 'Load while it is poured: wet concrete, forms and people',
  formula: 'An * h * w / 1728 + (f + p) * A / 144',
  units: { An: 'in2', h: 'in', w: 'lb/ft3', A: 'in2', f: 'psf', p: 'psf' },
  unit: 'lb',
  source: 'arithmetic; people 50 psf: ACI 347R-14; forms: common practice, no source',
  compute: ({ An, h, w, A, f, p }) => (An * h * w) / 1728 + ((f + p) * A) / 144,
});

/** Load of the finished piece on its footprint, lb. W: slab, what it carries and cabinets, lb; p: spread load, psf; A: footprint, in2. Arithmetic. */
export const finishedLoad = formula<{ W: number; p: number; A: number }>({
  symbol: 'Qf',
  label: 'Load when finished: slab, what it carries, cabinets, and the spread load on top',
  formula: 'W + p * A / 144',
  units: { W: 'lb', p: 'psf', A: 'in2' },
  unit: 'lb',
  source: 'arithmetic',
  compute: ({ W, p, A }) => W + (p * A) / 144,
});

/** Load of a square foot of footprint, psf. Q: lb; A: in2. Arithmetic. */
export const loadPerArea = formula<{ Q: number; A: number }>({
  symbol: 'q',
  label: 'Load of a square foot of footprint, the larger of both',
  formula: 'Q * 144 / A',
  units: { Q: 'lb', A: 'in2' },
  unit: 'psf',
  source: 'arithmetic',
  compute: ({ Q, A }) => (Q * 144) / A,
});

/** Area of floor that the load asks for, ft2. Q: lb; qa: allowance, psf. Arithmetic. */
export const areaNeeded = formula<{ Q: number; qa: number }>({
  symbol: 'Aneeded',
  label: 'Floor that it must be spread over',
  formula: 'Q / qa',
  units: { Q: 'lb', qa: 'psf' },
  unit: 'ft2',
  source: 'arithmetic',
  compute: ({ Q, qa }) => Q / qa,
});

interface PieceLoad {
  readonly piece: Piece;
  readonly footprintIn2: number;
  readonly mostLb: number;
  readonly standingLb: number;
  readonly psf: number;
  readonly lines: readonly Line[];
}

/**
 * The heaviest piece per area against the floor's allowance, with the total beside it. A floor of timber or a suspended one whose
 * allowance nobody has stated is for an engineer; ground and slabs on it hold unless a figure is stated for them.
 */
export function floorLoad(job: Job): SiteFinding | null {
  const pieces = job.pieces.flatMap((piece) => loadOf(job, piece) ?? []);
  if (pieces.length === 0) return null;
  const worst = pieces.reduce((a, b) => (b.psf > a.psf ? b : a));
  const totalLb = pieces.reduce((sum, { standingLb, piece }) => sum + standingLb * piece.copies, 0);
  const { kind, allowancePsf } = job.site.standsOn;
  const needed =
    allowancePsf !== null && allowancePsf > 0 ? areaNeeded({ Q: worst.mostLb, qa: allowancePsf }) : null;
  const judged = judge(job, worst, needed?.value ?? null);
  return {
    id: 'floor-load',
    title: `Load on the ${FLOOR_WORDS[kind]}`,
    level: judged.level,
    words: judged.words,
    demand: { value: worst.psf, unit: 'psf' },
    capacity: allowancePsf === null ? null : { value: allowancePsf, unit: 'psf' },
    workings: [...worst.lines, ...(needed === null ? [] : [needed.line])],
    source:
      allowancePsf === null
        ? 'local code and whoever knows the floor'
        : `allowance as stated${job.site.standsOn.allowanceFrom === '' ? '' : `: ${job.site.standsOn.allowanceFrom}`}`,
    cautions: [
      `All pieces with cabinets and equipment weigh ${printMass(Math.round(totalLb), { system: job.shownIn })} together, without people.`,
      'Feet, legs and piers press on points: put a sill or plate under them. Pieces one above the other add up and are not added here.',
      ...judged.cautions,
    ],
  };
}

type FloorKind = Job['site']['standsOn']['kind'];

const FLOOR_WORDS: { readonly [K in FloorKind]: string } = {
  'slab-on-ground': 'slab on the ground',
  ground: 'ground',
  'timber-floor': 'timber floor',
  'timber-deck': 'timber deck',
  'suspended-concrete': 'suspended concrete floor',
  unknown: 'floor or ground',
};

interface Judged {
  readonly level: Level;
  readonly words: string;
  readonly cautions: readonly string[];
}

function judge(job: Job, worst: PieceLoad, neededFt2: number | null): Judged {
  const { kind, allowancePsf } = job.site.standsOn;
  const psf = (value: number) => printSpreadLoad(value, { system: job.shownIn, digits: 3 });
  const floor = FLOOR_WORDS[kind];
  const load = `"${worst.piece.name}" puts ${psf(worst.psf)} on the ${floor}`;
  const isGround = kind === 'slab-on-ground' || kind === 'ground';
  if (allowancePsf !== null) {
    const within = worst.psf <= allowancePsf;
    if (within) {
      return {
        level: 'holds',
        words: `${load} at the most; it may carry ${psf(allowancePsf)}.`,
        cautions: [],
      };
    }
    const area = (ft2: number) => printArea(ft2 * 144, { system: job.shownIn });
    const spread =
      neededFt2 === null
        ? 'it may carry nothing'
        : `more than the ${psf(allowancePsf)} it may carry: spread it with sills over ${area(neededFt2)} instead of its own ${area(worst.footprintIn2 / 144)}${isGround ? '' : ', or shore the floor below'}`;
    return {
      level: 'change',
      words: `${load}, ${spread}.`,
      cautions: isGround
        ? [
            'Firm ground mostly takes more than a figure for the floor on it: ask where the figure comes from.',
          ]
        : [],
    };
  }
  switch (kind) {
    case 'slab-on-ground':
    case 'ground':
      return {
        level: 'holds',
        words: `${load} at the most, which firm ground takes.`,
        cautions:
          kind === 'ground' ? ['Soft or filled ground settles: compact it, and set piers on footings.'] : [],
      };
    case 'timber-floor':
    case 'timber-deck':
    case 'suspended-concrete':
      return {
        level: 'engineer',
        words: `${load}, and nobody has stated what it may carry.`,
        cautions: ['A house deck or floor is usually built for 40 psf (IRC Table R301.5), people included.'],
      };
    case 'unknown':
      return {
        level: 'holds',
        words: `${load} at the most; the job does not state what it stands on.`,
        cautions: [
          'State what the job stands on. On a timber floor or deck this load needs a stated allowance before anything is poured.',
        ],
      };
  }
}

/** A piece's loads on its own footprint; null where its outline cannot be built. */
function loadOf(job: Job, piece: Piece): PieceLoad | null {
  const region = pieceRegion(piece);
  const mix = job.mixes.find(({ id }) => id === piece.mixId);
  if (!region.ok || mix === undefined) return null;
  const A = polygonAreaIn2(region.outer);
  const An = regionAreaIn2(region);
  const h = piece.thicknessIn;
  const carriedLb = carriedWeights(piece, region.holes).reduce((sum, { lb }) => sum + lb, 0);
  const cabinetsLb = piece.supports.reduce(
    (sum, support) => sum + (support.kind === 'cabinet' ? support.weightLb : 0),
    0,
  );
  const standingLb = (An * h * mix.densityPcf) / 1728 + carriedLb + cabinetsLb;
  const pour = pourLoad({
    An,
    h,
    w: job.falsework.wetDensityPcf,
    A,
    f: FORM_PSF,
    p: job.falsework.livePsf,
  });
  const finished = finishedLoad({ W: standingLb, p: piece.loads.spreadPsf, A });
  const mostLb = Math.max(pour.value, finished.value);
  const perArea = loadPerArea({ Q: mostLb, A });
  return {
    piece,
    footprintIn2: A,
    mostLb,
    standingLb,
    psf: perArea.value,
    lines: [pour.line, finished.line, perArea.line],
  };
}
