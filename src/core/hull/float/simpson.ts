/**
 * Area under equally spaced ordinates by Simpson's first rule, h/3·(1, 4, 2, …, 4, 1); exact for cubics.
 * With an even number of ordinates the last three intervals take the second rule, 3h/8·(1, 3, 3, 1).
 * @param spacing Distance between ordinates, same unit as wanted.
 * @throws RangeError if there are fewer than three ordinates, the spacing is not above zero, or an ordinate is not finite.
 */
export function simpson(ordinates: ArrayLike<number>, spacing: number): number {
  const n = ordinates.length;
  if (!(n >= 3)) throw new RangeError(`needs at least 3 ordinates, got ${n}`);
  if (!(spacing > 0)) throw new RangeError(`spacing must be > 0, got ${spacing}`);
  let sum = 0;
  for (let i = 0; i < n; i++) sum += simpsonWeight(n, i) * (ordinates[i] ?? Number.NaN);
  if (!Number.isFinite(sum)) throw new RangeError("ordinates must be finite");
  return sum * spacing;
}

/** Multiplier of ordinate i of n, the spacing left out. */
export function simpsonWeight(n: number, i: number): number {
  const first = n % 2 === 1 ? n : n - 3;
  let weight = 0;
  if (i < first && first > 1) weight += (i === 0 || i === first - 1 ? 1 : i % 2 === 1 ? 4 : 2) / 3;
  if (n % 2 === 0 && i >= n - 4) weight += ((i === n - 4 || i === n - 1 ? 1 : 3) * 3) / 8;
  return weight;
}
