import type { Source } from "./source.js";

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
