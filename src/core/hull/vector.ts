/**
 * Points and directions in the boat's own frame, in metres: x forward from station 0, y to port, z up from the base line.
 * A plain triple, because geometry reads best as short arithmetic.
 */
export type Point = readonly [x: number, y: number, z: number];

export const plus = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const times = (a: Point, k: number): Point => [a[0] * k, a[1] * k, a[2] * k];
export const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const lengthOf = (a: Point): number => Math.hypot(a[0], a[1], a[2]);
/** Straight distance between two points [m]: a tape pulled tight. */
export const straightM = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
/** The same point on the other side of the boat. */
export const mirrored = (a: Point): Point => [a[0], -a[1], a[2]];

/**
 * Direction of a vector.
 * @throws RangeError if the vector has no length.
 */
export function unit(a: Point): Point {
  const length = lengthOf(a);
  if (!(length > 0)) throw new RangeError(`a direction needs a length > 0, got ${length}`);
  return times(a, 1 / length);
}
