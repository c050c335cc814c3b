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

/** Let-through a conductor withstands, k²·S² [10⁶ A²s]. */
export const maxLetThrough = {
  source: { title: "Electrical Installation Guide", place: "figure G53, copper", status: "published" },
  rows: [
    { areaMm2: 1.5, pvc: 0.0297, crossLinked: 0.046 },
    { areaMm2: 2.5, pvc: 0.0826, crossLinked: 0.1278 },
    { areaMm2: 4, pvc: 0.2116, crossLinked: 0.3272 },
    { areaMm2: 6, pvc: 0.4761, crossLinked: 0.7362 },
    { areaMm2: 10, pvc: 1.3225, crossLinked: 2.045 },
    { areaMm2: 16, pvc: 3.3856, crossLinked: 5.235 },
    { areaMm2: 25, pvc: 8.2656, crossLinked: 12.7806 },
    { areaMm2: 35, pvc: 16.2006, crossLinked: 25.05 },
  ],
} as const satisfies Sourced;
