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
