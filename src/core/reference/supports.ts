import type { Source } from "./source.js";

/** How far apart the supports of a cable may be. */
export interface SupportRule {
  readonly rules: "us" | "iso";
  readonly what: "sheathed" | "unsheathed" | "battery conductor";
  readonly maxApartM: number;
  /** From the terminal to the first support. */
  readonly maxFirstM?: number;
  readonly source: Source;
}

const iso73: Source = { title: "ISO 10133:2012", place: "7.3", status: "published" };
const iso74: Source = {
  title: "ISO 10133:2012",
  place:
    "7.4: battery conductors to the disconnect switch 300 mm, first within 1 m; other sheathed conductors 450 mm",
  status: "published",
};
// 33 CFR 183.445 (read) asks for protection from abrasion and gives no distance. 46 CFR 183.340 (b)(4) (read) allows 24 in with metal
// supports on small passenger vessels, and refers the smaller of them to the standard below, which is stricter.
const us: Source = {
  title: "ABYC E-11",
  place:
    "supported throughout their length at least every 18 in; read as quoted by a curriculum director of its publisher",
  status: "published",
};
const us18M = 0.4572;

export const supportRules: readonly SupportRule[] = [
  { rules: "iso", what: "sheathed", maxApartM: 0.45, source: iso74 },
  { rules: "iso", what: "unsheathed", maxApartM: 0.45, source: iso73 },
  { rules: "iso", what: "battery conductor", maxApartM: 0.3, maxFirstM: 1, source: iso74 },
  { rules: "us", what: "sheathed", maxApartM: us18M, source: us },
  { rules: "us", what: "unsheathed", maxApartM: us18M, source: us },
  { rules: "us", what: "battery conductor", maxApartM: us18M, source: us },
];

/** Distance a cable keeps from things that harm it or that it harms. */
export const clearances = {
  source: {
    title: "ISO 10133 and US small-craft practice",
    place: "recalled, not read",
    status: "memory",
  },
  rows: {
    "wet exhaust": 0.05,
    "dry exhaust": 0.25,
    "hot surface": 0.25,
    "fuel part": 0.1,
  },
} as const satisfies { source: Source; rows: Readonly<Record<string, number>> };

/** A compass beside a pair of conductors. */
export const compassLimits = {
  source: { title: "common practice, no source", place: "-", status: "practice" },
  maxDeviationDeg: 0.5,
  /** Horizontal part of the earth's field, on the low side of what temperate waters have [µT]. */
  horizontalFieldMicroT: 16,
  /** Between the centres of the two cores of a flat or twin cable, where nothing is said [m]. */
  coreSpacingM: 0.004,
} as const;

/** Permeability of free space over 2π [µT·m/A]: B = 0.2 · I / r. */
export const straightConductorField = {
  source: { title: "law of Biot and Savart", place: "μ₀/2π with μ₀ = 4π·10⁻⁷", status: "computed" },
  microTMPerA: 0.2,
} as const;

/** Share of the circle around them that cables laid together fill. */
export const bundleFill = {
  source: { title: "common practice, no source", place: "-", status: "practice" },
  share: 0.75,
} as const;

/** Working slack where the plan says nothing. */
export const workingSlack = {
  source: { title: "common practice, no source", place: "-", status: "practice" },
  /** A box is drawn out of its hole and turned over on the bench beside it. */
  boxBeyondOpeningM: 0.3,
  /** Gear is drawn off its hole far enough for two hands. */
  gearM: 0.2,
  /** A terminal is made again once in its life. */
  remakeM: 0.03,
  panelM: 0.15,
  batteryM: 0.1,
} as const;
