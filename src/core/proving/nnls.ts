/**
 * Least squares with no unknown below zero: the active-set method of Lawson and Hanson (1974), chapter 23, with a QR factorisation
 * of the columns in use at every step.
 * @param columns A by columns, all as long as `b`.
 * @param b Right side.
 * @returns x ≥ 0 with least |A·x − b|, and that length.
 * @throws RangeError if a column's length differs from that of `b`, or a figure is not finite.
 */
export function nonNegativeLeastSquares(
  columns: readonly Float64Array[],
  b: Float64Array,
): { readonly x: Float64Array; readonly residual: number } {
  for (const column of [...columns, b]) {
    if (column.length !== b.length)
      throw new RangeError(`every column must have ${b.length} rows, got ${column.length}`);
    for (const value of column)
      if (!Number.isFinite(value)) throw new RangeError(`figures must be finite, got ${value}`);
  }
  const count = columns.length;
  const x = new Float64Array(count);
  const left = b.slice();
  const used: number[] = [];
  const scale = columns.reduce((most, column) => Math.max(most, Math.sqrt(dot(column, column))), 0);
  const size = Math.sqrt(dot(b, b));
  const tolerance = 1e-13 * Math.max(1, Math.max(b.length, count)) * scale * size;
  const barred = new Set<number>();
  for (let round = 0; round < 3 * count + 10; round++) {
    let best = -1;
    let most = tolerance;
    columns.forEach((column, j) => {
      if (used.includes(j) || barred.has(j)) return;
      const pull = dot(column, left);
      if (pull > most) {
        most = pull;
        best = j;
      }
    });
    if (best < 0) break;
    used.push(best);
    let wanted = solveColumns(columns, used, b);
    // a column that adds nothing but rounding would go round for ever
    if (!((wanted.at(-1) ?? 0) > 0)) {
      used.pop();
      barred.add(best);
      continue;
    }
    barred.clear();
    while (wanted.some((value) => !(value > 0))) {
      let share = 1;
      used.forEach((j, k) => {
        const to = wanted[k] ?? 0;
        const from = x[j] ?? 0;
        if (!(to > 0)) share = Math.min(share, from / (from - to));
      });
      used.forEach((j, k) => {
        x[j] = (x[j] ?? 0) + share * ((wanted[k] ?? 0) - (x[j] ?? 0));
      });
      const gone = used.filter((j, k) => !((wanted[k] ?? 0) > 0) && !((x[j] ?? 0) > 1e-15 * size));
      for (const j of gone.length > 0 ? gone : used.filter((_, k) => !((wanted[k] ?? 0) > 0))) {
        x[j] = 0;
        used.splice(used.indexOf(j), 1);
      }
      wanted = solveColumns(columns, used, b);
    }
    x.fill(0);
    used.forEach((j, k) => {
      x[j] = wanted[k] ?? 0;
    });
    left.set(b);
    for (const j of used) addTo(left, columns[j] ?? left, -(x[j] ?? 0));
  }
  return { x, residual: Math.sqrt(dot(left, left)) };
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

function addTo(to: Float64Array, column: Float64Array, factor: number): void {
  for (let i = 0; i < to.length; i++) to[i] = (to[i] as number) + factor * (column[i] as number);
}

/** Unrestricted least squares on some columns, by Householder reflections. A column that depends on those before it gets 0. */
function solveColumns(
  columns: readonly Float64Array[],
  used: readonly number[],
  b: Float64Array,
): Float64Array {
  const rows = b.length;
  const work = used.map((j) => Float64Array.from(columns[j] ?? []));
  const right = b.slice();
  const diagonal = new Float64Array(work.length);
  const rank = Math.min(rows, work.length);
  for (let k = 0; k < rank; k++) {
    const v = work[k];
    if (!v) continue;
    const whole = Math.sqrt(dot(columns[used[k] ?? 0] ?? v, columns[used[k] ?? 0] ?? v));
    let norm = 0;
    for (let i = k; i < rows; i++) norm += (v[i] as number) ** 2;
    norm = Math.sqrt(norm);
    if (!(norm > 1e-13 * whole)) continue;
    const alpha = (v[k] as number) > 0 ? -norm : norm;
    diagonal[k] = alpha;
    v[k] = (v[k] as number) - alpha;
    let square = 0;
    for (let i = k; i < rows; i++) square += (v[i] as number) ** 2;
    const reflect = (u: Float64Array) => {
      let along = 0;
      for (let i = k; i < rows; i++) along += (v[i] as number) * (u[i] as number);
      const factor = (2 * along) / square;
      for (let i = k; i < rows; i++) u[i] = (u[i] as number) - factor * (v[i] as number);
    };
    for (const u of work.slice(k + 1)) reflect(u);
    reflect(right);
  }
  const x = new Float64Array(work.length);
  for (let k = rank - 1; k >= 0; k--) {
    if (diagonal[k] === 0) continue;
    let sum = right[k] as number;
    for (let j = k + 1; j < work.length; j++) sum -= (work[j]?.[k] ?? 0) * (x[j] as number);
    x[k] = sum / (diagonal[k] as number);
  }
  return x;
}
