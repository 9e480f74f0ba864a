/** From a piece to everything the engine finds about it on one day. */
import type { Job, Piece } from '../job';
import type { MomentField } from '../plate';
import type { BoundRun } from './bound-state';
import { runBound } from './bound-state';
import { crackedState, MOST_FACTORISATIONS } from './cracking';
import type { AnalyseOptions, PreparedPiece } from './prepare-piece';
import { preparePiece } from './prepare-piece';
import { shearReader } from './shear-field';
import { solveCases } from './solve-cases';
import { steelLayers } from './steel';
import type { Bound, CannotAnalyse, PieceAnalysis, Stability } from './types';

export type AnalyseResult =
  | { readonly ok: true; readonly analysis: PieceAnalysis }
  | { readonly ok: false; readonly cannot: CannotAnalyse };
/**
 * Analyses one piece. Never throws for a job that passed the schema: what cannot be analysed comes back with a sentence.
 */
export function analysePiece(job: Job, piece: Piece, options: AnalyseOptions): AnalyseResult {
  const result = preparePiece(job, piece, options);
  return result.ok
    ? { ok: true, analysis: analysePrepared(result.prepared, options.quick?.mostFactorisations) }
    : result;
}

/** Solves every case of a prepared piece in both states. */
export function analysePrepared(
  prepared: PreparedPiece,
  mostFactorisations = MOST_FACTORISATIONS,
): PieceAnalysis {
  const { piece } = prepared;
  const { bearings, loads, locate, labels, mesh, contacts, concrete, state, free } = prepared;
  const run: Omit<BoundRun, 'state' | 'bound' | 'free' | 'cases' | 'visit'> = {
    bearings,
    loads,
    locate,
    averageOverIn: piece.thicknessIn,
    shear: shearReader(mesh, locate, contacts, piece.thicknessIn),
    labels,
  };
  const all = labels.map((_, i) => i);
  const each = (bound: Bound) => runBound({ ...run, state, bound, free, cases: all });
  const elastic = { low: each('low'), high: each('high') };

  const limit = concrete.crackingLimitLbfInPerIn;
  const cracks = (['low', 'high'] as const).some(
    (bound) =>
      elastic[bound].state.sagging.momentLbfInPerIn > limit ||
      elastic[bound].state.hogging.momentLbfInPerIn > limit,
  );
  const cracked = cracks
    ? crackedState(
        {
          mesh,
          layout: prepared.layout,
          locate,
          concrete,
          thicknessIn: piece.thicknessIn,
          steel: steelLayers(piece),
          bearings,
          contacts,
          addArms: prepared.addArms,
          loads,
          overhangIn: prepared.shape.longestOverhang?.overhangIn ?? 0,
          run,
          caseCount: labels.length,
          mostFactorisations,
        },
        elastic,
      )
    : null;

  return {
    piece,
    mix: prepared.mix,
    concrete,
    weight: prepared.weight,
    shape: prepared.shape,
    bearings,
    contacts,
    mesh,
    stability: engineDecides(prepared.stability, elastic.low.state.cases, elastic.high.state.cases),
    elastic: { low: elastic.low.state, high: elastic.high.state },
    cracked,
    roving: prepared.roving,
    remarks: prepared.remarks,
  };
}
/** Deflection and moments of one uncracked load case at every node, for maps, deflected shapes and references. */
export interface CaseField {
  readonly wIn: Float64Array;
  readonly moments: MomentField;
  /** Reaction of each contact, up positive. */
  readonly contactLbf: Float64Array;
  readonly asIfHeld: boolean;
}

/** Solves one labelled case of a prepared piece with one stiffness bound. */
export function caseField(prepared: PreparedPiece, bound: Bound, labelIndex: number): CaseField {
  const found: CaseField[] = [];
  solveCases(
    prepared.state,
    bound,
    prepared.loads,
    prepared.free,
    [{ deadFactor: 1, liveFactor: 1, liveIndex: labelIndex - 1 }],
    ({ wIn, moments, contact, asIfHeld }) => {
      found.push({
        wIn: wIn.slice(),
        moments: { mx: moments.mx.slice(), my: moments.my.slice(), mxy: moments.mxy.slice() },
        contactLbf: contact.reactionLbf,
        asIfHeld,
      });
    },
  );
  return found[0]!;
}
/** Where a piece is tied, or has a shape that statics about one side misjudges, the engine's own answer stands. */
function engineDecides(
  stability: Stability,
  ...runs: readonly (readonly { readonly asIfHeld: boolean }[])[]
): Stability {
  const alone = runs.some((cases) => cases[0]?.asIfHeld === true);
  const loaded = runs.some((cases) => cases.some(({ asIfHeld }) => asIfHeld));
  const kind = alone ? 'tips-alone' : loaded ? 'tips-under-load' : 'stands';
  return { ...stability, kind };
}
