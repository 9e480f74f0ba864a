/** `export`: the plan, the model, the slabs or a full-size template as a file for another program or for paper. */
import { cutoutTemplate, jobGlb, jobStl, planDxf, planSvg } from '../../../src-core/exports';
import type { Figure, Paper } from '../../../src-core/figure';
import type { Job } from '../../../src-core/job';
import { templateHtml } from '../../../src-core/sheet-html';
import type { OptionSpec } from '../arguments';
import { fontCss } from '../book/font-css';
import {
  documentTrouble,
  endingOf,
  isSameFile,
  paperFor,
  writeDocument,
  writeOut,
} from '../book/output-file';
import type { CliIo, Command } from '../io';
import { EXIT, refuse } from '../io';
import { openJob } from '../open-job';

const KINDS = ['dxf', 'svg', 'glb', 'stl', 'template'] as const;
type Kind = (typeof KINDS)[number];

const OPTIONS = {
  as: { takes: KINDS.join(', ') },
  out: { takes: 'the file to write' },
  piece: { takes: 'the id of a piece in the job' },
  cutout: { takes: 'the id of an opening in the piece' },
  paper: { takes: 'letter or a4' },
  'from-below': { takes: null },
  help: { takes: null, short: 'h' },
} as const satisfies { readonly [name: string]: OptionSpec };

/** Options by the kinds that know them. */
const ONLY_FOR: { readonly [option: string]: readonly Kind[] } = {
  piece: ['stl', 'template'],
  cutout: ['template'],
  paper: ['template'],
  'from-below': ['template'],
};

const WORDS: { readonly [K in Kind]: string } = {
  dxf: 'the plan at true scale',
  svg: 'the plan at true scale',
  glb: 'the finished job as a model in metres',
  stl: 'the slabs in millimetres',
  template: 'full-size templates',
};

const HELP = `npm run -s cli -- export JOB --as KIND --out FILE

Writes part of the job file JOB as a file for another program, or for paper.

  --as dxf        the plan at true scale, in layers; FILE.dxf
  --as svg        the plan at true scale; FILE.svg
  --as glb        slabs and what they stand on, in metres; FILE.glb
  --as stl        the slabs in millimetres; FILE.stl
  --as template   openings at full size over as many sheets as it takes; FILE.pdf or FILE.html
  --piece ID      one piece only; for stl and template
  --cutout ID     one opening of that piece; for template
  --paper P       letter or a4; as the job's units have it unless told; for template
  --from-below    mirrored, for marking the underside; for template
`;

export const exportFile: Command = {
  name: 'export',
  summary: 'write the plan, the model or a full-size template',
  help: HELP,
  run: runExport,
};

async function runExport(args: readonly string[], io: CliIo): Promise<number> {
  const opened = await openJob(args, io, { options: OPTIONS, help: HELP, purpose: 'export' });
  if (!opened.ok) return opened.code;
  const { job, path, given, values } = opened;
  const kind = KINDS.find((one) => one === values.get('as'));
  const out = values.get('out');
  const paper = paperFor(job, values.get('paper'));
  const faults: string[] = [];
  if (kind === undefined) faults.push(`--as ${values.get('as') ?? 'is missing'}: say ${OPTIONS.as.takes}.`);
  if (out === undefined) faults.push(`--out is missing: ${OPTIONS.out.takes}.`);
  if (paper === null) faults.push(`--paper ${values.get('paper')}: say ${OPTIONS.paper.takes}.`);
  if (out !== undefined && isSameFile(io, path, out)) faults.push(`--out ${out}: that is the job itself.`);
  if (kind !== undefined) {
    for (const option of [...given, ...values.keys()]) {
      const kinds = ONLY_FOR[option];
      if (kinds !== undefined && !kinds.includes(kind)) {
        faults.push(`--${option} is for ${kinds.join(' and ')} only.`);
      }
    }
  }
  if (values.has('cutout') && !values.has('piece'))
    faults.push('--cutout needs --piece, whose opening it is.');
  if (kind === undefined || out === undefined || paper === null || faults.length > 0)
    return refuse(io, faults);

  const trouble =
    kind === 'template'
      ? await writeTemplates(io, out, job, {
          path,
          paper,
          pieceId: values.get('piece') ?? null,
          cutoutId: values.get('cutout') ?? null,
          seenFrom: given.has('from-below') ? 'below' : 'above',
        })
      : await writeDrawing(io, out, job, kind, values.get('piece'));
  if (trouble !== null) return refuse(io, [trouble]);
  io.out.write(`${out}: ${WORDS[kind]}\n`);
  return EXIT.allHolds;
}

async function writeDrawing(
  io: CliIo,
  out: string,
  job: Job,
  kind: Exclude<Kind, 'template'>,
  pieceId: string | undefined,
): Promise<string | null> {
  if (endingOf(out) !== kind) return `--out ${out}: the name must end in .${kind}.`;
  switch (kind) {
    case 'dxf':
      return writeOut(io, out, planDxf(job));
    case 'svg':
      return writeOut(io, out, planSvg(job));
    case 'glb':
      return writeOut(io, out, await jobGlb(job));
    case 'stl':
      return writeOut(io, out, jobStl(job, pieceId));
  }
}

interface TemplateWish {
  readonly path: string;
  readonly paper: Paper;
  /** null for all. */
  readonly pieceId: string | null;
  readonly cutoutId: string | null;
  readonly seenFrom: 'above' | 'below';
}

/** All openings that are asked for in one document. One that cannot be drawn is said, and is a fault where it leaves nothing. */
async function writeTemplates(io: CliIo, out: string, job: Job, wish: TemplateWish): Promise<string | null> {
  const { path, paper, pieceId, cutoutId, seenFrom } = wish;
  const unwritable = await documentTrouble(io, out);
  if (unwritable !== null) return unwritable;
  const openings = job.pieces
    .filter(({ id }) => pieceId === null || id === pieceId)
    .flatMap(({ id: piece, cutouts }) => cutouts.map(({ id: cutout }) => ({ piece, cutout })));
  const wanted = openings.filter(({ cutout }) => cutoutId === null || cutout === cutoutId);
  if (wanted.length === 0) {
    const known = openings.map(({ cutout }) => cutout).join(', ');
    if (cutoutId === null) return `${path}: There is no opening in ${pieceId ?? 'it'} to make a template of.`;
    return `${path}: There is no opening "${cutoutId}" in ${pieceId}. ${known === '' ? 'It has none.' : `Its openings: ${known}`}`;
  }
  const pages: Figure[] = [];
  const left: string[] = [];
  for (const { piece, cutout } of wanted) {
    const template = cutoutTemplate(job, piece, cutout, paper, seenFrom);
    if (template.ok) pages.push(...template.pages.map(({ figure }) => figure));
    else left.push(template.sentence);
  }
  if (pages.length === 0) return left.join(' ');
  for (const sentence of left) io.err.write(`${sentence}\n`);
  const title = `${job.name}: full-size templates`;
  const html = templateHtml(pages, paper, { title, language: 'en', fontCss: await fontCss() });
  return writeDocument(io, out, html);
}
