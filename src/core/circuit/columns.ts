/** A number of each thing, in their order: `Float64Array.from` with a function takes ten times as long. */
export function reals<T>(things: ArrayLike<T>, pick: (thing: T, at: number) => number): Float64Array {
  const column = new Float64Array(things.length);
  for (let at = 0; at < column.length; at += 1) column[at] = pick(things[at] as T, at);
  return column;
}

/** A whole number of each thing, in their order. */
export function wholes<T>(things: ArrayLike<T>, pick: (thing: T, at: number) => number): Int32Array {
  const column = new Int32Array(things.length);
  for (let at = 0; at < column.length; at += 1) column[at] = pick(things[at] as T, at);
  return column;
}
