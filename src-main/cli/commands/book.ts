/** `book`: the whole job as a document to build from. */
import type { BookFacts } from '../../../src-core/book';
import { bookJson, gatherBook, jobBook } from '../../../src-core/book';
import { stands } from '../../../src-core/checks';
import { NOTICE } from '../../../src-core/report';
import { layOutBook } from '../../../src-core/sheet';
import { bookHtml } from '../../../src-core/sheet-html';
import type { OptionSpec } from '../arguments';
import { fontCss } from '../book/font-css';
import { documentTrouble, isSameFile, paperFor, writeDocument } from '../book/output-file';
import type { CliIo, Command } from '../io';
import { EXIT, refuse } from '../io';
import { openJob } from '../open-job';
import { startProgress } from '../progress';
import { pourFindings, stopsThePour } from '../report/pour-findings';

const OPTIONS = {
  out: { takes: 'the file to write, ending in .pdf or .html' },
  paper: { takes: 'letter or a4' },
  json: { takes: null },
  help: { takes: null, short: 'h' },
} as const satisfies { readonly [name: string]: OptionSpec };

const HELP = `npm run -s cli -- book JOB --out FILE [--paper letter|a4] [--json]

Writes the build book of the job file JOB: drawings, verdicts, falsework and swap, cut and shopping
lists, batches, schedule, workings with their sources, cautions.

  --out FILE   FILE.html needs nothing else; FILE.pdf is printed by the Chromium, or another browser
               of its engine, that is installed here. LEDGEWRIGHT_BROWSER names another program
  --paper P    letter or a4; letter for a job in inches and a4 for one in millimetres unless told
  --json       verdicts, legs, batches, days and sources as JSON, each in the words that the book
               prints; with it --out may be left out
`;

export const book: Command = {
  name: 'book',
  summary: 'write the build book, as PDF or HTML',
  help: HELP,
  run: runBook,
};

async function runBook(args: readonly string[], io: CliIo): Promise<number> {
  const opened = await openJob(args, io, { options: OPTIONS, help: HELP, purpose: 'write the book of' });
  if (!opened.ok) return opened.code;
  const { job, path, given, values } = opened;
  const out = values.get('out') ?? null;
  const paper = paperFor(job, values.get('paper'));
  const faults: string[] = [];
  if (out === null && !given.has('json')) faults.push(`--out is missing: ${OPTIONS.out.takes}.`);
  if (paper === null) faults.push(`--paper ${values.get('paper')}: say ${OPTIONS.paper.takes}.`);
  if (out !== null && isSameFile(io, path, out)) faults.push(`--out ${out}: that is the job itself.`);
  const unwritable = out === null ? null : await documentTrouble(io, out);
  if (unwritable !== null) faults.push(unwritable);
  if (paper === null || faults.length > 0) return refuse(io, faults);

  const progress = startProgress(io);
  const facts = gatherBook(job, { onProgress: progress.take });
  progress.end();
  if (out !== null) {
    const laidOut = layOutBook(jobBook(job, facts, paper), paper);
    for (const { sentence } of laidOut.problems) io.err.write(`In the book: ${sentence}\n`);
    const html = bookHtml(laidOut, {
      title: `${job.name}: build book`,
      language: 'en',
      fontCss: await fontCss(),
    });
    const trouble = await writeDocument(io, out, html);
    if (trouble !== null) return refuse(io, [trouble]);
    if (!given.has('json')) io.out.write(`${out}: ${laidOut.pages.length} pages, ${facts.verdict.words}\n`);
  }
  if (given.has('json')) {
    const report = { tool: 'ledgewright', version: io.version, ...bookJson(job, facts), notice: NOTICE };
    io.out.write(`${JSON.stringify(report, null, 2)}\n`);
  }
  return needsAttention(facts) ? EXIT.needsAttention : EXIT.allHolds;
}

/** Whether anything in the book asks for a change: the check, the falsework, the swap, or a pour. */
function needsAttention({ verdict, falsework, swaps, pours }: BookFacts): boolean {
  return (
    !stands(verdict.level) ||
    falsework.designs.some((design) => design.needsAttention) ||
    swaps.some(({ result }) => result.needsAttention) ||
    pourFindings(pours).some(stopsThePour)
  );
}
