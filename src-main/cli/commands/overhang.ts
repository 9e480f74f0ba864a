/** `overhang`: how far a ledge may reach, over its thickness and over the spacing of its brackets. */
import { engineVersion } from '../../overhang-cache/engine-version';
import { keptChart } from '../../overhang-cache/kept-chart';
import type { RowCache } from '../../overhang-cache/row-cache';
import { openRowCache } from '../../overhang-cache/row-cache';
import type { CliIo, Command } from '../io';
import { EXIT, refuse } from '../io';
import { OVERHANG_OPTIONS, readOverhangWanted } from '../overhang-options';
import { startProgress } from '../progress';
import { overhangJson } from '../report/overhang-json';
import { overhangFoot, overhangHead, overhangRow, progressWords } from '../report/overhang-report';

const TAKES = OVERHANG_OPTIONS;
const HELP = `npm run -s cli -- overhang [--thickness T] [--root R] [--load L] [--strength S] [--steel S] ...

How far an 8 ft ledge tied to a wall may reach past it: on concrete alone, with steel, and with
brackets at several spacings. Every number is a ledge that passes the load check whole.

  --thickness T   one thickness, and beside it every bracket spacing; without it 1 to 4 in
  --root R        ${TAKES.root.takes}; stud unless told
  --load L        ${TAKES.load.takes}; sitting unless told
  --strength S    ${TAKES.strength.takes}; untested, 3000 psi, unless told
  --steel S       ${TAKES.steel.takes}; 4x4-W2.9 unless told
  --bracket B     ${TAKES.bracket.takes}; tube-2x2x0.12 unless told
  --rating F      ${TAKES.rating.takes}; a block wall takes no other
  --metric        lengths in millimetres; numbers without a unit are read so too
  --json          everything as JSON, in inches, pounds-force, psi, pounds and days
  --fresh         compute again what was kept from before
`;

export const overhang: Command = {
  name: 'overhang',
  summary: 'how far a ledge may reach, by thickness, steel and brackets',
  help: HELP,
  run: runOverhang,
};

async function runOverhang(args: readonly string[], io: CliIo): Promise<number> {
  const asked = readOverhangWanted(args);
  if (asked.kind === 'faults') return refuse(io, asked.faults);
  if (asked.kind === 'help') {
    io.out.write(HELP);
    return EXIT.allHolds;
  }
  const { basis, requests, system, isJson, isFresh } = asked.wanted;
  const engine = engineVersion(io.version);
  const progress = startProgress(io);
  const rows = [];
  let fromCache = 0;
  let trouble: string | null = null;
  for (const found of keptChart(basis, requests, cacheOf(io, engine), {
    onProgress: (at) => progress.take({ done: at.done, total: at.total, words: progressWords(at, system) }),
    fresh: isFresh,
  })) {
    progress.end();
    const before = rows.at(-1);
    rows.push(found.row);
    if (found.isFromCache) fromCache++;
    trouble ??= found.trouble;
    if (isJson) continue;
    if (before?.over !== found.row.over)
      io.out.write(overhangHead(basis, found.row, system, before === undefined));
    io.out.write(overhangRow(found.row, system));
  }
  progress.end();
  if (trouble !== null) io.err.write(`What was computed could not be kept for the next time: ${trouble}\n`);
  const facts = { version: io.version, engine, seconds: progress.seconds(), fromCache };
  io.out.write(isJson ? overhangJson(basis, rows, facts) : overhangFoot(basis, rows, system, facts));
  return EXIT.allHolds;
}

function cacheOf({ cacheFolder }: CliIo, engine: string): RowCache | null {
  return cacheFolder === undefined ? null : openRowCache(cacheFolder, engine);
}
