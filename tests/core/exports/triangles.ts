/** Volume within triangles, three corners of x, y, z each, by the divergence theorem (any handbook of mathematics). */
export function volumeOf(corners: ArrayLike<number>): number {
  let sixfold = 0;
  const at = (i: number) => [
    corners[i]! - corners[0]!,
    corners[i + 1]! - corners[1]!,
    corners[i + 2]! - corners[2]!,
  ];
  for (let i = 0; i < corners.length; i += 9) {
    const [a, b, c] = [at(i), at(i + 3), at(i + 6)] as [number[], number[], number[]];
    sixfold +=
      a[0]! * (b[1]! * c[2]! - b[2]! * c[1]!) +
      a[1]! * (b[2]! * c[0]! - b[0]! * c[2]!) +
      a[2]! * (b[0]! * c[1]! - b[1]! * c[0]!);
  }
  return sixfold / 6;
}

/** Least and greatest x, y and z. */
export function extentOf(corners: ArrayLike<number>): { readonly least: number[]; readonly most: number[] } {
  const least = [0, 1, 2].map(() => Number.POSITIVE_INFINITY);
  const most = [0, 1, 2].map(() => Number.NEGATIVE_INFINITY);
  for (let i = 0; i < corners.length; i++) {
    least[i % 3] = Math.min(least[i % 3]!, corners[i]!);
    most[i % 3] = Math.max(most[i % 3]!, corners[i]!);
  }
  return { least, most };
}
