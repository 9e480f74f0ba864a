/** Edge forms as plain data. Plan coordinates are the drawing's, inches; lengths along a form are on its slab face. */
import type { EdgeProfile, JobProblem } from '../job';
import type { Point } from '../outline';
import type { GrooveSection } from '../profile';
import type { Trace } from '../trace';
import type { Line } from '../workings';

/** Profiled on an exposed edge, flat where the slab meets something, sink round an opening. */
export type FormKind = 'profiled' | 'flat' | 'sink';

/** An isolation strip fills the gap and stays; a form strip comes off. */
export type FormMaterial = 'form-strip' | 'isolation-strip';

/**
 * How an end is made: mitred against the next form, butted against the wall or slab that it runs to, butted against
 * the next form's slab face, cut square where a curve begins, or square against the next form in one line.
 */
export type EndKind = 'mitre' | 'to-wall' | 'to-form' | 'tangent' | 'in-line' | 'joint';

export interface FormEnd {
  readonly kind: EndKind;
  /**
   * The cut, rad from square. Positive where the outer face runs past the slab face, as at an outside corner; negative
   * where the slab face is the longer, as at an inside corner.
   */
  readonly cutRad: number;
  /** How far the slab face and the outer face run past the slab's corner, in; negative where they stop short of it. */
  readonly slabFacePastIn: number;
  readonly outerFacePastIn: number;
}

/** A length that is cut and set in one piece. */
export interface FormPart {
  readonly id: string;
  readonly trace: Trace;
  /** Long point to long point, in; of a curve, along its slab face. */
  readonly longIn: number;
  /** Where its slab face begins and ends along the form's, in. */
  readonly fromIn: number;
  readonly toIn: number;
  readonly start: FormEnd;
  readonly end: FormEnd;
  /** Screws along the slab face from `fromIn`, in; none in an isolation strip, which is stuck, nor in a form that stands on a bowl. */
  readonly screwsAtIn: readonly number[];
}

interface FormBase {
  readonly id: string;
  readonly trace: Trace;
  readonly kind: FormKind;
  readonly material: FormMaterial;
  readonly profile: EdgeProfile;
  /** The slab's thickness; of an opening's form, from what it stands on to its top. */
  readonly heightIn: number;
  /** Thickness of the strip in plan, away from the slab. */
  readonly faceIn: number;
  /** Length of slab that it holds, in. */
  readonly slabFaceIn: number;
  readonly parts: readonly FormPart[];
}

/** A straight form. It lies to the right of the way from `from` to `to`, the slab to the left. */
export interface StraightForm extends FormBase {
  readonly shape: 'straight';
  /** A return runs from the free front back to a wall. */
  readonly role: 'face' | 'return' | 'back' | 'opening';
  /** Ends of the slab's edge. */
  readonly from: Point;
  readonly to: Point;
  readonly start: FormEnd;
  readonly end: FormEnd;
  /** Long point to long point, in. */
  readonly longIn: number;
  /** How far a return's slab face runs past the slab's corner to the wall, in; null where it is none. */
  readonly pastSlabIn: number | null;
  /** Drip groove that is formed along this edge. */
  readonly groove: GrooveSection | null;
}

/** A form round a corner radius, or round a whole circle. */
export interface CurvedForm extends FormBase {
  readonly shape: 'curved';
  readonly centre: Point;
  /** Of the slab's edge. */
  readonly radiusIn: number;
  /** Where the curve begins and ends in the slab's order, and its turn: positive at an outside corner. */
  readonly from: Point;
  readonly to: Point;
  readonly turnRad: number;
  readonly made: 'bent' | 'kerfed' | 'shaped-block';
  /** A circle closes on itself. */
  readonly isClosed: boolean;
  readonly groove: GrooveSection | null;
}

export type EdgeForm = StraightForm | CurvedForm;

/** A solid plug that keeps a small opening free. */
export interface Plug {
  readonly id: string;
  readonly trace: Trace;
  readonly widthIn: number;
  readonly depthIn: number;
  readonly isRound: boolean;
  readonly heightIn: number;
  readonly perimeterIn: number;
  readonly screws: number;
}

/** Where two forms meet: taped and, at a corner, sealed over their height. */
export interface FormJunction {
  readonly id: string;
  readonly trace: Trace;
  readonly at: Point;
  readonly kind: 'outside-corner' | 'inside-corner' | 'joint';
  readonly tapeIn: number;
  readonly sealantIn: number;
}

/** A gap to a wall or another slab that an isolation strip fills. */
export interface IsolationStrip {
  readonly id: string;
  readonly trace: Trace;
  readonly thicknessIn: number;
  readonly heightIn: number;
  readonly lengthIn: number;
}

/** A strip laid on the deck that leaves a drip groove. */
export interface GrooveStrip {
  readonly id: string;
  readonly trace: Trace;
  readonly section: GrooveSection;
  /** Along the slab's edge; cut to the setback on site. */
  readonly lengthIn: number;
}

/** Height of the form's rim at a corner of the outline, or where a corner's radius begins or ends. */
export interface RimHeight {
  readonly id: string;
  readonly trace: Trace;
  readonly at: Point;
  readonly belowHighestIn: number;
}

export interface RimHeights {
  readonly marks: readonly RimHeight[];
  /** "The form is tilted ..." */
  readonly words: string;
  /** From the highest mark to the lowest. */
  readonly fallIn: number;
  /** The greatest drop; none where the slab is level. */
  readonly lines: readonly Line[];
}

export interface FormPressure {
  readonly pressurePsf: number;
  readonly resultantLbfPerFt: number;
  readonly braceSpacingIn: number;
  /** Push on each brace at that spacing. */
  readonly braceLbf: number;
  readonly lines: readonly Line[];
}

/** A screw line: what fastens one part, plug or block. */
export interface ScrewGroup {
  readonly id: string;
  readonly trace: Trace;
  readonly count: number;
}

export interface Sealing {
  readonly cornerTapeIn: number;
  readonly jointTapeIn: number;
  /** Along the foot of every form, and up every corner. */
  readonly beadIn: number;
}

/** The forms of one copy of a piece. */
export interface EdgeForms {
  readonly pieceId: string;
  readonly copies: number;
  readonly pourDay: number;
  readonly heightIn: number;
  readonly stripWidthIn: number;
  readonly forms: readonly EdgeForm[];
  readonly plugs: readonly Plug[];
  readonly junctions: readonly FormJunction[];
  readonly isolation: readonly IsolationStrip[];
  readonly grooves: readonly GrooveStrip[];
  readonly screws: readonly ScrewGroup[];
  readonly sealing: Sealing;
  readonly rim: RimHeights;
  readonly pressure: FormPressure;
  /** What the forms cannot do as drawn, each a sentence. */
  readonly cautions: readonly string[];
}

export type EdgeFormsResult =
  | { readonly ok: true; readonly forms: EdgeForms }
  | { readonly ok: false; readonly problems: readonly JobProblem[] };
