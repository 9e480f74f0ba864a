/** What can leave the window, as a list to choose from. What it takes to write each is fetched when it is asked for. */

import type { Paper } from '../../src-core/figure';
import type { Job } from '../../src-core/job';
import { sentenceCase } from '../../src-core/units';
import { textOfJob } from '../state/file-actions';
import { leavingName } from './file-names';
import type { LeavingFile } from './leave';
import type { ListId } from './list-files';

/** A file that one function of the job gives. */
export interface FileChoice {
  readonly id: string;
  readonly title: string;
  /** What it is for, in a line. */
  readonly words: string;
  readonly file: () => Promise<LeavingFile>;
}

/** The writers of drawings and models bring libraries with them that the window does without until then. */
const writers = () => import('../../src-core/exports');

/** Plan and model of the job. */
export function drawingChoices(job: Job): FileChoice[] {
  const unit = job.shownIn === 'imperial' ? 'inches' : 'millimetres';
  return [
    {
      id: 'plan-dxf',
      title: 'Plan, DXF',
      words: `At true scale in ${unit}, in layers, with arcs as arcs; for a drawing program or a cutting shop.`,
      file: async () => ({
        name: leavingName(job, 'plan', 'dxf'),
        content: (await writers()).planDxf(job),
        type: 'image/vnd.dxf',
      }),
    },
    {
      id: 'plan-svg',
      title: 'Plan, SVG',
      words: `At true scale in ${unit}; opens in a browser.`,
      file: async () => ({
        name: leavingName(job, 'plan', 'svg'),
        content: (await writers()).planSvg(job),
        type: 'image/svg+xml',
      }),
    },
    {
      id: 'model-glb',
      title: 'Model, GLB',
      words: 'The finished job in metres: slabs and what they stand on.',
      file: async () => ({
        name: leavingName(job, 'model', 'glb'),
        content: await (await writers()).jobGlb(job),
        type: 'model/gltf-binary',
      }),
    },
    {
      id: 'slabs-stl',
      title: 'Slabs, STL',
      words: 'Every slab as a closed shell in millimetres.',
      file: async () => ({
        name: leavingName(job, 'slabs', 'stl'),
        content: (await writers()).jobStl(job),
        type: 'model/stl',
      }),
    },
  ];
}

export interface ListChoice {
  readonly id: ListId;
  readonly title: string;
  readonly words: string;
}

export const LIST_CHOICES: readonly ListChoice[] = [
  {
    id: 'shopping-list',
    title: 'Shopping list',
    words: 'What to buy, what each line is made of, and what it costs.',
  },
  {
    id: 'edge-form-strips',
    title: 'Edge form strips',
    words: 'Every strip with its length, its cuts and its stick.',
  },
  {
    id: 'falsework-parts',
    title: 'Falsework parts',
    words: 'Joists, stringers, legs, braces and deck panels by section.',
  },
  { id: 'legs', title: 'Legs', words: 'Every leg with its number, its cut length and its shim.' },
];

export interface TemplateChoice {
  readonly pieceId: string;
  readonly cutoutId: string;
  readonly title: string;
}

/** Every opening of the job. */
export function templateChoices({ pieces }: Job): TemplateChoice[] {
  return pieces.flatMap((piece) =>
    piece.cutouts.map(({ id, name, purpose }) => ({
      pieceId: piece.id,
      cutoutId: id,
      title: `${capital(name ?? purpose)} of ${piece.name}`,
    })),
  );
}

export interface TemplateWish {
  readonly paper: Paper;
  readonly seenFrom: 'above' | 'below';
}

export type TemplatePages =
  | { readonly ok: true; readonly name: string; readonly html: (fontCss: string) => string }
  | { readonly ok: false; readonly sentence: string };

/** The sheets of an opening at full size as a document, or why it has none. */
export async function templatePages(
  job: Job,
  { pieceId, cutoutId, title }: TemplateChoice,
  { paper, seenFrom }: TemplateWish,
): Promise<TemplatePages> {
  const [{ cutoutTemplate }, { templateHtml }] = await Promise.all([
    writers(),
    import('../../src-core/sheet-html'),
  ]);
  const template = cutoutTemplate(job, pieceId, cutoutId, paper, seenFrom);
  if (!template.ok) return template;
  const figures = template.pages.map(({ figure }) => figure);
  return {
    ok: true,
    name: leavingName(job, `${pieceId}-${cutoutId}-template-from-${seenFrom}`, 'pdf'),
    html: (fontCss) => templateHtml(figures, paper, { title, language: 'en', fontCss }),
  };
}

/** The job itself, as a copy: the file that is open stays the one that is saved to. */
export function jobChoice(job: Job): FileChoice {
  return {
    id: 'job',
    title: 'Job file',
    words: 'A copy of the job as it stands; the file that is open stays open.',
    file: async () => ({
      name: leavingName(job, 'copy', 'json'),
      content: textOfJob(job),
      type: 'application/json',
    }),
  };
}

function capital(words: string): string {
  return sentenceCase(words);
}
