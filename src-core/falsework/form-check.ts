/** One check of a section, in the shape of every other check. */
import type { Check, Quantity } from '../checks';
import type { Line } from '../workings';
import type { Section } from './section';

/** What a section is checked for. */
export type FormCheckId =
  | 'falsework-sheathing'
  | 'falsework-joist-bending'
  | 'falsework-joist-shear'
  | 'falsework-joist-deflection'
  | 'falsework-header'
  | 'falsework-header-screws'
  | 'falsework-stringer-bending'
  | 'falsework-stringer-shear'
  | 'falsework-stringer-deflection'
  | 'falsework-joist-bearing'
  | 'falsework-stringer-bearing'
  | 'falsework-leg'
  | 'falsework-sole-bearing'
  | 'falsework-ledger-bending'
  | 'falsework-ledger-fasteners'
  | 'falsework-brace'
  | 'falsework-brace-screws'
  | 'falsework-handling';

export interface FormCheck extends Check {
  readonly id: FormCheckId;
  readonly sectionId: string;
}

/** Over the limit by less than this is rounding (a ratio). */
const ROUNDING = 1e-9;

/** Whether a check passes. */
export function passes({ ratio }: Pick<Check, 'ratio'>): boolean {
  return ratio <= 1 + ROUNDING;
}

export interface FormCheckInput {
  readonly id: FormCheckId;
  readonly title: string;
  readonly demand: Quantity;
  readonly capacity: Quantity;
  readonly words: string;
  readonly workings: readonly Line[];
  readonly cautions?: readonly string[];
}

/** A check with its ratio and rung. */
export function formCheck(section: Section, input: FormCheckInput): FormCheck {
  const { demand, capacity } = input;
  const ratio = demand.value / capacity.value;
  return {
    id: input.id,
    title: input.title,
    pieceId: section.pieceId,
    sectionId: section.id,
    where: { kind: 'piece' },
    demand,
    capacity,
    ratio,
    level: passes({ ratio }) ? 'holds' : 'change',
    words: input.words,
    needs: passes({ ratio }) ? [] : ['support'],
    workings: input.workings,
    cautions: input.cautions ?? [],
  };
}
