/**
 * The three inner loops of the engine as WebAssembly text: forward and backward sweep through a plate's factor, and nodal moments.
 * They do exactly what band-solve.ts and moments.ts do, eight right-hand sides at a time in vector registers. The text is made here
 * so that the unrolled lines stay readable; `npm run kernel` assembles it into kernel-bytes.ts, and a test keeps the two in step.
 *
 * Glossary (as in band-solve.ts)
 *   a, b, c   the three rows of a block, four registers of two lanes each
 *   y         a column's eight lanes
 *   v, p      the factor and the running place in it;  q  the running place in a bank, 64 bytes a row
 */

const PAIRS = [0, 1, 2, 3] as const;
const ROW_BYTES = 64;

const splat = (address: string, offset = 0) => `(v128.load64_splat offset=${offset} ${address})`;
const load = (address: string, offset = 0) => `(v128.load offset=${offset} ${address})`;
const store = (address: string, offset: number, value: string) =>
  `(v128.store offset=${offset} ${address} ${value})`;
const add = (x: string, y: string) => `(f64x2.add ${x} ${y})`;
const sub = (x: string, y: string) => `(f64x2.sub ${x} ${y})`;
const mul = (x: string, y: string) => `(f64x2.mul ${x} ${y})`;
const get = (name: string) => `(local.get $${name})`;
const set = (name: string, value: string) => `(local.set $${name} ${value})`;
const lines = (parts: readonly string[]) => parts.join('\n');
const each = (make: (pair: number) => string) => lines(PAIRS.map(make));

const vectors = (...names: readonly string[]) =>
  names.map((name) => PAIRS.map((pair) => `(local $${name}${pair} v128)`).join(' ')).join(' ');

/** The own 3 by 3 of a block's factor, its diagonal inverted. */
const ownBlock = lines([
  set('per0', splat(get('diagonal'))),
  set('l10', splat(get('diagonal'), 8)),
  set('l20', splat(get('diagonal'), 16)),
  set('per1', splat(get('diagonal'), 32)),
  set('l21', splat(get('diagonal'), 40)),
  set('per2', splat(get('diagonal'), 64)),
]);

const ownLocals =
  '(local $per0 v128) (local $per1 v128) (local $per2 v128) (local $l10 v128) (local $l20 v128) (local $l21 v128)';
const sweepParameters =
  '(param $first i32) (param $offset i32) (param $v i32) (param $banks i32) (param $stride i32) (param $bankCount i32)';
const sweepLocals =
  '(local $block i32) (local $bank i32) (local $y i32) (local $p i32) (local $start i32) (local $diagonal i32) (local $q i32) (local $from i32) (local $own i32) (local $l v128)';

/** Reads where a block's values start and where its own 3 by 3 lies. */
const findBlock = lines([
  set(
    'start',
    `(i32.add ${get('v')} (i32.shl (i32.load (i32.add ${get('offset')} (i32.shl ${get('block')} (i32.const 2)))) (i32.const 3)))`,
  ),
  set(
    'diagonal',
    `(i32.sub (i32.add ${get('v')} (i32.shl (i32.load offset=4 (i32.add ${get('offset')} (i32.shl ${get('block')} (i32.const 2)))) (i32.const 3))) (i32.const 72))`,
  ),
  set('own', `(i32.mul ${get('block')} (i32.const ${3 * ROW_BYTES}))`),
]);

