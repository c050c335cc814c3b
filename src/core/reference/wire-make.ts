import { commonPractice, type Sourced } from "./source.js";

/**
 * Insulated single conductors as sold for boats: outside diameter = perSqrtMm2 · sqrt(copper area) + wallsMm. The first term is the
 * diameter of a flexible bundle of strands (fill about 0.75), the second twice the wall.
 */
export const insulatedConductor = {
  source: commonPractice,
  perSqrtMm2: 1.3,
  thinWallsMm: 1.6,
  /** Walls of conductors of this area and more. */
  thickFromAreaMm2: 8,
  thickWallsMm: 2.4,
  insulationKgPerM3: 1400,
} as const satisfies Sourced;

/** Two or more insulated conductors in one sheath: factor on their diameter by number, and sheath walls [mm]. */
export const sheathedCable = {
  source: {
    title: "plane geometry of equal circles",
    place: "smallest enclosing circle",
    status: "computed",
  },
  bundleFactor: [1, 2, 2.155, 2.414, 2.701, 3, 3],
  sheathWallsMm: 1.8,
} as const satisfies Sourced;

/**
 * What a metre of one conductor costs against a metre of 1 mm²: copper counts by its area, insulation and making as a fixed part.
 * No currency; it only ranks sizes. Prices in the plan win over it.
 */
export const relativePrice = {
  source: { title: "own model", place: "copper by area plus a fixed part per metre", status: "computed" },
  fixedPerM: 0.4,
  perMm2PerM: 0.6,
  tinnedFactor: 1.25,
} as const satisfies Sourced;
