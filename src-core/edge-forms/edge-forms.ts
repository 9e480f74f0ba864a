/** The edge forms of a piece, from its drawing. */
import type { Job, Piece } from '../job';
import { pieceRegion } from '../job';
import type { Segment } from '../outline';
import type { Trace } from '../trace';
import type { FormContext } from './context';
import { called, labelOf, stripStockIn } from './context';
import { loopForms } from './loop-forms';
import { openingCorners, openingForms } from './opening-forms';
import { pressureOf } from './pressure';
import { rimHeights } from './rim-heights';
import { sealingOf } from './sealing';
import { sideOf } from './sides';
import type { EdgeForm, EdgeFormsResult, GrooveStrip, IsolationStrip, Plug, ScrewGroup } from './types';
import { walkOutline } from './walk';

export interface EdgeFormsOptions {
  /** Seams of the backing boards in plan, which joints of the forms keep off as they do of the piece's own joints. */
  readonly seams?: readonly Segment[];
}

/**
 * Everything that stands round one copy of a piece while it is poured: profiled, flat and sink forms with their ends,
 * parts, screws, tape, sealant and isolation strips, the heights of the rim and the push of the wet concrete. A piece that
 * cannot be drawn comes back with the problems of its drawing.
 */
export function edgeForms(job: Job, piece: Piece, { seams = [] }: EdgeFormsOptions = {}): EdgeFormsResult {
  const region = pieceRegion(piece);
  if (!region.ok) return { ok: false, problems: region.problems };
  const context: FormContext = {
    heightIn: piece.thicknessIn,
    concreteIn: piece.thicknessIn,
    isScrewed: true,
    stockIn: stripStockIn(job).at(-1)!,
    cutoutCorners: piece.cutouts.flatMap(openingCorners),
    seams: [...piece.joints.map(({ from, to }) => ({ a: from, b: to })), ...seams],
    cautions: [],
  };
  const walk = walkOutline(piece.corners, 'inside');
  const sides = walk.edges.map(({ index }) => sideOf(job, piece, index));
  const cornerLabel = (index: number) => labelOf({ pieceId: piece.id, part: { kind: 'corner', index } });
  const edgeTrace = (index: number): Trace => ({ pieceId: piece.id, part: { kind: 'edge', index } });
  const round = loopForms(
    walk,
    sides,
    {
      edge: (index) => labelOf(edgeTrace(index)),
      corner: cornerLabel,
      edgeWords: (index) => `along edge ${index + 1} of ${called(piece)}`,
    },
    context,
  );
  walk.edges.forEach(({ index }, k) => {
    if (sides[k]!.isWall && sides[k]!.gapIn === 0) {
      context.cautions.push(
        `Edge ${index + 1} of ${called(piece)} has no gap to its wall: it is cast against it and will crack or drag as it shrinks.`,
      );
    }
  });
  const openings = piece.cutouts.map((cutout) => openingForms(job, piece, cutout, context));
  const forms = [...round.forms, ...openings.flatMap((opening) => opening.forms)];
  const plugs = openings.flatMap(({ plug }) => (plug === null ? [] : [plug]));
  const junctions = [...round.junctions, ...openings.flatMap((opening) => opening.junctions)];
  return {
    ok: true,
    forms: {
      pieceId: piece.id,
      copies: piece.copies,
      pourDay: piece.pourDay,
      heightIn: piece.thicknessIn,
      stripWidthIn: job.forms.stripWidthIn,
      forms,
      plugs,
      junctions,
      isolation: forms.flatMap(isolationOf),
      grooves: forms.flatMap(grooveOf),
      screws: screwGroups(forms, plugs),
      sealing: sealingOf(forms, plugs, junctions),
      rim: rimHeights(job, piece, walk, cornerLabel),
      pressure: pressureOf(job.falsework.wetDensityPcf, piece.thicknessIn),
      cautions: context.cautions,
    },
  };
}

function isolationOf({ id, trace, material, faceIn, heightIn, slabFaceIn }: EdgeForm): IsolationStrip[] {
  if (material !== 'isolation-strip') return [];
  return [{ id: `${id}/isolation`, trace, thicknessIn: faceIn, heightIn, lengthIn: slabFaceIn }];
}

function grooveOf({ id, trace, groove, slabFaceIn }: EdgeForm): GrooveStrip[] {
  return groove === null ? [] : [{ id: `${id}/groove`, trace, section: groove, lengthIn: slabFaceIn }];
}

function screwGroups(forms: readonly EdgeForm[], plugs: readonly Plug[]): ScrewGroup[] {
  const parts = forms.flatMap((form) => form.parts);
  return [
    ...parts.map(({ id, trace, screwsAtIn }) => ({ id: `${id}/screws`, trace, count: screwsAtIn.length })),
    ...plugs.map(({ id, trace, screws }) => ({ id: `${id}/screws`, trace, count: screws })),
  ].filter(({ count }) => count > 0);
}
