/**
 * Dense symmetric kernels for the small problems on contact points.
 *
 * n   order of the matrix, stored row by row in the first n*n numbers of an array
 * L   lower triangle of the Cholesky factor, in place of the lower triangle of the matrix
 */

/** Factors a symmetric positive definite matrix in place (lower triangle). Returns false at a pivot that is not positive. */
export function choleskyInPlace(a: Float64Array, n: number): boolean {
  for (let i = 0; i < n; i++) {
    const rowI = i * n;
    for (let j = 0; j < i; j++) {
      const rowJ = j * n;
      let s0 = 0;
      let s1 = 0;
      let s2 = 0;
      let s3 = 0;
      let k = 0;
      for (; k + 3 < j; k += 4) {
        s0 += a[rowI + k]! * a[rowJ + k]!;
        s1 += a[rowI + k + 1]! * a[rowJ + k + 1]!;
        s2 += a[rowI + k + 2]! * a[rowJ + k + 2]!;
        s3 += a[rowI + k + 3]! * a[rowJ + k + 3]!;
      }
      for (; k < j; k++) s0 += a[rowI + k]! * a[rowJ + k]!;
      a[rowI + j] = (a[rowI + j]! - (s0 + s1 + s2 + s3)) / a[rowJ + j]!;
    }
    let d = a[rowI + i]!;
    for (let k = 0; k < i; k++) d -= a[rowI + k]! * a[rowI + k]!;
    if (!(d > 0)) return false;
    a[rowI + i] = Math.sqrt(d);
  }
  return true;
}

/** Solves L Lᵀ x = b for `columns` right-hand sides stored column by column in `b`, in place. */
export function choleskySolve(l: Float64Array, n: number, b: Float64Array, columns: number): void {
  for (let c = 0; c < columns; c++) {
    const o = c * n;
    for (let i = 0; i < n; i++) {
      const row = i * n;
      let s = b[o + i]!;
      for (let k = 0; k < i; k++) s -= l[row + k]! * b[o + k]!;
      b[o + i] = s / l[row + i]!;
    }
    for (let i = n - 1; i >= 0; i--) {
      const row = i * n;
      const x = b[o + i]! / l[row + i]!;
      b[o + i] = x;
      for (let k = 0; k < i; k++) b[o + k] = b[o + k]! - l[row + k]! * x;
    }
  }
}

/** Inverse of the matrix whose Cholesky factor is `l`, full symmetric n by n. */
export function choleskyInverse(l: Float64Array, n: number): Float64Array {
  // rows of inv(L) first, then inv(L)ᵀ inv(L) over the overlap of two columns
  const li = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    li[j * n + j] = 1 / l[j * n + j]!;
    for (let i = j + 1; i < n; i++) {
      const row = i * n;
      let s = 0;
      for (let k = j; k < i; k++) s += l[row + k]! * li[j * n + k]!;
      li[j * n + i] = -s / l[row + i]!;
    }
  }
  const inverse = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let s = 0;
      for (let k = i; k < n; k++) s += li[i * n + k]! * li[j * n + k]!;
      inverse[i * n + j] = s;
      inverse[j * n + i] = s;
    }
  }
  return inverse;
}
