/** A row of bought arms lagged to the studs of a wall. */
import { STOCK_ARMS } from '../bracket';
import type { Setting, SupportDraft } from './drafts';
import { placeIn } from './drafts';

/** The arm that the starters hang on studs: light enough for one pair of hands, stiff enough for a ledge of 12 in. */
const ARM_ID = 'tube-2x2x0.12';

/** Arms that leave the wall face at `faceIn` from the front and reach toward the front, one at each distance from the left. */
export function studArms(
  setting: Setting,
  row: { readonly leftsIn: readonly number[]; readonly faceIn: number; readonly reachIn: number },
): SupportDraft {
  const stock = STOCK_ARMS.find(({ id }) => id === ARM_ID);
  if (stock === undefined) throw new Error(`No arm "${ARM_ID}" among the stock arms`);
  return {
    kind: 'bracket',
    id: setting.makeId('brackets'),
    name: stock.words,
    roots: row.leftsIn.map((leftIn) => placeIn(setting, leftIn, row.faceIn)),
    directionDeg: 270,
    reachIn: row.reachIn,
    seatWidthIn: stock.seatWidthIn,
    heelIn: stock.heelIn,
    arm: stock.arm,
    make: stock.make,
    backing: 'timber-stud',
    fixing: stock.fixing,
  };
}