const forward = `
(func (export "forward") ${sweepParameters} (param $startBlock i32) (param $blocks i32)
  ${sweepLocals} ${ownLocals} (local $firstBlock i32) ${vectors('a', 'b', 'c', 'y')}
  ${set('block', get('startBlock'))}
  (block $done (loop $next
    (br_if $done (i32.ge_s ${get('block')} ${get('blocks')}))
    ${findBlock}
    ${set('firstBlock', `(i32.load (i32.add ${get('first')} (i32.shl ${get('block')} (i32.const 2))))`)}
    ${set('from', `(select ${get('firstBlock')} ${get('startBlock')} (i32.gt_s ${get('firstBlock')} ${get('startBlock')}))`)}
    ${set('start', `(i32.add ${get('start')} (i32.mul (i32.sub ${get('from')} ${get('firstBlock')}) (i32.const 72)))`)}
    ${ownBlock}
    ${set('bank', '(i32.const 0)')}
    ${set('y', get('banks'))}
    (loop $eachBank
      ${set('p', get('start'))}
      ${set('q', `(i32.add ${get('y')} (i32.mul ${get('from')} (i32.const ${3 * ROW_BYTES})))`)}
      ${['a', 'b', 'c'].map((name) => each((i) => set(`${name}${i}`, '(v128.const f64x2 0 0)'))).join('\n')}
      (block $atDiagonal (loop $column
        (br_if $atDiagonal (i32.ge_u ${get('p')} ${get('diagonal')}))
        ${[0, 1, 2]
          .map((column) =>
            lines([
              each((i) => set(`y${i}`, load(get('q'), column * ROW_BYTES + 16 * i))),
              ...['a', 'b', 'c'].map((name, row) =>
                lines([
                  set('l', splat(get('p'), 24 * column + 8 * row)),
                  each((i) => set(`${name}${i}`, add(get(`${name}${i}`), mul(get('l'), get(`y${i}`))))),
                ]),
              ),
            ]),
          )
          .join('\n')}
        ${set('p', `(i32.add ${get('p')} (i32.const 72))`)}
        ${set('q', `(i32.add ${get('q')} (i32.const ${3 * ROW_BYTES}))`)}
        (br $column)))
      ${each((i) =>
        lines([
          set(`a${i}`, mul(sub(load(get('q'), 16 * i), get(`a${i}`)), get('per0'))),
          store(get('q'), 16 * i, get(`a${i}`)),
          set(
            `b${i}`,
            mul(
              sub(sub(load(get('q'), 64 + 16 * i), get(`b${i}`)), mul(get('l10'), get(`a${i}`))),
              get('per1'),
            ),
          ),
          store(get('q'), 64 + 16 * i, get(`b${i}`)),
          store(
            get('q'),
            128 + 16 * i,
            mul(
              sub(
                sub(sub(load(get('q'), 128 + 16 * i), get(`c${i}`)), mul(get('l20'), get(`a${i}`))),
                mul(get('l21'), get(`b${i}`)),
              ),
              get('per2'),
            ),
          ),
        ]),
      )}
      ${set('y', `(i32.add ${get('y')} ${get('stride')})`)}
      ${set('bank', `(i32.add ${get('bank')} (i32.const 1))`)}
      (br_if $eachBank (i32.lt_s ${get('bank')} ${get('bankCount')})))
    ${set('block', `(i32.add ${get('block')} (i32.const 1))`)}
    (br $next))))`;

const backward = `
(func (export "backward") ${sweepParameters} (param $blocks i32)
  ${sweepLocals} ${ownLocals} (local $m v128) (local $n v128) ${vectors('a', 'b', 'c')}
  ${set('block', `(i32.sub ${get('blocks')} (i32.const 1))`)}
  (block $done (loop $next
    (br_if $done (i32.lt_s ${get('block')} (i32.const 0)))
    ${findBlock}
    ${set('from', `(i32.mul (i32.load (i32.add ${get('first')} (i32.shl ${get('block')} (i32.const 2)))) (i32.const ${3 * ROW_BYTES}))`)}
    ${ownBlock}
    ${set('bank', '(i32.const 0)')}
    ${set('y', get('banks'))}
    (loop $eachBank
      ${set('q', `(i32.add ${get('y')} ${get('own')})`)}
      ${each((i) =>
        lines([
          set(`c${i}`, mul(load(get('q'), 128 + 16 * i), get('per2'))),
          store(get('q'), 128 + 16 * i, get(`c${i}`)),
          set(`b${i}`, mul(sub(load(get('q'), 64 + 16 * i), mul(get('l21'), get(`c${i}`))), get('per1'))),
          store(get('q'), 64 + 16 * i, get(`b${i}`)),
          set(
            `a${i}`,
            mul(
              sub(sub(load(get('q'), 16 * i), mul(get('l10'), get(`b${i}`))), mul(get('l20'), get(`c${i}`))),
              get('per0'),
            ),
          ),
          store(get('q'), 16 * i, get(`a${i}`)),
        ]),
      )}
      ${set('p', get('start'))}
      ${set('q', `(i32.add ${get('y')} ${get('from')})`)}
      (block $atDiagonal (loop $column
        (br_if $atDiagonal (i32.ge_u ${get('p')} ${get('diagonal')}))
        ${set('l', splat(get('p')))}
        ${set('m', splat(get('p'), 8))}
        ${set('n', splat(get('p'), 16))}
        ${each((i) =>
          store(
            get('q'),
            16 * i,
            sub(
              load(get('q'), 16 * i),
              add(add(mul(get('l'), get(`a${i}`)), mul(get('m'), get(`b${i}`))), mul(get('n'), get(`c${i}`))),
            ),
          ),
        )}
        ${set('p', `(i32.add ${get('p')} (i32.const 24))`)}
        ${set('q', `(i32.add ${get('q')} (i32.const ${ROW_BYTES}))`)}
        (br $column)))
      ${set('y', `(i32.add ${get('y')} ${get('stride')})`)}
      ${set('bank', `(i32.add ${get('bank')} (i32.const 1))`)}
      (br_if $eachBank (i32.lt_s ${get('bank')} ${get('bankCount')})))
    ${set('block', `(i32.sub ${get('block')} (i32.const 1))`)}
    (br $next))))`;

