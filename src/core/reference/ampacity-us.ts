import type { AmpacityTable, BundlingTable, EngineSpaceTable } from "./ampacity-table.js";

/** Allowable current of insulated copper conductors [A] by temperature rating of the insulation, in 30 °C air. */
export const usAmpacity = {
  source: {
    title: "33 CFR Part 183 Subpart I",
    place: "183.425 table 5",
    status: "published",
  },
  airC: 30,
  ratingsC: [60, 75, 80, 90, 105, 125, 200],
  rows: [
    { key: "18 AWG", amps: [10, 10, 15, 20, 20, 25, 25] },
    { key: "16 AWG", amps: [15, 15, 20, 25, 25, 30, 35] },
    { key: "14 AWG", amps: [20, 20, 25, 30, 35, 40, 45] },
    { key: "12 AWG", amps: [25, 25, 35, 40, 45, 50, 55] },
    { key: "10 AWG", amps: [40, 40, 50, 55, 60, 70, 70] },
    { key: "8 AWG", amps: [55, 65, 70, 70, 80, 90, 100] },
    { key: "6 AWG", amps: [80, 95, 100, 100, 120, 125, 135] },
    { key: "4 AWG", amps: [105, 125, 130, 135, 160, 170, 180] },
    { key: "3 AWG", amps: [120, 145, 150, 155, 180, 195, 210] },
    { key: "2 AWG", amps: [140, 170, 175, 180, 210, 225, 240] },
    { key: "1 AWG", amps: [165, 195, 210, 210, 245, 265, 280] },
    { key: "1/0 AWG", amps: [195, 230, 245, 245, 285, 305, 325] },
    { key: "2/0 AWG", amps: [225, 265, 285, 285, 330, 355, 370] },
    { key: "3/0 AWG", amps: [260, 310, 330, 330, 385, 410, 430] },
    { key: "4/0 AWG", amps: [300, 360, 385, 385, 445, 475, 510] },
  ],
} as const satisfies AmpacityTable;

/** Multiply by this where the conductor passes an engine space (50 °C air); applies at every voltage. */
export const usEngineSpace = {
  source: {
    title: "33 CFR Part 183 Subpart I",
    place: "183.425 table 5 note 1: 105 °C read in a distributor's table, the others recalled",
    status: "memory",
  },
  airC: 50,
  rows: [
    { ratingC: 60, factor: 0.58, status: "memory" },
    { ratingC: 75, factor: 0.75, status: "memory" },
    { ratingC: 80, factor: 0.78, status: "memory" },
    { ratingC: 90, factor: 0.82, status: "memory" },
    { ratingC: 105, factor: 0.85, status: "published" },
    { ratingC: 125, factor: 0.89, status: "memory" },
    { ratingC: 200, factor: 1, status: "memory" },
  ],
} as const satisfies EngineSpaceTable;

/** Multiply by this for three or more loaded conductors in a bundle; the regulation asks it only at 50 V and over. */
export const usBundling = {
  source: {
    title: "33 CFR Part 183 Subpart I",
    place: "183.425 table 5 note 2 and 183.435(b)",
    status: "published",
  },
  fromNominalV: 50,
  rows: [
    { conductorsFrom: 3, factor: 0.7 },
    { conductorsFrom: 4, factor: 0.6 },
    { conductorsFrom: 7, factor: 0.5 },
    { conductorsFrom: 25, factor: 0.4 },
  ],
} as const satisfies BundlingTable;
