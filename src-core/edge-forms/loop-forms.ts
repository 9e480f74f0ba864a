/** All forms round one closed line, and where they meet. */
import type { FormContext, Label } from './context';
import { cornerForms, turnedAbout } from './curved-form';
import type { Side } from './sides';
import type { FormedEdge } from './straight-form';
import { hasStraight, straightForm } from './straight-form';
import type { EdgeForm, FormJunction } from './types';
import type { Walk } from './walk';
import { arcOf, isStraight } from './walk';

/** Names of what goes round a line, by the numbers of its edges and corners as drawn. */
export interface LoopLabels {
  readonly edge: (index: number) => Label;
  readonly corner: (index: number) => Label;
  /** "along edge 2 of ..." for a sentence. */
  readonly edgeWords: (index: number) => string;
}

export interface LoopForms {
  readonly forms: readonly EdgeForm[];
  readonly junctions: readonly FormJunction[];
}

/** Forms in the order of the walk, one side an edge of it. */
export function loopForms(
  walk: Walk,
  sides: readonly Side[],
  labels: LoopLabels,
  context: FormContext,
): LoopForms {
  const n = walk.corners.length;
  const forms: EdgeForm[] = [];
  const junctions: FormJunction[] = [];
  for (let k = 0; k < n; k++) {
    const corner = walk.corners[k]!;
    const before = sides[(k + n - 1) % n]!;
    const own = sides[k]!;
    const { index } = corner;
    if (corner.tangentIn > 0) {
      const curved = cornerForms(corner, [before, own], named(labels.corner(index), 'form'), context);
      forms.push(...curved);
      const { from, to } = arcOf(corner);
      const meets = [
        // Where two arcs touch, the end of the first is the start of the second.
        {
          at: from,
          isMet: before.faceIn > 0 && curved.length > 0 && hasStraight(walk.edges[(k + n - 1) % n]!),
          word: 'arc-start',
        },
        { at: curved[1]?.from ?? to, isMet: curved.length > 1, word: 'arc-middle' },
        { at: to, isMet: own.faceIn > 0 && curved.length > 0, word: 'arc-end' },
      ];
      junctions.push(
        ...meets.flatMap(({ at, isMet, word }) =>
          isMet ? [jointOf(named(labels.corner(index), word), at, context.concreteIn)] : [],
        ),
      );
    } else if (before.faceIn > 0 && own.faceIn > 0) {
      const label = named(labels.corner(index), 'junction');
      junctions.push(
        isStraight(corner.turnRad)
          ? jointOf(label, corner.at, context.concreteIn)
          : {
              ...label,
              at: corner.at,
              kind: corner.turnRad > 0 ? 'outside-corner' : 'inside-corner',
              tapeIn: context.concreteIn,
              sealantIn: context.concreteIn,
            },
      );
    }
    const edge = walk.edges[k]!;
    if (own.faceIn === 0 || !hasStraight(edge)) continue;
    const formed: FormedEdge = {
      edge,
      own,
      before: { corner, side: before },
      after: { corner: walk.corners[(k + 1) % n]!, side: sides[(k + 1) % n]! },
    };
    const label = named(labels.edge(edge.index), 'form');
    forms.push(straightForm(formed, label, labels.edgeWords(edge.index), context));
  }
  return {
    forms,
    junctions: [...junctions, ...forms.flatMap((form) => partJoints(form, context.concreteIn))],
  };
}

function named({ id, trace }: Label, word: string): Label {
  return { id: `${id}/${word}`, trace };
}

function jointOf(label: Label, at: FormJunction['at'], tapeIn: number): FormJunction {
  return { ...label, at, kind: 'joint', tapeIn, sealantIn: 0 };
}

/** Butt joints between the parts of one form, taped over what concrete touches; a circle has one more, where it closes. */
export function partJoints(form: EdgeForm, concreteIn: number): FormJunction[] {
  const joints = form.parts.slice(1).map(({ fromIn }) => fromIn);
  const marksIn = form.shape === 'curved' && form.isClosed ? [0, ...joints] : joints;
  return marksIn.map((atIn, k) =>
    jointOf({ id: `${form.id}/joint/${k + 1}`, trace: form.trace }, placeOn(form, atIn), concreteIn),
  );
}

/** The point of a form's slab face `atIn` along it. */
export function placeOn(form: EdgeForm, atIn: number): FormJunction['at'] {
  const ratio = atIn / form.slabFaceIn;
  if (form.shape === 'straight') {
    return {
      xIn: form.from.xIn + ratio * (form.to.xIn - form.from.xIn),
      yIn: form.from.yIn + ratio * (form.to.yIn - form.from.yIn),
    };
  }
  return turnedAbout(form.centre, form.from, ratio * form.turnRad);
}
