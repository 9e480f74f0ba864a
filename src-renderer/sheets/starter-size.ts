/** How large a starter is, as its card says it. */
import type { Piece } from '../../src-core/job';
import { boundingBox } from '../../src-core/outline';
import type { UnitSystem } from '../../src-core/units';
import { printLength } from '../../src-core/units';

/** "96 in by 25-1/2 in, 1-1/2 in thick", from left to right and from front to back over all. */
export function starterSize({ corners, thicknessIn }: Piece, system: UnitSystem): string {
  const { minXIn, minYIn, maxXIn, maxYIn } = boundingBox(corners);
  const print = (valueIn: number) => printLength(valueIn, { system });
  return `${print(maxXIn - minXIn)} by ${print(maxYIn - minYIn)}, ${print(thicknessIn)} thick`;
}
