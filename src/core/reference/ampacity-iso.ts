import type { AmpacityTable, BundlingTable, EngineSpaceTable } from "./ampacity-table.js";

/**
 * Continuous current of single conductors [A] by temperature rating of the insulation, in 30 °C air.
 * Recalled: the cable maker's own rating is to be preferred. The column printed `85 to 90` stands here as 85.
 */
export const isoAmpacity = {
  source: { title: "ISO 10133:2012", place: "annex A, table A.1", status: "memory" },
  airC: 30,
  ratingsC: [60, 70, 85, 105, 125, 200],
  rows: [
    { key: "0.75 mm²", amps: [6, 10, 12, 16, 20, 25] },
    { key: "1 mm²", amps: [8, 14, 18, 20, 25, 35] },
    { key: "1.5 mm²", amps: [12, 18, 21, 25, 30, 40] },
    { key: "2.5 mm²", amps: [17, 25, 30, 35, 40, 45] },
    { key: "4 mm²", amps: [22, 35, 40, 45, 50, 55] },
    { key: "6 mm²", amps: [29, 45, 50, 60, 70, 75] },
    { key: "10 mm²", amps: [40, 65, 70, 90, 100, 120] },
    { key: "16 mm²", amps: [54, 90, 100, 130, 150, 170] },
    { key: "25 mm²", amps: [71, 120, 140, 170, 185, 200] },
    { key: "35 mm²", amps: [87, 160, 185, 210, 225, 240] },
    { key: "50 mm²", amps: [105, 210, 230, 270, 300, 325] },
    { key: "70 mm²", amps: [135, 265, 285, 330, 360, 375] },
    { key: "95 mm²", amps: [165, 310, 330, 390, 410, 430] },
  ],
} as const satisfies AmpacityTable;

/** In an engine space (60 °C air). No factor is known for 60 °C insulation: it has no room left there. */
export const isoEngineSpace = {
  source: { title: "ISO 10133:2012", place: "annex A", status: "memory" },
  airC: 60,
  rows: [
    { ratingC: 70, factor: 0.75, status: "memory" },
    { ratingC: 85, factor: 0.82, status: "memory" },
    { ratingC: 105, factor: 0.86, status: "memory" },
    { ratingC: 125, factor: 0.89, status: "memory" },
    { ratingC: 200, factor: 1, status: "memory" },
  ],
} as const satisfies EngineSpaceTable;

/** No bundling factor below 50 V is known from the standard; above it the factors of the US table are used. */
export const isoBundling = {
  source: { title: "ISO 10133:2012 and ISO 13297", place: "annex A, not read", status: "memory" },
  fromNominalV: 50,
  rows: [
    { conductorsFrom: 3, factor: 0.7 },
    { conductorsFrom: 4, factor: 0.6 },
    { conductorsFrom: 7, factor: 0.5 },
    { conductorsFrom: 25, factor: 0.4 },
  ],
} as const satisfies BundlingTable;
