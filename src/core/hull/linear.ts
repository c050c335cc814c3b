/** Inverse of a symmetric positive definite matrix, or undefined where it is not one. */
export function inverseSymmetric(a: readonly (readonly number[])[]): number[][] | undefined {
  const lower = cholesky(a);
  if (lower === undefined) return undefined;
  const columns = a.map((_, column) =>
    backSolve(
      lower,
      a.map((_row, row) => (row === column ? 1 : 0)),
    ),
  );
  return a.map((_, row) => columns.map((column) => column[row] ?? 0));
}

/** log of the determinant of a symmetric positive definite matrix, or undefined where it is not one. */
export function logDeterminant(a: readonly (readonly number[])[]): number | undefined {
  const lower = cholesky(a);
  return lower?.reduce((sum, row, i) => sum + 2 * Math.log(row[i] ?? 0), 0);
}

function cholesky(a: readonly (readonly number[])[]): number[][] | undefined {
  const lower: number[][] = [];
  for (const [i, row] of a.entries()) {
    const made: number[] = [];
    for (let j = 0; j <= i; j++) {
      let sum = row[j] ?? 0;
      const other = j === i ? made : (lower[j] ?? []);
      for (let k = 0; k < j; k++) sum -= (made[k] ?? 0) * (other[k] ?? 0);
      if (j < i) made.push(sum / (other[j] ?? 0));
      else {
        // a pivot lost to rounding means the matrix has no independent row left
        if (!(sum > 1e-13 * Math.abs(row[i] ?? 0))) return undefined;
        made.push(Math.sqrt(sum));
      }
    }
    lower.push(made);
  }
  return lower;
}

function backSolve(lower: readonly (readonly number[])[], b: readonly number[]): number[] {
  const x = [...b];
  for (const [i, row] of lower.entries()) {
    let sum = x[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= (row[k] ?? 0) * (x[k] ?? 0);
    x[i] = sum / (row[i] ?? 0);
  }
  for (let i = lower.length - 1; i >= 0; i--) {
    let sum = x[i] ?? 0;
    for (let k = i + 1; k < lower.length; k++) sum -= (lower[k]?.[i] ?? 0) * (x[k] ?? 0);
    x[i] = sum / (lower[i]?.[i] ?? 0);
  }
  return x;
}
