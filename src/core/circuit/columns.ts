/** A number of each thing, in their order: `Float64Array.from` with a function takes ten times as long. */
export function reals<T>(things: ArrayLike<T>, pick: (thing: T, at: number) => number): Float64Array {
  const column = zeros(things.length);
  for (let at = 0; at < column.length; at += 1) column[at] = pick(things[at] as T, at);
  return column;
}

/** A whole number of each thing, in their order. */
export function wholes<T>(things: ArrayLike<T>, pick: (thing: T, at: number) => number): Int32Array {
  const column = new Int32Array(things.length);
  for (let at = 0; at < column.length; at += 1) column[at] = pick(things[at] as T, at);
  return column;
}

const noReals = new Float64Array(0);
const noBytes = new Uint8Array(0);

/** So many zeros. An empty column is always the same one: it holds nothing, and making it takes as long as making a long one. */
export function zeros(length: number): Float64Array {
  return length === 0 ? noReals : new Float64Array(length);
}

/** So many zeros, of whole numbers to 255. */
export function zeroBytes(length: number): Uint8Array {
  return length === 0 ? noBytes : new Uint8Array(length);
}

/** A column of its own with the same numbers. */
export function copied(column: Float64Array): Float64Array {
  return column.length === 0 ? noReals : new Float64Array(column);
}
