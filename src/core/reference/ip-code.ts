import type { Source } from "./source.js";

/** One water test of the IP code. Litres a minute, kPa, m, minutes; a figure the test does not have is left out. */
export interface WaterTest {
  readonly numeral: number;
  readonly kind: "drip" | "spray" | "jet" | "immersion";
  readonly litresPerMin?: number;
  readonly nozzleMm?: number;
  readonly kPa?: number;
  readonly minutes?: number;
  readonly depthBottomM?: number;
  readonly depthTopM?: number;
}

/** Tests are made in fresh water. IPX8 is agreed with the maker and is harder than IPX7. */
export const ipWaterTests = {
  source: { title: "IEC 60529", place: "water tests, read in summaries by test houses", status: "published" },
  rows: [
    { numeral: 1, kind: "drip", minutes: 10 },
    { numeral: 2, kind: "drip" },
    { numeral: 3, kind: "spray", litresPerMin: 10, minutes: 5 },
    { numeral: 4, kind: "spray", litresPerMin: 10, minutes: 5 },
    { numeral: 5, kind: "jet", nozzleMm: 6.3, litresPerMin: 12.5, kPa: 30, minutes: 3 },
    { numeral: 6, kind: "jet", nozzleMm: 12.5, litresPerMin: 100, kPa: 100, minutes: 3 },
    { numeral: 7, kind: "immersion", depthBottomM: 1, depthTopM: 0.15, minutes: 30 },
    { numeral: 8, kind: "immersion" },
  ],
} as const satisfies { source: Source; rows: readonly WaterTest[] };

/** Up to numeral 6 a code implies all lower ones (published); immersion does not imply jets (recalled). */
export const ipRules = {
  implied: { title: "IEC 60529", place: "read in summaries", status: "published" },
  immersionApart: { title: "IEC 60529", place: "dual marking for immersion and jets", status: "memory" },
  jetNumerals: [5, 6],
  immersionNumerals: [7, 8],
} as const;

/** Least water numeral of a box by where it sits. */
export const ipBySurroundings = {
  source: { title: "common practice, no source", place: "-", status: "practice" },
  rows: { dry: 0, splash: 4, wet: 6, bilge: 7, "engine space": 4 },
} as const satisfies { source: Source; rows: Readonly<Record<string, number>> };
