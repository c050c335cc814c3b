/** Nearest mark of a tape with this graduation [m]. */
export function toGraduation(valueM: number, graduationM: number): number {
  if (!(graduationM > 0)) throw new RangeError(`graduation must be > 0 m, got ${graduationM}`);
  return Math.round(valueM / graduationM) * graduationM;
}

/**
 * Where a mark lands when its two readings are changed: the move m with rᵢ·m = Δᵢ, to first order. Changes of a graduation are so
 * small against the distances that the second order is a thousandth of a millimetre.
 * @returns Move along and up [m], or undefined where the rays do not cross.
 */
export function landing(
  rays: readonly [{ along: number; up: number }, { along: number; up: number }],
  changesM: readonly [number, number],
): [alongM: number, upM: number] | undefined {
  const [a, b] = rays;
  const det = a.along * b.up - a.up * b.along;
  if (!(Math.abs(det) > 1e-6)) return undefined;
  return [
    (changesM[0] * b.up - changesM[1] * a.up) / det,
    (changesM[1] * a.along - changesM[0] * b.along) / det,
  ];
}
