/** The falsework of a job: each piece designed, and what has come out used again for what is poured later. */
import type { Job } from '../job';
import type { FalseworkOptions, PieceDesign } from './design-falsework';
import { designPiece } from './design-falsework';
import { planSections } from './plan-sections';
import { DEFAULT_PRACTICE } from './practice';
import { pricesOf } from './prices';
import type { FalseworkReuse, PieceStock } from './reuse';
import { REUSE_CAUTION, reuseFalsework } from './reuse';
import type { SectionReuse } from './reused-part';

/** What one piece's falsework takes over from earlier pours and hands on to later ones. */
export interface PieceReuse {
  readonly from: readonly SectionReuse[];
  readonly to: readonly SectionReuse[];
  readonly stock: PieceStock;
}

export interface FalseworkDesign extends PieceDesign {
  readonly reuse: PieceReuse;
}

export interface JobFalsework {
  /** One for each piece, in the job's order. */
  readonly designs: readonly FalseworkDesign[];
  readonly reuse: FalseworkReuse;
}

/** The falsework of every piece of a job. */
export function designJob(job: Job, options: FalseworkOptions = {}): JobFalsework {
  return withReuse(
    job,
    job.pieces.map(({ id }) => designPiece(job, id, options)),
  );
}

/**
 * The falsework under one piece, and what is used again. Other pieces are designed too where any section of the job is out by the
 * day on which another is built. Throws for a piece that the job does not have.
 */
export function designFalsework(job: Job, pieceId: string, options: FalseworkOptions = {}): FalseworkDesign {
  const own = designPiece(job, pieceId, options);
  const { ownFastenings: _, ...others } = options;
  const designs = mayUseAgain(job, options)
    ? job.pieces.map(({ id }) => (id === pieceId ? own : designPiece(job, id, others)))
    : [own];
  return withReuse(job, designs).designs.find((design) => design.pieceId === pieceId)!;
}

/** Whether any section comes out by the day on which another is built. */
function mayUseAgain(job: Job, options: FalseworkOptions): boolean {
  const practice = { ...DEFAULT_PRACTICE, ...options.practice };
  const sections = job.pieces.flatMap((piece) => planSections(job, piece, practice).sections);
  return (
    Math.min(...sections.map(({ lastDay }) => lastDay)) <=
    Math.max(...sections.map(({ firstDay }) => firstDay))
  );
}

function withReuse(job: Job, designs: readonly PieceDesign[]): JobFalsework {
  const reuse = reuseFalsework(job, designs, pricesOf(job));
  return {
    reuse,
    designs: designs.map((design, i): FalseworkDesign => {
      const from = reuse.uses.filter(({ to }) => to.pieceId === design.pieceId);
      return {
        ...design,
        cautions: from.length === 0 ? design.cautions : [...design.cautions, REUSE_CAUTION],
        reuse: {
          from,
          to: reuse.uses.filter((use) => use.from.pieceId === design.pieceId),
          stock: reuse.byPiece[i]!,
        },
      };
    }),
  };
}
