import type { Sourced } from "./source.js";

/**
 * Tin-plated stranded aircraft wire: largest resistance at 20 °C [Ω per 1000 ft], copper as printed [circular mils], and the
 * current allowed at a copper temperature of 105 °C in 70 °C air, in bundles of 33 or more (24 to 10 AWG) or 9 (8 AWG and larger),
 * at no more than 20 % harness loading, at 60,000 ft.
 */
export const tinnedStrandedAwg = {
  source: { title: "FAA AC 43.13-1B Change 1 (2001)", place: "table 11-9", status: "published" },
  airC: 70,
  copperC: 105,
  rows: [
    { key: "24 AWG", maxOhmPer1000Ft: 28.4, circularMils: 475, bundledA: 2.5 },
    { key: "22 AWG", maxOhmPer1000Ft: 16.2, circularMils: 755, bundledA: 3 },
    { key: "20 AWG", maxOhmPer1000Ft: 9.88, circularMils: 1216, bundledA: 4 },
    { key: "18 AWG", maxOhmPer1000Ft: 6.23, circularMils: 1900, bundledA: 6 },
    { key: "16 AWG", maxOhmPer1000Ft: 4.81, circularMils: 2426, bundledA: 7 },
    { key: "14 AWG", maxOhmPer1000Ft: 3.06, circularMils: 3831, bundledA: 10 },
    { key: "12 AWG", maxOhmPer1000Ft: 2.02, circularMils: 5874, bundledA: 13 },
    { key: "10 AWG", maxOhmPer1000Ft: 1.26, circularMils: 9354, bundledA: 17 },
    { key: "8 AWG", maxOhmPer1000Ft: 0.7, circularMils: 16983, bundledA: 38 },
    { key: "6 AWG", maxOhmPer1000Ft: 0.44, circularMils: 26818, bundledA: 50 },
    { key: "4 AWG", maxOhmPer1000Ft: 0.28, circularMils: 42615, bundledA: 68 },
    { key: "2 AWG", maxOhmPer1000Ft: 0.18, circularMils: 66500, bundledA: 95 },
    { key: "1 AWG", maxOhmPer1000Ft: 0.15, circularMils: 81700, bundledA: 113 },
    { key: "1/0 AWG", maxOhmPer1000Ft: 0.12, circularMils: 104500, bundledA: 128 },
    { key: "2/0 AWG", maxOhmPer1000Ft: 0.09, circularMils: 133000, bundledA: 147 },
    { key: "3/0 AWG", maxOhmPer1000Ft: 0.07, circularMils: 166500, bundledA: 172 },
    { key: "4/0 AWG", maxOhmPer1000Ft: 0.06, circularMils: 210900, bundledA: 204 },
  ],
} as const satisfies Sourced;

/**
 * What stranding and tinning add to the resistance of a solid conductor of the gauge's own area, as factors.
 * `lay`: strands run in spirals and are longer than the conductor; the stranded rows of the electrical code (6 AWG and larger) lie
 * 2.2 % above the solid ones at the same temperature.
 */
export const layAllowance = {
  source: {
    title: "NFPA 70, chapter 9, table 8 against solid copper",
    place: "ratio of the stranded rows 6 AWG to 4/0 to the gauge formula",
    status: "computed",
  },
  factor: 1.022,
} as const satisfies Sourced;

/** Tinned strands of IEC 60228 class 5 are allowed 2 to 3 % more than plain ones; thin strands in the trade up to 6 %. */
export const tinAllowance = {
  source: {
    title: "NFPA 70, chapter 9, table 8, coated against uncoated columns",
    place: "largest ratio, 18 and 16 AWG (recalled); IEC 60228 class 5 gives 1.02 to 1.03",
    status: "memory",
  },
  usualFactor: 1.03,
  maxFactor: 1.06,
} as const satisfies Sourced;

/** Fine strands and the maker's tolerance on copper, over the gauge formula. */
export const makingAllowance = {
  source: { title: "common practice, no source", place: "-", status: "practice" },
  maxFactor: 1.03,
} as const satisfies Sourced;
