/**
 * Multiplier of ordinate i of an odd number of equally spaced ones under Simpson's first rule, 1/3·(1, 4, 2, …, 4, 1), the spacing left
 * out: the area is spacing · Σ weight · ordinate, exact for cubics.
 */
export function simpsonWeight(count: number, i: number): number {
  return (i === 0 || i === count - 1 ? 1 : i % 2 === 1 ? 4 : 2) / 3;
}
