import type { Sourced } from "./source.js";

/**
 * The American wire gauge: two diameters are fixed and the 38 steps between them are one geometric series,
 * d = d36 · ratio^((36 − n) / steps). Gauges above 1 are written 1/0 … 4/0 and count as n = 0 … −3.
 */
export const awg = {
  source: {
    title: "NBS Handbook 100 (1966), Copper Wire Tables; the same definition in ASTM B258",
    place: "clauses 2.1 and 2.2",
    status: "published",
  },
  d36Mm: 0.127,
  ratio: 92,
  steps: 39,
  thickest: -3,
  thinnest: 40,
} as const satisfies Sourced;
