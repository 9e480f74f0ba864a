/** Every kind of block, measured. */
import type { Block } from './block';
import { measureFigure } from './measure-figure';
import { measureContents, measureFacts, measureVerdicts, measureWorkings } from './measure-rows';
import { measureTable } from './measure-table';
import {
  measureCheckboxes,
  measureHeading,
  measureList,
  measureNotice,
  measureParagraph,
} from './measure-text';
import type { Measured } from './measured';
import type { Setting } from './set-text';

/** Height and words of a block, all lengths in points of the chapter's scale. */
export function measureBlock(block: Block, setting: Setting): Measured {
  switch (block.kind) {
    case 'heading':
      return measureHeading(block, setting);
    case 'paragraph':
      return measureParagraph(block, setting);
    case 'list':
      return measureList(block, setting);
    case 'table':
      return measureTable(block, setting);
    case 'figure':
      return measureFigure(block, setting);
    case 'workings':
      return measureWorkings(block, setting);
    case 'facts':
      return measureFacts(block, setting);
    case 'notice':
      return measureNotice(block, setting);
    case 'verdicts':
      return measureVerdicts(block, setting);
    case 'checkboxes':
      return measureCheckboxes(block, setting);
    case 'contents':
      return measureContents(block, setting);
    default:
      return assertNever(block);
  }
}

function assertNever(block: never): never {
  throw new Error(`No such block: ${JSON.stringify(block)}`);
}
