import type { Sourced } from "./source.js";

/** Annealed copper at 20 °C. R(T) = R20 · (1 + perK · (T − 20)). */
export const copper = {
  source: {
    title: "IEC 60028:1925; NBS Handbook 100 (1966)",
    place: "international annealed copper standard",
    status: "published",
  },
  ohmMm2PerM: 1 / 58,
  perK: 0.00393,
  densityKgPerM3: 8890,
} as const satisfies Sourced;

/** Estimate of the temperature of a loaded conductor: T = air + (rating − air) · sqrt(current / ampacity). */
export const hotConductor = {
  source: {
    title: "FAA AC 43.13-1B Change 1 (2001)",
    place: "paragraph 11-66d(4): the symbols were read, the formula itself is recalled",
    status: "memory",
  },
  exponent: 0.5,
} as const satisfies Sourced;
