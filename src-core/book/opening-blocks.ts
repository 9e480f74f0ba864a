/** Forms of sinks, taps and other openings: what keeps them free, what holds that down, and the sink that fits. */
import { cutoutTemplate } from '../exports';
import type { OpeningForm } from '../openings';
import type { Block, Words } from '../sheet';
import { columns, list, strong, table } from './blocks';
import type { BookContext } from './context';
import type { PieceFacts } from './facts';
import { capital, counted, sentence } from './print';

export function openingBlocks(context: BookContext, { piece, takeoff }: PieceFacts, id: string): Block[] {
  const { print } = context;
  return [
    ...table(
      `${id}-openings`,
      'Openings and what keeps them free',
      columns(
        ['Opening', 1.4],
        ['Form', 2.6],
        ['Height', 0.9, 'end'],
        ['Stands on', 1.1],
        ['Would lift with', 1.1, 'end'],
        ['Held down for', 1.1, 'end'],
        ['Weighs', 0.9, 'end'],
      ),
      takeoff.openings.map((opening) => [
        nameOf(opening),
        formWords(context, opening),
        print.length(opening.heightIn),
        opening.standsOn === 'deck' ? 'the deck' : 'its bowl',
        print.forceUp(Math.max(0, opening.uplift.upliftLbf)),
        print.force(opening.holdDown.capacityLbf),
        print.mass(opening.weightOnFalseworkLb),
      ]),
    ),
    ...list(
      takeoff.openings.map((opening): Words => {
        const told = [
          opening.holdDown.words,
          ...(opening.sink === null ? [] : [opening.sink.words, sinkWords(context, opening)]),
          ...(opening.infill === null ? [] : [opening.infill.words]),
          ...opening.findings.filter(({ level }) => level === 'attention').map(({ words }) => words),
          templateWords(context, piece.id, opening),
        ];
        return [
          strong(`${nameOf(opening)}: `),
          told
            .filter((words) => words !== '')
            .map(sentence)
            .join(' '),
        ];
      }),
    ),
  ];
}

function nameOf({ called }: OpeningForm): string {
  return capital(called.replaceAll('"', '').replace(/^the /, ''));
}

function formWords({ print }: BookContext, { form }: OpeningForm): string {
  if (form.kind === 'frame') {
    return form.braces === 0 ? form.words : `${form.words} ${counted(form.braces, 'brace')} across.`;
  }
  return `A plug, ${print.fine(form.taperIn)} wider on each side at its foot, knocked out downward.`;
}

function sinkWords({ print }: BookContext, { sink }: OpeningForm): string {
  if (sink === null || sink.bowl === null || sink.rim === null) return '';
  const by = ({ widthIn, depthIn }: { readonly widthIn: number; readonly depthIn: number }) =>
    `${print.length(widthIn)} by ${print.length(depthIn)}`;
  return `A bowl of ${by(sink.bowl)} fits, its rim ${by(sink.rim)}, bearing ${print.fine(sink.bearingIn)}.`;
}

/** How many sheets the template takes, or why there is none. */
function templateWords({ job, paper }: BookContext, pieceId: string, { trace }: OpeningForm): string {
  if (trace.part.kind !== 'cutout') return '';
  const template = cutoutTemplate(job, pieceId, trace.part.id, paper);
  return template.ok
    ? `Its template at full size takes ${counted(template.pages.length, 'sheet')}; for the underside print it mirrored.`
    : template.sentence;
}
