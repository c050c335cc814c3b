/**
 * Current at which charge is used up by Peukert's law (rated-hour form): I · (I / I_rated)^(k − 1), so that a capacity C lasts
 * t = C / I_effective = H · (C / (I · H))^k. At and below the rated current nothing is gained: the capacity printed is the most the
 * battery is taken to give. A varying current is followed by adding up this figure over time.
 * @param ratedCurrentA Current at which the printed capacity was measured: C over its rated hours H [A].
 * @throws RangeError if the current is negative, the rated current not above zero or k < 1.
 */
export function effectiveCurrentA(currentA: number, ratedCurrentA: number, exponent: number): number {
  if (!(currentA >= 0)) throw new RangeError(`current must be ≥ 0 A, got ${currentA}`);
  if (!(ratedCurrentA > 0)) throw new RangeError(`rated current must be > 0 A, got ${ratedCurrentA}`);
  if (!(exponent >= 1)) throw new RangeError(`Peukert exponent must be ≥ 1, got ${exponent}`);
  return currentA <= ratedCurrentA ? currentA : currentA * (currentA / ratedCurrentA) ** (exponent - 1);
}
