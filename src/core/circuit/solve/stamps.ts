/** Entries of a matrix, each belonging to one element and added with a sign. Grows as needed. */
export class StampList {
  row = new Int32Array(64);
  column = new Int32Array(64);
  count = 0;
  #element = new Int32Array(64);
  #sign = new Int8Array(64);
  #target = new Int32Array(0);

  add(row: number, column: number, element: number, sign: number): void {
    if (this.count === this.row.length) {
      this.row = twice(this.row);
      this.column = twice(this.column);
      this.#element = twice(this.#element);
      const sign = new Int8Array(2 * this.count);
      sign.set(this.#sign);
      this.#sign = sign;
    }
    this.row[this.count] = row;
    this.column[this.count] = column;
    this.#element[this.count] = element;
    this.#sign[this.count++] = sign;
  }

  /** Finds once where in the values of the matrix each entry goes. */
  aim(place: Int32Array, entry: (row: number, column: number) => number): void {
    this.#target = new Int32Array(this.count);
    for (let k = 0; k < this.count; k++)
      this.#target[k] = entry(
        place[this.row[k] as number] as number,
        place[this.column[k] as number] as number,
      );
  }

  /** Adds `sign · number of the element` at every entry. */
  addTo(values: Float64Array, numberOf: Float64Array): void {
    const target = this.#target;
    const element = this.#element;
    const sign = this.#sign;
    for (let k = 0; k < target.length; k++) {
      const at = target[k] as number;
      values[at] = (values[at] as number) + (sign[k] as number) * (numberOf[element[k] as number] as number);
    }
  }
}

export function joinedStamps(lists: readonly StampList[], side: "row" | "column"): Int32Array {
  const all = new Int32Array(lists.reduce((sum, list) => sum + list.count, 0));
  let at = 0;
  for (const list of lists) {
    all.set(list[side].subarray(0, list.count), at);
    at += list.count;
  }
  return all;
}

function twice(old: Int32Array): Int32Array<ArrayBuffer> {
  const grown = new Int32Array(2 * old.length);
  grown.set(old);
  return grown;
}
