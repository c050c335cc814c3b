import type { Sourced } from "./source.js";

/** Blade fuses by body size: ratings made [A]. `medium` is the one most panels take. */
export const bladeFuses = {
  source: { title: "ISO 8820-3", place: "types C, F and E, recalled", status: "memory" },
  bodies: [
    { body: "mini", type: "F", ratingsA: [2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30] },
    { body: "medium", type: "C", ratingsA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40] },
    { body: "large", type: "E", ratingsA: [20, 30, 40, 50, 60, 70, 80, 100] },
  ],
} as const satisfies Sourced;

/** What the blade-fuse standard covers: rated voltage [V], largest rating [A], fault current it must break [A]. */
export const bladeFuseScope = {
  source: { title: "ISO 8820-3", place: "scope clause", status: "published" },
  ratedV: [32, 58],
  maxRatingA: 100,
  interruptingA: 1000,
} as const satisfies Sourced;

/** Bolted (strip) fuse links near the battery: ratings made [A] and what they usually break at 32 V [A]. */
export const boltedFuses = {
  source: { title: "common practice, no source", place: "-", status: "practice" },
  ratingsA: [30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 500],
  interruptingA: 2000,
} as const satisfies Sourced;

/** Fast, high-interrupting cartridge fuses, the usual choice at a lithium battery. */
export const cartridgeFuses = {
  source: { title: "common practice, no source", place: "-", status: "practice" },
  ratingsA: [
    5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350,
    400,
  ],
  interruptingA: 20000,
} as const satisfies Sourced;

/** Thermal breakers with a trip-free button or lever. The interrupting capacity is that of a small one: look at its own. */
export const breakers = {
  source: { title: "common practice, no source", place: "-", status: "practice" },
  ratingsA: [3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 90, 100, 120, 135, 150, 175, 200],
  interruptingA: 1500,
} as const satisfies Sourced;
