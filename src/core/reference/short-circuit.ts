import type { Sourced } from "./source.js";

/** I²·t ≤ k²·S² for faults up to 5 s: k of copper by insulation [A·s^½/mm²]. */
export const shortCircuitK = {
  source: {
    title: "IEC 60364-4-43",
    place: "through the Electrical Installation Guide, figures G52 and G53",
    status: "published",
  },
  maxS: 5,
  rows: [
    { insulation: "PVC", ratingC: 70, finalC: 160, k: 115 },
    { insulation: "cross-linked or rubber", ratingC: 90, finalC: 250, k: 143 },
  ],
} as const satisfies Sourced;

/** For any starting and final temperature of copper: k = a · sqrt(ln((b + final)/(b + start))). */
export const shortCircuitFormula = {
  source: { title: "IEC 60949", place: "as summarised in public texts, copper", status: "published" },
  a: 226,
  b: 234.5,
} as const satisfies Sourced;

/**
 * Copper temperature a short may reach, by temperature rating of the insulation. Boat cable rated 105 °C is PVC as a rule: it
 * flows at 160 °C whatever its rating in service.
 */
export const shortCircuitFinal = {
  source: {
    title: "common practice, no source",
    place: "160 °C as for PVC in IEC 60364-4-43",
    status: "practice",
  },
  thermoplasticFinalC: 160,
  thermosetFinalC: 250,
  /** Ratings at and above this are taken as cross-linked or silicone. */
  thermosetFromRatingC: 125,
} as const satisfies Sourced;

/**
 * The least loop a short can have, for the capacity to interrupt: ideal copper (IEC 60028) of the conductor's whole nominal area, laid
 * straight, untinned, along the way without slack, no warmer than this. Makers fix greatest resistances only; none gives copper away.
 */
export const largestShort = {
  source: {
    title: "IEC 60028:1925",
    place: "ideal copper of the nominal area; that no cable sold has more is common practice, no source",
    status: "computed",
  },
  maxCopperC: 20,
} as const satisfies Sourced;
