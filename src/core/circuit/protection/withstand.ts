import { shortCircuitFinal, shortCircuitFormula, shortCircuitK } from "../../reference/short-circuit.js";

/** Longest short for which a conductor may be taken to lose no heat [s]. */
export const adiabaticMaxS: number = shortCircuitK.maxS;

/**
 * Factor of a copper conductor that heats without losing heat: k = 226 · √ln((234.5 + T_final) / (234.5 + T_initial)).
 * @param initialC Copper when the short begins [°C].
 * @param finalC Greatest temperature the insulation survives [°C].
 * @returns k [A·√s/mm²].
 * @throws RangeError unless −234.5 < initial < final.
 */
export function adiabaticFactor(initialC: number, finalC: number): number {
  const { a, b } = shortCircuitFormula;
  if (!(initialC > -b)) throw new RangeError(`initial temperature must be > −${b} °C, got ${initialC}`);
  if (!(finalC > initialC)) throw new RangeError(`final temperature must be > ${initialC} °C, got ${finalC}`);
  return a * Math.sqrt(Math.log((b + finalC) / (b + initialC)));
}

/** Temperature an insulation of this rating survives for the seconds of a short [°C]. */
function finalTemperatureC(insulationC: number): number {
  const { thermoplasticFinalC, thermosetFinalC, thermosetFromRatingC } = shortCircuitFinal;
  return insulationC >= thermosetFromRatingC ? thermosetFinalC : thermoplasticFinalC;
}

/**
 * What a copper conductor survives: k² · S². The copper is taken to start at the rating of its insulation, the worst case.
 * Holds for shorts of up to `adiabaticMaxS`.
 * @param areaMm2 Copper area [mm²].
 * @param insulationC Temperature rating of the insulation [°C].
 * @returns Greatest ∫I² dt [A²s].
 * @throws RangeError if the area is not above zero or the rating is not between −234.5 and 250 °C.
 */
export function withstandA2s(areaMm2: number, insulationC: number): number {
  if (!(areaMm2 > 0)) throw new RangeError(`area must be > 0 mm², got ${areaMm2}`);
  const k = adiabaticFactor(insulationC, finalTemperatureC(insulationC));
  return (k * areaMm2) ** 2;
}
