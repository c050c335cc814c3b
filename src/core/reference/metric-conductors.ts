import type { Sourced } from "./source.js";

/** Largest allowed DC resistance at 20 °C of flexible copper conductors (fine strands; what a boat should have). */
export const flexibleCopper = {
  source: {
    title: "IEC 60228:2004",
    place: "table 3, class 5, read in two engineering reproductions that agree",
    status: "published",
  },
  rows: [
    { areaMm2: 0.5, plainOhmPerKm: 39, tinnedOhmPerKm: 40.1 },
    { areaMm2: 0.75, plainOhmPerKm: 26, tinnedOhmPerKm: 26.7 },
    { areaMm2: 1, plainOhmPerKm: 19.5, tinnedOhmPerKm: 20 },
    { areaMm2: 1.5, plainOhmPerKm: 13.3, tinnedOhmPerKm: 13.7 },
    { areaMm2: 2.5, plainOhmPerKm: 7.98, tinnedOhmPerKm: 8.21 },
    { areaMm2: 4, plainOhmPerKm: 4.95, tinnedOhmPerKm: 5.09 },
    { areaMm2: 6, plainOhmPerKm: 3.3, tinnedOhmPerKm: 3.39 },
    { areaMm2: 10, plainOhmPerKm: 1.91, tinnedOhmPerKm: 1.95 },
    { areaMm2: 16, plainOhmPerKm: 1.21, tinnedOhmPerKm: 1.24 },
    { areaMm2: 25, plainOhmPerKm: 0.78, tinnedOhmPerKm: 0.795 },
    { areaMm2: 35, plainOhmPerKm: 0.554, tinnedOhmPerKm: 0.565 },
    { areaMm2: 50, plainOhmPerKm: 0.386, tinnedOhmPerKm: 0.393 },
    { areaMm2: 70, plainOhmPerKm: 0.272, tinnedOhmPerKm: 0.277 },
    { areaMm2: 95, plainOhmPerKm: 0.206, tinnedOhmPerKm: 0.21 },
  ],
} as const satisfies Sourced;
