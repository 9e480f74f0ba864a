/**
 * Room for many right-hand sides of one plate: sweeps through its factor and moments of the solutions, in vector instructions where
 * the machine has them and in plain TypeScript (band-solve.ts, moments.ts) where it has not. Both give the same numbers but for the
 * last bits; a test compares them.
 */
import type { PlateFactor } from './band-factor';
import { backwardMany, bankOf, createBanks, forwardMany, LANES_PER_BANK } from './band-solve';
import { KERNEL_HEX } from './kernel-bytes';
import type { MomentField, MomentOperator } from './moments';
import { applyBankedOperator, createMomentField } from './moments';

/** Right-hand sides of one plate in banks of eight lanes; `lane` counts through all banks. */
export interface SweepRoom {
  readonly banks: Float64Array;
  /** Solves L y = b for the first `count` lanes, all of which are zero before `startRow`. */
  readonly forward: (count: number, startRow: number) => void;
  /** Solves L' x = y for the first `count` lanes. */
  readonly backward: (count: number) => void;
  /** Reads the moments of the eight lanes from `first` on into `fields`. */
  readonly readMoments: (first: number) => void;
  readonly fields: readonly MomentField[];
  readonly isVector: boolean;
}

interface Exports {
  readonly forward: (...numbers: number[]) => void;
  readonly backward: (...numbers: number[]) => void;
  readonly moments: (...numbers: number[]) => void;
}

/** The little of WebAssembly that is used; core knows no host library. */
interface Assembly {
  readonly Module: new (bytes: Uint8Array) => object;
  readonly Memory: new (size: { initial: number }) => { readonly buffer: ArrayBuffer };
  readonly Instance: new (
    module: object,
    imports: { readonly room: { readonly memory: object } },
  ) => { readonly exports: unknown };
}

const PAGE_BYTES = 65_536;

const assembly = (globalThis as { readonly WebAssembly?: Assembly }).WebAssembly;
const kernelModule = assembly === undefined ? null : compile(assembly);

/** null where the machine has no vector instructions or its host forbids compiling. */
function compile({ Module }: Assembly): object | null {
  const bytes = Uint8Array.from({ length: KERNEL_HEX.length / 2 }, (_, i) =>
    Number.parseInt(KERNEL_HEX.slice(2 * i, 2 * i + 2), 16),
  );
  try {
    return new Module(bytes);
  } catch {
    return null;
  }
}

/**
 * Room for `lanes` right-hand sides. `operator` reads nodal moments from a bank, as `bankedOperator` gives. `plain` keeps to
 * TypeScript, for the test that compares.
 */
export function createSweepRoom(
  factor: PlateFactor,
  operator: MomentOperator,
  lanes: number,
  plain = false,
): SweepRoom {
  if (plain || assembly === undefined || kernelModule === null) return plainRoom(factor, operator, lanes);
  return vectorRoom(assembly, kernelModule, factor, operator, lanes);
}

function plainRoom(factor: PlateFactor, operator: MomentOperator, lanes: number): SweepRoom {
  const banks = createBanks(factor, lanes);
  const fields = Array.from({ length: LANES_PER_BANK }, () => createMomentField(operator));
  return {
    banks,
    forward: (count, startRow) => forwardMany(factor, banks, count, new Int32Array(count).fill(startRow)),
    backward: (count) => backwardMany(factor, banks, count),
    readMoments: (first) =>
      applyBankedOperator(operator, bankOf(factor, banks, first), LANES_PER_BANK, fields),
    fields,
    isVector: false,
  };
}

function vectorRoom(
  { Memory, Instance }: Assembly,
  module: object,
  factor: PlateFactor,
  operator: MomentOperator,
  lanes: number,
): SweepRoom {
  const { first, offset, nodeCount } = factor.layout;
  const rows = factor.held.length;
  const bankCount = Math.ceil(lanes / LANES_PER_BANK);
  const bankBytes = 8 * LANES_PER_BANK * rows;
  const momentRows = operator.start.length - 1;

  // lay the arrays out one after another, each from a multiple of sixteen bytes on
  let end = 0;
  const place = (bytes: number): number => {
    const at = end;
    end += 16 * Math.ceil(bytes / 16);
    return at;
  };
  const firstAt = place(first.byteLength);
  const offsetAt = place(offset.byteLength);
  const valuesAt = place(factor.values.byteLength);
  const startAt = place(operator.start.byteLength);
  const nodeAt = place(operator.node.byteLength);
  const momentsAt = place(operator.values.byteLength);
  const banksAt = place(bankBytes * bankCount);
  const fieldsAt = place(8 * 3 * LANES_PER_BANK * momentRows);
  const memory = new Memory({ initial: Math.ceil(end / PAGE_BYTES) });
  const { buffer } = memory;
  new Int32Array(buffer, firstAt, first.length).set(first);
  new Int32Array(buffer, offsetAt, offset.length).set(offset);
  new Float64Array(buffer, valuesAt, factor.values.length).set(factor.values);
  new Int32Array(buffer, startAt, operator.start.length).set(operator.start);
  new Int32Array(buffer, nodeAt, operator.node.length).set(operator.node);
  new Float64Array(buffer, momentsAt, operator.values.length).set(operator.values);

  const { forward, backward, moments } = new Instance(module, { room: { memory } }).exports as Exports;
  const banksUsed = (count: number) => Math.ceil(count / LANES_PER_BANK);
  const field = (moment: number, lane: number) =>
    new Float64Array(buffer, fieldsAt + 8 * momentRows * (LANES_PER_BANK * moment + lane), momentRows);
  return {
    banks: new Float64Array(buffer, banksAt, LANES_PER_BANK * rows * bankCount),
    forward: (count, startRow) =>
      forward(
        firstAt,
        offsetAt,
        valuesAt,
        banksAt,
        bankBytes,
        banksUsed(count),
        Math.floor(startRow / 3),
        nodeCount,
      ),
    backward: (count) =>
      backward(firstAt, offsetAt, valuesAt, banksAt, bankBytes, banksUsed(count), nodeCount),
    readMoments: (lane) =>
      moments(
        startAt,
        nodeAt,
        momentsAt,
        banksAt + (lane / LANES_PER_BANK) * bankBytes,
        fieldsAt,
        momentRows,
      ),
    fields: Array.from({ length: LANES_PER_BANK }, (_, lane) => ({
      mx: field(0, lane),
      my: field(1, lane),
      mxy: field(2, lane),
    })),
    isVector: true,
  };
}