/** Writes lane k of moment m (0 Mx, 1 My, 2 Mxy) of a row to out + (8 m + k) * rows * 8 + row * 8. */
const storeRow = ['x', 'y', 't']
  .map((name, moment) =>
    each((i) =>
      lines(
        [0, 1].map((half) =>
          lines([
            `(v128.store64_lane ${half} ${get('to')} ${get(`${name}${i}`)})`,
            ...(moment === 2 && i === 3 && half === 1
              ? []
              : [set('to', `(i32.add ${get('to')} ${get('fieldBytes')})`)]),
          ]),
        ),
      ),
    ),
  )
  .join('\n');

const moments = `
(func (export "moments") (param $startAt i32) (param $nodeAt i32) (param $values i32) (param $bank i32) (param $out i32) (param $rows i32)
  (local $row i32) (local $entry i32) (local $end i32) (local $at i32) (local $to i32) (local $fieldBytes i32) (local $l v128)
  ${vectors('x', 'y', 't', 'u')}
  ${set('fieldBytes', `(i32.shl ${get('rows')} (i32.const 3))`)}
  (block $done (loop $next
    (br_if $done (i32.ge_s ${get('row')} ${get('rows')}))
    ${set('entry', `(i32.add ${get('nodeAt')} (i32.shl (i32.load (i32.add ${get('startAt')} (i32.shl ${get('row')} (i32.const 2)))) (i32.const 2)))`)}
    ${set('end', `(i32.add ${get('nodeAt')} (i32.shl (i32.load offset=4 (i32.add ${get('startAt')} (i32.shl ${get('row')} (i32.const 2)))) (i32.const 2)))`)}
    ${['x', 'y', 't'].map((name) => each((i) => set(`${name}${i}`, '(v128.const f64x2 0 0)'))).join('\n')}
    (block $rowDone (loop $eachEntry
      (br_if $rowDone (i32.ge_u ${get('entry')} ${get('end')}))
      ${set('at', `(i32.add ${get('bank')} (i32.shl (i32.load ${get('entry')}) (i32.const 3)))`)}
      ${[0, 1, 2]
        .map((freedom) =>
          lines([
            each((i) => set(`u${i}`, load(get('at'), freedom * ROW_BYTES + 16 * i))),
            ...['x', 'y', 't'].map((name, moment) =>
              lines([
                set('l', splat(get('values'), 24 * moment + 8 * freedom)),
                each((i) => set(`${name}${i}`, add(get(`${name}${i}`), mul(get('l'), get(`u${i}`))))),
              ]),
            ),
          ]),
        )
        .join('\n')}
      ${set('values', `(i32.add ${get('values')} (i32.const 72))`)}
      ${set('entry', `(i32.add ${get('entry')} (i32.const 4))`)}
      (br $eachEntry)))
    ${set('to', `(i32.add ${get('out')} (i32.shl ${get('row')} (i32.const 3)))`)}
    ${storeRow}
    ${set('row', `(i32.add ${get('row')} (i32.const 1))`)}
    (br $next))))`;

/** The whole module as text. */
export const KERNEL_TEXT = `(module
(import "room" "memory" (memory 1))
${forward}
${backward}
${moments})
`;
