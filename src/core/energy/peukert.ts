function positive(name: string, value: number, unit: string): void {
  if (!(value > 0)) throw new RangeError(`${name} must be > 0 ${unit}, got ${value}`);
}

function exponentOf(exponent: number): void {
  if (!(exponent >= 1)) throw new RangeError(`Peukert exponent must be ≥ 1, got ${exponent}`);
}

/**
 * Peukert's law in its own form, with the capacity at 1 A: t = C₁ / I^k.
 * The same battery has another figure here than in the rated-hour form.
 * @returns Hours until empty.
 * @throws RangeError unless capacity and current are above zero and k ≥ 1.
 */
export function hoursOneAmpereForm(capacityAt1AAh: number, exponent: number, currentA: number): number {
  positive("capacity", capacityAt1AAh, "Ah");
  positive("current", currentA, "A");
  exponentOf(exponent);
  return capacityAt1AAh / currentA ** exponent;
}

/**
 * Peukert's law with the capacity C printed on the battery for a discharge over H hours: t = H · (C / (I · H))^k.
 * @returns Hours until empty.
 * @throws RangeError unless capacity, hours and current are above zero and k ≥ 1.
 */
export function hoursRatedForm(
  capacityAh: number,
  ratedHours: number,
  exponent: number,
  currentA: number,
): number {
  positive("capacity", capacityAh, "Ah");
  positive("rated time", ratedHours, "h");
  positive("current", currentA, "A");
  exponentOf(exponent);
  return ratedHours * (capacityAh / (currentA * ratedHours)) ** exponent;
}

/**
 * The exponent from two discharges of one battery: k = (ln t₂ − ln t₁) / (ln I₁ − ln I₂).
 * @throws RangeError unless all are above zero and the two currents differ.
 */
export function exponentFromTwoRates(
  one: { readonly currentA: number; readonly hours: number },
  other: { readonly currentA: number; readonly hours: number },
): number {
  for (const { currentA, hours } of [one, other]) {
    positive("current", currentA, "A");
    positive("time", hours, "h");
  }
  if (one.currentA === other.currentA) {
    throw new RangeError(`two different currents are required, got ${one.currentA} A twice`);
  }
  return (Math.log(other.hours) - Math.log(one.hours)) / (Math.log(one.currentA) - Math.log(other.currentA));
}

/**
 * Current at which charge is used up by Peukert's law (rated-hour form): I · (I / I_rated)^(k − 1).
 * At and below the rated current nothing is gained: the capacity printed is the most the battery is taken to give. A varying current
 * is followed by adding up this figure over time.
 * @throws RangeError if the current is negative, the rated current not above zero or k < 1.
 */
export function effectiveCurrentA(currentA: number, ratedCurrentA: number, exponent: number): number {
  if (!(currentA >= 0)) throw new RangeError(`current must be ≥ 0 A, got ${currentA}`);
  positive("rated current", ratedCurrentA, "A");
  exponentOf(exponent);
  return currentA <= ratedCurrentA ? currentA : currentA * (currentA / ratedCurrentA) ** (exponent - 1);
}
