/** Keys that a view takes while the focus is in it. */
import type { UnitSystem } from '../../src-core/units';
import { printLength } from '../../src-core/units';
import { NAMED_STEPS } from '../model/camera-step';
import { arrowStep } from '../plan/plan-steps';

export interface KeyRow {
  readonly does: string;
  /** As `printKeys` takes them. */
  readonly keys: string;
}

export interface KeyGroup {
  readonly title: string;
  readonly rows: readonly KeyRow[];
}

/** The views in the order in which a job is drawn; the plan's steps in the units of the job. */
export function viewKeys(system: UnitSystem): KeyGroup[] {
  return [
    {
      title: 'In the plan',
      rows: [
        { does: 'Next handle of the piece', keys: 'Tab' },
        ...stepRows('the handle', system),
        { does: 'Select what the handle is of', keys: 'Enter or Space' },
        { does: 'Take out what the handle is of', keys: 'Delete or Backspace' },
        { does: 'New corner in the middle of an edge', keys: 'Insert' },
        { does: 'From a handle back to the plan', keys: 'Escape' },
        { does: 'Move over the plan', keys: 'Arrows' },
        { does: 'Nearer, farther', keys: '+ and -' },
        { does: 'Show the whole plan', keys: '0' },
      ],
    },
    {
      title: 'While a piece is drawn',
      rows: [
        ...stepRows('the next corner', system),
        { does: 'Set a corner', keys: 'Space' },
        { does: 'Set a corner at the length typed; with none typed, close the piece', keys: 'Enter' },
        { does: 'Take back the last character typed, or the last corner', keys: 'Backspace' },
        { does: 'Leave off drawing', keys: 'Escape' },
      ],
    },
    {
      title: 'In the model',
      rows: [
        ...NAMED_STEPS.map(({ key, words }) => ({ does: words, keys: key })),
        { does: 'Turn', keys: 'Arrows' },
        { does: 'Move across', keys: 'Shift+Arrows' },
        { does: 'Nearer, farther', keys: '+ and -' },
      ],
    },
    {
      title: 'In a field',
      rows: [
        { does: 'Take what is typed', keys: 'Enter' },
        { does: 'Bring the old value back', keys: 'Escape' },
        { does: 'One step more or less', keys: 'Up and Down' },
      ],
    },
  ];
}

const HELD = [
  { keys: 'Arrows', shiftKey: false, altKey: false },
  { keys: 'Shift+Arrows', shiftKey: true, altKey: false },
  { keys: 'Alt+Arrows', shiftKey: false, altKey: true },
] as const;

/** "Move the handle 1/8 in" by the arrows alone, with Shift and with Alt. */
function stepRows(what: string, system: UnitSystem): KeyRow[] {
  return HELD.flatMap(({ keys, shiftKey, altKey }) => {
    const step = arrowStep({ key: 'ArrowRight', shiftKey, altKey }, system);
    return step === null ? [] : [{ does: `Move ${what} ${printLength(step.dxIn, { system })}`, keys }];
  });
}
