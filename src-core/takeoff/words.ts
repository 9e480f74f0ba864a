/** Amounts, sizes and places in a builder's words. */
import type { Job } from '../job';
import type { Trace } from '../trace';
import type { UnitSystem } from '../units';
import {
  IN_PER_FT,
  IN3_PER_FT3,
  IN3_PER_GAL,
  printArea,
  printLength,
  printMass,
  printVolume,
} from '../units';
import type { ListUnit } from './types';

/** An amount of a line as it is read: "34' 4-1/2"", "12.4 sq ft", "36". */
export function amountWords(amount: number, unit: ListUnit, system: UnitSystem): string {
  switch (unit) {
    case 'in':
      return printLength(amount, { system, style: 'feet-inches' });
    case 'in2':
      return printArea(amount, { system, digits: 3 });
    case 'each':
      return String(amount);
    case 'lb':
      return printMass(amount, { system, digits: 3 });
    case 'ft3':
      return printVolume(amount * IN3_PER_FT3, { system, digits: 3 });
    case 'gal':
      return system === 'imperial'
        ? `${Number(amount.toPrecision(3))} gal`
        : printVolume(amount * IN3_PER_GAL, { system, digits: 3 });
  }
}

/** "1 stick", "3 sticks". */
export function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** A stock length: "8 ft" where it is whole feet, else as a tape shows it. */
export function stockWords(lengthIn: number, system: UnitSystem): string {
  const feet = Math.round(lengthIn / IN_PER_FT);
  const isWhole = Math.abs(lengthIn - feet * IN_PER_FT) < 1e-6 && feet > 0;
  return system === 'imperial' && isWhole ? `${feet} ft` : printLength(lengthIn, { system });
}

/** "96 in x 48 in". */
export function sheetWords(lengthIn: number, widthIn: number, system: UnitSystem): string {
  return `${printLength(lengthIn, { system })} x ${printLength(widthIn, { system })}`;
}

/** A part of the drawing by its name: "Serving counter, edge 3". */
export function placeWords(job: Job, { pieceId, part }: Trace): string {
  const piece = job.pieces.find(({ id }) => id === pieceId);
  const name = piece?.name ?? pieceId;
  switch (part.kind) {
    case 'piece':
      return name;
    case 'corner':
    case 'edge':
      return `${name}, ${part.kind} ${part.index + 1}`;
    case 'cutout':
      return `${name}, ${piece?.cutouts.find(({ id }) => id === part.id)?.name ?? part.id}`;
    case 'steel':
      return `${name}, ${piece?.reinforcement.find(({ id }) => id === part.id)?.label ?? part.id}`;
    case 'support':
      return `${name}, ${piece?.supports.find(({ id }) => id === part.id)?.name ?? part.id}`;
    case 'joint':
      return `${name}, joint ${part.id}`;
    case 'section':
      return `${name}, section ${job.falsework.sections.find(({ id }) => id === part.id)?.name ?? part.id}`;
  }
}

/** "eased 1/8 in" of a profile with its size. */
export function profileWords(
  { kind, sizeIn }: { readonly kind: string; readonly sizeIn: number | null },
  system: UnitSystem,
): string {
  const name = kind === 'own' ? 'own profile' : kind.replaceAll('-', ' ');
  return sizeIn === null ? name : `${name} ${printLength(sizeIn, { system, roundToIn: 1 / 32 })}`;
}

/** Said of what three copies of a piece take: ", 3 copies". */
export function copiesWords(copies: number): string {
  return copies === 1 ? '' : `, ${copies} copies`;
}
