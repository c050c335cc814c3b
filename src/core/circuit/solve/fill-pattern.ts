import { eliminationOrder, type Graph, type Waiting } from "./elimination-order.js";

/**
 * Where the factors of a matrix with symmetric pattern hold numbers. Rows and columns are counted in order of elimination.
 * Column c of the lower factor has rows `row[start[c]] … row[start[c + 1] − 1]`, ascending, all below the diagonal; the upper
 * factor is its mirror image.
 */
export interface FillPattern {
  readonly size: number;
  /** Place of each unknown in the order of elimination. */
  readonly place: Int32Array;
  readonly start: Int32Array;
  readonly row: Int32Array;
}

/**
 * Symbolic factorisation: column c fills in with the rows of the matrix and of every column whose first row is c.
 * @param rows Row of each entry off the diagonal; entries may repeat and need not be mirrored.
 */
export function fillPattern(
  size: number,
  rows: Int32Array,
  columns: Int32Array,
  waiting?: Waiting,
): FillPattern {
  const graph = mirrored(size, rows, columns);
  const order = eliminationOrder(graph, waiting);
  const place = new Int32Array(size);
  for (let at = 0; at < size; at++) place[order[at] as number] = at;

  const start = new Int32Array(size + 1);
  let row = new Int32Array(Math.max(64, 2 * graph.neighbour.length));
  const mark = new Int32Array(size).fill(-1);
  const firstChild = new Int32Array(size).fill(-1);
  const nextChild = new Int32Array(size).fill(-1);
  let end = 0;
  for (let column = 0; column < size; column++) {
    if (end + size - column > row.length) {
      const grown = new Int32Array(2 * row.length + size);
      grown.set(row);
      row = grown;
    }
    start[column] = end;
    mark[column] = column;
    let parent = size;
    const unknown = order[column] as number;
    for (let t = graph.start[unknown] as number; t < (graph.start[unknown + 1] as number); t++) {
      const r = place[graph.neighbour[t] as number] as number;
      if (r <= column || mark[r] === column) continue;
      mark[r] = column;
      row[end++] = r;
      if (r < parent) parent = r;
    }
    for (let child = firstChild[column] as number; child !== -1; child = nextChild[child] as number) {
      for (let t = start[child] as number; t < (start[child + 1] as number); t++) {
        const r = row[t] as number;
        if (r <= column || mark[r] === column) continue;
        mark[r] = column;
        row[end++] = r;
        if (r < parent) parent = r;
      }
    }
    start[column + 1] = end;
    if (parent < size) {
      nextChild[column] = firstChild[parent] as number;
      firstChild[parent] = column;
    }
  }
  return { size, place, start, row: sortedRows(size, start, row.subarray(0, end)) };
}

/** Both ways round, without repeats. */
function mirrored(size: number, rows: Int32Array, columns: Int32Array): Graph {
  const count = new Int32Array(size + 1);
  for (let k = 0; k < rows.length; k++) {
    const r = rows[k] as number;
    const c = columns[k] as number;
    count[r] = (count[r] as number) + 1;
    count[c] = (count[c] as number) + 1;
  }
  const fill = new Int32Array(size + 1);
  let sum = 0;
  for (let i = 0; i < size; i++) {
    fill[i] = sum;
    sum += count[i] as number;
  }
  fill[size] = sum;
  const at = fill.slice();
  const all = new Int32Array(sum);
  for (let k = 0; k < rows.length; k++) {
    const r = rows[k] as number;
    const c = columns[k] as number;
    all[at[r] as number] = c;
    at[r] = (at[r] as number) + 1;
    all[at[c] as number] = r;
    at[c] = (at[c] as number) + 1;
  }
  const seen = new Int32Array(size).fill(-1);
  const start = new Int32Array(size + 1);
  let end = 0;
  for (let i = 0; i < size; i++) {
    start[i] = end;
    for (let t = fill[i] as number; t < (fill[i + 1] as number); t++) {
      const j = all[t] as number;
      if (j === i || seen[j] === i) continue;
      seen[j] = i;
      all[end++] = j;
    }
  }
  start[size] = end;
  return { start, neighbour: all.slice(0, end) };
}

/** Rows of each column in ascending order, by writing the pattern out row by row and reading it back. */
function sortedRows(size: number, start: Int32Array, row: Int32Array): Int32Array {
  const rowStart = new Int32Array(size + 1);
  for (let t = 0; t < row.length; t++) {
    const r = (row[t] as number) + 1;
    rowStart[r] = (rowStart[r] as number) + 1;
  }
  for (let r = 0; r < size; r++) rowStart[r + 1] = (rowStart[r + 1] as number) + (rowStart[r] as number);
  const column = new Int32Array(row.length);
  for (let c = 0; c < size; c++) {
    for (let t = start[c] as number; t < (start[c + 1] as number); t++) {
      const r = row[t] as number;
      const at = rowStart[r] as number;
      column[at] = c;
      rowStart[r] = at + 1;
    }
  }
  // Now rowStart[r] is where row r ends.
  const sorted = new Int32Array(row.length);
  const next = start.slice();
  for (let r = 0, t = 0; r < size; r++) {
    for (; t < (rowStart[r] as number); t++) {
      const c = column[t] as number;
      const at = next[c] as number;
      sorted[at] = r;
      next[c] = at + 1;
    }
  }
  return sorted;
}
