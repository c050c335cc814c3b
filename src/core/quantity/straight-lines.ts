/**
 * Value at x on straight lines between the points of a table; flat beyond its ends.
 * @param points Sorted by x, rising or falling.
 * @throws RangeError if the table is empty or x is not a number.
 */
export function onStraightLines(points: readonly (readonly [x: number, y: number])[], x: number): number {
  if (Number.isNaN(x)) throw new RangeError("a table is looked up by a number, got NaN");
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined) throw new RangeError("a table must have points, got none");
  const sign = last[0] < first[0] ? -1 : 1;
  if (sign * (x - first[0]) <= 0) return first[1];
  let low = first;
  for (const high of points) {
    if (sign * (high[0] - x) >= 0) {
      if (high[0] === low[0]) return high[1];
      return low[1] + ((x - low[0]) / (high[0] - low[0])) * (high[1] - low[1]);
    }
    low = high;
  }
  return last[1];
}
