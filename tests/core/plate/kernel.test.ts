import { describe, expect, test } from 'vitest';
import wabt from 'wabt';
import {
  assemblePlate,
  bankedOperator,
  bankIndex,
  bendingMatrix,
  createSweepRoom,
  factorPlate,
  LANES_PER_STRIPE,
  layOutPlate,
  meshRegion,
  momentOperator,
} from '../../../src-core/plate';
import { KERNEL_HEX } from '../../../src-core/plate/kernel-bytes';
import { KERNEL_TEXT } from '../../../src-main/setup/kernel-text';
import { rectangle } from '../../support/pieces';
import { seededRandom } from '../../support/seeded-random';

describe('the vector kernel', () => {
  test('the bytes in the source are those of the text', async () => {
    const assembler = await wabt();
    const { buffer } = assembler.parseWat('kernel.wat', KERNEL_TEXT, { simd: true }).toBinary({});
    expect(Buffer.from(buffer).toString('hex')).toBe(KERNEL_HEX);
  });

  test('twenty right-hand sides come out as the plain sweeps and moments give them, to 1e-12 of the largest', () => {
    const meshed = meshRegion({
      outer: rectangle(30, 17),
      holes: [],
      fixedPoints: [],
      segments: [],
      sizeIn: 1.5,
    });
    if (!meshed.ok) throw new Error(meshed.problem.sentence);
    const { mesh } = meshed;
    const bending = bendingMatrix(4e6, 1.5, 0.2);
    const layout = layOutPlate(mesh);
    const fixed = new Uint8Array(3 * mesh.xIn.length);
    for (const node of [0, 5, mesh.xIn.length - 1]) fixed[3 * node] = 1;
    const result = factorPlate(assemblePlate(mesh, bending, layout), { fixed });
    if (!result.ok) throw new Error(`loose at ${result.row}`);
    const { factor } = result;
    const operator = bankedOperator(momentOperator(mesh, bending), layout);
    const random = seededRandom(5);
    const lanes = 20;
    const startRow = 30;
    const loads = Array.from({ length: lanes }, () =>
      Array.from({ length: 40 }, () => ({
        row: startRow + Math.floor(random() * (factor.held.length - startRow)),
        lbf: random() - 0.5,
      })),
    );
    const [vector, plain] = [false, true].map((isPlain) => {
      const room = createSweepRoom(factor, operator, LANES_PER_STRIPE, isPlain);
      loads.forEach((load, lane) => {
        for (const { row, lbf } of load) room.banks[bankIndex(factor, lane, row)] = lbf;
      });
      room.forward(lanes, startRow);
      room.backward(lanes);
      const moments = [0, 8, 16].flatMap((first) => {
        room.readMoments(first);
        return room.fields.map(({ mx, my, mxy }) => [mx.slice(), my.slice(), mxy.slice()]);
      });
      return { room, moments };
    });
    expect(vector!.room.isVector).toBe(true);
    expect(plain!.room.isVector).toBe(false);
    const close = (a: Float64Array, b: Float64Array) => {
      const largest = b.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
      const worst = a.reduce((most, value, i) => Math.max(most, Math.abs(value - b[i]!)), 0);
      expect(largest).toBeGreaterThan(0);
      expect(worst).toBeLessThan(1e-12 * largest);
    };
    close(
      vector!.room.banks.subarray(0, 24 * factor.held.length),
      plain!.room.banks.subarray(0, 24 * factor.held.length),
    );
    for (let lane = 0; lane < lanes; lane++)
      for (let moment = 0; moment < 3; moment++)
        close(vector!.moments[lane]![moment]!, plain!.moments[lane]![moment]!);
  });
});
