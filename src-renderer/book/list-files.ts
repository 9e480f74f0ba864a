/** Every list of a job as comma-separated text. */

import type { CsvTable } from '../../src-core/csv';
import { csvOf } from '../../src-core/csv';
import type { CutEdgeForms, FormCut, Strip } from '../../src-core/edge-forms';
import type { FalseworkDesign } from '../../src-core/falsework';
import { designJob, legNumber, sectionLetter } from '../../src-core/falsework';
import type { Job } from '../../src-core/job';
import { jobTakeoff, listCsv } from '../../src-core/takeoff';
import type { UnitSystem } from '../../src-core/units';
import { printLength } from '../../src-core/units';

export type ListId = 'shopping-list' | 'edge-form-strips' | 'falsework-parts' | 'legs';

export interface ListFile {
  readonly id: ListId;
  readonly csv: string;
}

/** The lists, from one take-off. It takes seconds, since the falsework is designed for it. */
export function listFiles(job: Job): ListFile[] {
  const falsework = designJob(job);
  const takeoff = jobTakeoff(job, falsework);
  const { designs } = falsework;
  return [
    { id: 'shopping-list', csv: listCsv(takeoff.list) },
    { id: 'edge-form-strips', csv: csvOf(stripTable(job, takeoff.formCuts)) },
    { id: 'falsework-parts', csv: csvOf(partTable(designs, job.shownIn)) },
    { id: 'legs', csv: csvOf(legTable(designs, job.shownIn)) },
  ];
}

/** Every strip of every copy, with the stick that it is cut from. Angles off square, as the saw is set. */
export function stripTable({ pieces, shownIn }: Job, { lists, blocks }: CutEdgeForms): CsvTable {
  const nameOf = (pieceId: string) => pieces.find(({ id }) => id === pieceId)?.name ?? pieceId;
  const row = (strip: Strip, stick: string | null, cut: FormCut | null) => [
    strip.id,
    nameOf(strip.pieceId),
    strip.copy,
    strip.made,
    strip.of.kind,
    strip.of.material,
    strip.of.heightIn,
    strip.longIn,
    printLength(strip.longIn, { system: shownIn }),
    tenths((strip.startRad * 180) / Math.PI),
    tenths((strip.endRad * 180) / Math.PI),
    strip.bendRadiusIn,
    stick,
    cut === null ? null : cut.atIn,
  ];
  return {
    columns: [
      ...['id', 'piece', 'copy', 'made', 'kind', 'stuff', 'height in'],
      ...['length in', 'length', 'first cut deg', 'last cut deg', 'bend radius in', 'stick', 'at in'],
    ],
    rows: [
      ...lists.flatMap(({ sticks, notCut }) => [
        ...sticks.flatMap((stick) => stick.cuts.map((cut) => row(cut.strip, stick.id, cut))),
        ...notCut.map((strip) => row(strip, null, null)),
      ]),
      ...blocks.map((strip) => row(strip, null, null)),
    ],
  };
}

/** Sticks and deck panels of every section as they are cut, those of one length together. */
export function partTable(designs: readonly FalseworkDesign[], system: UnitSystem): CsvTable {
  const length = (valueIn: number) => printLength(valueIn, { system });
  return {
    columns: ['piece', 'section', 'part', 'size', 'length in', 'length', 'width in', 'count'],
    rows: designs.flatMap(({ pieceName, sections }) =>
      sections.flatMap(({ section, bill }) => [
        ...bill.sticks.map(({ what, size, lengthIn, count }) => [
          ...[pieceName, section.name, what, size, lengthIn, length(lengthIn), null, count],
        ]),
        ...bill.panels.map(({ what, lengthIn, widthIn }) => [
          ...[pieceName, section.name, what, 'panel', lengthIn, length(lengthIn), widthIn, 1],
        ]),
      ]),
    ),
  };
}

/** Every leg with its number of the drawing, its cut length, its shim and the floor under it. */
export function legTable(designs: readonly FalseworkDesign[], system: UnitSystem): CsvTable {
  return {
    columns: [
      ...['id', 'number', 'piece', 'section', 'size', 'cut in', 'cut', 'shim in', 'floor in', 'load lbf'],
      'amiss',
    ],
    rows: designs.flatMap(({ pieceName, sections, floor }) =>
      sections.flatMap(({ section, worked, legs }, index) =>
        legs.map(({ id, leg, loadLbf }, k) => [
          id,
          legNumber(sectionLetter(index), k),
          pieceName,
          section.name,
          worked.framing.arrangement.legSize,
          leg.cutIn > 0 ? leg.cutIn : null,
          leg.cutIn > 0 ? printLength(leg.cutIn, { system }) : 'no room',
          leg.cutIn > 0 ? leg.shimIn : null,
          floor === null ? null : leg.floorIn,
          Math.ceil(loadLbf),
          leg.warnings.map(({ sentence }) => sentence).join(' '),
        ]),
      ),
    ),
  };
}

function tenths(value: number): number {
  return Math.round(value * 10) / 10;
}
